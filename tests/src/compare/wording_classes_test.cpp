#include "compare/wording_classes.h"

#include <gtest/gtest.h>

#include <fmt/format.h>

namespace standin::compare {
namespace {

using model::Relation;
using model::WordingClass;
using enum model::WordingClass;

char const* nameOf(WordingClass wording) {
    static constexpr char const* kNames[] = {"NEG", "MOD", "PERM", "TRIG", "CONN", "NUM", "PIN", "TEMP", "SCOPE", "GRADE", "ORD", "TIME", "COND", "EDIT", "STYLE"};
    return kNames[static_cast<std::size_t>(wording)];
}

std::string shown(std::vector<WordingClass> const& classes) {
    std::string text;
    for (WordingClass const wording : classes) text += fmt::format("{} ", nameOf(wording));
    return text;
}

struct Row {
    int number;  // 0: not one of the 49 of the domain notes
    char const* reference;
    char const* candidate;
    WordingClass wording;
};

constexpr Row kRows[] = {
    {1, "Charging of a 0 V cell is permitted.", "Charging of a 0 V cell is prohibited.", Perm},
    {2, "The 0 V charge function is available.", "The 0 V charge function is unavailable.", Neg},
    {3, "The overcurrent state is released automatically when the load is removed.", "The overcurrent state is released when a charger is connected.", Trig},
    {4, "Release needs the charger to be removed and a load to be connected.", "Release needs the charger to be removed or a load to be connected.", Conn},
    {5, "The NC pin can be connected to VSS.", "The NC pin must be left open.", Pin},
    {6, "Connect pin 5 to VDD.", "Connect pin 5 to VSS.", Pin},
    {7, "Leave the test pin open in normal use.", "Tie the test pin to VSS in normal use.", Pin},
    {8, "A 0.1 µF capacitor should be fitted close to VDD.", "A 0.1 µF capacitor must be fitted close to VDD.", Mod},
    {9, "A 0.1 µF capacitor must be fitted close to VDD.", "A 0.01 µF capacitor must be fitted close to VDD.", Num},
    {10, "The series resistor shall not exceed 470 Ω.", "The series resistor shall not exceed 4.7 kΩ.", Num},
    {11, "After overdischarge the IC enters power-down.", "After overdischarge the IC does not enter power-down.", Neg},
    {12, "Recovery requires a charger.", "Recovery occurs when the cell voltage rises above the release level.", Trig},
    {13, "Delays are guaranteed by design.", "Delays are tested in production.", Grade},
    {14, "Limits apply from −40 to 85 °C.", "Limits apply at 25 °C.", Temp},
    {15, "Limits apply from −20 to 60 °C.", "Limits apply from −20 to 70 °C.", Temp},
    {16, "Each cell voltage is monitored.", "The total voltage is monitored.", Scope},
    {17, "Charging stops when any cell exceeds the threshold.", "Charging stops when all cells exceed the threshold.", Scope},
    {18, "Only the discharge FET is turned off.", "Both FETs are turned off.", Scope},
    {19, "Charging stops until the voltage falls below the release level.", "Charging stops unless the voltage falls below the release level.", Conn},
    {20, "The output goes low in overcharge.", "The output goes high in overcharge.", Pin},
    {21, "The output is CMOS.", "The output is an N-channel open drain.", Pin},
    {22, "The pad may be connected to VSS.", "The pad is connected to VM inside.", Pin},
    {23, "The device does not need an external delay capacitor.", "The device needs an external delay capacitor.", Neg},
    {24, "Suffix G means lead-free finish.", "Suffix G means 4.425 V version.", Ord},
    {25, "The suffix A selects a delay of 1 s.", "The suffix A selects a delay of 128 ms.", Ord},
    {26, "If the charger is connected, hysteresis is cancelled.", "Hysteresis is kept, whether or not a charger is connected.", Cond},
    {27, "Current consumption is 0.1 µA max in power-down.", "Current consumption is 0.1 µA typ in power-down.", Grade},
    {28, "Reverse connection of the charger is allowed.", "Reverse connection of the charger must be avoided.", Perm},
    {29, "The device may be used in series connection.", "The device may not be used in series connection.", Perm},
    {30, "The charger is checked before the FETs are turned on.", "The charger is checked after the FETs are turned on.", Time},
    {31, "Detection is inhibited for the first 10 ms after power-on.", "Detection is active from power-on.", Time},
    {32, "Do not apply more than 28 V between VDD and VM.", "Do not apply more than 10 V between VDD and VM.", Num},
    {33, "The IC operates except when VDD is below 1.5 V.", "The IC operates when VDD is below 1.5 V.", Cond},
    {34, "Overcharge detection voltage", "Over-charge detection voltage", Edit},
    {35, "The behaviour is shown in Figure 3.", "The behavior is shown in Fig. 5.", Edit},
    {36, "Operating temperature Ta = −40 to +85 °C", "Operating Temperature TA: −40 °C ~ 85 °C", Edit},
    {37, "Please connect the capacitor.", "Connect the capacitor.", Edit},
    {38, "The pin is connected to the negative terminal of the cell.", "This terminal connects to the cell's negative pole.", Style},
    {39, "The pin is connected to the negative terminal of the cell.", "The pin is connected to the negative terminal of the charger.", Pin},
    {40, "Charging is stopped when the cell voltage exceeds VCU for tCU or longer.", "Charging is stopped when the cell voltage exceeds VCL for tCU or longer.", Num},
    {41, "The discharge current is detected by the voltage across the FETs.", "The discharge current is detected by the voltage across the sense resistor.", Trig},
    {42, "Stress above these ratings may damage the device.", "Operation above these ratings is not guaranteed.", Grade},
    {43, "Cells of up to 4.20 V charge voltage", "Cells of up to 4.35 V charge voltage", Num},
    {44, "The product is suitable for use in vehicles.", "The product is not intended for use in vehicles.", Perm},
    {45, "When both inputs are high the output is on.", "When either input is high the output is on.", Conn},
    {46, "The thermal pad need not be soldered.", "The thermal pad must not be soldered.", Perm},
    {47, "禁止向0V电池充电", "允许向0V电池充电", Perm},
    {48, "端子はオープンにしてください", "端子はVSSに接続してください", Pin},
    {49, "コンデンサの接続を推奨します", "コンデンサを必ず接続してください", Mod},
    // Further ones.
    {0, "A capacitor of 0.1 µF is used.", "A capacitor of 100 nF is used.", Edit},
    {0, "The resistance is 50 mΩ.", "The resistance is 50 MΩ.", Num},
    {0, "The values are given in mΩ.", "The values are given in MΩ.", Num},
    {0, "Connect V- to the cell.", "Connect V+ to the cell.", Pin},
    {0, "The limit is ≤ 5 V.", "The limit is < 5 V.", Num},
    {0, "The maximum voltage is given.", "The minimum voltage is given.", Num},
    {0, "The current is 3 mA.", "The current is 3 µA.", Num},
    {0, "It does not restart.", "It now restarts.", Neg},
    {0, "The positive side is used.", "The negative side is used.", Pin},
    {0, "Limits hold at Ta = 25 °C.", "Limits hold at Tj = 25 °C.", Temp},
    {0, "The delay of two outputs is equal.", "The delay of three outputs is equal.", Num},
    {0, "It waits for the rising edge.", "It waits for the falling edge.", Num},
    {0, "The gain is set by an internal resistor.", "The gain is set by an external resistor.", Pin},
    {0, "A is 5 V and B is 3 V.", "A is 3 V and B is 5 V.", Num},
    {0, "You MUST NOT open it.", "You may open it.", Perm},
    {0, "Das Gerät darf nicht geöffnet werden.", "Das Gerät darf geöffnet werden.", Perm},
    {0, "Der Widerstand muss angeschlossen werden.", "Der Widerstand sollte angeschlossen werden.", Mod},
    {0, "引脚必须悬空", "引脚建议悬空", Mod},
    {0, "检测延迟时间为1.2s", "检测延迟时间为1200ms", Edit},
    {0, "The colour code of the terminals is given.", "The color code of the pins is given.", Edit},
    {0, "POWER DOWN CURRENT", "Power-down current", Edit},
    {0, "The DO pin goes to its level.", "The CO pin goes to its level.", Pin},
    // Set phrases of sheets.
    {0, "(GND=0V, Ta=25°C unless otherwise specified)", "(TA = 25 °C)", Edit},
    {0, "(GND=0V, Ta=25°C unless otherwise specified)", "(GND=7V, Ta=25°C unless otherwise specified)", Num},
    {0, "(VSS=0V, Ta=25°C)", "(Ta=85°C, unless otherwise noted)", Temp},
    {0, "Drain current over gate voltage (Note E)", "Drain current over gate voltage", Edit},
    {0, "Drain current over gate voltage (Notes 1, 2)", "Drain current over gate voltage (Note C)", Edit},
    {0, "Charging stops unless it is warm.", "Charging stops.", Conn},
    // Other verbs, other negations, words that exclude each other.
    {0, "The lamp driver is inverting.", "The lamp driver is non-inverting.", Neg},
    {0, "The timer is of the resettable type.", "The timer is of the non-resettable type.", Neg},
    {0, "The lamp timer remains operative.", "The lamp timer ceases to operate.", Neg},
    {0, "The lamp driver accepts a start at 0 V.", "The lamp driver refuses a start at 0 V.", Neg},
    {0, "A heat sink is compulsory.", "A heat sink is a good idea.", Mod},
    {0, "A filter is obligatory at the lamp.", "A filter ought to be fitted at the lamp.", Mod},
    {0, "The user needs to check the lamp.", "The user is free to check the lamp.", Mod},
    {0, "Use in ships is authorised.", "Use in ships is ruled out.", Perm},
    {0, "You do not need to check the lamp.", "You need to check the lamp.", Perm},
    {0, "The lamp alone is lit.", "The lamp and the bell are lit.", Scope},
    {0, "The limits hold over the full temperature range.", "The limits hold at room temperature.", Temp},
    {0, "Lighting ends in the hot state.", "Lighting ends in the cold state.", Temp},
    {0, "The pull-up resistor is inside.", "The pull-down resistor is inside.", Pin},
    {0, "The anode is beside the lamp.", "The cathode is beside the lamp.", Pin},
    {0, "LAMP goes to \"H\".", "LAMP goes to \"L\".", Pin},
    {0, "LAMP goes to \"H\".", "LAMP goes to high.", Edit},
    {0, "出力は「H」になります。", "出力は「L」になります。", Pin},
    {0, "The lamp current is doubled.", "The lamp current is tripled.", Num},
    {0, "The peak lamp current is limited.", "The rms lamp current is limited.", Num},
    {0, "The fault lasts minutes.", "The fault lasts seconds.", Time},
    {0, "The switch-off is permanent.", "The switch-off is temporary.", Trig},
    {0, "The output survives an open circuit.", "The output survives a short circuit.", Trig},
    {0, "The switch is on the high side.", "The switch is on the low side.", Num},
    {0, "The current flows from drain to source.", "The current flows from source to drain.", Pin},
    {0, "The timer is fixed.", "The timer is adjustable.", Trig},
    {0, "Lighting is terminated by the timer.", "Lighting is resumed by the timer.", Trig},
    {0, "Suffix G means lead-free finish.", "Suffix G means tin-lead finish.", Ord},
    {0, "The last letter R means tape and reel.", "The last letter R means mirrored pins.", Ord},
    {0, "ランプの逆接続は許容されます。", "ランプの逆接続は許容されません。", Perm},
    {0, "LAMP CHARACTERISTICS (VCC = 15 V, VEE = -15 V, TA = 25 °C, unless otherwise noted.)", "VCC = ±15V, Tamb = +25 °C (unless otherwise specified)", Style},
    {0, "LAMP CHARACTERISTICS (VCC = 15 V, VEE = -15 V, TA = 25 °C, unless otherwise noted.)", "VCC = ±12V, Tamb = +25 °C (unless otherwise specified)", Num},
    {0, "LAMP CHARACTERISTICS (VCC = 15 V, TA = 25 °C, unless otherwise noted.)", "VCC = 15 V, TA = 85 °C (unless otherwise specified)", Num},
    // Equal conditions settle nothing of what is said beside them.
    {0, "VDD = 3.5 V unless otherwise noted. Charging of 0 V cells is permitted.", "VDD = 3.5 V unless otherwise noted. Charging of 0 V cells is prohibited.", Perm},
    {0, "VDD = 3.5 V, pulsed, unless otherwise noted", "VDD = 3.5 V, continuous, unless otherwise noted", Trig},
    {0, "VDD = 3.5 V unless otherwise noted; voltages refer to VSS", "VDD = 3.5 V unless otherwise noted; voltages refer to VM", Num},
    {0, "VDD = 3.5 V, TA = Tlow to Thigh, unless otherwise noted", "VDD = 3.5 V, TA = 25 °C, unless otherwise noted", Temp},
    // Headings in capitals have no symbols.
    {0, "Lamp schematic (each output)", "LAMP SCHEMATIC (each output)", Edit},
    {0, "Representative lamp schematic (Each Output)", "SCHEMATIC DIAGRAM (each output)", Style},
    {0, "Lighting characteristics (continued)", "LIGHTING CHARACTERISTICS (continued)", Edit},
    {0, "Connect RESET to the lamp.", "Connect CLOCK to the lamp.", Num},
    // One symbol in two spellings.
    {0, "The lamp is lit by VIN and by VOUT.", "The lamp is lit by Vin and by Vout.", Edit},
    {0, "CO is not needed at the lamp.", "Co is not needed at the lamp.", Edit},
    {0, "The lamp is lit by VIN.", "The lamp is lit by Vout.", Pin},
    // A word that is understood may be left out; its opposite may not be put in its place.
    {0, "A lamp regulator with current limiting", "A positive lamp regulator with internal current limiting", Style},
    {0, "3-terminal lamp of the series", "3-terminal positive lamp of the set", Style},
    {0, "The load is in series with the lamp.", "The load is in parallel with the lamp.", Pin},
    {0, "Connect the lamp to the positive pole.", "Connect the lamp to the pole.", Pin},
    {0, "The path permits the cell to light the lamp.", "The path lets the cell light the lamp.", Style},
    {0, "The lamps permit a light.", "The lamp permits light.", Edit},
    {0, "It allows light.", "It gives light.", Perm},
    {0, "The lamp takes more than 1.5 A.", "The lamp takes in excess of 1.5 A.", Style},
    {0, "It is pulled down by a resistor (~5 MΩ).", "It is pulled down by a resistor (approximately 5 MΩ).", Edit},
    {0, "It is pulled down by 4 ~ 5 MΩ.", "It is pulled down by approximately 5 MΩ.", Num},
    // One of several things that are said at once is dropped, added or another one.
    {0, "Charge and discharge are blocked.", "Charge is blocked.", Trig},
    {0, "Charge and discharge are stopped in this state.", "Charge is stopped in this state.", Trig},
    {0, "Charge and discharge are stopped in this state.", "Discharge is stopped in this state.", Trig},
    {0, "The lamp stays dark in overcharge and overcurrent.", "The lamp stays dark in overcharge.", Scope},
    {0, "The lamp stays dark in overcharge/overdischarge.", "The lamp stays dark in overcharge.", Trig},
    {0, "The lamp watches VDD and VSS at the bell.", "The lamp watches VDD at the bell.", Pin},
    {0, "It protects the lamp and the bell.", "It protects the lamp.", Scope},
    {0, "It protects the lamp, the bell and the fan.", "It protects the lamp and the fan.", Scope},
    {0, "It protects the lamp, the bell and the fan.", "It protects the bell and the fan.", Scope},
    {0, "The lamp current and the bell current are watched.", "The lamp current is watched.", Scope},
    {0, "The lamp is lit and the bell rings in this state.", "The lamp is lit in this state.", Scope},
    {0, "The timer guards lamp & bell.", "The timer guards the lamp.", Scope},
    {0, "此状态下灯和铃同步停止工作", "此状态下灯停止工作", Scope},
    {0, "Charge overcurrent lights the lamp.", "Overcurrent lights the lamp.", Trig},
    {0, "Charge of the lamp is stopped.", "Discharge of the lamp is stopped at once by it.", Trig},
    {0, "Charge and discharge are stopped.", "Charge and standby are stopped.", Trig},
    // The last of a list, whose "and" moves to the one before it.
    {0, "It guards against fire, water and wild animals.", "It guards against fire and water.", Scope},
    {0, "It guards the lamp, the bell, and the fan.", "It guards the lamp and the bell.", Scope},
    {0, "Guarded: lamp, bell, fan.", "Guarded: lamp, bell.", Scope},
    {0, "The lamp as well as the bell is guarded.", "The lamp is guarded.", Scope},
    {0, "The lamp together with the bell is guarded.", "The lamp is guarded.", Scope},
    {0, "The lamp plus the bell is guarded.", "The lamp is guarded.", Scope},
    {0, "Die Lampe und die Glocke werden bewacht.", "Die Lampe wird bewacht.", Scope},
    {0, "Die Lampe sowie die Glocke sind bewacht.", "Die Lampe ist bewacht.", Scope},
    {0, "防止过热、短路、进水。", "防止过热、短路。", Scope},
    {0, "防止过热、短路。", "防止过热。", Scope},
    {0, "Lampen- und Glockenstrom werden begrenzt.", "Der Lampenstrom wird begrenzt.", Scope},
    {0, "Защита лампы и звонка.", "Защита лампы.", Scope},
    {0, "Protection de la lampe et de la cloche.", "Protection de la lampe.", Scope},
    // One of them is another thing.
    {0, "It protects the lamp and the bell.", "It protects the lamp and the fan.", Scope},
    {0, "The lamp and the bell are guarded.", "The fan and the bell are guarded.", Scope},
    {0, "It guards the lamp, the bell and the fan.", "It guards the lamp, the horn and the fan.", Scope},
    {0, "It guards the lamp, the bell and the fan.", "It guards the horn, the bell and the fan.", Scope},
    {0, "It guards the lamp, the bell and the fan.", "It guards the lamp, the bell and the door switch.", Scope},
    {0, "Guarded: lamp, bell, fan.", "Guarded: lamp, bell, horn.", Scope},
    {0, "The lamp/bell is guarded.", "The lamp/fan is guarded.", Scope},
    {0, "It trips by light or sound.", "It trips by light or smell.", Scope},
    {0, "Die Lampe und die Glocke werden bewacht.", "Die Lampe und die Hupe werden bewacht.", Scope},
    {0, "It guards the bell of the lamp.", "It guards the bell of the fan.", Style},
    {0, "It is for lighting and ringing.", "It is for lighting and ring.", Style},
    {0, "The lamp is lit and the bell rings.", "The lamp is lit and the bell sounds.", Style},
    {0, "And now the lamp is lit.", "And then the lamp is lit.", Style},
    {0, "It protects the lamp and the bell at night.", "It shields the lamp and the fan at dawn.", Style},
    {0, "The lamp is lit, the bell rings and gently stops.", "The lamp is lit, the bell rings and stops.", Style},
    {0, "The lamp is lit, and soon dark.", "The lamp is lit and dark.", Style},
    {0, "The lamp works well with bells.", "The lamp works with bells.", Style},
    // The same things, put otherwise.
    {0, "Charge and discharge are stopped.", "Charge & discharge are stopped.", Edit},
    {0, "Charge, discharge and standby are stopped.", "Charge, discharge, and standby are stopped.", Edit},
    {0, "Charge and discharge are stopped.", "Charge/discharge are stopped.", Style},
    {0, "Charge and discharge are stopped.", "Discharge and charge are stopped.", Style},
    {0, "The lamp and the bell are lit.", "The lamp as well as the bell are lit.", Style},
    {0, "The lamp is lit and the bell rings.", "The lamp is lit. The bell rings.", Style},
    {0, "The lamp and the bell are lit.", "The bell, and the lamp, are lit.", Style},
    {0, "For this reason, the lamp is lit.", "The lamp is lit.", Style},
    {0, "The lamp is lit.", "The lamp is lit brightly.", Style},
    // On what it depends is said in one sheet only, or in other words.
    {0, "The lamp is lit for 1 s, depending on the version.", "The lamp is lit for 1 s.", Cond},
    {0, "The lamp current depends on the version.", "The lamp current is a function of the version.", Style},
    // Symbols of headings in capitals.
    {0, "LAMP VOLTAGE AT VDD", "LAMP VOLTAGE AT VSS", Pin},
    {0, "VDD LAMP VOLTAGE", "VSS LAMP VOLTAGE", Pin},
    {0, "1. LAMP VOLTAGE (VDD)", "1. LAMP VOLTAGE (VSS)", Pin},
    {0, "VDD", "VSS", Pin},
    {0, "VDD PIN", "VSS PIN", Pin},
    {0, "LAMP VDD-VSS", "LAMP VDD-VM", Pin},
    {0, "The lamp is lit by the voltage VDD-VSS.", "The lamp is lit by the voltage VDD-VM.", Pin},
    {0, "LAMP VDD/VSS", "LAMP VDD/VM", Pin},
    {0, "Overcharge protection", "Protection", Style},
    {0, "LAMP CHARACTERISTICS (VCC = 15 V, IO = 5 mA, TA = 25 °C)", "LAMP CHARACTERISTICS (VCC = 15 V, TA = 25 °C)", Num},
    {0, "www.lamps.example", "http://www.lamps.example", Style},
};

TEST(WordingClasses, everyPairComesOutInItsClass) {
    WordingContext const context;
    for (Row const& row : kRows) {
        WordingOutcome const outcome = classify(row.reference, row.candidate, context);
        ASSERT_FALSE(outcome.classes.empty()) << row.number << " " << row.reference;
        EXPECT_EQ(outcome.classes.front(), row.wording) << row.number << " " << row.reference << " -> " << shown(outcome.classes);
        EXPECT_EQ(outcome.editorial, row.wording == Edit);
        bool const changed = row.wording != Edit && row.wording != Style;
        EXPECT_EQ(outcome.relation, changed ? Relation::MeaningChanged : Relation::Reworded) << row.number;
    }
}

TEST(WordingClasses, exchangeGivesTheSameOutcome) {
    WordingContext const context;
    for (Row const& row : kRows) {
        EXPECT_EQ(classify(row.reference, row.candidate, context), classify(row.candidate, row.reference, context)) << row.number << " " << row.reference;
    }
}

// One sentence writes a word in capitals and in small letters, the other in small ones.
TEST(WordingClasses, AValueInAListIsNoMember) {
    auto const outcome = classify("The lamp (VCC = 15 V, IO = 5 mA, TA = 25 °C) is lit.", "The lamp (VCC = 15 V, TA = 25 °C) is lit.", {});
    EXPECT_EQ(outcome.classes, (std::vector{Num}));
}

TEST(WordingClasses, exchangeHoldsForAWordInTwoSpellings) {
    WordingContext const context;
    char const* const mixed = "The LAMPS are lit at night, other lamps are not.";
    char const* const plain = "The lamps stay lit at dawn.";
    EXPECT_EQ(classify(mixed, plain, context), classify(plain, mixed, context));
}

TEST(WordingClasses, exchangeHoldsForUnrelatedSentencesToo) {
    WordingContext const context;
    for (Row const& a : kRows) {
        for (Row const& b : kRows) EXPECT_EQ(classify(a.reference, b.candidate, context), classify(b.candidate, a.reference, context)) << a.reference << " / " << b.candidate;
    }
}

TEST(WordingClasses, whatAReaderSeesTheSameIsTheSame) {
    WordingContext const context;
    for (Row const& row : kRows) EXPECT_EQ(classify(row.reference, row.reference, context).relation, Relation::Same) << row.reference;
    EXPECT_EQ(classify("A 4.28\u00A0V limit \u2013 e\uFB03cient", "A 4.28 V limit - efficient", context).relation, Relation::Same);
    EXPECT_EQ(classify("over\u00ADcharge  state", "overcharge state", context).relation, Relation::Same);
}

TEST(WordingClasses, aHyphenBeforeAUnitSaysNothing) {
    WordingContext const context;
    auto const classes = [&](char const* reference, char const* candidate) { return shown(classify(reference, candidate, context).classes); };
    EXPECT_EQ(classes("The inlet has a 28V rating.", "The inlet has a 28-V rating."), "EDIT ");
    EXPECT_EQ(classes("Connect a 590 Ω resistor to the pin.", "Connect a 590-Ω resistor to the pin."), "EDIT ");
    EXPECT_EQ(classes("The inlet has a 28V rating.", "The inlet has a 26-V rating."), "NUM ");
    EXPECT_EQ(classes("A range of 2-4 V is accepted.", "A range of 2 4 V is accepted."), "NUM ");
    EXPECT_NE(classes("Order the QX17-2V for the lamp.", "Order the QX17 2V for the lamp."), "EDIT ");
}

TEST(WordingClasses, theCaseOfAPartNumberSaysNothing) {
    WordingContext const context;
    auto const classes = [&](char const* reference, char const* candidate) { return shown(classify(reference, candidate, context).classes); };
    EXPECT_EQ(classes("OUT pin voltage regulation (qx24072)", "OUT pin voltage regulation (QX24072)"), "EDIT ");
    EXPECT_EQ(classes("Regulation of the qx24073, qx24074", "Regulation of the QX24073, QX24074"), "EDIT ");
    EXPECT_NE(classes("OUT pin voltage regulation (qx24072)", "OUT pin voltage regulation (QX24073)"), "EDIT ");
    EXPECT_NE(classes("The resistor is 5 mΩ.", "The resistor is 5 MΩ."), "EDIT ");
}

// The title of one revision names the parts, that of the other does not; both order them.
TEST(WordingClasses, aPartThatIsOrderedInBothSheetsIsTheirOwn) {
    model::Datasheet reference;
    reference.document.partNumbers = {"SLQX810"};
    reference.ordering.push_back({"qx24072RR", {}, {}, 1, {}});
    model::Datasheet candidate;
    candidate.document.partNumbers = {"QX24072", "QX24073"};
    candidate.ordering.push_back({"QX24072", {}, {}, 1, {}});
    WordingContext const context(reference, candidate);
    EXPECT_TRUE(classify("OUT pin voltage regulation (qx24072)", "OUT pin voltage regulation (QX24072)", context).editorial);
    EXPECT_EQ(classify("OUT pin voltage regulation (qx24072)", "OUT pin voltage regulation (QX24079)", context).relation, Relation::MeaningChanged);
}

// What orders a version is another code; that one sentence names the part at all says nothing.
TEST(WordingClasses, theNameOfTheOnePartSaysNothing) {
    model::Datasheet reference;
    reference.document.partNumbers = {"QX7517"};
    reference.document.maker = "Lampworks";
    model::Datasheet candidate;
    candidate.document.partNumbers = {"MQX7517"};
    WordingContext const context(reference, candidate);
    auto const classes = [&](char const* first, char const* second) { return shown(classify(first, second, context).classes); };
    EXPECT_EQ(classes("The QX7517 is a driver of lamps.", "This monolithic circuit is a driver of lamps."), "STYLE ");
    EXPECT_EQ(classes("The QX7517 is a driver of lamps.", "The MQX7517 is a driver of small lamps."), "STYLE ");
    EXPECT_EQ(classes("Lampworks products light the mast.", "The products light the mast."), "STYLE ");
    EXPECT_EQ(classes("The lamp is driven by the QX7517.", "The lamp is driven by the “517”."), "EDIT ");
    EXPECT_EQ(classes("The lamp is driven by the QX7517.", "The lamp is driven by the 517."), "NUM ");
    EXPECT_EQ(classes("The lamp is driven by the QX7517.", "The lamp is driven by the “518”."), "NUM ");
    EXPECT_EQ(classes("The lamp needs \"200\" of the QX7517.", "The lamp needs \"300\" of the MQX7517."), "NUM ");
    EXPECT_NE(classes("The QX7517-A lights the lamp.", "The circuit lights the lamp."), "STYLE ");
    EXPECT_NE(classes("The QX7517-A lights the lamp.", "The MQX7517-B lights the lamp."), "STYLE ");
    EXPECT_NE(classes("The QX7517 lights the lamp.", "The QX7518 lights the lamp."), "STYLE ");
    EXPECT_EQ(classes("The bell and the QX7517 are lit.", "The bell is lit."), "ORD ");
}

TEST(WordingClasses, eachOfSeveralPartsCounts) {
    model::Datasheet sheet;
    sheet.document.partNumbers = {"74XC517", "74XCT517"};
    WordingContext const context(sheet, sheet);
    auto const classes = [&](char const* first, char const* second) { return shown(classify(first, second, context).classes); };
    EXPECT_EQ(classes("In the 74XC517 the lamp is lit.", "The lamp is lit."), "ORD ");
    EXPECT_EQ(classes("The 74XC517 and 74XCT517 light the lamp.", "The 74XC517 lights the lamp."), "ORD ");
    EXPECT_EQ(classes("Only the 74XC517 has a reset input.", "Only the 74XCT517 has a reset input."), "ORD ");
    EXPECT_EQ(classes("Only the 74XC517-TR is on tape.", "Only the 74XCT517-TR is on tape."), "ORD ");
    EXPECT_EQ(classes("The 74XC517; 74XCT517 is a driver of lamps.", "The \"517\" is a driver of small lamps."), "STYLE ");
}

TEST(WordingClasses, theNumberOfAHeadingSaysNothing) {
    WordingContext const context;
    auto const classes = [&](char const* reference, char const* candidate) { return shown(classify(reference, candidate, context).classes); };
    EXPECT_EQ(classes("4. Ordering information", "ORDERING INFORMATION"), "EDIT ");
    EXPECT_EQ(classes("4.1. Ordering information", "5. Ordering information"), "EDIT ");
    EXPECT_EQ(classes("9.3.3 Ordering Information", "ORDERING INFORMATION"), "EDIT ");
    EXPECT_NE(classes("4.2 V supply", "4.3 V supply"), "EDIT ");
    EXPECT_NE(classes("4. Cells in series: 2", "5. Cells in series: 3"), "EDIT ");
    EXPECT_NE(classes("2 cells", "3 cells"), "EDIT ");
}

TEST(WordingClasses, theNumberOfASectionWithAConditionSaysNothing) {
    model::Datasheet reference;
    reference.sections = {{"s1", model::SectionKind::Characteristics, "2. Lamp characteristics (Ta = 25 °C)", 1, 1, {}}};
    model::Datasheet candidate;
    candidate.sections = {{"s1", model::SectionKind::Characteristics, "3. Lamp characteristics (Ta = 25 °C)", 1, 1, {}}};
    WordingContext const context(reference, candidate);
    auto const classes = [&](char const* first, char const* second) { return shown(classify(first, second, context).classes); };
    EXPECT_EQ(classes("2. Lamp characteristics (Ta = 25 °C)", "3. Lamp characteristics (Ta = 25 °C)"), "EDIT ");
    EXPECT_EQ(shown(classify("2. Lamp characteristics (Ta = 25 °C)", "3. Lamp characteristics (Ta = 25 °C)", {}).classes), "NUM ") << "no section of the sheets";
}

// Sheets in two languages: what counts is what each sentence is written in.
TEST(WordingClasses, aSentenceIsReadInItsOwnLanguage) {
    model::Datasheet sheet;
    sheet.document.languages = {"en", "zh"};
    WordingContext const context(sheet, sheet);
    auto const classes = [&](char const* first, char const* second) { return shown(classify(first, second, context).classes); };
    EXPECT_EQ(classes("禁止向0V电池充电", "允许向0V电池充电"), "PERM ");
    EXPECT_EQ(classes("The lamp output 引脚必须悬空", "The lamp output 引脚建议悬空"), "MOD ");
    EXPECT_EQ(classes("コンデンサの接続を推奨します", "コンデンサを必ず接続してください"), "MOD ");
    sheet.document.languages = {"ja", "en"};
    WordingContext const japanese(sheet, sheet);
    EXPECT_EQ(shown(classify("最大電圧", "最小電圧", japanese).classes), "NUM ");
}

TEST(WordingClasses, ownNamesAreTheSameWord) {
    model::Datasheet reference;
    reference.document.partNumbers = {"QX7101"};
    reference.document.maker = "Tarnfell Devices";
    model::Datasheet candidate;
    candidate.document.partNumbers = {"LMB-55A"};
    candidate.document.maker = "Orrin";
    WordingContext const context(reference, candidate);
    EXPECT_TRUE(classify("The QX7101 by Tarnfell Devices monitors one cell.", "The LMB-55A by Orrin monitors one cell.", context).editorial);
    EXPECT_EQ(classify("The QX7101 monitors one cell.", "The QX7105 monitors one cell.", context).relation, Relation::MeaningChanged);
}

TEST(WordingClasses, aSeriesIsItsPart) {
    model::Datasheet reference;
    reference.document.partNumbers = {"QX17-P"};
    model::Datasheet candidate;
    candidate.document.partNumbers = {"QX17x"};
    WordingContext const context(reference, candidate);
    auto const classes = [&](char const* first, char const* second) { return shown(classify(first, second, context).classes); };
    EXPECT_EQ(classes("The QX17-P is connected to one cell.", "The QX17 series is connected to one cell."), "EDIT ");
    EXPECT_EQ(classes("The QX17-P is connected to one cell.", "The QX17series is connected to one cell."), "EDIT ");
    EXPECT_NE(classes("The QX17-P is connected to one cell.", "The QX19 series is connected to one cell."), "EDIT ");
    EXPECT_EQ(classes("The QX17-P has cells in series.", "The QX17x has cells in parallel."), "PIN ");
}

TEST(WordingClasses, theNumberOfAnEquationSaysNothing) {
    WordingContext const context;
    auto const classes = [&](char const* first, char const* second) { return shown(classify(first, second, context).classes); };
    EXPECT_EQ(classes("VX = IX × RX", "VX = IX × RX (3)"), "EDIT ");
    EXPECT_EQ(classes("VX = IX × RX (4)", "VX = IX × RX (3)"), "EDIT ");
    EXPECT_EQ(classes("IX = KX/RX", "IX = KX/RX (3)"), "EDIT ");
    EXPECT_NE(classes("IX = KX/2 (4)", "IX = KX/2 (3)"), "EDIT ");
    EXPECT_NE(classes("IX = KX/VSS (4)", "IX = KX/VSS (3)"), "EDIT ");
    EXPECT_NE(classes("VX = IX × RX (1)", "VX = IX × RY (1)"), "EDIT ");
    EXPECT_NE(classes("VX = 5 × (20)", "VX = 5 × (30)"), "EDIT ") << "a factor";
    EXPECT_NE(classes("VX = IX × RX (1) tX = 10 × RX", "VX = IX × RX (6) tX = 10 × RX"), "EDIT ") << "not at the end";
}

TEST(WordingClasses, aNumberBehindAPinOrAValueIsNoEquations) {
    model::Datasheet sheet;
    sheet.pins = {{"1", "GATEX", "", "", 0, {}}};
    WordingContext const context(sheet, sheet);
    auto const editorial = [&](char const* first, char const* second) { return classify(first, second, context).editorial; };
    EXPECT_FALSE(editorial("Connect VM (2) to the lamp, VSS = 0 V.", "Connect VM (6) to the lamp, VSS = 0 V."));
    EXPECT_FALSE(editorial("At VSS = 0 V the lamp hangs at VX (2)", "At VSS = 0 V the lamp hangs at VX (6)"));
    EXPECT_FALSE(editorial("VIN = 12 (24) V", "VIN = 12 (18) V"));
    EXPECT_FALSE(editorial("VIN = 12 V (24)", "VIN = 12 V (18)"));
    EXPECT_FALSE(editorial("VX = 2 × 12 (24)", "VX = 2 × 12 (18)"));
    EXPECT_FALSE(editorial("VX = IX × GATEX (2)", "VX = IX × GATEX (6)"));
    EXPECT_FALSE(editorial("VX = IX + VM (2)", "VX = IX + VM (6)"));
    EXPECT_FALSE(editorial("VX = VY (2)", "VX = VY (6)")) << "it may be a pin's";
}

TEST(WordingClasses, theSheetsOwnRevisionIsNoMeaning) {
    WordingContext const context;
    auto const classes = [&](char const* first, char const* second) { return shown(classify(first, second, context).classes); };
    EXPECT_EQ(classes("Rev. 1.0", "Rev. 1.7"), "STYLE ");
    EXPECT_EQ(classes("Revision B", "Rev. 2"), "STYLE ");
    EXPECT_EQ(classes("Version A", "Version B"), "NUM ") << "a version that is ordered";
    EXPECT_NE(classes("Ver. 4.2", "Ver. 4.3"), "STYLE ");
    EXPECT_NE(classes("Version 1", "Version 2"), "STYLE ");
    EXPECT_NE(classes("Version 5 V", "Version 3.3 V"), "STYLE ") << "a version of the part";
    EXPECT_NE(classes("Rev. 1.0 limits", "Rev. 1.7 limits"), "STYLE ");
}

TEST(WordingClasses, aVersionThatIsTheSheetsRevisionIsNoMeaning) {
    model::Datasheet reference;
    reference.document.revision = "a";
    model::Datasheet candidate;
    candidate.document.revision = "1.7";
    WordingContext const context(reference, candidate);
    EXPECT_EQ(shown(classify("Version A", "Ver. 1.7", context).classes), "STYLE ");
    EXPECT_NE(shown(classify("Version B", "Ver. 1.7", context).classes), "STYLE ");
    EXPECT_NE(shown(classify("Version A", "Ver. 1.8", context).classes), "STYLE ");
}

TEST(WordingClasses, hiIsHigh) {
    EXPECT_TRUE(classify("Hi impedance", "High-impedance", WordingContext()).editorial);
    EXPECT_EQ(classify("Hi impedance", "Low impedance", WordingContext()).classes.front(), Pin);
}

TEST(WordingClasses, theMarkOfAListSaysNothing) {
    WordingContext const context;
    auto const classes = [&](char const* first, char const* second) { return shown(classify(first, second, context).classes); };
    EXPECT_EQ(classes("1) The lamp is lit.", "The lamp is lit."), "EDIT ");
    EXPECT_EQ(classes("(2) The lamp is lit.", "2) The lamp is lit."), "EDIT ");
    EXPECT_EQ(classes("(b) The lamp is lit.", "2) The lamp is lit."), "STYLE ") << "two marks";
    EXPECT_EQ(classes("1) The lamp is lit for 5 s.", "The lamp is lit for 6 s."), "NUM ");
    EXPECT_EQ(classes("(25) mm of wire", "(26) mm of wire"), "NUM ") << "it may be a value all the same";
}

TEST(WordingClasses, theNumberOfAChapterSaysNothing) {
    model::Datasheet sheet;
    for (char const* title : {"6.1 Lighting", "7.2 Lighting", "6.1 Heating", "2.1 Lamp", "14. Package Lamp Outline", "14. Package Outline Dimension",
                              "4. Charge of the Mast after Lighting", "2. Ground Lamp"})
        sheet.sections.push_back({"s", model::SectionKind::Other, title, 1, 1, {}});
    sheet.pins = {{"1", "Lamp", "", "", 0, {}}};
    WordingContext const context(sheet, sheet);
    auto const classes = [&](char const* first, char const* second) { return shown(classify(first, second, context).classes); };
    EXPECT_EQ(classes("6.1 Lighting", "LIGHTING"), "EDIT ");
    EXPECT_EQ(classes("6.1 Lighting", "7.2 Lighting"), "EDIT ");
    EXPECT_EQ(classes("6.1 Lighting", "6.1 Heating"), classes("Lighting", "Heating"));
    EXPECT_EQ(classes("Table 2. LIGHTING", "Table 9-1. Lighting"), "EDIT ");
    EXPECT_EQ(classes("Fig 1. Lighting", "Fig.4 Lighting"), "EDIT ");
    EXPECT_EQ(classes("1. The mast load is lit.", "• The mast load is lit."), "EDIT ");
    EXPECT_EQ(classes("4. Charge of the Mast after Lighting", "Charge of the mast after lighting"), "EDIT ");
    EXPECT_EQ(classes("1. Overcharge \uFFFD Lamp → Mast", "Overcharge \uFFFD Lamp → Mast"), "EDIT ");
    EXPECT_EQ(classes("14. Package Lamp Outline", "Package lamp outline"), "EDIT ");
    EXPECT_EQ(classes("Lamp Outline", "14. Package Lamp Outline"), "STYLE ");
    EXPECT_EQ(classes("Package Outline", "14. Package Outline Dimension"), "STYLE ");
    for (auto const& [first, second] : std::vector<std::pair<char const*, char const*>>{{"2. Ground", "6. Ground"},
                                                                                        {"2.1 Lamp", "3.1 Lamp"},
                                                                                        {"3.3 V supply", "V supply"},
                                                                                        {"3.3 Volt supply", "5.0 Volt supply"},
                                                                                        {"2.5 Times the current", "3.5 Times the current"},
                                                                                        {"1.5 Lamps at 4 V", "2.5 Lamps at 4 V"},
                                                                                        {"4.28 Overcharge detection voltage", "4.35 Overcharge detection voltage"},
                                                                                        {"1.2 Overcurrent delay", "1.6 Overcurrent delay"},
                                                                                        {"0.50 PITCH", "0.65 PITCH"},
                                                                                        {"1.25 Maximum", "1.45 Maximum"},
                                                                                        {"1. Ground of the lamp driver, 0 V", "2. Ground of the lamp driver, 0 V"},
                                                                                        {"2. Enable the lamp above 2 V", "3. Enable the lamp above 2 V"},
                                                                                        {"4. Charge", "Charge"},
                                                                                        {"2. Ground Lamp", "3. Ground Lamp"},
                                                                                        {"2. Cell Minus Sense Input", "3. Cell Minus Sense Input"},
                                                                                        {"3. Positive Supply of the Lamp", "5. Positive Supply of the Lamp"},
                                                                                        {"3. Gate after Lamp", "4. Gate after Lamp"},
                                                                                        {"[1] VDD", "[2] VDD"},
                                                                                        {"[3] cells in series", "[4] cells in series"}}) {
        EXPECT_EQ(classes(first, second), "NUM ") << first;
    }
}

TEST(WordingClasses, aMarkThatOneSheetDoesNotKnowIsLeftInBoth) {
    model::Datasheet reference;
    reference.sections = {{"s1", model::SectionKind::Features, "1 Features", 1, 1, {}}};
    WordingContext const context(reference, {});
    EXPECT_EQ(shown(classify("1 Features", "1 FEATURES", context).classes), "EDIT ");
    EXPECT_EQ(shown(classify("1 Features", "FEATURES", context).classes), "EDIT ");
    EXPECT_EQ(shown(classify("4. Ordering information", "4 Ordering Information", context).classes), "EDIT ");
}

TEST(WordingClasses, theNumberOfAPinIsNoMarkOfAList) {
    model::Datasheet sheet;
    sheet.pins = {{"1", "Lampout", "", "", 0, {}}};
    WordingContext const context(sheet, sheet);
    auto const classes = [&](char const* first, char const* second) { return shown(classify(first, second, context).classes); };
    EXPECT_EQ(classes("(2) VSS", "(6) VSS"), "NUM ");
    EXPECT_EQ(classes("2) VSS goes to the lamp.", "6) VSS goes to the lamp."), "NUM ");
    EXPECT_EQ(classes("2) The VSS pin goes to the lamp.", "6) The VSS pin goes to the lamp."), "NUM ");
    EXPECT_EQ(classes("2) Vss goes to the lamp.", "6) Vss goes to the lamp."), "NUM ");
    EXPECT_EQ(classes("2) Lampout goes to the lamp.", "6) Lampout goes to the lamp."), "NUM ");
    EXPECT_EQ(classes("2) Ground", "6) Ground"), "NUM ") << "no sentence";
    EXPECT_EQ(classes("2) Gate of the upper transistor", "3) Gate of the upper transistor"), "NUM ");
    EXPECT_EQ(classes("(2) VSS", "VSS"), "NUM ");
    EXPECT_EQ(classes("2. VSS", "6. VSS"), "NUM ");
    EXPECT_EQ(classes("2.4.1 VSS", "6.1.2 VSS"), "EDIT ") << "a heading";
    EXPECT_EQ(classes("(3) Where:", "(9) where"), "STYLE ");
    EXPECT_EQ(classes("(3) The IC lights the lamp.", "(9) The IC lights the lamp."), "STYLE ");
    EXPECT_NE(classes("(3) IC lights the lamp.", "(9) IC lights the lamp."), "STYLE ") << "a current";
    EXPECT_EQ(classes("(5) V supply at the input", "(3) V supply at the input"), "NUM ");
    EXPECT_EQ(classes("(2) Cells light the lamp.", "(3) Cells light the lamp."), "NUM ");
    EXPECT_EQ(classes("(2) lamps in a row are lit", "(3) lamps in a row are lit"), "NUM ");
}

// The rows of both sheets say that VCH and VCHA are one thing.
TEST(WordingClasses, aSymbolIsTheOtherSheetsForTheSameId) {
    auto const sheet = [](std::string const& symbol, std::string const& second) {
        model::Datasheet made;
        model::Parameter p;
        p.canonical = "charger-detect-voltage";
        p.symbol = symbol;
        made.parameters.push_back(p);
        p.canonical = "overcharge-detect-voltage";
        p.symbol = second;
        made.parameters.push_back(p);
        return made;
    };
    auto const classes = [&](model::Datasheet const& reference, model::Datasheet const& candidate) {
        return shown(classify("The cell is below VCH.", "The cell is below VCHA.", WordingContext(reference, candidate)).classes);
    };
    EXPECT_EQ(classes(sheet("VCH", "VOC"), sheet("VCHA", "VOC")), "EDIT ");
    EXPECT_EQ(classes(sheet("VCH", "VCHA"), sheet("VCHA", "VOC")), "NUM ") << "the first sheet has a VCHA of its own";
    EXPECT_EQ(classes(sheet("VCX", "VCH"), sheet("VCHA", "VOC")), "NUM ") << "another id";
}

TEST(WordingClasses, pinsOfTheSheetsAreKnown) {
    model::Datasheet sheet;
    sheet.pins = {{"1", "GATEX", "", "", 0, {}}, {"2", "GATEY", "", "", 0, {}}};
    WordingContext const context(sheet, sheet);
    EXPECT_EQ(classify("Connect GATEX to the node.", "Connect GATEY to the node.", context).classes.front(), Pin);
}

TEST(WordingClasses, aSentenceAloneHasTheClassOfWhatItSays) {
    struct Alone {
        char const* text;
        WordingClass wording;
    };
    for (Alone const& row : std::initializer_list<Alone>{{"Charging of a 0 V cell is prohibited.", Perm},
                                                         {"The test pin must be left open.", Pin},
                                                         {"A delay of 20 ms is added.", Num},
                                                         {"It is released by the charger.", Trig},
                                                         {"The device does not restart.", Neg},
                                                         {"A capacitor should be fitted.", Mod},
                                                         {"The upper lamps allow higher currents.", Num},
                                                         {"Allow to charge a 0 V cell", Perm},
                                                         {"Welcome to this part.", Style},
                                                         {"", Style}}) {
        EXPECT_EQ(classifyAlone(row.text, {}, "en").front(), row.wording) << row.text << " -> " << shown(classifyAlone(row.text, {}, "en"));
    }
}

TEST(WordingClasses, oddTextsDoNotHarm) {
    WordingContext const context;
    std::string const longText(20000, 'x');
    std::string many;
    for (int i = 0; i < 3000; ++i) many += "not 5 V or ";
    for (std::string const& text : {std::string(), std::string("\xFF\xFE"), std::string("((((("), std::string("- - -"), std::string("(s)"), std::string("A("), longText, many}) {
        EXPECT_NE(classify(text, "plain text", context).relation, Relation::Same);
        EXPECT_EQ(classify(text, text, context).relation, Relation::Same);
    }
}

}  // namespace
}  // namespace standin::compare
