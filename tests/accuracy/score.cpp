#include "score.h"

// The same measure as the labels' own tool: values compare as numbers, units
// and symbols without spaces and marks, words by the pairs of their characters.

#include <algorithm>
#include <charconv>
#include <map>
#include <set>
#include <tuple>
#include <utility>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace standin::accuracy {

namespace {

// Reads one code point; broken bytes come back as themselves.
char32_t next(std::string_view text, std::size_t& at) {
    auto const lead = static_cast<unsigned char>(text[at]);
    std::size_t const length = lead < 0x80 ? 1 : lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : lead >= 0xC0 ? 2 : 1;
    if (at + length > text.size()) {
        ++at;
        return lead;
    }
    char32_t code = length == 1 ? lead : lead & (0xFFU >> (length + 1));
    for (std::size_t k = 1; k < length; ++k) code = (code << 6) | (static_cast<unsigned char>(text[at + k]) & 0x3FU);
    at += length;
    return code;
}

void put(std::string& out, char32_t c) {
    if (c < 0x80) {
        out += static_cast<char>(c);
    } else if (c < 0x800) {
        out += static_cast<char>(0xC0 | (c >> 6));
        out += static_cast<char>(0x80 | (c & 0x3F));
    } else if (c < 0x10000) {
        out += static_cast<char>(0xE0 | (c >> 12));
        out += static_cast<char>(0x80 | ((c >> 6) & 0x3F));
        out += static_cast<char>(0x80 | (c & 0x3F));
    } else {
        out += static_cast<char>(0xF0 | (c >> 18));
        out += static_cast<char>(0x80 | ((c >> 12) & 0x3F));
        out += static_cast<char>(0x80 | ((c >> 6) & 0x3F));
        out += static_cast<char>(0x80 | (c & 0x3F));
    }
}

// Compatibility forms that occur, dashes, deltas, mu and ohm unified; one space
// for any run of white space.
std::string plain(std::string_view text) {
    std::string out;
    bool gap = false;
    for (std::size_t at = 0; at < text.size();) {
        char32_t c = next(text, at);
        if (c == U' ' || c == U'\t' || c == U'\n' || c == U'\r' || c == 0xA0 || c == 0x3000 || (c >= 0x2000 && c <= 0x200A) || c == 0x202F) {
            gap = !out.empty();
            continue;
        }
        if (gap) out += ' ';
        gap = false;
        if (c >= 0xFF01 && c <= 0xFF5E) c -= 0xFEE0;
        switch (c) {
            case 0x2206:
            case 0x25B3: c = 0x0394; break;
            case 0x2212:
            case 0x2013:
            case 0x2014: c = U'-'; break;
            case 0x00B5:
            case 0x03BC: c = U'u'; break;
            case 0x00B9: c = U'1'; break;
            case 0x00B2: c = U'2'; break;
            case 0x00B3: c = U'3'; break;
            case 0x2103: out += "\u00B0"; c = U'C'; break;
            case 0x1D703: c = 0x03B8; break;  // a theta of mathematical italics
            case 0x2126:
            case 0x03A9: out += "ohm"; continue;
            default: break;
        }
        put(out, c);
    }
    return out;
}

std::string lower(std::string text) {
    for (char& c : text) {
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c + 32);
    }
    return text;
}

std::string without(std::string text, std::string_view part) {
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at)) text.erase(at, part.size());
    return text;
}

std::map<std::pair<char32_t, char32_t>, int> pairsOf(std::string_view text) {
    std::map<std::pair<char32_t, char32_t>, int> out;
    std::string const form = without(lower(plain(text)), " ");
    std::vector<char32_t> codes;
    for (std::size_t at = 0; at < form.size();) codes.push_back(next(form, at));
    if (codes.size() == 1) ++out[{codes[0], 0}];
    for (std::size_t i = 0; i + 1 < codes.size(); ++i) ++out[{codes[i], codes[i + 1]}];
    return out;
}

struct Row {
    LabelRow cells;
    double confidence = 0;
    std::string reasons;
};

using Values = std::tuple<std::string, std::string, std::string, std::string>;

Values valuesOf(LabelRow const& row) { return {numberForm(row.min), numberForm(row.typ), numberForm(row.max), unitForm(row.unit)}; }

bool hasValue(Values const& values) { return !std::get<0>(values).empty() || !std::get<1>(values).empty() || !std::get<2>(values).empty(); }

