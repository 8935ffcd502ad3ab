// Names of nodes and pins that mean the same place of the circuit.
//
//     nodeKey("VCC") == nodeKey("VDD")     // "supply-plus"
//     nodeKey("VSS") != nodeKey("VM")      // cell minus and pack minus are never one
#pragma once

#include <string>
#include <string_view>

namespace standin::compare {

// The function id of a node or pin name ("supply-plus", "discharge-gate" …), or
// the folded name itself where it is not known or fits several.
[[nodiscard]] std::string nodeKey(std::string_view name);

// The word for a terminal of a transistor, diode or thyristor ("gate" for "G" and
// "Gate"), or empty. For parts of two or three pins: elsewhere a "C" is no collector.
[[nodiscard]] std::string_view terminalKey(std::string_view name);

// One word for the names that makers give a signal of a logic part ("shift-clock" for "sck" and
// "shcp"), or the word itself. `word`: in small letters; lives as long as the result. Only for telling rows
// apart: a reset may be active high here and low there.
[[nodiscard]] std::string_view signalKey(std::string_view word);

// What a symbol of both supplies ("±VS", "V+/V-") stands for: 15 V of it are ±15 V of one.
inline constexpr std::string_view kBothSupplies = "both-supplies";

// The quantity that a symbol in a test condition stands for: temperatures,
// supplies, input and output voltage and load each in one spelling.
[[nodiscard]] std::string conditionSymbolKey(std::string_view symbol);

}  // namespace standin::compare
