// Which writing and language a text is in; cheap enough for every page.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace standin::text {

enum class Writing : std::uint8_t { Common, Latin, Greek, Cyrillic, Han, Kana, Hangul, Other };

// Digits, punctuation and signs are Common.
[[nodiscard]] Writing writingOf(char32_t code);

// Han, kana, hangul and the punctuation and wide forms that go with them.
[[nodiscard]] bool isCjk(char32_t code);

// More CJK than other letters.
[[nodiscard]] bool isCjk(std::string_view utf8);

[[nodiscard]] bool isLetter(char32_t code);

// BCP 47: en, de, ru, zh, zh-Hant, ja, ko; empty where the text has no letters to
// tell by. Counts scripts and the commonest words.
[[nodiscard]] std::string detectLanguage(std::string_view utf8);

}  // namespace standin::text