bool sameId(LabelRow const& truth, LabelRow const& read) {
    std::string const symbol = symbolForm(truth.symbol);
    if (!symbol.empty()) return symbol == symbolForm(read.symbol);
    return likeness(truth.name, read.name) >= 0.6;
}

bool sameVariant(LabelRow const& truth, LabelRow const& read) { return truth.variant.empty() || likeness(truth.variant, read.variant) >= 0.6; }

std::string show(LabelRow const& row) {
    return fmt::format("p{} {} | {} | c: {} | v: {} | {} / {} / {} {}", row.page, row.symbol, row.name, row.condition, row.variant, row.min, row.typ, row.max, row.unit);
}

std::string member(nlohmann::json const& object, char const* key) {
    auto const found = object.find(key);
    return found != object.end() && found->is_string() ? found->get<std::string>() : std::string{};
}

}  // namespace

std::string numberForm(std::string_view raw) {
    std::string const text = plain(raw);
    if (text.empty() || text == "-" || text == "--" || text == "---") return {};
    std::string form = without(text, " ");
    for (std::size_t at = form.find("+/-"); at != std::string::npos; at = form.find("+/-")) form.replace(at, 3, "\u00B1");
    std::size_t at = !form.empty() && (form[0] == '+' || form[0] == '-') ? 1 : 0;
    // thousands: groups of three after a comma
    std::size_t commas = 0;
    bool grouped = true;
    std::size_t run = 0;
    std::size_t end = at;
    for (; end < form.size() && (form[end] == ',' || (form[end] >= '0' && form[end] <= '9')); ++end) {
        if (form[end] == ',') {
            grouped = grouped && (commas == 0 ? run >= 1 && run <= 3 : run == 3);
            ++commas;
            run = 0;
        } else {
            ++run;
        }
    }
    grouped = grouped && commas > 0 && run == 3 && (end == form.size() || form[end] == '.');
    std::string number = grouped ? without(form, ",") : form;
    std::ranges::replace(number, ',', '.');
    std::string_view digits = number;
    bool const plus = digits.starts_with("+");
    if (plus) digits.remove_prefix(1);
    double value = 0;
    auto const result = std::from_chars(digits.data(), digits.data() + digits.size(), value, std::chars_format::fixed);
    bool const whole = !digits.empty() && result.ec == std::errc{} && result.ptr == digits.data() + digits.size() && digits.back() != '.' && !(plus && digits[0] == '-') && digits[0] != 'i' && digits[0] != 'n';
    if (whole) return fmt::format("{:.10g}", value);
    return without(lower(form), "_");
}

std::string unitForm(std::string_view raw) {
    std::string form = without(without(plain(raw), " "), "\u00B0");
    for (std::size_t at = form.find("ohms"); at != std::string::npos; at = form.find("ohms")) form.erase(at + 3, 1);
    std::string const low = lower(form);
    if (low == "sec" || low == "s") return "s";
    if (low == "msec") return "ms";
    if (low == "usec") return "us";
    return form;
}

std::string symbolForm(std::string_view raw) {
    std::string const form = lower(plain(raw));
    std::string out;
    for (std::size_t at = 0; at < form.size();) {
        char32_t c = next(form, at);
        if (c >= 0x0391 && c <= 0x03A9) c += 32;
        bool const kept = (c >= U'0' && c <= U'9') || (c >= U'a' && c <= U'z') || (c >= 0x0370 && c <= 0x03FF) || (c >= 0x4E00 && c <= 0x9FFF) || c == U'+' || c == U'-' || c == U'/';
        if (kept) put(out, c);
    }
    return out;
}

double likeness(std::string_view left, std::string_view right) {
    auto const a = pairsOf(left);
    auto const b = pairsOf(right);
    if (a.empty() && b.empty()) return 1;
    if (a.empty() || b.empty()) return 0;
    int common = 0;
    int total = 0;
    for (auto const& [pair, count] : a) {
        total += count;
        auto const found = b.find(pair);
        if (found != b.end()) common += std::min(count, found->second);
    }
    for (auto const& entry : b) total += entry.second;
    return 2.0 * common / total;
}

double Ratio::f1() const {
    double const precision = read > 0 ? static_cast<double>(right) / read : 0;
    double const recall = truth > 0 ? static_cast<double>(right) / truth : 0;
    return precision + recall > 0 ? 2 * precision * recall / (precision + recall) : 0;
}

double Score::conditionShare() const { return loose.right > 0 ? static_cast<double>(conditions) / loose.right : 1; }

