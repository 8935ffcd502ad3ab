// Runs are sorted by baseline and gathered into lines; then words drawn twice are
// dropped; then each run that is smaller than a run it touches, or raised beside
// it, moves to that run's line as its sub- or superscript. Touching is looked up
// by binary search in the few lines around, so that crowded pages stay cheap.
// Tested by layout_test.cpp.
#include "extractors/layout/line_builder.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "extractors/layout/characters.h"

namespace standin::layout {

namespace {

using model::Points;

// In font heights (of the bigger run where two meet).
constexpr Points kSameBaseline = 0.18F;
constexpr Points kDoubleOffset = 0.12F;
constexpr Points kScriptSize = 0.88F;       // a script is at most this part of its host's size
constexpr Points kScriptSizeAtLeast = 0.3F;
constexpr Points kScriptGap = 0.3F;         // between host and script, sideways
constexpr Points kMarkGap = 0.5F;           // the same where the script is a mark in brackets: "VO (1)"
constexpr Points kChainGap = 0.4F;          // between two runs of one script
constexpr Points kRaisedFrom = 0.06F;       // superscript: baseline raised by
constexpr Points kRaisedTo = 0.8F;
constexpr Points kLoweredTo = 0.55F;        // subscript: baseline lowered by at most
constexpr Points kSameSizeRaised = 0.22F;   // raised marks of the same size
constexpr Points kSameSizeLowered = 0.12F;  // subscripts of the same size (fonts of small capitals)
constexpr Points kSameSizeLoweredTo = 0.4F;
constexpr Points kSameSizeRaisedTo = 0.6F;
constexpr Points kSameSize = 0.1F;          // sizes that differ by no more are the same
constexpr Points kLeastHost = 0.89F;        // a host of the same size, in sizes of its script: 1 / 1.1
constexpr Points kMostHost = 1.13F;         // to 1 / 0.9, and some room
constexpr Points kTight = 0.12F;            // such a script touches its host
constexpr Points kNothingBefore = 3.0F;     // and has no text before it on its own line
constexpr Points kHostReach = 1.7F;         // baselines of a script and what it may touch
constexpr Points kFarLine = 3.0F;            // no host lies further away
constexpr int kLinesAround = 24;            // how many lines up and down are searched for a host
constexpr std::size_t kDoublesBack = 6;

constexpr std::uint32_t kNoHost = 0xFFFFFFFF;

struct Place {
    std::uint32_t line = 0;
    std::uint32_t host = kNoHost;  // the run whose script this one is
};

// Of the runs of a line, or of one run.
struct Heights {
    Points smallest = std::numeric_limits<Points>::max();  // size
    Points biggest = 0;
    Points highest = std::numeric_limits<Points>::max();  // baseline
    Points lowest = std::numeric_limits<Points>::lowest();

    void add(GlyphRun const& run) {
        smallest = std::min(smallest, run.size);
        biggest = std::max(biggest, run.size);
        highest = std::min(highest, run.baseline);
        lowest = std::max(lowest, run.baseline);
    }
};

class LineBuilder {
public:
    LineBuilder(model::PageContent const& content, GlyphRuns& found, Layer layer) : m_content(content), m_found(found), m_layer(layer) {}

    std::vector<RunLine> build() {
        gather();
        for (RunLine& line : m_lines) {
            sortByStart(line);
            dropDoubles(line);
        }
        attachScripts();
        m_lines.erase(std::remove_if(m_lines.begin(), m_lines.end(), [](RunLine const& line) { return line.runs.empty(); }), m_lines.end());
        return std::move(m_lines);
    }

private:
    GlyphRun& run(std::uint32_t index) { return m_found.runs[index]; }

    void gather() {
        std::vector<std::uint32_t> order;
        order.reserve(m_found.runs.size());
        for (std::uint32_t i = 0; i < m_found.runs.size(); ++i)
            if (m_found.runs[i].hidden == (m_layer == Layer::Hidden)) order.push_back(i);
        std::sort(order.begin(), order.end(), [&](std::uint32_t a, std::uint32_t b) {
            return run(a).baseline != run(b).baseline ? run(a).baseline < run(b).baseline : a < b;
        });
        Points tolerance = 0;
        for (std::uint32_t index : order) {
            Points const reach = kSameBaseline * run(index).size;
            if (m_lines.empty() || run(index).baseline - m_lines.back().baseline > std::min(tolerance, reach)) {
                m_lines.emplace_back();
                m_lines.back().runs.reserve(8);
                m_lines.back().baseline = run(index).baseline;
                tolerance = reach;
            }
            tolerance = std::min(tolerance, reach);
            m_lines.back().runs.push_back(index);
        }
    }

