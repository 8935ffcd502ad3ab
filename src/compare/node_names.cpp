// Small tables of folded spellings. A name that fits two functions (CS, V-,
// CD, OC, TD) stands for itself.
//
// Tested by tests/src/compare/node_names_test.cpp.
#include "compare/node_names.h"

#include <array>
#include <utility>

#include "quantity/condition.h"
#include "text/fold.h"
#include "text/utf8.h"

namespace standin::compare {

namespace {

using Entry = std::pair<std::string_view, std::string_view>;

constexpr auto kNodes = std::to_array<Entry>({
    {"vdd", "supply-plus"},
    {"vcc", "supply-plus"},
    {"vbat", "supply-plus"},
    {"bat+", "supply-plus"},
    {"b+", "supply-plus"},
    {"vb", "supply-plus"},
    {"v+", "supply-plus"},
    {"vs", "supply-plus"},
    {"vss", "supply-minus"},
    {"gnd", "supply-minus"},
    {"b-", "supply-minus"},
    {"bat-", "supply-minus"},
    {"vee", "supply-minus"},
    {"vm", "pack-minus"},
    {"vmon", "pack-minus"},
    {"csi", "pack-minus"},
    {"p-", "pack-minus"},
    {"pack-", "pack-minus"},
    {"idet", "pack-minus"},
    {"vmp", "pack-plus"},
    {"pack+", "pack-plus"},
    {"do", "discharge-gate"},
    {"dout", "discharge-gate"},
    {"dsg", "discharge-gate"},
    {"outd", "discharge-gate"},
    {"od", "discharge-gate"},
    {"co", "charge-gate"},
    {"cout", "charge-gate"},
    {"chg", "charge-gate"},
    {"outc", "charge-gate"},
    {"nc", "not-connected"},
    {"n.c.", "not-connected"},
    {"n.c", "not-connected"},
    {"n/c", "not-connected"},
    {"dnc", "do-not-connect"},
    {"nu", "do-not-connect"},
    {"rsvd", "do-not-connect"},
    {"th", "thermistor"},
    {"ts", "thermistor"},
    {"ntc", "thermistor"},
    {"cdly", "delay-capacitor"},
    {"dly", "delay-capacitor"},
    {"test", "test"},
    {"vin", "input"},
    {"vi", "input"},
    {"in", "input"},
    {"vout", "output"},
    {"vo", "output"},
    {"out", "output"},
    {"output", "output"},
    {"adj", "adjust"},
    {"adjustment", "adjust"},
    {"in+", "input-plus"},
    {"+in", "input-plus"},
    {"input+", "input-plus"},
    {"+input", "input-plus"},
    {"non-invertinginput", "input-plus"},
    {"in-", "input-minus"},
    {"-in", "input-minus"},
    {"input-", "input-minus"},
    {"-input", "input-minus"},
    {"invertinginput", "input-minus"},
    {"vcc+", "supply-plus"},
    {"vs+", "supply-plus"},
    {"vcc-", "supply-minus"},
    {"vs-", "supply-minus"},
    {"comp", "compensation"},
    {"bal", "balance"},
    {"comp/bal", "balance/compensation"},
    {"bal/comp", "balance/compensation"},
    {"compensation/balance", "balance/compensation"},
});

constexpr auto kTerminals = std::to_array<Entry>({
    {"a", "anode"},
    {"k", "cathode"},
    {"g", "gate"},
    {"d", "drain"},
    {"s", "source"},
    {"b", "base"},
    {"e", "emitter"},
    {"c", "collector"},
});

constexpr auto kConditionSymbols = std::to_array<Entry>({
    {"v+/v-", kBothSupplies},
    {"vcc\u00B1", kBothSupplies},
    {"\u00B1vcc", kBothSupplies},
    {"vs\u00B1", kBothSupplies},
    {"\u00B1vs", kBothSupplies},
    {"vcc+/vcc-", kBothSupplies},
    {"tmb", "tc"},
    {"tcase", "tc"},
    {"ta", "ta"},
    {"tamb", "ta"},
    {"topr", "ta"},
    {"t", "ta"},
    {"tj", "tj"},
    {"tc", "tc"},
    {"vdd", "supply"},
    {"vcc", "supply"},
    {"vbat", "supply"},
    {"vb", "supply"},
    {"v+", "supply"},
    {"vs", "supply"},
    {"vin", "vin"},
    {"vi", "vin"},
    {"vout", "vout"},
    {"vo", "vout"},
    {"iout", "iout"},
    {"io", "iout"},
    {"iload", "iout"},
    {"il", "iout"},
    {"cl", "cl"},
    {"cload", "cl"},
    {"rl", "rl"},
    {"rload", "rl"},
    {"cout", "cout"},
    {"co", "cout"},
    {"cin", "cin"},
    {"ci", "cin"},
    {"f", "f"},
    {"fo", "f"},
    {"fi", "f"},
    {"freq", "f"},
});

// Words by which makers call a signal of a logic part, folded.
constexpr auto kSignals = std::to_array<Entry>({
    {"sck", "shift-clock"},    {"srck", "shift-clock"},   {"srclk", "shift-clock"}, {"shcp", "shift-clock"}, {"rck", "storage-clock"},
    {"rclk", "storage-clock"}, {"stcp", "storage-clock"}, {"lck", "storage-clock"}, {"ser", "serial-input"}, {"ds", "serial-input"},
    {"si", "serial-input"},    {"mr", "reset"},           {"clr", "reset"},         {"sclr", "reset"},       {"srclr", "reset"},
    {"rst", "reset"},          {"ck", "clock"},           {"cp", "clock"},          {"clk", "clock"},
});

template <std::size_t Size>
std::string_view lookUp(std::array<Entry, Size> const& table, std::string_view key) {
    for (auto const& [name, id] : table) {
        if (name == key) return id;
    }
    return {};
}

std::string folded(std::string_view name) {
    std::string key = text::asciiLower(text::foldForComparison(name));
    std::erase_if(key, [](char c) { return c == ' ' || c == '_' || c == '(' || c == ')'; });
    return key;
}

}  // namespace

std::string nodeKey(std::string_view name) {
    std::string key = folded(name);
    std::string_view const id = lookUp(kNodes, key);
    return id.empty() ? key : std::string(id);
}

std::string_view terminalKey(std::string_view name) {
    auto const key = text::foldKey(name);
    for (auto const& [letter, word] : kTerminals) {
        if (key == letter || key == word) return word;
    }
    return {};
}

std::string_view signalKey(std::string_view word) {
    std::string_view const id = lookUp(kSignals, word);
    return id.empty() ? word : id;
}

std::string conditionSymbolKey(std::string_view symbol) {
    std::string key = quantity::symbolKey(symbol);
    if (key.size() > 2 && key.front() == '|' && key.back() == '|') key = key.substr(1, key.size() - 2);
    std::string_view const id = lookUp(kConditionSymbols, key);
    if (!id.empty()) return std::string(id);
    // "VI - VO" and "VIN - VOUT"
    std::size_t const minus = key.find('-');
    if (minus == std::string::npos || minus == 0 || minus + 1 == key.size()) return key;
    return conditionSymbolKey(std::string_view(key).substr(0, minus)) + "-" + conditionSymbolKey(std::string_view(key).substr(minus + 1));
}

}  // namespace standin::compare
