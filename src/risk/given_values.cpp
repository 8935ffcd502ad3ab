// Tested by tests/src/risk/given_values_test.cpp.
#include "risk/given_values.h"

#include <algorithm>
#include <array>
#include <optional>
#include <set>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "quantity/cell.h"
#include "text/utf8.h"

namespace standin::risk {

namespace {

using quantity::Decimal;
using quantity::ParsedValue;
using Json = nlohmann::ordered_json;

constexpr int kDeepestNesting = 3;
constexpr std::size_t kLongestText = 200;

// How many letters have to be put in, left out or changed.
std::size_t editDistance(std::string_view a, std::string_view b) {
    std::vector<std::size_t> row(b.size() + 1);
    for (std::size_t j = 0; j <= b.size(); ++j) row[j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i) {
        std::size_t diagonal = row[0];
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            std::size_t const above = row[j];
            row[j] = std::min({above + 1, row[j - 1] + 1, diagonal + (a[i - 1] == b[j - 1] ? 0U : 1U)});
            diagonal = above;
        }
    }
    return row[b.size()];
}

std::string hintFor(std::string_view wrong, std::span<Member const> members) {
    std::string_view nearest;
    std::size_t least = std::max<std::size_t>(wrong.size() / 2, 2);
    for (auto const& member : members) {
        if (wrong.size() > kLongestText) break;
        std::size_t const distance = editDistance(wrong, member.name);
        if (distance < least) {
            least = distance;
            nearest = member.name;
        }
    }
    if (!nearest.empty()) return fmt::format("did you mean \"{}\"?", nearest);
    std::string list = "known are \"name\"";
    for (auto const& member : members) list += fmt::format(", \"{}\"", member.name);
    return list;
}

// "4,300 V": 4.3 V or 4300 V.
bool hasCommaOfThree(std::string_view text) {
    auto const digit = [text](std::size_t at) { return at < text.size() && text::isAsciiDigit(text[at]); };
    for (std::size_t at = text.find(','); at != std::string_view::npos; at = text.find(',', at + 1)) {
        bool const three = digit(at + 1) && digit(at + 2) && digit(at + 3) && !digit(at + 4);
        bool const zero = at > 0 && text[at - 1] == '0' && (at == 1 || !digit(at - 2));  // "0,300 V"
        if (at > 0 && digit(at - 1) && three && !zero) return true;
    }
    return false;
}

std::string asGiven(Json const& value) {
    if (value.is_string()) return value.get<std::string>();
    std::string text;
    if (value.is_object()) {
        for (auto const& [key, bound] : value.items()) text += fmt::format("{}{} {}", text.empty() ? "" : ", ", key, bound.is_string() ? bound.get<std::string>() : bound.dump());
        return text;
    }
    return value.dump();
}

}  // namespace

class GivenValues::Reader {
public:
    Reader(std::string_view schema, std::span<Member const> members) : m_schema(schema), m_members(members) {}

    model::Result<GivenValues> read(Json const& file) {
        if (!file.is_object() || !file.contains("schema") || file.at("schema") != m_schema) {
            return fault(fmt::format("\"schema\" must be \"{}\"", m_schema));
        }
        for (auto const& [key, value] : file.items()) {
            if (key == "schema") continue;
            if (key == "name") {
                if (!value.is_string()) return fault("\"name\" must be a text");
                m_given.m_name = value.get<std::string>();
                continue;
            }
            auto const member = std::find_if(m_members.begin(), m_members.end(), [&](Member const& known) { return known.name == key; });
            if (member == m_members.end()) return fault(fmt::format("unknown member \"{}\"; {}", key, hintFor(key, m_members)));
            auto given = member->kind == MemberKind::Count ? count(value, *member) : member->kind == MemberKind::Word ? word(value, *member) : quantityOf(value, *member);
            if (!given) return tl::unexpected(given.error());
            (member->kind == MemberKind::Word ? m_given.m_words : m_given.m_values).push_back(std::move(*given));
        }
        if (auto const shared = workOutShares(); !shared) return tl::unexpected(shared.error());
        return std::move(m_given);
    }

private:
    static tl::unexpected<model::Error> fault(std::string message) {
        return tl::unexpected(model::Error{.kind = model::ErrorKind::Usage, .message = std::move(message), .file = {}, .page = 0});
    }

