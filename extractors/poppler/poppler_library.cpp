// Poppler has one GlobalParams and one error callback for the whole process.
// The initialiser object is made once and lives until the program ends, so that
// nothing that counts references can take the state away from under a reader. The
// callback looks up the sink of the thread it is called in.
//
// Tested by tests/extractors/poppler/document_reader_test.cpp.
#include "extractors/poppler/poppler_library.h"

#include <algorithm>
#include <string_view>

#include <Error.h>
#include <GfxState.h>
#include <GlobalParams.h>
#include <Page.h>

#ifdef STANDIN_HAS_LCMS
#include <lcms2.h>
#endif

namespace standin::poppler {

namespace {

constexpr std::size_t kMaxMessageLength = 160;

thread_local std::vector<std::string>* t_messages = nullptr;
thread_local std::uint64_t t_complaints = 0;

// Printable ASCII only: the text may quote bytes of the file.
std::string cleaned(std::string_view text) {
    std::string out;
    for (char c : text.substr(0, kMaxMessageLength)) out += (c >= 0x20 && c < 0x7f) ? c : '?';
    return out;
}

// "object 12 is bad" and "object 13 is bad" are one complaint.
bool sameApartFromNumbers(std::string_view a, std::string_view b) {
    auto const isDigit = [](char c) { return c >= '0' && c <= '9'; };
    std::size_t i = 0;
    std::size_t k = 0;
    while (true) {
        while (i < a.size() && isDigit(a[i])) ++i;
        while (k < b.size() && isDigit(b[k])) ++k;
        if (i == a.size() || k == b.size()) return i == a.size() && k == b.size();
        if (a[i++] != b[k++]) return false;
    }
}

void collect(ErrorCategory, Goffset, char const* message) {
    ++t_complaints;
    if (t_messages == nullptr || message == nullptr || t_messages->size() >= MessageSink::kMaxMessages) return;
    std::string text = cleaned(message);
    auto const known = std::any_of(t_messages->begin(), t_messages->end(), [&](std::string const& other) { return sameApartFromNumbers(other, text); });
    if (!known) t_messages->push_back(std::move(text));
}

}  // namespace

namespace {

// The first graphics state makes colour profiles that all share, without a lock:
// two readers that open at the same moment would each make them.
void makeSharedProfiles() {
    PDFRectangle const page(0, 0, 1, 1);
    GfxState state(72, 72, &page, 0, false);
#ifdef STANDIN_HAS_LCMS
    state.setDisplayProfile(make_GfxLCMSProfilePtr(cmsCreateNULLProfile()));
#endif
}

struct Library {
    GlobalParamsIniter initialiser{collect};
    Library() { makeSharedProfiles(); }
};

}  // namespace

void ensureLibrary() { static Library const library; }

MessageSink::MessageSink(std::vector<std::string>& messages) : m_previous(t_messages) { t_messages = &messages; }

MessageSink::~MessageSink() { t_messages = m_previous; }

std::uint64_t complaintsSoFar() { return t_complaints; }

}  // namespace standin::poppler