    void sortByStart(RunLine& line) {
        std::sort(line.runs.begin(), line.runs.end(), [&](std::uint32_t a, std::uint32_t b) {
            return run(a).flow.x0 != run(b).flow.x0 ? run(a).flow.x0 < run(b).flow.x0 : a < b;
        });
    }

    model::Glyph const& glyph(GlyphRun const& of, std::uint32_t i) const { return m_content.glyphs[m_found.glyphs[of.first + i]]; }

    // Every glyph of `again` stands where `first` has the same one.
    bool repeats(GlyphRun const& first, GlyphRun const& again) const {
        Points const offset = kDoubleOffset * again.size;
        std::uint32_t at = 0;
        for (std::uint32_t i = 0; i < again.count; ++i) {
            model::Glyph const& wanted = glyph(again, i);
            while (at < first.count) {
                model::Glyph const& have = glyph(first, at);
                if (have.code == wanted.code && std::abs(have.box.x0 - wanted.box.x0) < offset && std::abs(have.box.y0 - wanted.box.y0) < offset) break;
                ++at;
            }
            if (at == first.count) return false;
        }
        return true;
    }

    void dropDoubles(RunLine& line) {
        std::size_t kept = 0;
        for (std::size_t i = 0; i < line.runs.size(); ++i) {
            GlyphRun& again = run(line.runs[i]);
            bool doubled = false;
            for (std::size_t back = 1; back <= std::min(kept, kDoublesBack) && !doubled; ++back) {
                GlyphRun& first = run(line.runs[kept - back]);
                if (first.flow.x1 <= again.flow.x0) continue;
                if (repeats(first, again)) {
                    first.doubled = doubled = true;
                    first.spaceAfter |= again.spaceAfter;
                } else if (again.count >= first.count && repeats(again, first)) {
                    again.doubled = doubled = true;
                    std::swap(line.runs[kept - back], line.runs[i]);
                }
            }
            if (!doubled) line.runs[kept++] = line.runs[i];
        }
        line.runs.resize(kept);
    }

    // Last run of the line that starts before x; -1: none.
    int before(RunLine const& line, Points x) {
        auto const it = std::lower_bound(line.runs.begin(), line.runs.end(), x, [&](std::uint32_t i, Points at) { return run(i).flow.x0 < at; });
        return static_cast<int>(it - line.runs.begin()) - 1;
    }

    // Figures, signs and brackets, as footnote marks and exponents are.
    bool isMark(GlyphRun const& run) const {
        for (std::uint32_t i = 0; i < run.count; ++i) {
            char32_t const c = glyph(run, i).code;
            if (isLetterLike(c) && !(run.count == 1 && (c == U'o' || c == 0xBA))) return false;
            if (c == U'=' || c == U'<' || c == U'>' || c == U'.' || c == U',') return false;
        }
        return true;
    }

    // "(1)"
    bool isBracketed(GlyphRun const& run) const { return run.count >= 3 && run.count <= 5 && glyph(run, 0).code == U'(' && glyph(run, run.count - 1).code == U')' && isMark(run); }

    model::Script scriptBeside(GlyphRun const& small, GlyphRun const& host) const {
        if (small.leader || host.leader || host.cjk) return model::Script::Normal;
        Points const lowered = small.baseline - host.baseline;
        if (small.size < kScriptSize * host.size && small.size > kScriptSizeAtLeast * host.size) {
            if (lowered <= -kRaisedFrom * host.size && lowered >= -kRaisedTo * host.size) return model::Script::Superscript;
            if (lowered > 0.02F * host.size && lowered <= std::min(kLoweredTo * host.size, 0.85F * small.size)) return model::Script::Subscript;
            return model::Script::Normal;
        }
        if (std::abs(small.size - host.size) > kSameSize * host.size || std::abs(small.flow.x0 - host.flow.x1) > kTight * host.size) return model::Script::Normal;
        if (lowered >= kSameSizeLowered * host.size && lowered <= kSameSizeLoweredTo * host.size && isLetterLike(glyph(host, host.count - 1).code))
            return model::Script::Subscript;
        if (small.count <= 4 && lowered <= -kSameSizeRaised * host.size && lowered >= -kSameSizeRaisedTo * host.size && isMark(small)) return model::Script::Superscript;
        return model::Script::Normal;
    }

