// A card: title, both sides beside the limit strip, explanation, page cuttings.
// A place that was shown before is referred to instead of embedded again.
//
// Tested by tests/src/report/html_report_test.cpp.
#include "report/html_findings.h"

#include <map>

#include <fmt/format.h>

#include "model/names.h"
#include "report/html_escape.h"
#include "report/limit_strip.h"
#include "report/picture_png.h"
#include "report/texts.h"

namespace standin::report {

using namespace model;

namespace {

constexpr std::size_t kLongestAlt = 300;  // bytes of what a screen reader says of a picture

std::string sideBox(std::string_view who, char const* cssClass, std::optional<Side> const& side) {
    auto html = fmt::format("<div class=\"side {}\"><span class=\"who\">{}", cssClass, who);
    if (!side) return html + fmt::format("</span> <span class=\"values\">– ({})</span></div>", texts::kNotPrinted);
    if (side->page > 0) html += fmt::format(", page {}", side->page);
    html += "</span> ";
    bool const values = !side->min.empty() || !side->typ.empty() || !side->max.empty();
    html += fmt::format("<span class=\"values{}\">{}</span>", values ? "" : " text", escaped(valuesOf(*side)));
    if (!side->condition.empty()) html += fmt::format(" <span class=\"cond\">{}</span>", escaped(side->condition));
    return html + "</div>";
}

std::string stripFor(Finding const& finding, Comparison const& comparison, SheetParameters const& sheets) {
    auto const [reference, candidate] = parametersOf(finding, comparison, sheets);
    auto const limits = cellLimits(comparison, finding.canonical);
    auto const strip = limitStrip(reference, candidate, finding.hazardSide, limits);
    if (!strip) return {};
    auto label = fmt::format("reference {}, candidate {}", valuesOf(*reference), valuesOf(*candidate));
    if (!strip->flags.empty()) label += ", " + cellLimitsText(limits);
    return limitStripSvg(*strip, label);
}

class Cards {
public:
    Cards(Comparison const& comparison, SheetParameters const& sheets, Cuttings& cuttings) : m_comparison(comparison), m_sheets(sheets), m_cuttings(cuttings) {}

    std::string card(FindingGroup const& group) {
        auto const& finding = *group.main;
        auto html = fmt::format("<article class=\"card\" id=\"f-{}\"><h3><span class=\"mark\" aria-hidden=\"true\">{}</span>{}</h3>", escaped(finding.id), texts::severityMark(finding.severity),
                                escaped(finding.title));
        auto const strip = stripFor(finding, m_comparison, m_sheets);
        html += fmt::format("<div class=\"sides{}\"><div>", strip.empty() ? " plain" : "");
        if (m_comparison.hasReference()) html += sideBox("reference", "", finding.reference);
        html += sideBox("candidate", "c", finding.candidate);
        html += "</div>" + strip + "</div>";
        if (!finding.explanation.empty()) html += fmt::format("<p class=\"why\">{}</p>", escaped(finding.explanation));
        html += isOneSided(finding) && !group.consequences.empty() ? listed(group) : following(group);
        html += pictures(finding);
        html += fmt::format("<p class=\"meta\">{}, {}, {}{}{} · finding {}</p></article>\n", nameOf(finding.severity), texts::kindText(finding.kind), texts::relationText(finding.relation),
                            finding.caution.empty() ? "" : ", ", escaped(finding.caution), escaped(finding.id));
        return html;
    }

private:
    static std::string following(FindingGroup const& group) {
        std::string html;
        for (auto const* consequence : group.consequences) html += fmt::format("<p class=\"why\">Follows from it: {}</p>", escaped(consequence->title + placesOf(*consequence)));
        return html;
    }

    // What one sheet has and the other has not, as printed, folded away.
    static std::string listed(FindingGroup const& group) {
        std::string html = fmt::format("<details><summary>{} listed</summary><ul>", group.consequences.size());
        for (auto const* consequence : group.consequences) {
            auto const& side = consequence->reference ? consequence->reference : consequence->candidate;
            std::string const text = side && !side->text.empty() ? valuesOf(*side) : consequence->title;
            html += fmt::format("<li>{}</li>", escaped(text + placesOf(*consequence)));
        }
        return html + "</ul></details>";
    }

    std::string pictures(Finding const& finding) {
        if (!showsCuttings(finding)) return {};
        auto const html = picture(DocumentSide::Reference, finding, finding.reference) + picture(DocumentSide::Candidate, finding, finding.candidate);
        return html.empty() ? html : "<div class=\"cuts\">" + html + "</div>";
    }

    std::string picture(DocumentSide document, Finding const& finding, std::optional<Side> const& side) {
        if (!side) return {};
        auto const* cutting = m_cuttings.of(document, *side);
        if (cutting == nullptr) return {};
        bool const isReference = document == DocumentSide::Reference;
        auto const who = fmt::format("{}, page {}", isReference ? "reference" : "candidate", cutting->page);
        auto const [shown, isNew] = m_shown.try_emplace(cutting->number, &finding);
        if (!isNew) {
            return fmt::format("<p class=\"meta\">{}: the place shown under <a href=\"#f-{}\">{}</a></p>", who, escaped(shown->second->id), escaped(shown->second->title));
        }
        auto const uri = pngDataUri(cutting->picture);
        if (uri.empty()) return {};
        auto const& box = cutting->picture.box;
        auto const& place = cutting->place;
        auto const share = [](Points part, Points whole) { return static_cast<double>(100 * part / whole); };
        return fmt::format("<figure class=\"cut{}\"><div class=\"paper\"><img alt=\"{}: {}\" width=\"{}\" height=\"{}\" src=\"{}\">"
                           "<i style=\"left:{:.2f}%;top:{:.2f}%;width:{:.2f}%;height:{:.2f}%\"></i></div><figcaption>{}</figcaption></figure>",
                           isReference ? "" : " c", who, escaped(clipped(side->text, kLongestAlt)), cutting->picture.width, cutting->picture.height, uri,
                           share(place.x0 - box.x0, box.width()), share(place.y0 - box.y0, box.height()), share(place.width(), box.width()), share(place.height(), box.height()), who);
    }

    Comparison const& m_comparison;
    SheetParameters const& m_sheets;
    Cuttings& m_cuttings;
    std::map<int, Finding const*> m_shown;  // by the cutting's number: the finding that shows it
};

}  // namespace

std::string findingsHtml(Comparison const& comparison, SheetParameters const& sheets, Cuttings& cuttings) {
    auto const groups = groupBySeverity(comparison);
    if (groups.empty()) return fmt::format("<p>{}</p>", texts::kNothingFound);
    Cards cards(comparison, sheets, cuttings);
    std::string html;
    for (auto const& group : groups) {
        html += fmt::format("<h2>{} {} <small>{}: {}</small></h2>\n", texts::severityMark(group.severity), texts::severityHeading(group.severity), group.findings.size(),
                            texts::severityMeaning(group.severity));
        bool const folded = group.severity == Severity::Editorial;
        if (folded) html += fmt::format("<details><summary>show {}</summary>", group.findings.size());
        for (auto const& finding : group.findings) html += cards.card(finding);
        if (folded) html += "</details>";
    }
    if (cuttings.full()) html += fmt::format("<p class=\"meta\">{}</p>", texts::kNoMoreCuttings);
    return html;
}

}  // namespace standin::report
