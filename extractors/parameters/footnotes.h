// Footnotes under tables: finds "Note 1: …", "(1) …", "1. …", "*1 …" and the
// like, and resolves marks to their text.
//
//     Footnotes footnotes(pages);
//     footnotes.resolve(table, {"1"})  -> {"Measured with a pulse."}
#pragma once

#include <span>
#include <string>
#include <vector>

#include "model/page_layout.h"
#include "model/table.h"

namespace standin::parameters {

class Footnotes {
public:
    // `pages` must outlive this. Nothing is read before the first resolve().
    explicit Footnotes(std::span<model::PageLayout const> pages) : m_pages(pages) {}

    // The texts of the marks, in order, without repeats; a mark without a text is left out.
    [[nodiscard]] std::vector<std::string> resolve(model::Table const& table, std::vector<std::string> const& marks);

    // True where the table's page has a note "(key) …" below the table.
    [[nodiscard]] bool hasBracketed(model::Table const& table, std::string const& key);

private:
    struct Entry {
        int page = 0;
        model::Points y = 0;
        bool worded = false;  // "Note 3": may stand pages away from its table
        bool bracketed = false;  // "(1) …"
        std::string key;
        std::string text;
    };
    void collect();

    std::span<model::PageLayout const> m_pages;
    std::vector<Entry> m_entries;
    bool m_collected = false;
};

// Splits "Note 3: text" into key "3" and "text"; an empty key: not a footnote.
struct FootnoteLead {
    std::string key;
    std::string text;
    bool worded = false;
    bool bracketed = false;
};
[[nodiscard]] FootnoteLead footnoteLead(std::string_view line);

}  // namespace standin::parameters
