// Tested by tests/src/cli/run_test.cpp.
#include "cli/compare_pair.h"

#include <cstdio>
#include <iterator>
#include <unistd.h>

#include <fmt/format.h>

#include "cli/pictures.h"
#include "cli/run.h"
#include "cli/surroundings.h"
#include "model/crew.h"
#include "model/file.h"
#include "risk/compare_datasheets.h"

namespace standin::cli {

using model::Result;

Result<std::optional<std::string>> readPassword(std::string const& path) {
    if (path.empty()) return std::optional<std::string>{};
    auto content = model::readFile(path, model::kLongestUserFile);
    if (!content) return tl::unexpected(content.error());
    auto end = content->find('\n');
    if (end == std::string::npos) end = content->size();
    if (end > 0 && (*content)[end - 1] == '\r') --end;
    return std::optional<std::string>{content->substr(0, end)};
}

Result<vocabulary::Vocabulary> loadVocabulary(std::vector<std::string> const& files) {
    auto vocabulary = vocabulary::Vocabulary::builtIn();
    for (auto const& file : files) {
        if (!vocabulary) break;
        auto const content = model::readFile(file, model::kLongestUserFile);
        if (!content) return tl::unexpected(content.error());
        if (auto added = vocabulary->add(*content); !added) {
            auto error = added.error();
            error.file = file;
            return tl::unexpected(std::move(error));
        }
    }
    return vocabulary;
}

Result<std::vector<corrections::Entry>> loadCorrections(std::vector<std::string> const& files) {
    std::vector<corrections::Entry> entries;
    for (auto const& file : files) {
        auto const content = model::readFile(file, model::kLongestUserFile);
        if (!content) return tl::unexpected(content.error());
        auto added = corrections::parseCorrections(*content, file);
        if (!added) return tl::unexpected(added.error());
        std::move(added->begin(), added->end(), std::back_inserter(entries));
    }
    return entries;
}

Result<void> useRecogniser(reading::ReadOptions& options, std::string const& languages, model::Recogniser const& recogniser) {
    if (languages.empty()) return {};
    if (recogniser.check == nullptr || recogniser.recognise == nullptr) return tl::unexpected(model::Error{model::ErrorKind::Usage, kNoRecogniser, {}, 0});
    options.recogniser = recogniser;
    options.languages = languages;
    return recogniser.check(languages);
}

Progress::Progress() : m_shown(isatty(STDERR_FILENO) == 1) {}

Progress::~Progress() {
    if (m_shown && m_any) std::fputs("\r\033[K", stderr);
}

std::function<bool(int, int)> Progress::callback() {
    if (!m_shown) return {};
    return [this](int done, int total) {
        m_any = true;
        fmt::print(stderr, "\rreading {} of {} pages", done, total);
        return true;
    };
}

Result<ComparedPair> comparePair(CompareCommand const& command, PageBytes pageBytes, model::Recogniser const& recogniser) {
    auto password = readPassword(command.passwordFile);
    if (!password) return tl::unexpected(password.error());
    Progress progress;
    return comparePair(command, std::move(*password), progress.callback(), pageBytes, recogniser);
}

Result<ComparedPair> comparePair(CompareCommand const& command, std::optional<std::string> password, std::function<bool(int, int)> progress, PageBytes pageBytes,
                                 model::Recogniser const& recogniser) {
    Result<vocabulary::Vocabulary> vocabulary = tl::unexpected(model::Error{});
    model::together([&] { vocabulary = loadVocabulary(command.vocabularies); }, reading::prepare);
    if (!vocabulary) return tl::unexpected(vocabulary.error());
    auto corrections = loadCorrections(command.corrections);
    if (!corrections) return tl::unexpected(corrections.error());
    auto cell = loadCell(command.cell);
    if (!cell) return tl::unexpected(cell.error());
    auto circuit = loadCircuit(command.circuit);
    if (!circuit) return tl::unexpected(circuit.error());
    reading::ReadOptions readOptions;
    readOptions.password = password;
    readOptions.corrections = std::move(*corrections);
    readOptions.progress = std::move(progress);
    if (auto const used = useRecogniser(readOptions, command.ocr, recogniser); !used) return tl::unexpected(used.error());
    ComparedPair compared;
    auto sheets = reading::readPair(command.reference, command.candidate, readOptions, *vocabulary, &compared.bytes);
    if (!sheets) return tl::unexpected(sheets.error());

    risk::CompareOptions options;
    options.referenceVariant = command.referenceVariant;
    options.candidateVariant = command.candidateVariant;
    options.cell = std::move(*cell);
    options.circuit = std::move(*circuit);
    auto const pictures = lazyPictures(compared.bytes, password);
    options.referencePictures = pictures.reference.get();
    options.candidatePictures = pictures.candidate.get();
    auto& [reference, candidate] = *sheets;
    auto comparison = risk::compareDatasheets(reference, candidate, options, *vocabulary);
    if (!comparison) return tl::unexpected(comparison.error());
    compared.result.tests = risk::benchTests(*comparison, *vocabulary);
    compared.result.reference = std::move(reference);
    compared.result.candidate = std::move(candidate);
    compared.result.comparison = std::move(*comparison);
    compared.sampleRules = vocabulary->sampleRules();
    compared.password = std::move(password);
    compared.vocabulary = std::move(*vocabulary);
    if (pageBytes == PageBytes::Drop) compared.bytes = {};
    return compared;
}

}  // namespace standin::cli
