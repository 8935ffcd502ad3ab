// Page by page: clusters of drawings (page_clusters.h) that are large enough and
// not a mere box around a paragraph; what is lettered in them and, round by
// round, short lines right beside them (axis labels, pin names); figures that
// have grown into each other become one; captions go to the nearest figure.
// Tested by tests/extractors/figures/find_figures_test.cpp.
#include "extractors/figures/find_figures.h"

#include <algorithm>
#include <set>
#include <tuple>

#include <fmt/format.h>

#include "extractors/figures/lettering.h"
#include "extractors/figures/page_clusters.h"
#include "model/crew.h"

namespace standin::figures {

namespace {

// Distances in font heights of the page's running text.
constexpr model::Points kUsualSize = 10;
constexpr model::Points kSmallestImage = 1.6F;    // longer side
constexpr model::Points kThinnestImage = 0.6F;    // shorter side
constexpr model::Points kSmallestDrawing = 2.5F;  // longer side
constexpr model::Points kThinnestDrawing = 1.2F;
constexpr model::Points kTableMargin = 0.6F;
constexpr model::Points kInside = 0.35F;   // lettering may stick out by this
constexpr model::Points kBeside = 1.25F;   // gap to lettering beside
constexpr model::Points kCaptionBelow = 4;
constexpr model::Points kCaptionAbove = 3;
constexpr int kRoundsBeside = 3;
constexpr std::uint32_t kWordsBeside = 6;
constexpr model::Points kHeadShare = 0.11F;   // of the page's height: logos stand here
constexpr double kImageShare = 0.25;          // of a figure's area: it was not read
constexpr float kPageShare = 0.5F;            // of the page's area: a background
constexpr std::size_t kMostFigures = 400;     // a page

struct Candidate {
    Cluster cluster;
    model::Rect box;
    std::vector<std::uint32_t> words;
    bool logo = false;
    bool background = false;  // a picture of the whole page: what stands on it is no lettering of it
};

bool isLarge(Cluster const& cluster, model::Points size) {
    auto const longer = std::max(cluster.box.width(), cluster.box.height());
    auto const shorter = std::min(cluster.box.width(), cluster.box.height());
    if (cluster.images > 0) return longer >= kSmallestImage * size && shorter >= kThinnestImage * size;
    if (cluster.drawings > 0) return longer >= kSmallestDrawing * size && shorter >= kThinnestDrawing * size;
    // Rules alone: a closed shape at least.
    return cluster.horizontal >= 2 && cluster.vertical >= 2 && shorter >= 2 * size;
}

class PageFigures {
public:
    PageFigures(model::PageLayout& page, std::span<model::Table const> tables, std::span<model::Section const> sections)
        : m_page(page), m_sections(sections), m_size(page.bodySize > 0 ? page.bodySize : kUsualSize) {
        for (auto const& table : tables) {
            if (table.page == page.page) m_tables.push_back(table.box.grown(kTableMargin * m_size));
        }
    }

    std::vector<model::Figure> find() {
        auto clusters = clustersOf(m_page, m_tables);
        std::erase_if(clusters, [this](auto const& cluster) { return !isLarge(cluster, m_size); });
        if (clusters.empty()) return {};
        if (clusters.size() > kMostFigures) keepLargest(clusters);
        m_uses = usesOfLines(m_page, m_sections);
        m_lineOfWord.assign(m_page.words.size(), 0);
        for (std::uint32_t l = 0; l < m_page.lines.size(); ++l) {
            auto const& line = m_page.lines[l];
            for (std::uint32_t w = line.firstWord; w < line.firstWord + line.wordCount; ++w) m_lineOfWord[w] = l;
        }
        for (auto& cluster : clusters) {
            Candidate candidate{cluster, cluster.box, {}, false, coversPage(cluster.box)};
            candidate.logo = cluster.box.y1 < kHeadShare * m_page.height || cluster.box.y0 > (1 - kHeadShare / 2) * m_page.height;
            m_candidates.push_back(std::move(candidate));
        }
        takeInside();
        std::erase_if(m_candidates, [](auto const& candidate) {
            return candidate.cluster.images == 0 && candidate.cluster.drawings == 0 && candidate.words.empty();
        });
        for (int round = 0; round < kRoundsBeside && takeBeside(); ++round) {}
        mergeOverlapping();
        return finished();
    }

private:
    static void keepLargest(std::vector<Cluster>& clusters) {
        std::nth_element(clusters.begin(), clusters.begin() + kMostFigures, clusters.end(), [](auto const& a, auto const& b) { return a.box.area() > b.box.area(); });
        clusters.resize(kMostFigures);
        std::sort(clusters.begin(), clusters.end(), [](auto const& a, auto const& b) { return std::tie(a.box.y0, a.box.x0, a.shape) < std::tie(b.box.y0, b.box.x0, b.shape); });
    }

