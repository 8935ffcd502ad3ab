// A card keeps its title, both sides and its limit strip on one page; the
// explanation and the cuttings may follow on the next. Tested by
// tests/src/report/pdf/pdf_report_test.cpp.
#include "report/pdf/pdf_findings.h"

#include <algorithm>
#include <map>

#include <fmt/format.h>

#include "model/names.h"
#include "report/limit_strip.h"
#include "report/pdf/paper_table.h"
#include "report/texts.h"

namespace standin::report {

using namespace model;

namespace {

constexpr double kStripShown = 168;   // points wide
constexpr double kStripGap = 12;
constexpr double kIndent = 13;        // of a card's text under its title
constexpr double kBetweenCards = 7;
constexpr double kHighestPicture = 300;
constexpr std::size_t kLongestSide = 700;  // bytes of a side's text on paper; the page named tells the rest
constexpr std::size_t kLongestExplanation = 2000;
constexpr std::size_t kLongestTitle = 300;
constexpr std::size_t kLongestCell = 220;

struct StripStyle {
    Ink ink;
    double thickness;
};

StripStyle styleOf(StripPart part) {
    switch (part) {
        case StripPart::Frame: return {inks::kEdge, 0.6};
        case StripPart::ReferenceSpan: return {inks::kReference, 0.6};
        case StripPart::Reference: return {inks::kReference, 1.4};
        case StripPart::Candidate:
        case StripPart::CandidateOpen: return {inks::kCandidate, 0};
        case StripPart::CandidateTick: return {inks::kText, 1.2};
        case StripPart::HazardSide: return {inks::kText, 0};
        case StripPart::FlagPole: return {inks::kText, 0.6};
        case StripPart::Flag: return {inks::kText, 0};
    }
    return {inks::kText, 1};
}

void drawStrip(Paper& paper, LimitStrip const& strip, double x, double y) {
    constexpr double kScale = kStripShown / kStripWidth;
    for (auto const& shape : shapesOf(strip)) {
        std::vector<PlacedPoint> points;
        for (auto const& point : shape.points) points.push_back({x + point.x * kScale, y + point.y * kScale});
        auto const style = styleOf(shape.part);
        if (shape.part == StripPart::Frame) points.push_back(points.front());
        if (isClosed(shape.part) && shape.part != StripPart::Frame) {
            paper.polygon(points, style.ink, shape.part == StripPart::CandidateOpen ? 0.35 : 1);
        } else if (shape.part == StripPart::ReferenceSpan && points.size() == 2) {
            paper.dottedLine(points[0], points[1], style.ink, style.thickness);
        } else {
            paper.polyline(points, style.ink, style.thickness);
        }
    }
}

Paragraph sideText(std::string_view who, Ink hue, std::optional<Side> const& side) {
    if (!side) return {{{fmt::format("{}  ", who), inks::kSoft}, {fmt::format("– ({})", texts::kNotPrinted), hue, Weight::Bold}}};
    Paragraph text;
    text.runs.push_back({side->page > 0 ? fmt::format("{}, page {}  ", who, side->page) : fmt::format("{}  ", who), inks::kSoft});
    bool const values = !side->min.empty() || !side->typ.empty() || !side->max.empty();
    auto shown = clipped(valuesOf(*side), kLongestSide);
    if (values) text.runs.push_back({std::move(shown), hue, Weight::Bold});
    else text.runs.push_back({std::move(shown)});
    if (!side->condition.empty()) text.runs.push_back({"  " + clipped(side->condition, kLongestSide), inks::kSoft});
    return text;
}

class Cards {
public:
    Cards(Paper& paper, PaperFindings const& findings) : m_paper(paper), m_findings(findings) {}

