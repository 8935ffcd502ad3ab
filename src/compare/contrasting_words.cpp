// Each line is one contrast: its sides stand between "/", the forms of a side between "|".
// Tested by tests/src/compare/contrasting_words_test.cpp and wording_classes_test.cpp.
#include "compare/contrasting_words.h"

#include <algorithm>
#include <iterator>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

namespace standin::compare {

namespace {

using model::WordingClass;

struct ContrastLine {
    WordingClass wording;
    std::string_view sides;
};

constexpr ContrastLine kLines[] = {
    {WordingClass::Pin, "anode/cathode"},
    {WordingClass::Pin, "emitter/collector/base"},
    {WordingClass::Pin, "drain/gate/source"},
    {WordingClass::Pin, "top/bottom"},
    {WordingClass::Pin, "left/right"},
    {WordingClass::Pin, "clockwise/counterclockwise|anticlockwise"},
    {WordingClass::Pin, "north/south"},
    {WordingClass::Pin, "unipolar/bipolar/omnipolar"},
    {WordingClass::Pin, "insulated|isolated/uninsulated|exposed"},
    {WordingClass::Temp, "hot|warm|hottest/cold|cool|coldest"},
    {WordingClass::Temp, "heating/cooling"},
    {WordingClass::Temp, "ambient/junction/case"},
    {WordingClass::Trig,
     "stop|stopped|stopping|terminate|terminated|halted|interrupt|interrupted|end|ended/start|started|starting|resume|resumed|restart|restarted|continue|continued|begin"},
    {WordingClass::Trig, "enter|entered|entering/leave|left|leaving|exit|exited|exiting"},
    {WordingClass::Trig, "fixed/adjustable|programmable|selectable|variable"},
    {WordingClass::Trig, "permanent|permanently|irreversible|irreversibly|onetime/temporary|temporarily|reversible|resettable"},
    {WordingClass::Trig, "continuous|continuously/pulsed|periodic|periodically|intermittent|intermittently"},
    {WordingClass::Trig, "active/passive"},
    {WordingClass::Trig, "open|opened|opening/close|closed|closing"},
    {WordingClass::Trig, "open/short|shorted"},
    {WordingClass::Trig, "up/down"},
    {WordingClass::Trig, "die/thermistor|ntc"},
    {WordingClass::Trig, "synchronous/asynchronous|nonsynchronous"},
    {WordingClass::Trig, "accept|accepted/reject|rejected"},
    {WordingClass::Trig, "hardware/software"},
    {WordingClass::Grade, "basic/functional/reinforced"},
    {WordingClass::Num, "peak/rms|effective/average|averaged|mean"},
    {WordingClass::Num, "dc/ac"},
    {WordingClass::Num, "single/dual/triple/quad"},
    {WordingClass::Num, "equal/unequal"},
    {WordingClass::Num, "high|higher|highest/low|lower|lowest"},
    {WordingClass::Num, "fast|faster|fastest|quick|quickly/slow|slower|slowest|slowly"},
    {WordingClass::Num, "narrow|narrower/wide|wider"},
    {WordingClass::Time, "hour/minute/second/millisecond/microsecond"},
};

struct Side {
    WordingClass wording = WordingClass::Style;
    int contrast = 0;
    int side = 0;
};

std::string_view cutTo(std::string_view& rest, char mark) {
    std::string_view const part = rest.substr(0, rest.find(mark));
    rest.remove_prefix(std::min(rest.size(), part.size() + 1));
    return part;
}

// "source" is in two contrasts at most.
using Sides = std::unordered_multimap<std::string_view, Side>;

Sides readLines() {
    Sides sides;
    int contrast = 0;
    for (ContrastLine const& line : kLines) {
        int side = 0;
        for (std::string_view rest = line.sides; !rest.empty(); ++side) {
            for (std::string_view forms = cutTo(rest, '/'); !forms.empty();) sides.emplace(cutTo(forms, '|'), Side{line.wording, contrast, side});
        }
        ++contrast;
    }
    return sides;
}

Sides const& sides() {
    static Sides const kSides = readLines();
    return kSides;
}

}  // namespace

bool hasContrast(std::string_view word) { return sides().find(word) != sides().end(); }

std::optional<WordingClass> contrastOf(std::string_view word, std::string_view other) {
    auto const [begin, end] = sides().equal_range(word);
    for (auto own = begin; own != end; ++own) {
        auto const [otherBegin, otherEnd] = sides().equal_range(other);
        for (auto theirs = otherBegin; theirs != otherEnd; ++theirs) {
            if (own->second.contrast == theirs->second.contrast && own->second.side != theirs->second.side) return own->second.wording;
        }
    }
    return std::nullopt;
}

}  // namespace standin::compare