    void attachScripts() {
        m_places.assign(m_found.runs.size(), {});
        for (std::uint32_t l = 0; l < m_lines.size(); ++l)
            for (std::uint32_t index : m_lines[l].runs) m_places[index].line = l;
        for (RunLine const& line : m_lines) {
            m_heights.push_back({});
            for (std::uint32_t index : line.runs) m_heights.back().add(run(index));
        }
        // Twice: a superscript may touch a subscript that is placed later.
        m_moved.assign(m_lines.size(), 0);
        for (std::uint32_t l = 0; l < m_lines.size(); ++l) attachRunsOf(l);
        if (std::find(m_moved.begin(), m_moved.end(), 1) == m_moved.end()) return;
        for (std::uint32_t l = 0; l < m_lines.size(); ++l) attachRunsOf(l);
        std::vector<std::vector<std::uint32_t>> gathered(m_lines.size());
        for (RunLine const& line : m_lines)
            for (std::uint32_t index : line.runs) gathered[m_places[index].line].push_back(index);
        for (std::size_t l = 0; l < m_lines.size(); ++l) {
            bool const changed = gathered[l] != m_lines[l].runs;
            m_lines[l].runs = std::move(gathered[l]);
            if (changed) sortByStart(m_lines[l]);
        }
    }

    void attachRunsOf(std::uint32_t l) {
        auto const& runs = m_lines[l].runs;
        bool const crowded = hasLineNear(l);
        m_linesOfHosts.clear();
        for (std::size_t i = 0; i < runs.size(); ++i) {
            GlyphRun& small = run(runs[i]);
            if (!crowded && small.size >= kScriptSize * m_heights[l].biggest) continue;
            if (small.script != model::Script::Normal) continue;
            // The second word of a script: "V" with small "CC (max)".
            if (i > 0) {
                GlyphRun const& left = run(runs[i - 1]);
                Points const gap = small.flow.x0 - left.flow.x1;
                if (m_places[runs[i - 1]].host != kNoHost && std::abs(left.size - small.size) < 0.05F * small.size && gap < kChainGap * small.size &&
                    gap > -kScriptGap * small.size && small.size < kScriptSize * run(m_places[runs[i - 1]].host).size) {
                    small.script = left.script;
                    m_places[runs[i]] = m_places[runs[i - 1]];
                    m_moved[l] = 1;
                    continue;
                }
            }
            if (m_linesOfHosts.empty()) findLinesOfHosts(l);
            if (findHost(l, i, m_places[runs[i]])) m_moved[l] = 1;
        }
    }

    // Whether a run of line `o`, or one that holds its scripts, can have one of `small`
    // for a script, by size and height alone. Lines of plain text around are told off by this.
    bool mayHost(std::uint32_t o, Heights const& small) const {
        Heights const& line = m_heights[o];
        if (m_moved[o] != 0 || small.smallest < kScriptSize * line.biggest) return true;
        // Same size, or nearly so (see scriptBeside): clearly above or below.
        Points const most = small.lowest - line.highest;
        Points const least = small.highest - line.lowest;
        bool const lowered = most >= kSameSizeLowered * kLeastHost * small.smallest && least <= kSameSizeLoweredTo * kMostHost * small.biggest;
        bool const raised = least <= -kSameSizeRaised * kLeastHost * small.smallest && most >= -kSameSizeRaisedTo * kMostHost * small.biggest;
        return lowered || raised;
    }

    // The lines that may hold hosts of runs of line `l`: itself, then from near to far.
    void findLinesOfHosts(std::uint32_t l) {
        m_linesOfHosts.assign(1, l);
        Heights const& own = m_heights[l];
        int const last = static_cast<int>(m_lines.size()) - 1;
        bool near = true;
        for (int d = 1; near && d <= kLinesAround; ++d) {
            near = false;
            for (int sign : {-1, 1}) {
                int const other = static_cast<int>(l) + sign * d;
                if (other < 0 || other > last) continue;
                auto const o = static_cast<std::uint32_t>(other);
                Points const distance = sign < 0 ? own.highest - m_lines[o].baseline : m_lines[o].baseline - own.lowest;
                if (distance > kHostReach * own.biggest) continue;
                near = true;
                if (mayHost(o, own)) m_linesOfHosts.push_back(o);
            }
        }
    }