    void write(FindingGroup const& group) {
        auto const& finding = *group.main;
        double const x = m_paper.left() + kIndent;
        double const width = m_paper.width() - kIndent;
        Paragraph const title{{{fmt::format("{}  ", texts::severityMark(finding.severity))}, {clipped(finding.title, kLongestTitle), inks::kText, Weight::Bold}}, TextSize::Subheading};
        auto const [referenceRow, candidateRow] = parametersOf(finding, m_findings.comparison, m_findings.sheets);
        auto const strip = limitStrip(referenceRow, candidateRow, finding.hazardSide, cellLimits(m_findings.comparison, finding.canonical));
        double const sidesWidth = strip ? width - kStripShown - kStripGap : width;
        auto const reference = sideText("reference", inks::kReference, finding.reference);
        auto const candidate = sideText("candidate", inks::kCandidate, finding.candidate);
        m_paper.keep(m_paper.heightOf(title, m_paper.width()) + m_paper.heightOf(reference, sidesWidth) + m_paper.heightOf(candidate, sidesWidth) + 12);
        if (finding.severity == Severity::Hazard) m_paper.bookmark(2, finding.title);
        m_paper.write(title, m_paper.left(), m_paper.width());
        m_paper.advance(2);
        int const page = m_paper.page();
        double const top = m_paper.y();
        m_paper.writeWithBar(reference, x, sidesWidth, inks::kReference);
        m_paper.advance(2);
        m_paper.writeWithBar(candidate, x, sidesWidth, inks::kCandidate);
        if (strip && page == m_paper.page()) {
            drawStrip(m_paper, *strip, x + sidesWidth + kStripGap, top);
            m_paper.moveTo(std::max(m_paper.y(), top + kStripShown * kStripHeight / kStripWidth));
        }
        if (!finding.explanation.empty()) {
            m_paper.advance(3);
            m_paper.write(paragraph(clipped(finding.explanation, kLongestExplanation)), x, width);
        }
        for (auto const* consequence : group.consequences) m_paper.write(paragraph("Follows from it: " + consequence->title + placesOf(*consequence)), x, width);
        if (showsCuttings(finding)) {
            picture(DocumentSide::Reference, finding, finding.reference, x, width);
            picture(DocumentSide::Candidate, finding, finding.candidate, x, width);
        }
        m_paper.advance(1);
        m_paper.write(paragraph(fmt::format("{}, {}, {}{}{} · finding {}", nameOf(finding.severity), texts::kindText(finding.kind), texts::relationText(finding.relation),
                                            finding.caution.empty() ? "" : ", ", finding.caution, finding.id),
                                TextSize::Small, inks::kSoft),
                      x, width);
        m_paper.advance(kBetweenCards);
    }

private:
    void picture(DocumentSide document, Finding const& finding, std::optional<Side> const& side, double x, double width) {
        auto const* cutting = side ? m_findings.cuttings.of(document, *side) : nullptr;
        if (cutting == nullptr) return;
        bool const isReference = document == DocumentSide::Reference;
        auto const hue = isReference ? inks::kReference : inks::kCandidate;
        auto const who = fmt::format("{}, page {}", isReference ? "reference" : "candidate", cutting->page);
        auto const [shown, isNew] = m_shown.try_emplace(cutting->number, &finding);
        if (!isNew) {
            m_paper.write(paragraph(fmt::format("{}: the place shown under finding {}", who, shown->second->id), TextSize::Small, inks::kSoft), x, width);
            return;
        }
        auto const& box = cutting->picture.box;
        double const scale = std::min({1.0, (width - kIndent) / static_cast<double>(box.width()), kHighestPicture / static_cast<double>(box.height())});
        double const shownWidth = scale * static_cast<double>(box.width());
        double const shownHeight = scale * static_cast<double>(box.height());
        m_paper.advance(3);
        m_paper.keep(shownHeight + 14);
        double const top = m_paper.y();
        double const left = x + 4;
        m_paper.picture(cutting->picture, left, top, shownWidth, shownHeight);
        m_paper.frame(left, top, shownWidth, shownHeight, inks::kEdge, 0.5);
        m_paper.line({x + 2, top}, {x + 2, top + shownHeight}, hue, 3);
        auto const& place = cutting->place;
        m_paper.frame(left + scale * static_cast<double>(place.x0 - box.x0), top + scale * static_cast<double>(place.y0 - box.y0), scale * static_cast<double>(place.width()),
                      scale * static_cast<double>(place.height()), hue, 1);
        m_paper.moveTo(top + shownHeight + 1);
        m_paper.write(paragraph(who, TextSize::Small, inks::kSoft), left, width);
    }

    Paper& m_paper;
    PaperFindings const& m_findings;
    std::map<int, Finding const*> m_shown;  // by the cutting's number: the finding that shows it
};

}  // namespace

void writeFindings(Paper& paper, PaperFindings const& findings) {
    auto const groups = groupBySeverity(findings.comparison);
    if (groups.empty()) {
        paper.write(paragraph(std::string(texts::kNothingFound)), paper.left(), paper.width());
        return;
    }
    Cards cards(paper, findings);
    for (auto const& group : groups) {
        paper.advance(8);
        paper.heading({{{fmt::format("{}  {} ({})", texts::severityMark(group.severity), texts::severityHeading(group.severity), group.findings.size()), inks::kText, Weight::Bold}}, TextSize::Heading},
                      70);
        paper.write(paragraph(std::string(texts::severityMeaning(group.severity)), TextSize::Body, inks::kSoft), paper.left(), paper.width());
        paper.advance(5);
        if (group.severity != Severity::Editorial) {
            for (auto const& finding : group.findings) cards.write(finding);
            continue;
        }
        PaperTable table(paper, {{"finding", 1.1}, {"reference", 2, inks::kReference}, {"candidate", 2, inks::kCandidate}});
        auto const cell = [](std::optional<Side> const& side) {
            if (!side) return paragraph("–", TextSize::Small);
            return paragraph(fmt::format("p.\u00A0{}: {}", side->page, clipped(valuesOf(*side), kLongestCell)), TextSize::Small);
        };
        for (auto const& finding : group.findings) {
            table.row({paragraph(clipped(finding.main->title, kLongestCell), TextSize::Small), cell(finding.main->reference), cell(finding.main->candidate)});
        }
    }
    if (findings.cuttings.full()) paper.write(paragraph(std::string(texts::kNoMoreCuttings), TextSize::Small, inks::kSoft), paper.left(), paper.width());
}

}  // namespace standin::report
