// Scores what was read from one sheet against labels made by eye.
//
// A row is right (strict) when page, minimum, typical, maximum and unit agree as
// printed and the symbol agrees (or, where the label has none, the name is
// alike), and the variant is alike where the label has one.
//
//     Score score = scoreReading(label, sheet);
//     score.strict.f1()
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "model/datasheet.h"

namespace standin::accuracy {

struct LabelRow {
    int page = 0;
    std::string symbol, name, condition, variant, min, typ, max, unit;  // empty: none
};

struct LabelPin {
    std::string number, name;
};

struct Label {
    std::vector<int> pages;  // that are labelled
    std::vector<LabelRow> rows;
    std::vector<LabelPin> pins;
};

// Takes the text of a label file; none where it is no such file.
[[nodiscard]] std::optional<Label> parseLabel(std::string_view json);

struct Ratio {
    int right = 0;
    int read = 0;
    int truth = 0;
    [[nodiscard]] double f1() const;
};

struct Score {
    Ratio strict;
    Ratio loose;  // values, unit and page only
    Ratio pins;
    int conditions = 0;  // agreeing among the loosely matched rows
    std::vector<std::string> differences;  // one line each: missed, extra, id differs
    // Confidence: rows at 0.9 and above, and how many of them are right.
    int sure = 0;
    int sureRight = 0;
    std::vector<std::string> sureWrong;

    [[nodiscard]] double conditionShare() const;
};

[[nodiscard]] Score scoreReading(Label const& label, model::Datasheet const& sheet);

// Forms that compare equal, for tests.
[[nodiscard]] std::string numberForm(std::string_view text);
[[nodiscard]] std::string unitForm(std::string_view text);
[[nodiscard]] std::string symbolForm(std::string_view text);
[[nodiscard]] double likeness(std::string_view left, std::string_view right);

}  // namespace standin::accuracy
