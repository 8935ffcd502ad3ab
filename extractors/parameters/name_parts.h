// Takes apart what stands in a name cell: the words, a symbol beside them, a
// condition behind them.
//
//     takeCondition("Drain to gate voltage (RGS = 20 kΩ)") -> name "Drain to gate voltage", condition "RGS = 20 kΩ"
//     takeSymbol("Supply voltage, VDD")                    -> name "Supply voltage", symbol "VDD"
#pragma once

#include <string>
#include <string_view>

namespace standin::parameters {

// Moves a condition at the end of the name out of it; returns it, or empty.
[[nodiscard]] std::string takeCondition(std::string& name);

// "ID @ TC = 25 °C": a symbol and the condition it holds at.
[[nodiscard]] bool isSymbolAtCondition(std::string_view text);

// Moves the condition behind such a symbol out of it; returns it, or empty.
[[nodiscard]] std::string takeConditionAt(std::string& symbol);

// The text opens with a relation about one thing ("RL ≥ 2 kΩ, VO = 1 V", "Output = 0 V"), so it is no name.
[[nodiscard]] bool startsWithCondition(std::string_view text);

// What a condition is about: the words in front of its first relation; empty where there is none.
[[nodiscard]] std::string subjectOf(std::string_view condition);

// A unit without gaps and brackets, and with a degree sign for a raised letter: "o C/W" -> "°C/W".
[[nodiscard]] std::string unitAsWritten(std::string_view printed);

// One relation, and that of a temperature to degrees: "TJ = 125 °C".
[[nodiscard]] bool statesTemperatureOnly(std::string_view condition);

// Where a symbol stands beside the words of a name cell.
enum class SymbolPlace : unsigned char { None, Behind, BehindSet, InFront };

// Finds a symbol without changing the text. BehindSet: behind a comma, a colon
// or in brackets, which leaves no doubt; the others are only likely and count
// when most cells of the column agree.
[[nodiscard]] SymbolPlace symbolPlace(std::string_view name);

// Moves the symbol at `place` out of the name; returns it, or empty.
[[nodiscard]] std::string takeSymbol(std::string& name, SymbolPlace place);

// One word that is surely a letter symbol: "VCU", "RDS(on)", "tPHL", "V+".
[[nodiscard]] bool isStrongSymbol(std::string_view word);

// The text without one pair of brackets around all of it.
[[nodiscard]] std::string withoutBrackets(std::string_view text);

}  // namespace standin::parameters
