// Tested by tests/extractors/recognised_marks_test.cpp.
#include "extractors/recognised_marks.h"

#include <algorithm>

#include "model/recognised.h"

namespace standin::reading {

namespace {

constexpr double kRecognisedAtMost = 0.75;  // of a row that is read well but not from print

// Words of one line that stand side by side are one entry.
void listLine(model::PageLayout const& page, model::TextLine const& line, std::vector<model::PlacedText>& list) {
    bool goesOn = false;
    for (std::uint32_t w = line.firstWord; w < line.firstWord + line.wordCount; ++w) {
        auto const& word = page.words[w];
        if (!word.recognised) {
            goesOn = false;
            continue;
        }
        if (!goesOn) list.push_back({{}, page.page, {}});
        auto& entry = list.back();
        if (goesOn && word.spaceBefore) entry.text += ' ';
        entry.text += word.text;
        entry.box = model::united(entry.box, word.box);
        goesOn = true;
    }
}

bool isOnRecognised(model::Coverage const& coverage, model::Parameter const& parameter) {
    if (model::isRecognised(coverage, parameter.page, parameter.box)) return true;
    auto const values = {&parameter.min, &parameter.typ, &parameter.max};
    return std::any_of(values.begin(), values.end(), [&](auto const* value) { return *value && model::isRecognised(coverage, parameter.page, (*value)->box); });
}

}  // namespace

void markRecognised(std::span<model::PageLayout const> pages, model::Datasheet& sheet) {
    auto& coverage = sheet.coverage;
    for (auto const& page : pages) {
        for (auto const& line : page.lines) listLine(page, line, coverage.recognised);
        for (auto const& box : page.unrecognised) coverage.unrecognised.push_back({page.page, box});
    }
    if (coverage.recognised.empty()) return;
    for (auto& parameter : sheet.parameters) {
        if (!isOnRecognised(coverage, parameter)) continue;
        parameter.recognised = true;
        parameter.confidence.score = std::min(parameter.confidence.score, kRecognisedAtMost);
        parameter.confidence.reasons.emplace_back("recognised from a picture");
    }
    for (auto& pin : sheet.pins) pin.recognised = pin.recognised || model::isRecognised(coverage, pin.page, pin.box);
    for (auto& sentence : sheet.text) {
        sentence.recognised =
            std::any_of(sentence.places.begin(), sentence.places.end(), [&](model::Place const& place) { return model::isRecognised(coverage, place.page, place.box); });
    }
}

}  // namespace standin::reading
