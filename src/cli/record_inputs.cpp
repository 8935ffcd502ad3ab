// Tested by tests/src/cli/record_run_test.cpp.
#include "cli/record_inputs.h"

#include <utility>

#include "model/digest.h"
#include "model/file.h"
#include "vocabulary/embedded_data.h"

namespace standin::cli {

using model::Result;

namespace {

constexpr std::size_t kLongestKept = std::size_t{1} << 20;  // bytes of a user's file that go into the record whole

Result<void> addUsedFiles(record::Method& method, char const* kind, std::vector<std::string> const& files) {
    for (auto const& file : files) {
        auto content = model::readFile(file, model::kLongestUserFile);
        if (!content) return tl::unexpected(content.error());
        auto hash = model::sha256Hex(*content);
        if (content->size() > kLongestKept) content->clear();
        method.files.push_back({kind, file, std::move(hash), *std::move(content)});
    }
    return {};
}

Result<record::Method> methodOf(CompareCommand const& command) {
    record::Method method;
    method.program = STANDIN_VERSION;
    method.vocabulary = model::sha256Hex(vocabulary::embeddedVocabulary());
    method.referenceVariant = command.referenceVariant;
    method.candidateVariant = command.candidateVariant;
    method.ocr = command.ocr;
    if (auto added = addUsedFiles(method, "vocabulary", command.vocabularies); !added) return tl::unexpected(added.error());
    if (auto added = addUsedFiles(method, "corrections", command.corrections); !added) return tl::unexpected(added.error());
    for (auto const& [kind, file] : {std::pair{"cell", &command.cell}, std::pair{"circuit", &command.circuit}}) {
        if (file->empty()) continue;
        if (auto added = addUsedFiles(method, kind, {*file}); !added) return tl::unexpected(added.error());
    }
    return method;
}

}  // namespace

Result<std::string> hashOf(std::string const& path) {
    auto const content = model::readFile(path, model::kLongestDocument);
    if (!content) return tl::unexpected(content.error());
    return model::sha256Hex(*content);
}

Result<std::vector<record::Evidence>> evidenceOf(std::vector<std::string> const& files) {
    std::vector<record::Evidence> evidence;
    for (auto const& file : files) {
        auto hash = hashOf(file);
        if (!hash) return tl::unexpected(hash.error());
        evidence.push_back({file, *std::move(hash)});
    }
    return evidence;
}

Result<record::Opened> openedOf(CompareCommand const& command, record::Identification identification, ComparedPair compared) {
    auto method = methodOf(command);
    if (!method) return tl::unexpected(method.error());
    record::Opened opened;
    opened.identification = std::move(identification);
    opened.method = *std::move(method);
    opened.comparison = std::move(compared.result.comparison);
    opened.tests = std::move(compared.result.tests);
    opened.sampleRules = std::move(compared.sampleRules);
    return opened;
}

}  // namespace standin::cli