    // Another line so near that one could hold scripts of the other.
    bool hasLineNear(std::uint32_t l) const {
        for (int sign : {-1, 1}) {
            for (int d = 1; d <= kLinesAround; ++d) {
                int const other = static_cast<int>(l) + sign * d;
                if (other < 0 || other >= static_cast<int>(m_lines.size())) break;
                auto const o = static_cast<std::size_t>(other);
                Points const distance = std::abs(m_lines[o].baseline - m_lines[l].baseline);
                if (distance <= kRaisedTo * std::max(m_heights[o].biggest, m_heights[l].biggest)) return true;
                if (distance > kFarLine * m_heights[l].biggest) break;
            }
        }
        return false;
    }

    bool findHost(std::uint32_t l, std::size_t i, Place& place) {
        std::uint32_t const self = m_lines[l].runs[i];
        GlyphRun& small = run(self);
        Points best = isBracketed(small) ? kMarkGap : kScriptGap;
        std::uint32_t bestHost = kNoHost;
        model::Script bestScript = model::Script::Normal;
        auto const consider = [&](std::uint32_t other, Points gap) {
            if (other == self) return;
            // Beside another script of the same host: "V" with "CU" below and "1" above.
            std::uint32_t const hostIndex = m_places[other].host == kNoHost ? other : m_places[other].host;
            if (hostIndex == self) return;
            GlyphRun const& host = run(hostIndex);
            model::Script const script = scriptBeside(small, host);
            if (script == model::Script::Normal) return;
            bool const sameSize = small.size >= kScriptSize * host.size;
            if (sameSize && script == model::Script::Superscript && i > 0 &&
                small.flow.x0 - run(m_lines[l].runs[i - 1]).flow.x1 < kNothingBefore * small.size)
                return;
            Points const distance = std::abs(gap) / host.size;
            if (distance > best || gap < -kScriptGap * host.size) return;
            best = distance;
            bestHost = hostIndex;
            bestScript = script;
        };
        auto const search = [&](std::uint32_t line) {
            auto const& runs = m_lines[line].runs;
            int const left = before(m_lines[line], small.flow.x0);
            if (left >= 0) consider(runs[static_cast<std::size_t>(left)], small.flow.x0 - run(runs[static_cast<std::size_t>(left)]).flow.x1);
        };
        Points const reach = kHostReach * small.size;
        Heights heights;
        heights.add(small);
        for (std::uint32_t other : m_linesOfHosts) {
            if (std::abs(m_lines[other].baseline - small.baseline) <= reach && mayHost(other, heights)) search(other);
        }
        if (bestScript == model::Script::Normal && small.count <= 4) {
            best = kScriptGap;
            // A mark in front of its word: "(1) Text". Raised only.
            for (std::uint32_t other : m_linesOfHosts) {
                if (other < l || m_lines[other].baseline - small.baseline > reach || !mayHost(other, heights)) continue;
                int const at = before(m_lines[other], small.flow.x1 - kScriptGap * small.size) + 1;
                if (at >= static_cast<int>(m_lines[other].runs.size())) continue;
                std::uint32_t const right = m_lines[other].runs[static_cast<std::size_t>(at)];
                if (run(right).size * kScriptSize < small.size) continue;
                if (scriptBeside(small, run(right)) != model::Script::Superscript) continue;
                consider(right, run(right).flow.x0 - small.flow.x1);
            }
        }
        if (bestScript == model::Script::Normal) return false;
        small.script = bestScript;
        place = {m_places[bestHost].line, bestHost};
        return true;
    }

    model::PageContent const& m_content;
    GlyphRuns& m_found;
    Layer m_layer;
    std::vector<RunLine> m_lines;
    std::vector<Place> m_places;
    std::vector<Heights> m_heights;             // by line
    std::vector<char> m_moved;                  // by line: a run of it became a script
    std::vector<std::uint32_t> m_linesOfHosts;  // for the line at hand
};

}  // namespace

std::vector<RunLine> buildLines(model::PageContent const& content, GlyphRuns& found, Layer layer) { return LineBuilder(content, found, layer).build(); }

}  // namespace standin::layout
