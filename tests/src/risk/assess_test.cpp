#include "risk/assess.h"

#include <algorithm>
#include <string>
#include <vector>

#include <gtest/gtest.h>

namespace standin::risk {
namespace {

using model::Comparison;
using model::Finding;
using model::FindingKind;
using model::Relation;
using model::Severity;
using model::VerdictLevel;
using model::WordingClass;

vocabulary::Vocabulary const& builtIn() {
    static vocabulary::Vocabulary const vocabulary = std::move(*vocabulary::Vocabulary::builtIn());
    return vocabulary;
}

struct Row {
    char const* name;
    char const* symbol;
    char const* canonical;
    char const* lo;
    char const* hi;
    char const* unit;
};

model::Parameter parameterOf(Row const& row, std::string id) {
    auto const text = [](char const* value) { return *value == '\0' ? std::nullopt : std::optional<std::string>(value); };
    model::Parameter made;
    made.id = std::move(id);
    made.kind = model::ParameterKind::Characteristic;
    made.name = row.name;
    made.symbol = row.symbol;
    made.canonical = row.canonical;
    made.interval =
        model::Interval{.lo = text(row.lo), .typ = std::nullopt, .hi = text(row.hi), .loOpen = false, .hiOpen = false, .unit = row.unit, .relativeTo = {}, .factor = {}};
    return made;
}

// The essential rows that a protector has, so that nothing is missing.
std::vector<Row> essentials() {
    return {{"Overcharge detection voltage", "VCU", "overcharge-detect-voltage", "4.255", "4.305", "V"},
            {"Overdischarge detection voltage", "VDL", "overdischarge-detect-voltage", "2.35", "2.45", "V"},
            {"Discharge overcurrent detection voltage", "VDIOV", "discharge-overcurrent-1-voltage", "0.135", "0.165", "V"},
            {"Load short-circuit detection voltage", "VSHORT", "load-short-detect-voltage", "0.4", "0.6", "V"},
            {"VM pin input voltage", "VVM", "amr-vm", "-28", "0.3", "V"}};
}

struct Pair {
    model::Datasheet reference, candidate;
    Comparison compared;
};

Pair samePair() {
    Pair made;
    int number = 0;
    for (auto const& row : essentials()) {
        std::string const id = "p" + std::to_string(number++);
        made.reference.parameters.push_back(parameterOf(row, id));
        made.candidate.parameters.push_back(parameterOf(row, id));
        made.compared.pairs.push_back({row.canonical, id, id, Relation::Same, model::Judgement::Open, 1.0});
    }
    return made;
}

model::Side side(std::string text, int page = 1) {
    model::Side made;
    made.page = page;
    made.text = std::move(text);
    return made;
}

// Changes row `index` of the candidate and adds the finding.
void change(Pair& pair, std::size_t index, Relation relation, char const* lo, char const* hi) {
    pair.candidate.parameters[index].interval->lo = *lo == '\0' ? std::nullopt : std::optional<std::string>(lo);
    pair.candidate.parameters[index].interval->hi = *hi == '\0' ? std::nullopt : std::optional<std::string>(hi);
    Finding finding;
    finding.id = "f" + std::to_string(index);
    finding.kind = FindingKind::Parameter;
    finding.relation = relation;
    finding.canonical = pair.compared.pairs[index].canonical;
    finding.pair = static_cast<int>(index);
    finding.reference = side("reference row");
    finding.reference->max = *pair.reference.parameters[index].interval->hi;
    finding.reference->unit = "V";
    finding.candidate = side("candidate row");
    finding.candidate->max = hi;
    finding.candidate->unit = "V";
    pair.compared.pairs[index].relation = relation;
    pair.compared.findings.push_back(finding);
}

Finding wording(WordingClass wordingClass, Relation relation, char const* reference, char const* candidate) {
    Finding finding;
    finding.id = "w";
    finding.kind = FindingKind::Wording;
    finding.relation = relation;
    finding.classes = {wordingClass};
    if (*reference != '\0') finding.reference = side(reference);
    if (*candidate != '\0') finding.candidate = side(candidate);
    return finding;
}

Comparison assessed(Pair const& pair) { return assess(pair.compared, pair.reference, pair.candidate, builtIn()); }

TEST(Assess, EqualSheetsHaveNoDifference) {
    auto const result = assessed(samePair());
    EXPECT_EQ(result.verdict.level, VerdictLevel::NoDifference);
    EXPECT_FALSE(result.verdict.incomplete);
    EXPECT_EQ(result.verdict.sentence, "No difference found in the compared parameters (5 of 5 compared).");
    EXPECT_EQ(result.statements.size(), 9U);
    for (auto const& pair : result.pairs) EXPECT_EQ(pair.judgement, model::Judgement::Complies);
}

// A row of a table in a section of curves, on page 1 of both sheets.
Finding curvesRow(WordingClass wordingClass, char const* reference, char const* candidate) {
    Finding row = wording(wordingClass, Relation::MeaningChanged, reference, candidate);
    row.kind = FindingKind::Table;
    row.section = "s9";
    for (auto* printed : {&row.reference, &row.candidate}) (*printed)->box = {100, 100, 300, 110};
    return row;
}

Pair pairWithCurves(model::SectionKind kind = model::SectionKind::Curves) {
    auto pair = samePair();
    pair.reference.sections.push_back({.id = "s9", .kind = kind, .title = "Curves", .level = 1, .page = 1, .box = {}});
    return pair;
}

Finding lettering() { return curvesRow(WordingClass::Num, "Overcharge detection voltage (V) 4.20", "Overcharge detection voltage (V) 4.25"); }

Severity severityOf(Pair pair, Finding const& row) {
    pair.compared.findings.push_back(row);
    return assessed(pair).findings.front().severity;
}

TEST(Assess, LetteringOfCurvesThatWasTakenForATableIsANote) {
    model::Figure figure;
    figure.page = 1;
    figure.box = {90, 50, 310, 200};
    for (auto const kind : {model::SectionKind::Curves, model::SectionKind::Characteristics}) {
        auto pair = pairWithCurves(kind);
        pair.reference.figures.push_back(figure);
        model::Table headed;
        headed.page = 1;
        headed.box = figure.box;
        headed.headRows = 1;
        pair.candidate.tables = {headed};
        EXPECT_EQ(severityOf(pair, lettering()), Severity::Hazard) << "a table in the other sheet";
        pair.candidate.tables.clear();
        EXPECT_EQ(severityOf(pair, lettering()), kind == model::SectionKind::Curves ? Severity::Note : Severity::Hazard);
        EXPECT_NE(severityOf(pair, curvesRow(WordingClass::Pin, "On overcharge CO shall be low, FET off", "On overcharge CO shall be high, FET on")), Severity::Note);
    }
}

TEST(Assess, ARowOfAnotherMakersOutlineIsANote) {
    auto const severity = [](char const* reference, char const* candidate, char const* maker = "Ostrava Semi") {
        auto pair = samePair();
        pair.reference.document.maker = "Harvane";
        pair.candidate.document.maker = maker;
        Finding row = wording(WordingClass::Num, Relation::MeaningChanged, reference, candidate);
        row.kind = FindingKind::Table;
        return severityOf(pair, row);
    };
    char const* const row = "A1 | 0.05 | 0.15 | 0.002 | 0.006";
    EXPECT_EQ(severity(row, "B | 0.19 | 0.30 | 0.007 | 0.012"), Severity::Note);
    EXPECT_EQ(severity(row, "b | 1.27 BSC | 0.050 BSC"), Severity::Note);
    EXPECT_EQ(severity(row, "A1 | 0.05 | 0.25 | 0.002 | 0.006", "Harvane"), Severity::Function) << "one maker's drawing was changed";
    EXPECT_EQ(severity(row, "A1 | 0.05 | 0.25 | 0.002 | 0.006", ""), Severity::Function) << "the maker is not known";
    EXPECT_EQ(severity("A | 0 | 1 | 0", "A | 0 | 1 | 1"), Severity::Function) << "a truth table";
    EXPECT_EQ(severity("IO | 0.5 mA | 1.5 mA", "IO | 0.5 mA | 2.5 mA"), Severity::Function) << "values with units";
    EXPECT_EQ(severity("mm | 1.75 | 0.25", "mm | 2.65 | 0.30"), Severity::Function) << "a unit";
    EXPECT_EQ(severity("Mode | 0.5 | 1.5", "Mode | 0.5 | 2.5"), Severity::Function) << "no letter of a drawing";
}

TEST(Assess, ATableWithAHeadAmongCurvesIsATable) {
    model::Table table;
    table.page = 1;
    table.box = {90, 50, 310, 200};
    table.headRows = 1;
    auto pair = pairWithCurves();
    pair.reference.tables.push_back(table);
    pair.candidate.tables.push_back(table);
    EXPECT_EQ(severityOf(pair, lettering()), Severity::Hazard);
    pair.reference.tables.front().headRows = pair.candidate.tables.front().headRows = 0;
    EXPECT_EQ(severityOf(pair, lettering()), Severity::Note);
    EXPECT_EQ(severityOf(pair, curvesRow(WordingClass::Perm, "Overcharge is prohibited.", "Overcharge is allowed.")), Severity::Hazard);
    pair.reference.tables.front().continues = "t1";
    EXPECT_EQ(severityOf(pair, lettering()), Severity::Hazard) << "its head may stand on the page before";
    table.id = "t1";
    table.page = 0;
    pair.reference.tables.push_back(table);
    EXPECT_EQ(severityOf(pair, lettering()), Severity::Hazard) << "its head stands on the page before";
    pair.reference.tables.back().headRows = 0;
    EXPECT_EQ(severityOf(pair, lettering()), Severity::Note);
    EXPECT_EQ(severityOf(pairWithCurves(), lettering()), Severity::Hazard) << "nothing is known of its place";
}

TEST(Assess, TheVerdictNamesAValueBeforeASentence) {
    auto pair = samePair();
    change(pair, 0, Relation::ReachesHigher, "4.255", "4.340");
    pair.compared.findings.insert(pair.compared.findings.begin(),
                                  wording(WordingClass::Num, Relation::MeaningChanged, "Overcharge detection follows after 1 s.", "Overcharge detection follows after 2 s."));
    auto const result = assessed(pair);
    EXPECT_EQ(result.verdict.reasons.size(), 2U);
    EXPECT_EQ(result.verdict.sentence.find("Bench test before use: Overcharge detection voltage reaches higher by 35 mV"), 0U) << result.verdict.sentence;
}

TEST(Assess, AHigherOverchargeDetectionIsAHazard) {
    auto pair = samePair();
    change(pair, 0, Relation::ReachesHigher, "4.255", "4.340");
    auto const result = assessed(pair);
    ASSERT_EQ(result.findings.size(), 1U);
    auto const& finding = result.findings.front();
    EXPECT_EQ(finding.severity, Severity::Hazard);
    EXPECT_EQ(finding.level, 3);
    EXPECT_EQ(finding.judgement, model::Judgement::HazardSide);
    EXPECT_EQ(finding.hazardSide, model::HazardSide::Higher);
    EXPECT_EQ(finding.title, "Overcharge detection voltage reaches higher by 35 mV");
    EXPECT_EQ(finding.caution, "C-OC");
    EXPECT_NE(finding.explanation.find("max 4.340 V where the reference states max 4.305 V"), std::string::npos) << finding.explanation;
    EXPECT_NE(finding.explanation.find("Check its highest value over temperature"), std::string::npos) << finding.explanation;
    EXPECT_EQ(result.verdict.level, VerdictLevel::BenchTest);
    EXPECT_EQ(result.verdict.reasons, std::vector<std::string>{"f0"});
    ASSERT_EQ(result.cautions.size(), 1U);
    EXPECT_EQ(result.cautions[0].text, builtIn().cautionText("C-OC"));
    EXPECT_EQ(result.pairs[0].judgement, model::Judgement::HazardSide);
}

TEST(Assess, ARowThatMayBeMisreadSaysSo) {
    auto pair = samePair();
    change(pair, 0, Relation::ReachesHigher, "4.255", "4.340");
    pair.reference.parameters[0].confidence = {0.96, {}};
    pair.candidate.parameters[0].confidence = {0.5, {"a sign in the row is a drawing and was not read"}};
    auto const result = assessed(pair);
    auto const& explanation = result.findings.at(0).explanation;
    EXPECT_NE(explanation.find("The candidate's row may be misread (a sign in the row is a drawing and was not read). Look at the page."), std::string::npos) << explanation;
    EXPECT_EQ(explanation.find("reference's row"), std::string::npos) << explanation;
    EXPECT_EQ(result.findings[0].caution, "C-OC");
    ASSERT_EQ(result.cautions.size(), 2U);
    EXPECT_EQ(result.cautions[1].id, "C-READ");
}

// What the row is about does not count: its values are the same under the same load.
TEST(Assess, ASignThatIsPrintedDifferentlyIsANote) {
    auto pair = samePair();
    change(pair, 0, Relation::ConditionsDiffer, "4.255", "4.305");
    auto& turned = pair.compared.findings.front();
    pair.compared.pairs[0].relation = Relation::Same;
    turned.conditions = model::ConditionRelation::OtherSign;
    turned.reference->condition = "IO = -5 mA";
    turned.candidate->condition = "IO = 5 mA";
    auto const result = assessed(pair);
    auto const& finding = result.findings.front();
    EXPECT_EQ(finding.severity, Severity::Note);
    EXPECT_EQ(finding.title, "Overcharge detection voltage: sign of the load current printed differently");
    EXPECT_NE(finding.explanation.find("IO = 5 mA and the reference's under IO = -5 mA; makers differ in the sign"), std::string::npos) << finding.explanation;
    EXPECT_TRUE(finding.caution.empty());
    EXPECT_EQ(result.pairs[0].judgement, model::Judgement::Complies);
}

TEST(Assess, ALoadThatIsPrintedAsABoundIsANote) {
    auto pair = samePair();
    change(pair, 0, Relation::ConditionsDiffer, "4.255", "4.305");
    auto& bound = pair.compared.findings.front();
    pair.compared.pairs[0].relation = Relation::Same;
    bound.conditions = model::ConditionRelation::AtBound;
    bound.reference->condition = "IO ≤ 5 mA";
    bound.candidate->condition = "IO = 5 mA";
    auto const result = assessed(pair);
    auto const& finding = result.findings.front();
    EXPECT_EQ(finding.severity, Severity::Note);
    EXPECT_EQ(finding.title, "Overcharge detection voltage: load printed as a bound in one sheet only");
    EXPECT_NE(finding.explanation.find("IO = 5 mA and the reference's under IO ≤ 5 mA; the heaviest load is the same"), std::string::npos) << finding.explanation;
    EXPECT_EQ(result.pairs[0].judgement, model::Judgement::Complies);
}

TEST(Assess, ALowerOverchargeDetectionCarriesNoCautionOfOvercharge) {
    auto pair = samePair();
    change(pair, 0, Relation::ReachesLower, "4.200", "4.290");
    auto const result = assessed(pair);
    EXPECT_EQ(result.findings[0].severity, Severity::Function);
    EXPECT_TRUE(result.cautions.empty());
    EXPECT_EQ(result.verdict.level, VerdictLevel::ConfirmFunction);
}

TEST(Assess, ANarrowerChargerSideIsNotToBeSubstituted) {
    auto pair = samePair();
    change(pair, 4, Relation::Inside, "-12", "0.3");
    pair.compared.findings[0].reference->min = "-28";
    auto const result = assessed(pair);
    EXPECT_EQ(result.findings[0].severity, Severity::Hazard);
    EXPECT_EQ(result.findings[0].caution, "C-CHG");
    EXPECT_EQ(result.findings[0].title, "Rating of the VM pin (charger side) is narrower at its lower end by 16 V");
    EXPECT_EQ(result.verdict.level, VerdictLevel::DoNotSubstitute);
}

TEST(Assess, OneCautionForEachCause) {
    auto pair = samePair();
    change(pair, 2, Relation::ReachesHigher, "0.135", "0.185");
    pair.compared.findings.push_back(wording(WordingClass::Num, Relation::MeaningChanged, "Discharge overcurrent acts at 150 mV.", "Discharge overcurrent acts at 170 mV."));
    auto const result = assessed(pair);
    ASSERT_EQ(result.cautions.size(), 1U);
    EXPECT_EQ(result.cautions[0].id, "C-OI");
    EXPECT_EQ(result.cautions[0].findings.size(), 2U);
}

TEST(Assess, AReleaseThatReachesTheDetectionIsAHazard) {
    Row const release = {"Overcharge release voltage", "VCL", "overcharge-release-voltage", "4.05", "4.15", "V"};
    for (bool const reaches : {false, true}) {
        auto pair = samePair();
        pair.reference.parameters.push_back(parameterOf(release, "p5"));
        pair.candidate.parameters.push_back(parameterOf(release, "p5"));
        pair.compared.pairs.push_back({release.canonical, "p5", "p5", Relation::Same, model::Judgement::Open, 1.0});
        change(pair, 5, Relation::ReachesHigher, "4.05", reaches ? "4.26" : "4.20");
        EXPECT_EQ(assessed(pair).findings[0].severity, reaches ? Severity::Hazard : Severity::Function);
    }
}

TEST(Assess, FeatureChangesByTheirDirection) {
    struct Case {
        char const* feature;
        char const* from;
        char const* to;
        Severity severity;
        VerdictLevel verdict;
    };
    Case const cases[] = {
        {"zero-volt-charging", "inhibited", "allowed", Severity::Hazard, VerdictLevel::DoNotSubstitute},
        {"zero-volt-charging", "allowed", "inhibited", Severity::Hazard, VerdictLevel::BenchTest},
        {"load-short-function", "present", "absent", Severity::Hazard, VerdictLevel::DoNotSubstitute},
        {"overcurrent-release", "latched", "load-removal", Severity::Hazard, VerdictLevel::BenchTest},
        {"overcurrent-release", "load-removal", "latched", Severity::Function, VerdictLevel::ConfirmFunction},
        {"overdischarge-release-condition", "charger-or-voltage", "charger-and-voltage", Severity::Function, VerdictLevel::ConfirmFunction},
        {"balancing", "none", "external", Severity::Margin, VerdictLevel::SmallDifferences},
    };
    for (auto const& one : cases) {
        auto pair = samePair();
        pair.reference.features.push_back({one.feature, one.from, 1, {}, "reference text"});
        pair.candidate.features.push_back({one.feature, one.to, 2, {}, "candidate text"});
        Finding finding;
        finding.id = "x";
        finding.kind = FindingKind::Feature;
        finding.relation = Relation::ModeDiffers;
        finding.canonical = one.feature;
        finding.reference = side("reference text", 1);
        finding.candidate = side("candidate text", 2);
        pair.compared.findings.push_back(finding);
        auto const result = assessed(pair);
        EXPECT_EQ(result.findings[0].severity, one.severity) << one.feature << " " << one.from;
        EXPECT_EQ(result.verdict.level, one.verdict) << one.feature << " " << one.from;
        EXPECT_NE(result.findings[0].title.find(one.to), std::string::npos) << result.findings[0].title;
    }
}

TEST(Assess, AFeatureThatOneSheetStatesInTwoWaysSaysSo) {
    auto pair = samePair();
    pair.reference.features = {
        {"zero-volt-charging", "inhibited", 1, {}, "A: NO"}, {"zero-volt-charging", "allowed", 1, {0, 50, 10, 60}, "B: YES"}, {"zero-volt-charging", "inhibited", 1, {}, "C: NO"}};
    pair.candidate.features = {{"zero-volt-charging", "allowed", 2, {}, "candidate text"}};
    Finding finding;
    finding.id = "x";
    finding.kind = FindingKind::Feature;
    finding.relation = Relation::ModeDiffers;
    finding.canonical = "zero-volt-charging";
    finding.reference = side("A: NO", 1);
    finding.candidate = side("candidate text", 2);
    pair.compared.findings.push_back(finding);
    EXPECT_EQ(assessed(pair).findings[0].title, "0 V battery charging: inhibited (elsewhere allowed) in the reference, allowed in the candidate");
}

TEST(Assess, WordingCountsByWhatItIsAbout) {
    struct Case {
        WordingClass wordingClass;
        Relation relation;
        char const* reference;
        char const* candidate;
        Severity severity;
    };
    Case const cases[] = {
        {WordingClass::Neg, Relation::MeaningChanged, "The load short-circuit detection is not disabled in the overcharge state.",
         "The load short-circuit detection is disabled in the overcharge state.", Severity::Hazard},
        {WordingClass::Perm, Relation::MeaningChanged, "Charging of a 0 V cell is prohibited.", "Charging of a 0 V cell is permitted.", Severity::Hazard},
        {WordingClass::Pin, Relation::MeaningChanged, "The NC pin may be left open.", "The NC pin must be left open.", Severity::Function},
        {WordingClass::Num, Relation::MeaningChanged, "The reel holds 3000 pieces.", "The reel holds 2500 pieces.", Severity::Function},
        {WordingClass::Edit, Relation::Reworded, "Over-charge detection is shown in Figure 3.", "Overcharge detection is shown in Fig. 5.", Severity::Editorial},
        {WordingClass::Style, Relation::Reworded, "Overcharge stops charging.", "Charging ends at overcharge.", Severity::Note},
        {WordingClass::Style, Relation::OnlyCandidate, "", "A small package suits portable loggers.", Severity::Note},
        {WordingClass::Num, Relation::OnlyReference, "Overcharge detection acts after 1 s.", "", Severity::Note},
        {WordingClass::Perm, Relation::OnlyReference, "Charging of a 0 V cell is prohibited.", "", Severity::Hazard},
        {WordingClass::Edit, Relation::Moved, "Overcharge stops charging.", "Overcharge stops charging.", Severity::Editorial},
    };
    for (auto const& one : cases) {
        auto pair = samePair();
        pair.compared.findings.push_back(wording(one.wordingClass, one.relation, one.reference, one.candidate));
        auto const result = assessed(pair);
        EXPECT_EQ(result.findings[0].severity, one.severity) << one.reference << " / " << one.candidate;
        EXPECT_FALSE(result.findings[0].title.empty());
        EXPECT_FALSE(result.findings[0].explanation.empty());
    }
}

TEST(Assess, ASentenceBehindAFeatureWeighsNoMoreThanIt) {
    auto pair = samePair();
    pair.reference.features.push_back({"overdischarge-release-condition", "charger-or-voltage", 1, {}, "with or"});
    pair.candidate.features.push_back({"overdischarge-release-condition", "charger-and-voltage", 1, {}, "with and"});
    Finding feature;
    feature.id = "x";
    feature.kind = FindingKind::Feature;
    feature.relation = Relation::ModeDiffers;
    feature.canonical = "overdischarge-release-condition";
    feature.reference = side("with or");
    feature.candidate = side("with and");
    pair.compared.findings.push_back(feature);
    auto sentence = wording(WordingClass::Conn, Relation::MeaningChanged, "Overdischarge ends with a charger or above VDU.", "Overdischarge ends with a charger and above VDU.");
    sentence.consequenceOf = "x";
    pair.compared.findings.push_back(sentence);
    auto const result = assessed(pair);
    EXPECT_EQ(result.findings[0].severity, Severity::Function);
    EXPECT_EQ(result.findings[1].severity, Severity::Function);
    EXPECT_EQ(result.verdict.level, VerdictLevel::ConfirmFunction);
}

TEST(Assess, RevisionAndLegalSectionsStayNotes) {
    auto pair = samePair();
    pair.reference.sections.push_back({"s1", model::SectionKind::Revision, "Revision history", 1, 9, {}});
    auto finding = wording(WordingClass::Num, Relation::MeaningChanged, "Overcharge detection changed to 4.28 V.", "Overcharge detection changed to 4.30 V.");
    finding.section = "s1";
    pair.compared.findings.push_back(finding);
    EXPECT_EQ(assessed(pair).findings[0].severity, Severity::Note);
}

TEST(Assess, PinsAndPackages) {
    auto pair = samePair();
    Finding pin;
    pin.id = "pin";
    pin.kind = FindingKind::Pin;
    pin.relation = Relation::MeaningChanged;
    pin.reference = side("2 | VM | charger side");
    pin.candidate = side("2 | VSS | cell side");
    pair.compared.findings.push_back(pin);
    auto result = assessed(pair);
    EXPECT_EQ(result.findings[0].level, 4);
    EXPECT_EQ(result.findings[0].severity, Severity::Hazard);
    EXPECT_EQ(result.findings[0].caution, "C-PIN");
    EXPECT_EQ(result.findings[0].title, "Pin 2 | VM in the reference, 2 | VSS in the candidate");

    pair.compared.findings[0].kind = FindingKind::Package;
    pair.compared.findings[0].reference = side("SOT-23-6");
    pair.compared.findings[0].candidate = side("SOT-23-5");
    result = assessed(pair);
    EXPECT_EQ(result.verdict.level, VerdictLevel::DoNotSubstitute);

    pair.compared.findings[0].candidate = side("TSOT-26");
    pair.reference.packages.push_back({.name = "SOT-23-6", .canonical = "SOT-23-6", .pins = 6, .page = 1, .box = {}});
    pair.candidate.packages.push_back({.name = "TSOT-26", .canonical = "TSOT-23-6", .pins = 6, .page = 1, .box = {}});
    result = assessed(pair);
    EXPECT_EQ(result.verdict.level, VerdictLevel::BenchTest) << "the same lands, another height";
}

// The board's copper under the pad would join cell minus and pack minus.
TEST(Assess, APadOnAnotherSupplyIsNotToBeFitted) {
    auto pair = samePair();
    Finding pin;
    pin.id = "pin";
    pin.kind = FindingKind::Pin;
    pin.relation = Relation::MeaningChanged;
    pin.classes = {WordingClass::Pin};
    pin.reference = side("7 | EP | Exposed pad, connect to VSS");
    pin.candidate = side("7 | EP | Exposed pad, tied to VM");
    pair.compared.findings.push_back(pin);
    auto result = assessed(pair);
    EXPECT_EQ(result.findings[0].level, 4);
    EXPECT_EQ(result.findings[0].severity, Severity::Hazard);
    pair.compared.findings[0].relation = Relation::OnlyCandidate;
    pair.compared.findings[0].classes.clear();
    pair.compared.findings[0].reference.reset();
    EXPECT_EQ(assessed(pair).findings[0].level, 3) << "a pad where the reference has none";
}

TEST(Assess, APinThatSharesItsNameIsToBeLookedUp) {
    auto pair = samePair();
    Finding pin;
    pin.id = "pin";
    pin.kind = FindingKind::Pin;
    pin.relation = Relation::Reworded;
    pin.classes = {WordingClass::Pin};
    pin.reference = side("2 | Inputs 1 / VCC Inputs 1");  // with the lettering beside it
    pin.candidate = side("2 | Inverting Input 1 / VEE 4");
    pair.compared.findings.push_back(pin);
    auto const result = assessed(pair);
    EXPECT_EQ(result.findings[0].severity, Severity::Function);
    EXPECT_EQ(result.findings[0].level, 2);
    EXPECT_TRUE(result.findings[0].open);
    EXPECT_TRUE(result.findings[0].explanation.find("Look on both drawings") != std::string::npos) << result.findings[0].explanation;
}

TEST(Assess, AnotherCountOfLeadsDoesNotFit) {
    auto pair = samePair();
    for (char const* number : {"1", "2", "3"}) pair.reference.pins.push_back({number, "P", "", "", 1, {}});
    pair.candidate.pins = pair.reference.pins;
    pair.candidate.pins.push_back({"EP", "EP", "", "", 1, {}});
    Finding pin;
    pin.id = "pin";
    pin.kind = FindingKind::Pin;
    pin.relation = Relation::OnlyCandidate;
    pin.candidate = side("4 | CTL | Control");
    pair.compared.findings.push_back(pin);
    EXPECT_EQ(assessed(pair).findings[0].level, 2) << "three leads each";
    pair.candidate.pins.push_back({"4", "CTL", "", "", 1, {}});
    EXPECT_EQ(assessed(pair).findings[0].level, 4);
    pair.candidate.pins.back().number = "6";
    EXPECT_EQ(assessed(pair).findings[0].level, 2) << "some were not read";
}

TEST(Assess, OrderIsSeverityThenDocumentOrder) {
    auto pair = samePair();
    pair.compared.findings.push_back(wording(WordingClass::Edit, Relation::Reworded, "The colour.", "The color."));
    change(pair, 1, Relation::ReachesHigher, "2.40", "2.50");
    change(pair, 0, Relation::ReachesHigher, "4.255", "4.340");
    change(pair, 2, Relation::ReachesHigher, "0.135", "0.185");
    auto const result = assessed(pair);
    std::vector<std::string> ids;
    for (auto const& finding : result.findings) ids.push_back(finding.id);
    EXPECT_EQ(ids, (std::vector<std::string>{"f0", "f2", "f1", "w"}));
}

TEST(Assess, WhatWasNotReadForbidsNoDifference) {
    auto pair = samePair();
    pair.candidate.coverage.pagesWithoutText = {3};
    auto result = assessed(pair);
    EXPECT_NE(result.verdict.level, VerdictLevel::NoDifference);
    EXPECT_TRUE(result.verdict.incomplete);
    EXPECT_EQ(result.verdict.incompleteReasons[0], "Page 3 of the candidate could not be read: no text is stored there.");

    pair = samePair();
    pair.candidate.coverage.drawnSigns.push_back({"before \"8\"", 2, {}});
    result = assessed(pair);
    EXPECT_NE(result.verdict.level, VerdictLevel::NoDifference);
    EXPECT_EQ(result.verdict.incompleteReasons[0], "One sign in the text of the candidate is a drawing and was not read.");

    pair = samePair();
    pair.reference.coverage.unaccounted.push_back({"17", 2, {}});
    result = assessed(pair);
    EXPECT_NE(result.verdict.level, VerdictLevel::NoDifference);
    EXPECT_TRUE(result.verdict.incomplete);

    pair = samePair();
    Finding coverage;
    coverage.id = "c";
    coverage.kind = FindingKind::Coverage;
    coverage.relation = Relation::Unread;
    coverage.title = "tables-unread";
    coverage.open = true;
    coverage.candidate = side("table on page 4", 4);
    pair.compared.findings.push_back(coverage);
    result = assessed(pair);
    EXPECT_EQ(result.findings[0].severity, Severity::Note);
    EXPECT_EQ(result.findings[0].caution, "C-READ");
    EXPECT_EQ(result.findings[0].title, "Tables that were found and not understood");
    EXPECT_NE(result.verdict.level, VerdictLevel::NoDifference);
    EXPECT_TRUE(result.verdict.incomplete);
}

TEST(Assess, EssentialsThatNeitherStatesMakeItIncomplete) {
    auto pair = samePair();
    for (auto* sheet : {&pair.reference, &pair.candidate}) sheet->parameters.erase(sheet->parameters.begin() + 3);
    pair.compared.pairs.erase(pair.compared.pairs.begin() + 3);
    auto const result = assessed(pair);
    EXPECT_TRUE(result.verdict.incomplete);
    ASSERT_EQ(result.verdict.incompleteReasons.size(), 1U);
    EXPECT_EQ(result.verdict.incompleteReasons[0], "No value was found in either sheet for: short-circuit detection.");
}

TEST(Assess, AParameterThatNoVocabularyKnowsCountsByItsWords) {
    auto pair = samePair();
    Row const unknown = {"Overcharge watchdog interval", "", "", "1", "2", "s"};
    pair.reference.parameters.push_back(parameterOf(unknown, "p5"));
    pair.candidate.parameters.push_back(parameterOf(unknown, "p5"));
    pair.compared.pairs.push_back({"", "p5", "p5", Relation::Same, model::Judgement::Open, 1.0});
    change(pair, 5, Relation::ReachesHigher, "1", "3");
    auto const result = assessed(pair);
    EXPECT_EQ(result.findings[0].severity, Severity::Hazard);
    EXPECT_EQ(result.findings[0].hazardSide, model::HazardSide::Unknown);
    EXPECT_EQ(result.findings[0].title, "Overcharge watchdog interval reaches higher by 1 s");
}

// "Q'H" measured at "VIN = VIH" is no rating of the input.
TEST(Assess, AConditionDoesNotMakeAnUnknownParameterAHazard) {
    auto pair = samePair();
    Row const unknown = {"Blanking interval", "TB", "", "1", "2", "s"};
    for (auto* sheet : {&pair.reference, &pair.candidate}) {
        sheet->parameters.push_back(parameterOf(unknown, "p5"));
        sheet->parameters.back().condition = "behind the overcharge detection delay";
    }
    pair.compared.pairs.push_back({"", "p5", "p5", Relation::Same, model::Judgement::Open, 1.0});
    change(pair, 5, Relation::ReachesHigher, "1", "3");
    EXPECT_LT(assessed(pair).findings[0].severity, Severity::Hazard);
}

TEST(Assess, TheTitleOfAPlotIsNoHazard) {
    auto const severity = [](char const* reference, char const* candidate) {
        auto pair = samePair();
        pair.compared.findings.push_back(wording(WordingClass::Num, Relation::MeaningChanged, reference, candidate));
        return assessed(pair).findings.back().severity;
    };
    EXPECT_EQ(severity("Figure 6. Overcharge detection voltage versus temperature", "OVERCHARGE DETECTION VOLTAGE VS TEMPERATURE AT 2 CELLS"), Severity::Note);
    EXPECT_EQ(severity("The overcharge detection voltage is 4.28 V.", "Overcharge detection voltage versus temperature"), Severity::Hazard);
    EXPECT_EQ(severity("The overcharge detection voltage versus temperature is 4.28 V.", "The overcharge detection voltage versus temperature is 4.35 V."), Severity::Hazard);
}

// A version's line is about the cells that differ.
TEST(Assess, AnOrderingLineCountsByItsOwnCells) {
    auto const severity = [](char const* detection, char const* marking) {
        auto pair = samePair();
        model::Rect const box{50, 100, 500, 112};
        pair.reference.ordering.push_back({"QX17-A", {{"Overcharge detection voltage VCU", "4.28 V"}, {"Marking", "17A"}}, "t1", 2, box});
        pair.candidate.ordering.push_back({"QX17-A", {{"Overcharge detection voltage VCU", detection}, {"Marking", marking}}, "t1", 3, box});
        std::string const line = std::string("QX17-A | ") + detection + " | " + marking;
        Finding finding = wording(WordingClass::Num, Relation::MeaningChanged, "QX17-A | 4.28 V | 17A", line.c_str());
        finding.kind = FindingKind::Ordering;
        finding.reference->page = 2;
        finding.candidate->page = 3;
        finding.reference->box = finding.candidate->box = box;
        pair.compared.findings.push_back(finding);
        return assessed(pair).findings.back().severity;
    };
    EXPECT_EQ(severity("4.28V", "17B"), Severity::Function);
    EXPECT_EQ(severity("4.35 V", "17A"), Severity::Hazard);
}

// Every text that we write is searched for words that vouch for a part.
TEST(Assess, NoTextVouchesForAPart) {
    auto pair = samePair();
    Relation const relations[] = {Relation::Inside,        Relation::Wider,         Relation::ReachesHigher,  Relation::ReachesLower, Relation::ClearAbove,
                                  Relation::ClearBelow,    Relation::OneSided,      Relation::TypEqual,       Relation::TypDiffers,   Relation::ConditionsDiffer,
                                  Relation::NotComparable, Relation::OnlyReference, Relation::OnlyCandidate,  Relation::UnitConflict, Relation::ConflictInDocument,
                                  Relation::Unread,        Relation::Reworded,      Relation::MeaningChanged, Relation::ModeDiffers,  Relation::ModeUnstated,
                                  Relation::Moved};
    FindingKind const kinds[] = {FindingKind::Parameter, FindingKind::Table,  FindingKind::Wording, FindingKind::Pin,      FindingKind::Package, FindingKind::Ordering,
                                 FindingKind::Feature,   FindingKind::Figure, FindingKind::Section, FindingKind::Document, FindingKind::Coverage};
    for (auto const kind : kinds) {
        for (auto const relation : relations) {
            for (int wordingClass = 0; wordingClass <= static_cast<int>(WordingClass::Style); ++wordingClass) {
                Finding finding = wording(static_cast<WordingClass>(wordingClass), relation, "Overcharge one", "Overcharge two");
                finding.kind = kind;
                finding.pair = kind == FindingKind::Parameter ? wordingClass % 5 : -1;
                finding.canonical = kind == FindingKind::Parameter ? pair.compared.pairs[static_cast<std::size_t>(finding.pair)].canonical
                                    : kind == FindingKind::Feature ? "zero-volt-charging"
                                                                   : "";
                if (relation == Relation::OnlyReference) finding.candidate.reset();
                if (relation == Relation::OnlyCandidate) finding.reference.reset();
                pair.compared.findings.push_back(finding);
            }
        }
    }
    auto const result = assessed(pair);
    std::vector<std::string> texts = result.verdict.incompleteReasons;
    texts.push_back(result.verdict.sentence);
    for (auto const& finding : result.findings) {
        texts.push_back(finding.title);
        texts.push_back(finding.explanation);
        EXPECT_FALSE(finding.title.empty());
    }
    for (auto const* entry : builtIn().parameters()) {
        texts.push_back(entry->title);
        texts.push_back(entry->higher);
        texts.push_back(entry->lower);
    }
    for (auto const* feature : builtIn().features()) {
        texts.push_back(feature->title);
        texts.push_back(feature->concern);
        for (auto const& state : feature->states) texts.push_back(state.meaning);
        for (auto const& concern : feature->concerns) texts.push_back(concern.text);
    }
    for (auto text : texts) {
        std::transform(text.begin(), text.end(), text.begin(), [](unsigned char byte) { return static_cast<char>(byte >= 'A' && byte <= 'Z' ? byte + 32 : byte); });
        // These name a diagram, a timer or a barrier, not a part.
        for (char const* trade : {"safe operating area", "safety timer", "safety barrier"}) {
            for (auto place = text.find(trade); place != std::string::npos; place = text.find(trade)) text.erase(place, 4);
        }
        for (char const* word : {"safe", "equivalent", "certified", "guarantee", "approved", "100 %", "100%", "no risk", "bypass", "drop-in", "you can charge", "% match"}) {
            EXPECT_EQ(text.find(word), std::string::npos) << text;
        }
    }
}

}  // namespace
}  // namespace standin::risk
