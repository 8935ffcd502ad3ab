// Words that change what a sentence means, by what they mean: data for
// wording_classes.h.
#pragma once

#include <algorithm>
#include <cstdint>
#include <initializer_list>
#include <span>
#include <string_view>

#include "model/comparison.h"

namespace standin::compare {

// Meanings that are counted in a sentence.
enum class Meaning : std::uint8_t {
    // negation
    Not,
    Disabled,
    // modality ladder
    Prohibition,
    Obligation,
    Recommendation,
    Permission,
    Ability,
    // stated permission; what lets something happen stands for it where the other side states it
    Permitted,
    Lets,
    Optional,
    // connectives
    And,
    Or,
    Both,
    Either,
    Until,
    Unless,
    // conditions
    If,
    When,
    Except,
    Whether,
    Depends,
    // scope
    Each,
    Any,
    All,
    Only,
    Total,
    // grade
    Guaranteed,
    NotGuaranteed,
    ByDesign,
    Tested,
    Typical,
    ForReference,
    // temperatures in words
    RoomTemperature,
    FullTemperature,
    // comparators
    Maximum,
    Minimum,
    Above,
    Below,
    AtLeast,
    AtMost,
    Rising,
    Falling,
    // time
    Before,
    After,
    First,
    Last,
    Within,
    During,
    From,
    Immediately,
    // triggers
    Automatic,
    Manual,
    Latched,
    Charger,
    Load,
    Removed,
    Attached,
    Cell,
    Fet,
    SenseResistor,
    Charging,
    Discharging,
    Overcharge,
    Overdischarge,
    Detected,
    Released,
    // pins and outputs
    LeftOpen,
    Tied,
    Unconnected,
    High,
    Low,
    Cmos,
    OpenDrain,
    PushPull,
    NChannel,
    PChannel,
    On,
    Off,
    Positive,
    Negative,
    Internal,
    External,
    Series,
    Parallel,
    Source,
    Sink,
    PullUp,
    PullDown,
    Input,
    Output,
    // ordering
    Suffix,
    // meanings that only take words away from the lists above ("power-on", "turn on")
    Nothing,
};
inline constexpr std::size_t kMeanings = static_cast<std::size_t>(Meaning::Nothing) + 1;

enum class PhraseLanguage : std::uint8_t { English, German, Chinese, Japanese };

// `phrases`: lower case, separated by "|"; words separated by single spaces
// (English, German) or plain text (Chinese, Japanese).
struct PhraseLine {
    Meaning meaning;
    PhraseLanguage language;
    std::string_view phrases;
};
[[nodiscard]] std::span<PhraseLine const> phraseLines();

// What a difference in this meaning is called.
[[nodiscard]] model::WordingClass classOf(Meaning meaning);

// Does a mere difference in how often it is said count (connectives, negations),
// or only whether it is said at all (things: charger, load)?
enum class Counting : std::uint8_t { Often, AtAll };
[[nodiscard]] Counting countingOf(Meaning meaning);

// Names of pins that are met without a pin table, lower case.
[[nodiscard]] bool isCommonPinName(std::string_view lowerCaseName);

// Words that say nothing ("the", "please"), lower case.
[[nodiscard]] bool isFiller(std::string_view lowerCaseWord, PhraseLanguage language);

// Looks at lengths and first letters before it compares. No word of the list is empty.
[[nodiscard]] inline bool isOneOf(std::string_view word, std::span<std::string_view const> list) {
    return std::any_of(list.begin(), list.end(), [word](std::string_view one) { return one.size() == word.size() && one.front() == word.front() && one == word; });
}
[[nodiscard]] inline bool isOneOf(std::string_view word, std::initializer_list<std::string_view> list) { return isOneOf(word, std::span(list.begin(), list.size())); }

// The word that stands for its synonyms ("terminal" -> "pin"), else the word itself.
[[nodiscard]] std::string_view commonWord(std::string_view lowerCaseWord);

}  // namespace standin::compare