    static tl::unexpected<model::Error> memberFault(Member const& member, std::string_view given, std::string_view what) {
        return fault(fmt::format("member \"{}\": \"{}\" {}; write it like {}", member.name, given.substr(0, kLongestText), what, member.example));
    }

    static model::Result<GivenValue> count(Json const& value, Member const& member) {
        constexpr std::int64_t kMost = 1000;
        if (!value.is_number_integer() || value < 1 || value > kMost) return memberFault(member, asGiven(value), "is no whole number from 1");
        return GivenValue{.name = std::string(member.name), .limits = quantity::exactly(Decimal(value.get<std::int64_t>())), .dimension = {}, .unit = "1", .text = asGiven(value)};
    }

    static model::Result<GivenValue> word(Json const& value, Member const& member) {
        std::string const text = asGiven(value);
        std::string const known = fmt::format(" {} ", member.words);
        bool const one = !text.empty() && text.find(' ') == std::string::npos && known.find(" " + text + " ") != std::string::npos;
        if (!one) return fault(fmt::format("member \"{}\": \"{}\" is none of: {}", member.name, text.substr(0, kLongestText), member.words));
        return GivenValue{.name = std::string(member.name), .limits = {}, .dimension = {}, .unit = {}, .text = text};
    }

    struct Parsed {
        ParsedValue value;
        bool percentage = false;
    };

    static model::Result<Parsed> parseText(std::string const& text, Member const& member) {
        if (text.size() > kLongestText) return memberFault(member, text, "is too long");
        auto parsed = quantity::parseValue(text, {.expected = member.unit});
        bool const percentage = !member.share.empty() && parsed.unit == "1" && text.find('%') != std::string::npos;
        if (percentage) parsed.unitConflict = false;
        bool const none = !parsed.lo && !parsed.typ && !parsed.hi;
        if (none || !parsed.relativeTo.empty()) return memberFault(member, text, "is no value that can be read");
        bool const assumed = std::any_of(parsed.notes.begin(), parsed.notes.end(), [](std::string const& note) { return note == "unit assumed from the parameter"; });
        if (assumed && member.unit != "1") return memberFault(member, text, "has no unit");
        if (parsed.unitConflict || (!percentage && parsed.unit != member.unit)) return memberFault(member, text, "has a unit that does not fit");
        if (hasCommaOfThree(text)) return memberFault(member, text, "may be read in two ways; write a decimal point and no other comma");
        auto const most = Decimal::parse(member.most);
        for (auto const& bound : {parsed.lo, parsed.typ, parsed.hi}) {
            if (most && bound && bound->magnitude() > *most) return memberFault(member, text, "is more than a single cell has");
        }
        return Parsed{std::move(parsed), percentage};
    }

