#include "extractors/parameters/footnotes.h"

// Every line of every page is looked at once for a leading mark; lines that
// follow closely without a mark of their own continue the text. Tested by
// tests/extractors/parameters/read_parameters_test.cpp.

#include <algorithm>
#include <cmath>

#include "extractors/parameters/text_forms.h"
#include "text/utf8.h"

namespace standin::parameters {

namespace {

constexpr float kLineStep = 1.9F;         // font heights to the next line of one note
constexpr std::size_t kLongestNote = 600;  // bytes kept of one note
constexpr float kAbove = 2.0F;            // font heights that a note may overlap its table

// A cheap look at the first word: could the line open with a mark?
bool mayLead(model::PageLayout const& page, model::TextLine const& line) {
    if (line.firstWord >= page.words.size()) return false;
    std::string const& word = page.words[line.firstWord].text;
    if (word.empty()) return false;
    auto const first = static_cast<unsigned char>(word[0]);
    if (first >= 0x80 || (first >= '0' && first <= '9') || first == '(' || first == '[' || first == '*') return true;
    if (first >= 'A' && first <= 'H' && word.size() <= 2) return true;
    return first == 'N' || first == 'n' || first == 'R' || first == 'H' || first == 'A';
}

}  // namespace

FootnoteLead footnoteLead(std::string_view raw) {
    FootnoteLead lead;
    std::string const line = trimmed(raw);
    std::string const low = text::asciiLower(line);
    std::size_t at = 0;
    for (std::string_view word : {"notes", "note", "注释", "备注", "注意", "注", "備考", "hinweis", "anmerkung", "примечание", "remark"}) {
        if (low.starts_with(word)) {
            lead.worded = true;
            at = word.size();
            break;
        }
    }
    std::string const& text = line;
    auto skip = [&](std::string_view set) {
        while (at < text.size() && set.find(text[at]) != std::string_view::npos) ++at;
    };
    if (lead.worded) skip(" :.(");
    bool star = false;
    bool open = false;
    for (std::string_view sign : {"※", "*", "†", "‡"}) {
        if (text.compare(at, sign.size(), sign) == 0) {
            at += sign.size();
            star = true;
            lead.key = sign;
            break;
        }
    }
    if (!star && at < text.size() && (text[at] == '(' || text[at] == '[')) {
        open = true;
        ++at;
        if (at < text.size() && text[at] == '*') ++at;
    }
    std::size_t const from = at;
    while (at < text.size() && at - from < 2 && text[at] >= '0' && text[at] <= '9') ++at;
    if (at > from) {
        lead.key = text.substr(from, at - from);
    } else if (open && at < text.size() && ((text[at] >= 'a' && text[at] <= 'z') || (text[at] >= 'A' && text[at] <= 'H'))) {
        lead.key = folded(text.substr(at, 1));
        ++at;
    } else if (!star && !lead.worded && at + 1 < text.size() && text[at] >= 'A' && text[at] <= 'H' && (text[at + 1] == '.' || text[at + 1] == ':')) {
        lead.key = folded(text.substr(at, 1));
        ++at;
    } else if (!star) {
        return {};
    }
    std::size_t const afterMark = at;
    skip(open ? ")]" : "");
    skip(").:]");
    if (text.compare(at, 3, "：") == 0) at += 3;
    bool const separated = at > afterMark || lead.worded || star || (at < text.size() && text[at] == ' ');
    // "10 kΩ": a number that only happens to open the line
    if (!separated || (!lead.worded && !star && !open && at == afterMark)) return {};
    lead.bracketed = open;
    lead.text = trimmed(std::string_view(text).substr(std::min(at, text.size())));
    // "3.3 V": a decimal
    if (!lead.worded && !star && !open && at == afterMark + 1 && at < text.size() && text[at] >= '0' && text[at] <= '9') return {};
    if (lead.text.empty() || (lead.text[0] >= '0' && lead.text[0] <= '9' && !lead.worded && !star && !open && lead.text.size() < 4)) return {};
    return lead;
}

void Footnotes::collect() {
    m_collected = true;
    for (model::PageLayout const& page : m_pages) {
        std::ptrdiff_t running = -1;
        model::Points lastY = 0;
        model::Points lastX = 0;
        for (model::TextLine const& line : page.lines) {
            if (line.wordCount == 0 || line.direction != model::Direction::Right) continue;
            bool const may = mayLead(page, line);
            if (!may && running < 0) continue;
            std::string const text = tidied(model::lineText(page, line));
            FootnoteLead lead = may ? footnoteLead(text) : FootnoteLead{};
            if (!lead.key.empty()) {
                m_entries.push_back({page.page, line.box.y0, lead.worded, lead.bracketed, std::move(lead.key), std::move(lead.text)});
                running = static_cast<std::ptrdiff_t>(m_entries.size()) - 1;
                lastY = line.baseline;
                lastX = line.box.x0;
                continue;
            }
            if (running < 0) continue;
            bool const close = line.baseline > lastY && line.baseline - lastY <= kLineStep * std::max(line.size, 1.0F) && line.box.x0 >= lastX - line.size;
            Entry& entry = m_entries[static_cast<std::size_t>(running)];
            if (close && entry.text.size() < kLongestNote) {
                entry.text = joined(entry.text, text);
                lastY = line.baseline;
            } else {
                running = -1;
            }
        }
    }
}

bool Footnotes::hasBracketed(model::Table const& table, std::string const& key) {
    if (!m_collected) collect();
    return std::ranges::any_of(m_entries, [&](Entry const& entry) {
        return entry.bracketed && entry.key == key && entry.page == table.page && entry.y >= table.box.y1 - kAbove * 10.0F;
    });
}

std::vector<std::string> Footnotes::resolve(model::Table const& table, std::vector<std::string> const& marks) {
    std::vector<std::string> out;
    if (marks.empty()) return out;
    if (!m_collected) collect();
    for (std::string const& mark : marks) {
        Entry const* best = nullptr;
        double bestDistance = 0;
        for (Entry const& entry : m_entries) {
            if (entry.key != mark) continue;
            bool const samePage = entry.page == table.page;
            if (!samePage && !entry.worded && entry.page != table.page + 1) continue;
            bool const below = samePage && entry.y >= table.box.y1 - kAbove * 10.0F;
            // below on the page, then pages after, then above
            double const distance = below ? entry.y - table.box.y1 : samePage ? 1e5 + std::abs(entry.y - table.box.y0) : entry.page > table.page ? 1e4 * (entry.page - table.page) : 1e6;
            if (best == nullptr || distance < bestDistance) {
                best = &entry;
                bestDistance = distance;
            }
        }
        if (best != nullptr && std::ranges::find(out, best->text) == out.end()) out.push_back(best->text);
    }
    return out;
}

}  // namespace standin::parameters
