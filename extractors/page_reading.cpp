// A list of pages to do for each document. A thread takes pages from the front
// of "its" document; when that is done it helps with another one from the back,
// provided enough is left to pay for opening the document a second time, and then
// hands over what is read. Every thread has its own reader, since Poppler documents
// are not shared.
//
// Tested by tests/extractors/read_datasheet_test.cpp.
#include "extractors/page_reading.h"

#include <algorithm>
#include <mutex>

#include <fmt/format.h>

#include "extractors/layout/layout.h"
#include "extractors/picture_text.h"
#include "extractors/poppler/document_reader.h"
#include "extractors/poppler/page_picture.h"
#include "extractors/tables/find_tables.h"
#include "model/crew.h"
#include "model/digest.h"

namespace standin::reading {

namespace {

// Opening a document costs about as much as reading a page or two of it.
constexpr int kPagesWorthASecondReader = 3;

struct Task {
    FileBytes const* file = nullptr;
    model::DocumentInfo info;
    std::optional<model::Error> error;
    bool opened = false;  // by its first thread; page range known
    int firstPage = 1;
    std::vector<ReadPage> pages;
    std::size_t front = 0;  // pages [front, back) are still to do
    std::size_t back = 0;
    int readers = 0;  // that have it open, or are about to
    bool handedOver = false;
};

class Work {
public:
    Work(std::span<FileBytes const> files, ReadOptions const& options, std::function<void(std::size_t, ReadDocument)> const& whenRead) : m_options(options), m_whenRead(whenRead) {
        m_tasks.resize(files.size());
        for (std::size_t i = 0; i < files.size(); ++i) m_tasks[i].file = &files[i];
    }

    void run() {
        model::inPieces(static_cast<std::size_t>(std::max(1, m_options.threads)), [this](std::size_t piece) { work(piece); });
    }

    std::vector<std::optional<model::Error>> errors() {
        std::vector<std::optional<model::Error>> errors;
        for (auto& task : m_tasks) errors.push_back(std::move(task.error));
        return errors;
    }

private:
    void work(std::size_t thread) {
        // First pass: documents in an order of its own, so that the threads
        // open different ones. Second pass: help where much is left.
        for (std::size_t i = 0; i < m_tasks.size(); ++i) {
            auto& task = m_tasks[(thread + i) % m_tasks.size()];
            if (claimOpening(task)) openAndRead(task);
        }
        for (std::size_t i = 0; i < m_tasks.size(); ++i) help(m_tasks[(thread + i) % m_tasks.size()]);
        // The thread lives on: what it keeps between pictures would stay to the end of the program.
        if (m_options.recogniser.release != nullptr) m_options.recogniser.release();
        for (std::size_t i = 0; i < m_tasks.size(); ++i) {
            if (claimWhole(m_tasks[i])) handOver(i);
        }
    }

    bool claimOpening(Task& task) {
        std::scoped_lock lock(m_mutex);
        if (task.opened) return false;
        task.opened = true;
        ++task.readers;
        return true;
    }

    bool claimHelp(Task& task) {
        std::scoped_lock lock(m_mutex);
        if (task.error || task.back - task.front < kPagesWorthASecondReader) return false;
        ++task.readers;
        return true;
    }

    // Every page is read, by this thread or others. The one that ends the last page asks after that.
    bool claimWhole(Task& task) {
        std::scoped_lock lock(m_mutex);
        if (task.error || task.handedOver || !task.opened || task.readers > 0 || task.front < task.back) return false;
        task.handedOver = true;
        return true;
    }

    void handOver(std::size_t place) {
        auto& task = m_tasks[place];
        // The threads' notes arrive in any order; what is written may not depend on it.
        std::sort(task.info.warnings.begin(), task.info.warnings.end());
        m_whenRead(place, {std::move(task.info), std::move(task.pages)});
    }

    void openAndRead(Task& task) {
        if (auto reader = open(task)) {
            describe(task, *reader);
            readWhile(task, *reader, /*fromFront=*/true);
            keepNotes(task, *reader);
        }
        leave(task);
    }

    void help(Task& task) {
        if (!claimHelp(task)) return;
        if (auto reader = open(task)) {
            readWhile(task, *reader, /*fromFront=*/false);
            keepNotes(task, *reader);
        }
        leave(task);
    }

    void leave(Task& task) {
        std::scoped_lock lock(m_mutex);
        --task.readers;
    }

