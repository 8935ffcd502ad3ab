// What users state about the surroundings of a part in a small JSON file of
// named members: the reading that cell profiles and circuits share.
//
//     {"schema": "standin.cell/1", "name": "…", "charge_voltage": "4.20 V ±50 mV", "capacity": {"min": "480 mAh", "typ": "500 mAh"}}
//
// A value is a text with its unit, or an object of min, typ and max. What one
// number alone means is said by the member: a limit holds exactly; a nominal
// value is a typical one, without limits, until a tolerance is given.
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "model/result.h"
#include "quantity/dimension.h"
#include "quantity/limits.h"

namespace standin::risk {

enum class MemberKind : std::uint8_t {
    Limit,    // a quantity; one number alone holds exactly
    Nominal,  // a quantity; one number alone is a typical value
    Count,    // a whole number from 1
    Word,     // one of `words`
};

struct Member {
    std::string_view name;
    MemberKind kind = MemberKind::Limit;
    std::string_view unit = "";      // coherent; "1" for a ratio
    std::string_view meaning = "";   // one line, for the user
    std::string_view example = "";   // how it is written
    std::string_view words = "";     // of a Word, separated by blanks
    std::string_view share = "";     // a percentage is taken of this member, which must be given
    std::string_view most = "";      // coherent; what lies above it is a slip of the pen
    bool signedValue = false;        // may be below zero
};

struct GivenValue {
    std::string name;
    quantity::Limits limits;
    quantity::Dimension dimension;
    std::string unit;  // coherent
    std::string text;  // as given, on one line
    bool operator==(GivenValue const&) const = default;
};

class GivenValues {
public:
    // `schema`: the id that the file must carry. Usage errors name the member and
    // say how to write it; unknown members are refused with the nearest known one.
    [[nodiscard]] static model::Result<GivenValues> parse(std::string_view json, std::string_view schema, std::span<Member const> members);

    [[nodiscard]] std::string const& name() const { return m_name; }
    // Null: not given.
    [[nodiscard]] GivenValue const* find(std::string_view member) const;
    // Of a Word; empty: not given.
    [[nodiscard]] std::string word(std::string_view member) const;

    bool operator==(GivenValues const&) const = default;

private:
    class Reader;

    std::string m_name;
    std::vector<GivenValue> m_values;
    std::vector<GivenValue> m_words;  // the word in `text`
};

}  // namespace standin::risk
