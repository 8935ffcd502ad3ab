// Which device of a series a row of a table is for, by the code that it begins with: rows of
// two devices are no two states of one row.
//
//     DeviceCodes codes({"QX2472R", "QX2473R"}, {"QX2472", "QX2478"});
//     codes.areOthers("QX2473R", "QX2478")   // true
//     codes.areOthers("QX2472R", "QX2472")   // false: a suffix more
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace standin::compare {

class DeviceCodes {
public:
    // What the rows of either sheet begin with, as printed; what is no code is left out.
    DeviceCodes(std::vector<std::string> const& reference, std::vector<std::string> const& candidate);

    // Both are codes, neither goes on with the other, and one of the two meets a row of its
    // own in the other sheet. Codes that differ in one sign are one code that was changed. Symmetric.
    [[nodiscard]] bool areOthers(std::string_view reference, std::string_view candidate) const;

private:
    std::vector<std::string> m_reference, m_candidate;  // keys, sorted
};

}  // namespace standin::compare