    model::Result<GivenValue> quantityOf(Json const& value, Member const& member) {
        GivenValue given{.name = std::string(member.name), .limits = {}, .dimension = {}, .unit = std::string(member.unit), .text = asGiven(value)};
        if (auto const unit = quantity::dimensionOf(member.unit)) given.dimension = unit->dimension;
        bool percentage = false;
        if (value.is_string()) {
            auto const parsed = parseText(given.text, member);
            if (!parsed) return tl::unexpected(parsed.error());
            auto const& read = parsed->value;
            given.limits = {.lo = read.lo, .typ = read.typ, .hi = read.hi};
            bool const alone = read.kind == ParsedValue::Kind::Number;
            if (alone && member.kind == MemberKind::Limit && read.typ) given.limits = quantity::exactly(*read.typ);
            percentage = parsed->percentage;
        } else if (value.is_object() && !value.empty()) {
            std::optional<bool> shares;
            for (auto const& [key, bound] : value.items()) {
                auto* const place = key == "min" ? &given.limits.lo : key == "typ" ? &given.limits.typ : key == "max" ? &given.limits.hi : nullptr;
                if (place == nullptr || !bound.is_string()) return memberFault(member, given.text, "may hold the texts min, typ and max only");
                auto const parsed = parseText(bound.get<std::string>(), member);
                if (!parsed) return tl::unexpected(parsed.error());
                if (!parsed->value.typ) return memberFault(member, given.text, "must hold one number each");
                if (shares && *shares != parsed->percentage) return memberFault(member, given.text, "mixes percentages and values");
                shares = parsed->percentage;
                *place = parsed->value.typ;
            }
            percentage = shares.value_or(false);
        } else {
            return memberFault(member, given.text, "is no text with a unit");
        }
        auto const& limits = given.limits;
        bool const ordered = !(limits.lo && limits.hi && *limits.lo > *limits.hi) && !(limits.lo && limits.typ && *limits.lo > *limits.typ) && !(limits.typ && limits.hi && *limits.typ > *limits.hi);
        if (!ordered) return memberFault(member, given.text, "is not in ascending order");
        for (auto const& bound : {limits.lo, limits.typ, limits.hi}) {
            if (bound && bound->sign() < 0 && !member.signedValue) return memberFault(member, given.text, "lies below zero");
        }
        if (percentage) m_shares.emplace_back(given.name, member.share);
        return given;
    }

    // Percentages of another member, now that all are known.
    model::Result<void> workOutShares() {
        for (auto const& [name, whole] : m_shares) {
            auto const* base = m_given.find(whole);
            if (base == nullptr) return fault(fmt::format("member \"{}\" is a percentage of \"{}\", which is not given", name, whole));
            auto const part = std::find_if(m_given.m_values.begin(), m_given.m_values.end(), [&](GivenValue const& one) { return one.name == name; });
            part->limits = quantity::multiply(part->limits, base->limits);
        }
        return {};
    }

    std::string_view m_schema;
    std::span<Member const> m_members;
    GivenValues m_given;
    std::vector<std::pair<std::string, std::string_view>> m_shares;
};

model::Result<GivenValues> GivenValues::parse(std::string_view json, std::string_view schema, std::span<Member const> members) {
    bool tooDeep = false;
    std::string repeated;
    std::vector<std::set<std::string>> open;  // keys of the objects around
    auto const keep = [&](int depth, Json::parse_event_t event, Json& parsed) {
        tooDeep = tooDeep || depth > kDeepestNesting;
        if (event == Json::parse_event_t::object_start) open.emplace_back();
        if (event == Json::parse_event_t::object_end && !open.empty()) open.pop_back();
        if (event == Json::parse_event_t::key && !open.empty() && !open.back().insert(parsed.get<std::string>()).second) repeated = parsed.get<std::string>();
        return depth <= kDeepestNesting;
    };
    Json const file = Json::parse(json.begin(), json.end(), keep, /*allow_exceptions=*/false);
    if (tooDeep || file.is_discarded()) {
        return tl::unexpected(model::Error{.kind = model::ErrorKind::Usage, .message = "is not valid JSON; write an object of members, see the README", .file = {}, .page = 0});
    }
    if (!repeated.empty()) {
        return tl::unexpected(
            model::Error{.kind = model::ErrorKind::Usage, .message = fmt::format("has the member \"{}\" twice in one place; keep one", repeated), .file = {}, .page = 0});
    }
    return Reader(schema, members).read(file);
}

GivenValue const* GivenValues::find(std::string_view member) const {
    auto const found = std::find_if(m_values.begin(), m_values.end(), [member](GivenValue const& one) { return one.name == member; });
    return found == m_values.end() ? nullptr : &*found;
}

std::string GivenValues::word(std::string_view member) const {
    auto const found = std::find_if(m_words.begin(), m_words.end(), [member](GivenValue const& one) { return one.name == member; });
    return found == m_words.end() ? std::string() : found->text;
}

}  // namespace standin::risk