    [[nodiscard]] bool coversPage(model::Rect const& box) const { return box.area() > kPageShare * m_page.width * m_page.height; }

    bool isFree(std::uint32_t word) const { return m_page.words[word].owner == model::Owner::None && m_uses[m_lineOfWord[word]] == LineUse::Free; }

    // Free words whose centre lies within a figure; the smallest figure takes them.
    void takeInside() {
        for (std::uint32_t w = 0; w < m_page.words.size(); ++w) {
            if (!isFree(w)) continue;
            auto const centre = m_page.words[w].box.centre();
            Candidate* best = nullptr;
            for (auto& candidate : m_candidates) {
                if (candidate.background || !candidate.cluster.box.grown(kInside * m_size).contains(centre)) continue;
                if (best == nullptr || candidate.cluster.box.area() < best->cluster.box.area()) best = &candidate;
            }
            if (best != nullptr) take(*best, w);
        }
    }

    void take(Candidate& candidate, std::uint32_t word) {
        candidate.words.push_back(word);
        candidate.box = model::united(candidate.box, m_page.words[word].box);
        m_page.words[word].owner = model::Owner::Figure;
    }

    // Short free lines right beside a figure. True when one was taken.
    bool takeBeside() {
        bool any = false;
        // Boxes as they were, so that the order of lines does not matter.
        std::vector<model::Rect> boxes;
        for (auto const& candidate : m_candidates) boxes.push_back(candidate.box);
        for (std::uint32_t l = 0; l < m_page.lines.size(); ++l) {
            auto const& line = m_page.lines[l];
            if (m_uses[l] != LineUse::Free || line.wordCount > kWordsBeside) continue;
            std::uint32_t free = 0;
            for (std::uint32_t w = line.firstWord; w < line.firstWord + line.wordCount; ++w) free += m_page.words[w].owner == model::Owner::None ? 1 : 0;
            if (free == 0) continue;
            auto const best = nearest(line.box, boxes, free < line.wordCount ? 3 * kBeside : kBeside);
            if (best == nullptr) continue;
            for (std::uint32_t w = line.firstWord; w < line.firstWord + line.wordCount; ++w) {
                if (m_page.words[w].owner == model::Owner::None) take(*best, w);
            }
            any = true;
        }
        return any;
    }

    Candidate* nearest(model::Rect const& box, std::vector<model::Rect> const& boxes, model::Points within) {
        Candidate* best = nullptr;
        model::Points bestGap = within * m_size;
        for (std::size_t i = 0; i < m_candidates.size(); ++i) {
            auto& candidate = m_candidates[i];
            // Pictures carry their lettering; words beside a logo are a title.
            if (candidate.logo || candidate.background || (candidate.cluster.drawings == 0 && candidate.cluster.horizontal + candidate.cluster.vertical == 0)) continue;
            auto const gapX = -model::overlap(box.x0, box.x1, boxes[i].x0, boxes[i].x1);
            auto const gapY = -model::overlap(box.y0, box.y1, boxes[i].y0, boxes[i].y1);
            auto const gap = std::max({gapX, gapY, 0.0F});
            // Above or below only lettering no wider than the figure.
            if (gapX <= 0 && gapY > 0 && box.width() > boxes[i].width() + 2 * m_size) continue;
            if (gap < bestGap) {
                bestGap = gap;
                best = &candidate;
            }
        }
        return best;
    }

    void mergeOverlapping() {
        for (std::size_t i = 0; i < m_candidates.size(); ++i) {
            for (std::size_t k = i + 1; k < m_candidates.size();) {
                auto& a = m_candidates[i];
                auto& b = m_candidates[k];
                auto const common = model::intersection(a.box, b.box);
                bool const join = !a.background && !b.background && !common.empty() && common.area() > 0.3F * std::min(a.box.area(), b.box.area());
                if (!join) {
                    ++k;
                    continue;
                }
                a.box = model::united(a.box, b.box);
                a.words.insert(a.words.end(), b.words.begin(), b.words.end());
                a.cluster.images += b.cluster.images;
                a.cluster.drawings += b.cluster.drawings;
                a.cluster.imageArea += b.cluster.imageArea;
                a.cluster.shape = a.cluster.shape * 31 + b.cluster.shape;
                a.logo = a.logo && b.logo;
                m_candidates.erase(m_candidates.begin() + static_cast<std::ptrdiff_t>(k));
                k = i + 1;  // the larger box may reach another
            }
        }
    }

    std::vector<model::PlacedText> textsOf(Candidate& candidate) const {
        std::sort(candidate.words.begin(), candidate.words.end());
        std::vector<model::PlacedText> texts;
        std::uint32_t lastLine = 0;
        std::uint32_t lastWord = 0;
        for (auto const w : candidate.words) {
            auto const& word = m_page.words[w];
            bool const goesOn = !texts.empty() && m_lineOfWord[w] == lastLine && w == lastWord + 1;
            if (goesOn) {
                if (word.spaceBefore) texts.back().text += ' ';
                texts.back().text += word.text;
                texts.back().box = model::united(texts.back().box, word.box);
            } else {
                texts.push_back({word.text, m_page.page, word.box});
            }
            lastLine = m_lineOfWord[w];
            lastWord = w;
        }
        return texts;
    }

