// Greedy filling by terminal columns. Tested by tests/src/report/wrapped_text_test.cpp.
#include "report/wrapped_text.h"

#include <algorithm>

#include "text/utf8.h"
#include "text/visible.h"

namespace standin::report {

namespace {

// The longest beginning of `text` that fits into `columns`, never empty, cut at
// a character's border.
std::size_t fittingBytes(std::string_view text, int columns) {
    std::size_t end = 0;
    int used = 0;
    while (end < text.size()) {
        std::size_t next = end + 1;
        while (next < text.size() && (static_cast<unsigned char>(text[next]) & 0xC0) == 0x80) ++next;
        int const width = text::columnWidth(text.substr(end, next - end));
        if (used + width > columns && end > 0) break;
        used += width;
        end = next;
    }
    return end;
}

}  // namespace

void appendWrapped(std::string& out, std::string_view first, std::string_view text) {
    auto const shown = text::visible(text);
    int const indent = std::min(text::columnWidth(first), kColumns / 2);
    out += first;
    int column = text::columnWidth(first);
    bool lineEmpty = true;
    std::string_view rest = shown;
    auto const newLine = [&] {
        while (!out.empty() && out.back() == ' ') out.pop_back();
        out += '\n';
        out.append(static_cast<std::size_t>(indent), ' ');
        column = indent;
        lineEmpty = true;
    };
    while (!rest.empty()) {
        auto const begin = rest.find_first_not_of(' ');
        if (begin == std::string_view::npos) break;
        rest.remove_prefix(begin);
        auto word = rest.substr(0, rest.find(' '));
        rest.remove_prefix(word.size());
        int width = text::columnWidth(word);
        if (!lineEmpty && column + 1 + width > kColumns) newLine();
        if (!lineEmpty) {
            out += ' ';
            ++column;
        }
        while (column + width > kColumns) {
            auto const bytes = fittingBytes(word, kColumns - column);
            out += word.substr(0, bytes);
            word.remove_prefix(bytes);
            width = text::columnWidth(word);
            if (!word.empty()) newLine();
        }
        out += word;
        column += width;
        lineEmpty = false;
    }
    while (!out.empty() && out.back() == ' ') out.pop_back();
    out += '\n';
}

}  // namespace standin::report