    std::optional<poppler::DocumentReader> open(Task& task) {
        poppler::OpenOptions options;
        options.password = m_options.password;
        auto reader = poppler::DocumentReader::open(std::as_bytes(std::span{task.file->bytes}), options);
        if (reader) return std::move(*reader);
        std::scoped_lock lock(m_mutex);
        task.error = reader.error();
        task.error->file = task.file->file;
        return std::nullopt;
    }

    void describe(Task& task, poppler::DocumentReader const& reader) {
        auto const metadata = reader.metadata();
        auto& info = task.info;
        info.file = task.file->file;
        info.sha256 = model::sha256Hex(task.file->bytes);
        info.bytes = task.file->bytes.size();
        info.pages = reader.pageCount();
        info.producer = metadata.producer;
        info.creator = metadata.creator;
        info.title = metadata.title;
        int const last = m_options.pages ? std::min(m_options.pages->last, info.pages) : info.pages;
        int const first = m_options.pages ? std::max(1, m_options.pages->first) : 1;
        std::scoped_lock lock(m_mutex);
        if (first > last) {
            task.error = model::Error{model::ErrorKind::Usage, fmt::format("has {} pages; choose others", info.pages), task.file->file};
            return;
        }
        task.firstPage = first;
        task.pages.resize(static_cast<std::size_t>(last - first + 1));
        task.back = task.pages.size();
        m_total += static_cast<int>(task.pages.size());
    }

    // The next page of the task to read, or none.
    std::optional<std::size_t> claimPage(Task& task, bool fromFront) {
        std::scoped_lock lock(m_mutex);
        if (m_stopped || task.error || task.front >= task.back) return std::nullopt;
        return fromFront ? task.front++ : --task.back;
    }

    void readWhile(Task& task, poppler::DocumentReader& reader, bool fromFront) {
        std::unique_ptr<poppler::PagePicture> pictures;
        while (auto const index = claimPage(task, fromFront)) {
            int const number = task.firstPage + static_cast<int>(*index);
            auto& page = task.pages[*index];  // this thread's own
            if (auto content = reader.readPage(number)) {
                auto unrecognised = recognised(task, *content, pictures);
                page.layout = layout::layOut(*content);
                page.layout.unrecognised = std::move(unrecognised);
                page.tables = tables::findTables(page.layout);
            } else {
                page.layout.page = number;
                page.layout.notes.push_back({number, content.error().message});
            }
            finishPage();
        }
    }

    // Recognises what the page has as pictures, if that is asked for; what was not made out.
    // `pictures` is opened for the first page that needs it.
    std::vector<model::Rect> recognised(Task& task, model::PageContent& content, std::unique_ptr<poppler::PagePicture>& pictures) {
        if (m_options.languages.empty()) return {};
        auto const fail = [&](model::Error const& error) {
            content.notes.push_back({content.page, "What is a picture on this page was not recognised: " + error.message});
            return std::vector<model::Rect>{};
        };
        if (!pictures) {
            auto opened = poppler::PagePicture::open(task.file->bytes, m_options.password);
            if (!opened) return fail(opened.error());
            pictures = std::move(*opened);
        }
        auto unread = recognisePictures(content, *pictures, m_options.recogniser, m_options.languages);
        return unread ? std::move(*unread) : fail(unread.error());
    }

    void finishPage() {
        std::scoped_lock lock(m_mutex);
        ++m_done;
        if (m_stopped || !m_options.progress || m_options.progress(m_done, m_total)) return;
        m_stopped = true;
        for (Task& stopped : m_tasks) {
            if (!stopped.error) stopped.error = model::Error{model::ErrorKind::Unreadable, "reading was stopped", stopped.file->file};
        }
    }

    void keepNotes(Task& task, poppler::DocumentReader& reader) {
        auto notes = reader.notes();
        std::scoped_lock lock(m_mutex);
        for (auto const& note : notes) {
            auto const text = note.page > 0 ? fmt::format("page {}: {}", note.page, note.text) : note.text;
            auto& warnings = task.info.warnings;
            if (std::find(warnings.begin(), warnings.end(), text) == warnings.end()) warnings.push_back(text);
        }
    }

    ReadOptions const& m_options;
    std::function<void(std::size_t, ReadDocument)> const& m_whenRead;
    std::vector<Task> m_tasks;
    std::mutex m_mutex;  // guards everything of a task but its claimed pages
    int m_done = 0;
    int m_total = 0;
    bool m_stopped = false;
};

}  // namespace

std::vector<std::optional<model::Error>> readPages(std::span<FileBytes const> files, ReadOptions const& options, std::function<void(std::size_t, ReadDocument)> const& whenRead) {
    Work work(files, options, whenRead);
    work.run();
    return work.errors();
}

}  // namespace standin::reading
