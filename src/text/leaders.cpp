// Tested by tests/src/text/leaders_test.cpp.
#include "text/leaders.h"

namespace standin::text {

namespace {

constexpr std::string_view kEllipsis = "\u2026";
constexpr int kFewestDots = 4;
constexpr int kDotsOfEllipsis = 3;

// End of the dots that begin at `at`, `count` of them.
std::size_t endOfDots(std::string_view text, std::size_t at, int& count) {
    for (count = 0; at < text.size();) {
        if (text[at] == '.') {
            ++at;
            ++count;
        } else if (text.compare(at, kEllipsis.size(), kEllipsis) == 0) {
            at += kEllipsis.size();
            count += kDotsOfEllipsis;
        } else {
            break;
        }
    }
    return at;
}

// Hardly a text has any: one look tells.
bool mayHoldLeader(std::string_view text) { return text.find("..") != std::string_view::npos || text.find(kEllipsis) != std::string_view::npos; }

}  // namespace

std::string leadersReplaced(std::string text, std::string_view by) {
    if (!mayHoldLeader(text)) return text;
    std::string out;
    for (std::size_t at = 0; at < text.size();) {
        int count = 0;
        std::size_t const end = endOfDots(text, at, count);
        if (end == at) {
            out += text[at++];
            continue;
        }
        out += count >= kFewestDots ? by : std::string_view(text).substr(at, end - at);
        at = end;
    }
    return out;
}

std::size_t leaderBefore(std::string_view text, std::size_t end) {
    std::size_t begin = end;
    int count = 0;
    while (begin > 0) {
        if (text[begin - 1] == '.') {
            --begin;
            ++count;
        } else if (begin >= kEllipsis.size() && text.compare(begin - kEllipsis.size(), kEllipsis.size(), kEllipsis) == 0) {
            begin -= kEllipsis.size();
            count += kDotsOfEllipsis;
        } else {
            break;
        }
    }
    return count >= kFewestDots ? begin : end;
}

}  // namespace standin::text
