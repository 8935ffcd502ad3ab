// A text counts by what it is about (topics of the vocabulary) and by the gravest
// class of its change; where nothing is known about it the class decides alone.
// Tested by tests/src/risk/assess_test.cpp.
#include "risk/judge_text.h"

#include <algorithm>
#include <charconv>
#include <set>
#include <string>
#include <vector>

#include "compare/pin_findings.h"
#include "compare/pin_handling.h"
#include "compare/text_keys.h"
#include "risk/texts.h"
#include "text/utf8.h"

namespace standin::risk {

namespace {

using model::Finding;
using model::FindingKind;
using model::Judgement;
using model::Relation;
using model::Severity;
using model::WordingClass;

// Classes that turn a meaning round, whoever says the sentence.
bool turnsMeaning(WordingClass wordingClass) {
    return wordingClass == WordingClass::Neg || wordingClass == WordingClass::Perm || wordingClass == WordingClass::Trig || wordingClass == WordingClass::Pin;
}

bool isQuiet(WordingClass wordingClass) { return wordingClass == WordingClass::Edit || wordingClass == WordingClass::Style; }

// Sections whose words do not describe the part's behaviour.
bool besideThePart(model::SectionKind kind) { return kind == model::SectionKind::Revision || kind == model::SectionKind::Legal || kind == model::SectionKind::Packing; }

// Lettering of a curve: axes and what the curve was taken at, for eyes to judge.
bool isOfCurve(Finding const& finding, SheetView const& sheets) {
    if (sheets.sectionKind(finding) == model::SectionKind::Curves) return true;
    auto const against = [](std::optional<model::Side> const& side) {
        return side && (side->text.find(" vs") != std::string::npos || side->text.find(" versus ") != std::string::npos);
    };
    return against(finding.reference) || against(finding.candidate);
}

// "Output voltage swing versus supply voltage": the title of a plot, no sentence.
bool titlesACurve(std::optional<model::Side> const& side) {
    constexpr std::size_t kLongestTitle = 120;
    if (!side || side->text.empty() || side->text.size() > kLongestTitle || side->text.back() == '.') return false;
    std::string const lower = text::asciiLower(side->text);
    return lower.find(" versus ") != std::string::npos || lower.find(" vs ") != std::string::npos || lower.find(" vs. ") != std::string::npos;
}

enum class Ground { Bare, Drawing, Headless, Table };

// The head of a table that goes on stands in the one before.
bool hasHead(model::Table const& table, std::vector<model::Table> const& tables) {
    model::Table const* at = &table;
    for (std::size_t steps = 0; steps < tables.size() && at->headRows == 0 && !at->continues.empty(); ++steps) {
        auto const before = std::find_if(tables.begin(), tables.end(), [at](model::Table const& other) { return other.id == at->continues; });
        if (before == tables.end()) return true;
        at = &*before;
    }
    return at->headRows > 0;
}

// What a side stands in.
Ground groundOf(model::Side const& side, model::Datasheet const& sheet) {
    auto const here = [&](auto const& thing) { return thing.page == side.page && thing.box.intersects(side.box); };
    if (std::any_of(sheet.figures.begin(), sheet.figures.end(), here)) return Ground::Drawing;
    Ground ground = Ground::Bare;
    for (model::Table const& table : sheet.tables) {
        if (!here(table)) continue;
        if (hasHead(table, sheet.tables)) return Ground::Table;
        ground = Ground::Headless;
    }
    return ground;
}

// Lettering of curves that was taken for a table. "Typical electrical characteristics" are
// curves or a table, with a head then; what turns a meaning is no lettering.
bool isLetteringAsTable(Finding const& finding, SheetView const& sheets) {
    if (finding.kind != FindingKind::Table || sheets.sectionKind(finding) != model::SectionKind::Curves || finding.classes.empty()) return false;
    bool const numbers =
        std::all_of(finding.classes.begin(), finding.classes.end(), [](WordingClass own) { return isQuiet(own) || own == WordingClass::Num || own == WordingClass::Temp; });
    Ground const reference = finding.reference ? groundOf(*finding.reference, sheets.reference()) : Ground::Bare;
    Ground const candidate = finding.candidate ? groundOf(*finding.candidate, sheets.candidate()) : Ground::Bare;
    bool const table = reference == Ground::Table || candidate == Ground::Table;
    return numbers && !table && (reference != Ground::Bare || candidate != Ground::Bare);
}

// A cell of an outline drawing's table: "0.25", "1.27 BSC", "0°", "---".
bool isDimension(std::string_view cell) {
    for (std::string_view const word : {"BSC", "BASIC", "REF", "TYP", "NOM"}) {
        if (cell.ends_with(word)) cell.remove_suffix(word.size());
    }
    return cell.find_first_not_of("0123456789.,-+ \xC2\xB0\xB1") == std::string_view::npos;  // with the bytes of "°" and "±"
}

// "A1 | 0.05 | 0.15 | 0.002 | 0.006": a letter of the drawing and its lengths without a unit.
bool isRowOfOutline(std::string_view row) {
    constexpr int kFewestLengths = 2;  // with a decimal point: the rows of a truth table have none
    std::size_t const end = row.find(" | ");
    bool const letter = (end == 1 || (end == 2 && text::isAsciiDigit(row[1]))) && text::isAsciiLetter(row.front());
    if (!letter) return false;
    int lengths = 0;
    for (std::string_view rest = row.substr(end + 3); !rest.empty();) {
        std::string_view const cell = rest.substr(0, rest.find(" | "));
        if (!isDimension(cell)) return false;
        lengths += cell.find('.') != std::string_view::npos ? 1 : 0;
        rest.remove_prefix(std::min(rest.size(), cell.size() + 3));
    }
    return lengths >= kFewestLengths;
}

// Every maker letters its drawings in a way of its own, so that such rows of two makers say nothing of
// each other; whether the packages fit is told by their names and bodies. In sheets of one maker they do.
bool isOutlineOfAnother(Finding const& finding, SheetView const& sheets) {
    std::string const& maker = sheets.reference().document.maker;
    std::string const& other = sheets.candidate().document.maker;
    if (finding.kind != FindingKind::Table || maker.empty() || other.empty() || maker == other) return false;
    return (!finding.reference || isRowOfOutline(finding.reference->text)) && (!finding.candidate || isRowOfOutline(finding.candidate->text));
}

std::string checkOf(SheetView const& sheets, std::string const& caution) {
    auto const* entry = sheets.vocabulary().caution(caution);
    return entry == nullptr ? std::string() : entry->check;
}

// A concept as words: "co" is a pin, "short" needs its noun.
std::string spoken(std::string subject) {
    if (subject.size() == 2) {
        std::transform(subject.begin(), subject.end(), subject.begin(), [](char byte) { return byte >= 'a' && byte <= 'z' ? static_cast<char>(byte - 'a' + 'A') : byte; });
        return "the " + subject + " pin";
    }
    if (subject == "short") return "short circuit";
    if (subject == "zero-volt" || subject == "zero-volt+charge") return "0 V charging";
    std::replace(subject.begin(), subject.end(), '-', ' ');
    std::replace(subject.begin(), subject.end(), '+', ' ');
    return subject;
}

// "Overcharge detection voltage" -> "overcharge detection voltage"; "VM pin current" and "0 V …" stay.
std::string insideSentence(std::string title) {
    bool const plain = title.size() > 1 && title[0] >= 'A' && title[0] <= 'Z' && title[1] >= 'a' && title[1] <= 'z';
    if (plain) title[0] = static_cast<char>(title[0] - 'A' + 'a');
    return title;
}

struct Matter {
    Severity severity = Severity::Function;
    bool known = false;
    std::string caution;
    std::string words;  // "overcharge", for titles
};

Matter matterOf(Finding const& finding, SheetView const& sheets) {
    if (!finding.canonical.empty()) {
        if (auto const* entry = sheets.vocabulary().find(finding.canonical, sheets.family())) {
            return {.severity = entry->severity, .known = true, .caution = entry->caution, .words = insideSentence(entry->title)};
        }
    }
    std::vector<vocabulary::Topic> topics;
    for (auto const* side : {&finding.reference, &finding.candidate}) {
        if (!*side) continue;
        for (auto& topic : sheets.vocabulary().topics((*side)->text, sheets.family())) topics.push_back(std::move(topic));
    }
    std::stable_sort(topics.begin(), topics.end(), [](auto const& a, auto const& b) { return a.severity > b.severity; });
    Matter matter;
    if (topics.empty()) return matter;
    matter.known = true;
    matter.severity = topics.front().severity;
    matter.words = spoken(topics.front().subject);
    for (auto const& topic : topics) {
        if (topic.severity == matter.severity && !topic.caution.empty()) {
            matter.caution = topic.caution;
            break;
        }
    }
    if (auto const* entry = sheets.vocabulary().find(topics.front().subject, sheets.family())) matter.words = insideSentence(entry->title);
    if (auto const* feature = sheets.vocabulary().feature(topics.front().subject)) matter.words = insideSentence(feature->title);
    return matter;
}

Level levelOfWording(Finding const& finding, Subject subject) {
    bool const oneSided = finding.relation == Relation::OnlyReference || finding.relation == Relation::OnlyCandidate;
    if (finding.relation == Relation::Moved || finding.relation == Relation::Same) return {0, false};
    if (finding.relation == Relation::ConflictInDocument || finding.relation == Relation::Unread) return {2, true};
    int level = 0;
    if (finding.classes.empty()) level = finding.relation == Relation::MeaningChanged ? 2 : 1;
    for (WordingClass const wordingClass : finding.classes) {
        int own = levelOfClass(wordingClass, subject);
        // A sentence of one sheet alone mentions numbers and limits without changing them.
        if (oneSided) own = isQuiet(wordingClass) ? 1 : turnsMeaning(wordingClass) && subject == Subject::Hazardous ? std::min(own, 3) : std::min(own, 2);
        level = std::max(level, own);
    }
    if (oneSided && level == 0) level = 1;
    return {level, false};
}

TextJudgement judgeWording(Finding const& finding, SheetView const& sheets) {
    TextJudgement result;
    Matter matter = matterOf(finding, sheets);
    Subject const subject = matter.severity == Severity::Hazard ? Subject::Hazardous : Subject::Ordinary;
    result.level = levelOfWording(finding, subject);
    result.severity = matter.severity;
    bool const quiet = std::all_of(finding.classes.begin(), finding.classes.end(), isQuiet) && finding.relation != Relation::MeaningChanged;
    bool const oneSided = finding.relation == Relation::OnlyReference || finding.relation == Relation::OnlyCandidate;
    bool const turns = std::any_of(finding.classes.begin(), finding.classes.end(), turnsMeaning);
    if (turns) result.severity = std::max(result.severity, Severity::Function);
    if (quiet) result.severity = std::min(result.severity, Severity::Note);
    if (std::any_of(finding.classes.begin(), finding.classes.end(), [](auto c) { return c == WordingClass::Pin; }) && matter.caution.empty()) matter.caution = "C-PIN";
    if (finding.kind == FindingKind::Table && oneSided) {
        result.level = {std::min(result.level.level, 2), matter.severity == Severity::Hazard && matter.known};
        if (!matter.known) {
            result.level = {1, false};
            result.severity = Severity::Note;
        }
    }
    if (finding.kind == FindingKind::Wording && oneSided) {
        // Two makers write hundreds of sentences of their own; only what permits or
        // prohibits something hazardous counts for more than to be read.
        bool const rules = std::any_of(finding.classes.begin(), finding.classes.end(), [](auto c) { return c == WordingClass::Perm; });
        if (!rules || !matter.known || subject != Subject::Hazardous) {
            result.level = {std::min(result.level.level, 1), false};
            result.severity = std::min(result.severity, Severity::Note);
        }
    }
    if (besideThePart(sheets.sectionKind(finding))) {
        result.level = {std::min(result.level.level, 1), false};
        result.severity = std::min(result.severity, Severity::Note);
        matter.caution.clear();
    }
    if (finding.kind == FindingKind::Figure && finding.relation == Relation::MeaningChanged) {
        result.level = {1, false};  // a changed drawing: what it shows is not read
        result.severity = Severity::Note;
    } else if (finding.kind == FindingKind::Figure) {
        result.level.level = std::min(result.level.level, 2);
        if (oneSided || isOfCurve(finding, sheets)) {
            result.level.level = std::min(result.level.level, 1);
            result.severity = std::min(result.severity, Severity::Note);
        }
    }
    bool const curves = finding.kind == FindingKind::Wording && titlesACurve(finding.reference) && titlesACurve(finding.candidate);
    if (curves || isLetteringAsTable(finding, sheets) || isOutlineOfAnother(finding, sheets)) {
        result.level = {std::min(result.level.level, 1), false};
        result.severity = std::min(result.severity, Severity::Note);
    }
    result.judgement = result.level.level <= 1 ? Judgement::Complies : Judgement::Open;
    if (result.level.level >= 2) result.caution = matter.caution;
    result.title = texts::wordingTitle(finding, matter.words);
    result.explanation = texts::wordingExplanation(finding, matter.words, checkOf(sheets, result.caution));
    return result;
}

TextJudgement judgeFeature(Finding const& finding, SheetView const& sheets) {
    auto const* entry = sheets.vocabulary().feature(finding.canonical);
    if (entry == nullptr) return judgeWording(finding, sheets);
    TextJudgement result;
    std::string const from = sheets.referenceState(finding);
    std::string const to = sheets.candidateState(finding);
    auto const meaning = [entry](std::string const& token) {
        for (auto const& state : entry->states) {
            if (state.token == token) return state.meaning.empty() ? state.token : state.meaning;
        }
        return token;
    };
    result.severity = entry->severity;
    std::string effect = entry->concern;
    if (finding.relation == Relation::ModeDiffers) {
        result.severity = entry->otherSeverity;
        result.level = levelOf(Outcome::ModeDiffers, result.severity);
        for (auto const& concern : entry->concerns) {
            bool const matches = (concern.from.empty() || concern.from == from) && (concern.to.empty() || concern.to == to) && from != to;
            if (!matches) continue;
            result.severity = concern.severity;
            result.level = {concern.level, false};
            if (!concern.text.empty()) effect = concern.text;
            break;
        }
        result.judgement = result.severity == Severity::Hazard ? Judgement::HazardSide : Judgement::Worse;
    } else if (finding.relation == Relation::ModeSame) {
        result.level = {0, false};
        result.judgement = Judgement::Complies;
    } else {
        result.level = levelOf(finding.relation == Relation::ConflictInDocument ? Outcome::NotComparable : Outcome::ModeUnstated, result.severity);
    }
    if (result.level.level >= 1) result.caution = finding.relation == Relation::ConflictInDocument && entry->caution.empty() ? "C-READ" : entry->caution;
    std::string const reference = finding.reference ? texts::statedFeature(from, sheets.otherReferenceStates(finding)) : std::string();
    std::string const candidate = finding.candidate ? texts::statedFeature(to, sheets.otherCandidateStates(finding)) : std::string();
    result.title = texts::featureTitle(entry->title, finding.relation, reference, candidate);
    result.explanation = texts::featureExplanation(finding.relation, finding.reference ? meaning(from) : std::string(), finding.candidate ? meaning(to) : std::string(), effect,
                                                   checkOf(sheets, result.caution));
    return result;
}

bool namesNoConnection(std::string_view text) {
    for (std::string_view part : {"| NC", "| N.C", "| N/C", "| DNC", "| NU"}) {
        if (text.find(part) != std::string_view::npos) return true;
    }
    return false;
}

// "2 | VM | Monitor of the charger's side": what stands behind the number.
std::string_view behindNumber(model::Side const& side) {
    std::string_view const text = side.text;
    std::size_t const bar = text.find(" | ");
    bool const number = bar != std::string_view::npos && std::any_of(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(bar), text::isAsciiDigit);
    return number ? text.substr(bar + 3) : text;
}

std::string_view nameOf(model::Side const& side) {
    std::string_view const text = behindNumber(side);
    return text.substr(0, text.find(" | "));
}

// The board's copper would join two supplies.
bool tiesSupplies(Finding const& finding) {
    return compare::relateHandling(behindNumber(*finding.reference), behindNumber(*finding.candidate)) == compare::HandlingChange::OtherNode;
}

// Leads of the one package, which are numbered from 1 on without a gap; 0: not known.
std::size_t leadsOf(model::Datasheet const& sheet) {
    std::set<std::size_t> leads;
    for (auto const& pin : sheet.pins) {
        if (compare::isPad(pin.name) || compare::isPad(pin.number)) continue;
        std::size_t number = 0;
        auto const [end, error] = std::from_chars(pin.number.data(), pin.number.data() + pin.number.size(), number);
        bool const whole = error == std::errc() && end == pin.number.data() + pin.number.size();
        if (!whole || pin.package != sheet.pins.front().package || !leads.insert(number).second) return 0;
    }
    return !leads.empty() && *leads.begin() == 1 && *leads.rbegin() == leads.size() ? leads.size() : 0;
}

TextJudgement judgePin(Finding const& finding, SheetView const& sheets) {
    // Another name or number has no class of wording; another description has.
    bool const misfit = finding.relation == Relation::MeaningChanged && finding.classes.empty();
    bool const lessExact = compare::isNamedLessExactly(finding);
    if (!misfit && !lessExact && finding.reference && finding.candidate) {
        TextJudgement result = judgeWording(finding, sheets);
        result.title = texts::pinTitle(finding, false);
        if (tiesSupplies(finding)) {
            result.severity = Severity::Hazard;
            result.level = levelOf(Outcome::Misfit, result.severity);
            result.judgement = Judgement::HazardSide;
        }
        if (result.level.level >= 2) {
            result.caution = "C-PIN";
            result.explanation = texts::pinExplanation(finding, false);
        }
        return result;
    }
    TextJudgement result;
    result.severity = sheets.family() == "lithium-protection" ? Severity::Hazard : Severity::Function;
    if (misfit) {
        bool const unconnected = namesNoConnection(finding.reference->text) || namesNoConnection(finding.candidate->text);
        result.level = unconnected ? Level{3, false} : levelOf(Outcome::Misfit, result.severity);
        result.judgement = Judgement::HazardSide;
    } else if (lessExact) {
        result.severity = Severity::Function;
        result.level = Level{2, true};
    } else {
        bool const pad = compare::isPad(nameOf(finding.reference ? *finding.reference : *finding.candidate));
        std::size_t const before = leadsOf(sheets.reference());
        std::size_t const after = leadsOf(sheets.candidate());
        bool const leads = !pad && before > 0 && after > 0 && before != after;
        result.severity = leads ? result.severity : Severity::Function;
        result.level = leads ? levelOf(Outcome::Misfit, result.severity) : Level{pad ? 3 : 2, true};
    }
    result.caution = "C-PIN";
    result.title = texts::pinTitle(finding, misfit);
    result.explanation = texts::pinExplanation(finding, misfit);
    return result;
}

// "TSOT-23-6" has the lands of "SOT-23-6" and is lower.
bool differInHeightOnly(Finding const& finding, SheetView const& sheets) {
    auto const canonicalOf = [](std::string const& name, model::Datasheet const& sheet) {
        auto const found = std::find_if(sheet.packages.begin(), sheet.packages.end(), [&name](auto const& package) { return package.name == name; });
        return found == sheet.packages.end() ? std::string() : found->canonical;
    };
    std::string const r = canonicalOf(finding.reference->text, sheets.reference());
    std::string const c = canonicalOf(finding.candidate->text, sheets.candidate());
    return !r.empty() && !c.empty() && (r == "T" + c || c == "T" + r);
}

TextJudgement judgePackage(Finding const& finding, SheetView const& sheets) {
    TextJudgement result;
    result.title = texts::packageTitle(finding);
    result.explanation = texts::packageExplanation(finding);
    if (finding.reference && finding.candidate && finding.relation != Relation::Reworded) {
        result.level = differInHeightOnly(finding, sheets) ? Level{3, false} : levelOf(Outcome::Misfit, Severity::Function);
        result.judgement = Judgement::Worse;
    } else {
        // One of several packages: the ordered one may be common to both.
        result.severity = Severity::Note;
        result.level = {1, false};
    }
    return result;
}

TextJudgement judgeCoverage(Finding const& finding) {
    TextJudgement result;
    result.severity = Severity::Note;
    result.level = {1, finding.open};
    result.title = finding.title.empty() ? texts::coverageTitle(finding) : finding.title;
    result.explanation = finding.explanation.empty() ? texts::coverageExplanation() : finding.explanation;
    return result;
}

// Running heads, document properties, headings: worth a look, never more.
TextJudgement judgeSurroundings(Finding const& finding, SheetView const& sheets) {
    TextJudgement result = judgeWording(finding, sheets);
    bool const editorial = !finding.classes.empty() && std::all_of(finding.classes.begin(), finding.classes.end(), [](auto c) { return c == WordingClass::Edit; });
    result.level = editorial || finding.relation == Relation::Moved ? Level{0, false} : Level{1, false};
    result.severity = Severity::Note;
    result.judgement = Judgement::Complies;
    result.caution.clear();
    if (!finding.title.empty()) result.title = finding.title;
    result.explanation = texts::wordingExplanation(finding, {}, "Look at both pages");
    return result;
}

// The cells that the other line does not have alike, behind the titles of their columns.
std::string ownCells(model::OrderingLine const& line, model::OrderingLine const& other) {
    std::string cells;
    for (auto const& [title, text] : line.attributes) {
        bool const shared = std::any_of(other.attributes.begin(), other.attributes.end(), [&title = title, &text = text](auto const& attribute) {
            return compare::keyOf(attribute.first) == compare::keyOf(title) && compare::keyOf(attribute.second) == compare::keyOf(text);
        });
        if (!shared) cells += title + " " + text + ". ";
    }
    return cells;
}

// A line is about what differs in it, not about all of its columns.
Finding withOwnCells(Finding const& finding, SheetView const& sheets) {
    Finding own = finding;
    if (!finding.reference || !finding.candidate) return own;
    auto const* r = compare::orderingLineAt(sheets.reference().ordering, *finding.reference);
    auto const* c = compare::orderingLineAt(sheets.candidate().ordering, *finding.candidate);
    if (r == nullptr || c == nullptr) return own;
    own.reference->text = ownCells(*r, *c);
    own.candidate->text = ownCells(*c, *r);
    return own;
}

TextJudgement judgeOrdering(Finding const& finding, SheetView const& sheets) {
    TextJudgement result = judgeWording(withOwnCells(finding, sheets), sheets);
    bool const oneSided = !finding.reference || !finding.candidate;
    if (oneSided) {
        result.level = {1, false};
        result.severity = Severity::Note;
        result.caution.clear();
    } else if (!finding.classes.empty() && !std::all_of(finding.classes.begin(), finding.classes.end(), isQuiet)) {
        result.level.level = std::max(result.level.level, levelOfClass(WordingClass::Ord, Subject::Ordinary));
        result.severity = std::max(result.severity, Severity::Function);
    }
    return result;
}

}  // namespace

int levelOfClass(WordingClass wordingClass, Subject subject) {
    bool const grave = subject == Subject::Hazardous;
    switch (wordingClass) {
        case WordingClass::Perm:
        case WordingClass::Pin: return grave ? 4 : 3;
        case WordingClass::Neg:
        case WordingClass::Trig:
        case WordingClass::Conn:
        case WordingClass::Num:
        case WordingClass::Ord:
        case WordingClass::Cond: return 3;
        case WordingClass::Mod:
        case WordingClass::Temp:
        case WordingClass::Scope:
        case WordingClass::Grade:
        case WordingClass::Time: return grave ? 3 : 2;
        case WordingClass::Edit: return 0;
        case WordingClass::Style: return 1;
    }
    return 3;
}

TextJudgement judgeText(Finding const& finding, SheetView const& sheets) {
    switch (finding.kind) {
        case FindingKind::Feature: return judgeFeature(finding, sheets);
        case FindingKind::Pin: return judgePin(finding, sheets);
        case FindingKind::Package: return judgePackage(finding, sheets);
        case FindingKind::Ordering: return judgeOrdering(finding, sheets);
        case FindingKind::Coverage: return judgeCoverage(finding);
        case FindingKind::Section:
        case FindingKind::Document: return judgeSurroundings(finding, sheets);
        default: return judgeWording(finding, sheets);
    }
}

}  // namespace standin::risk