std::optional<Label> parseLabel(std::string_view text) {
    nlohmann::json const json = nlohmann::json::parse(text, nullptr, false);
    if (!json.is_object() || !json.contains("rows")) return std::nullopt;
    Label label;
    for (auto const& row : json["rows"]) {
        LabelRow out{row.value("page", 0), member(row, "symbol"), member(row, "name"), member(row, "condition"), member(row, "variant"),
                     member(row, "min"), member(row, "typ"), member(row, "max"), member(row, "unit")};
        label.rows.push_back(std::move(out));
    }
    if (json.contains("labelled_pages")) {
        for (auto const& page : json["labelled_pages"]) label.pages.push_back(page.get<int>());
    } else {
        for (LabelRow const& row : label.rows) label.pages.push_back(row.page);
    }
    if (json.contains("pins")) {
        for (auto const& pin : json["pins"]) label.pins.push_back({member(pin, "number"), member(pin, "name")});
    }
    return label;
}

Score scoreReading(Label const& label, model::Datasheet const& sheet) {
    Score score;
    std::vector<Row> read;
    std::set<int> const pages(label.pages.begin(), label.pages.end());
    for (model::Parameter const& parameter : sheet.parameters) {
        if (!pages.contains(parameter.page)) continue;
        auto text = [](std::optional<model::Value> const& value) { return value ? value->text : std::string{}; };
        Row row{{parameter.page, parameter.symbol, parameter.name, parameter.condition, parameter.variant, text(parameter.min), text(parameter.typ), text(parameter.max), parameter.unit},
                parameter.confidence.score,
                fmt::format("{}", fmt::join(parameter.confidence.reasons, "; "))};
        if (hasValue(valuesOf(row.cells))) read.push_back(std::move(row));
    }
    std::vector<LabelRow const*> truth;
    for (LabelRow const& row : label.rows) {
        if (hasValue(valuesOf(row))) truth.push_back(&row);
    }
    std::vector<bool> used(read.size(), false);
    std::vector<bool> right(read.size(), false);
    for (LabelRow const* row : truth) {
        std::size_t best = read.size();
        std::tuple<bool, bool, double, double> bestKey;
        for (std::size_t i = 0; i < read.size(); ++i) {
            LabelRow const& candidate = read[i].cells;
            if (used[i] || candidate.page != row->page || valuesOf(candidate) != valuesOf(*row)) continue;
            std::tuple<bool, bool, double, double> const key{!sameId(*row, candidate), !sameVariant(*row, candidate), -likeness(row->condition, candidate.condition),
                                                             -likeness(row->name, candidate.name)};
            if (best == read.size() || key < bestKey) {
                best = i;
                bestKey = key;
            }
        }
        if (best == read.size()) {
            score.differences.push_back("missed      " + show(*row));
            continue;
        }
        used[best] = true;
        ++score.loose.right;
        LabelRow const& found = read[best].cells;
        if (sameId(*row, found) && sameVariant(*row, found)) {
            ++score.strict.right;
            right[best] = true;
        } else {
            score.differences.push_back("id differs  " + show(*row) + "  <->  " + show(found));
        }
        if (likeness(row->condition, found.condition) >= 0.7) {
            ++score.conditions;
        } else {
            score.differences.push_back(fmt::format("condition   {}  <->  {}", show(*row), found.condition));
        }
    }
    for (std::size_t i = 0; i < read.size(); ++i) {
        if (!used[i]) score.differences.push_back("extra       " + show(read[i].cells));
        if (read[i].confidence >= 0.9) {
            ++score.sure;
            if (right[i]) {
                ++score.sureRight;
            } else {
                score.sureWrong.push_back(fmt::format("{:.2f} {}", read[i].confidence, show(read[i].cells)));
            }
        }
    }
    score.strict.read = score.loose.read = static_cast<int>(read.size());
    score.strict.truth = score.loose.truth = static_cast<int>(truth.size());
    std::set<std::pair<std::string, std::string>> truePins;
    std::set<std::pair<std::string, std::string>> readPins;
    for (LabelPin const& pin : label.pins) truePins.emplace(plain(pin.number), symbolForm(pin.name));
    for (model::Pin const& pin : sheet.pins) readPins.emplace(plain(pin.number), symbolForm(pin.name));
    for (auto const& pin : readPins) {
        if (truePins.contains(pin)) ++score.pins.right;
    }
    score.pins.read = static_cast<int>(readPins.size());
    score.pins.truth = static_cast<int>(truePins.size());
    return score;
}

}  // namespace standin::accuracy