    std::vector<model::Figure> finished() {
        std::vector<model::Figure> figures;
        for (auto& candidate : m_candidates) {
            model::Figure figure;
            figure.page = m_page.page;
            figure.box = candidate.box;
            figure.texts = textsOf(candidate);
            figure.shape = fmt::format("{:016x}", candidate.cluster.shape);
            bool const picture = candidate.cluster.imageArea > kImageShare * candidate.box.area();
            figure.read = picture ? model::FigureReading::Image : figure.texts.empty() ? model::FigureReading::Vector : model::FigureReading::Text;
            figures.push_back(std::move(figure));
        }
        std::stable_sort(figures.begin(), figures.end(), [](auto const& a, auto const& b) { return a.box.y0 != b.box.y0 ? a.box.y0 < b.box.y0 : a.box.x0 < b.box.x0; });
        giveCaptions(figures);
        return figures;
    }

    void giveCaptions(std::vector<model::Figure>& figures) const {
        auto const captions = captionsOf(m_page);
        struct Pair {
            model::Points distance;
            std::size_t caption, figure;
        };
        std::vector<Pair> pairs;
        for (std::size_t c = 0; c < captions.size(); ++c) {
            auto const& caption = captions[c].box;
            for (std::size_t f = 0; f < figures.size(); ++f) {
                auto const& figure = figures[f].box;
                if (model::overlap(caption.x0, caption.x1, figure.x0, figure.x1) <= 0) continue;
                bool const isBelow = caption.centre().y > figure.centre().y;
                auto const gap = isBelow ? caption.y0 - figure.y1 : figure.y0 - caption.y1;
                if (gap > (isBelow ? kCaptionBelow : kCaptionAbove) * m_size) continue;
                pairs.push_back({std::max(0.0F, gap), c, f});
            }
        }
        std::stable_sort(pairs.begin(), pairs.end(), [](auto const& a, auto const& b) { return a.distance < b.distance; });
        std::vector<bool> used(captions.size(), false);
        for (auto const& [distance, c, f] : pairs) {
            if (used[c] || !figures[f].caption.empty()) continue;
            used[c] = true;
            figures[f].caption = captions[c].text;
        }
    }

    model::PageLayout& m_page;
    std::span<model::Section const> m_sections;
    model::Points m_size;
    std::vector<model::Rect> m_tables;
    std::vector<LineUse> m_uses;
    std::vector<std::uint32_t> m_lineOfWord;
    std::vector<Candidate> m_candidates;
};

// The last section that begins above the figure, of those in its column first.
std::string sectionOf(model::Figure const& figure, std::span<model::Section const> sections) {
    model::Section const* last = nullptr;
    model::Section const* inColumn = nullptr;
    for (auto const& section : sections) {
        bool const before = section.page < figure.page || (section.page == figure.page && section.box.y0 <= figure.box.y0 + section.box.height());
        if (!before) continue;
        last = &section;
        if (section.page == figure.page && model::overlap(section.box.x0, section.box.x1, figure.box.x0, figure.box.x1) > 0) inColumn = &section;
    }
    if (inColumn != nullptr) return inColumn->id;
    return last != nullptr ? last->id : std::string{};
}

}  // namespace

std::vector<model::Figure> findFigures(std::span<model::PageLayout> pages, std::span<model::Table const> tables,
                                       std::span<model::Section const> sections) {
    constexpr std::size_t kLeastPages = 4;  // that a second thread is worth its start for
    std::vector<std::vector<model::Figure>> ofPage(pages.size());
    model::inParts(
        pages.size(),
        [&](std::size_t first, std::size_t last) {
            for (std::size_t p = first; p < last; ++p) {
                auto const onPage = std::ranges::equal_range(tables, pages[p].page, {}, &model::Table::page);  // in document order
                ofPage[p] = PageFigures(pages[p], {onPage.begin(), onPage.end()}, sections).find();
            }
        },
        kLeastPages);
    std::vector<model::Figure> figures;
    // A logo on every page is listed once.
    std::set<std::tuple<std::string, int, int>> seen;
    for (auto& found : ofPage) {
        for (auto& figure : found) {
            bool const isNew = seen.emplace(figure.shape, static_cast<int>(figure.box.x0), static_cast<int>(figure.box.y0)).second;
            if (!isNew && figure.texts.empty() && figure.caption.empty()) continue;
            figure.id = fmt::format("f{}", figures.size() + 1);
            figure.section = sectionOf(figure, sections);
            figures.push_back(std::move(figure));
        }
    }
    return figures;
}

}  // namespace standin::figures
