#include "extractors/parameters/head_words.h"

// The title is folded, stripped of marks and brackets, then looked up whole;
// if that fails, its words are looked up one by one and the first known word
// of a bilingual or longer title decides. Tested by
// tests/extractors/parameters/head_words_test.cpp.

#include <algorithm>
#include <array>
#include <optional>
#include <string>

#include "extractors/parameters/text_forms.h"
#include "text/utf8.h"

namespace standin::parameters {

namespace {

struct Entry {
    std::string_view title;
    ColumnRole role;
};

using enum ColumnRole;

constexpr std::array kTitles = {
    // parameter
    Entry{"parameter", Name}, Entry{"parameters", Name}, Entry{"item", Name}, Entry{"items", Name}, Entry{"characteristic", Name},
    Entry{"characteristics", Name}, Entry{"rating", Value}, Entry{"description", Name}, Entry{"property", Name}, Entry{"quantity", Name},
    Entry{"parameter name", Name}, Entry{"parameter description", Name}, Entry{"electrical characteristic", Name}, Entry{"specification", Name},
    Entry{"parameter/condition", Name}, Entry{"thermal metric", Name}, Entry{"characteristic or test", Name},
    Entry{"参数", Name}, Entry{"项目", Name}, Entry{"參數", Name}, Entry{"項目", Name}, Entry{"参数名称", Name}, Entry{"名称", Name}, Entry{"特性", Name}, Entry{"参数描述", Name},
    Entry{"参数说明", Name}, Entry{"描述", Name}, Entry{"パラメータ", Name}, Entry{"特性項目", Name}, Entry{"测试项目", Name},
    Entry{"kenngröße", Name}, Entry{"bezeichnung", Name}, Entry{"kenndaten", Name},
    Entry{"paramètre", Name}, Entry{"paramètres", Name}, Entry{"caractéristique", Name}, Entry{"parámetro", Name}, Entry{"característica", Name}, Entry{"parametro", Name},
    Entry{"항목", Name}, Entry{"파라미터", Name}, Entry{"특성", Name},
    Entry{"параметр", Name}, Entry{"параметры", Name}, Entry{"наименование параметра", Name}, Entry{"наименование параметров", Name}, Entry{"наименование", Name},
    // symbol
    Entry{"symbol", Symbol}, Entry{"symbols", Symbol}, Entry{"sym", Symbol}, Entry{"sign", Symbol}, Entry{"code", Symbol}, Entry{"parameter symbol", Symbol},
    Entry{"符号", Symbol}, Entry{"符號", Symbol}, Entry{"代号", Symbol}, Entry{"代码", Symbol}, Entry{"记号", Symbol}, Entry{"記号", Symbol}, Entry{"略号", Symbol}, Entry{"シンボル", Symbol},
    Entry{"标号", Symbol}, Entry{"参数符号", Symbol}, Entry{"formelzeichen", Symbol}, Entry{"kurzzeichen", Symbol},
    Entry{"symbole", Symbol}, Entry{"símbolo", Symbol}, Entry{"simbolo", Symbol}, Entry{"기호", Symbol},
    Entry{"обозначение", Symbol}, Entry{"символ", Symbol}, Entry{"буквенное обозначение", Symbol},
    // condition
    Entry{"test conditions", Condition}, Entry{"test condition", Condition}, Entry{"conditions", Condition}, Entry{"condition", Condition},
    Entry{"test", Condition}, Entry{"test conditions/comments", Condition}, Entry{"comments", Condition}, Entry{"conditions/comments", Condition}, Entry{"cond", Condition},
    Entry{"measuring conditions", Condition}, Entry{"measurement conditions", Condition}, Entry{"operating conditions", Condition},
    Entry{"测试条件", Condition}, Entry{"測試條件", Condition}, Entry{"条件", Condition}, Entry{"條件", Condition}, Entry{"测定条件", Condition}, Entry{"測定条件", Condition}, Entry{"試験条件", Condition},
    Entry{"工作条件", Condition}, Entry{"参数条件", Condition}, Entry{"bedingungen", Condition}, Entry{"bedingung", Condition}, Entry{"messbedingungen", Condition}, Entry{"prüfbedingungen", Condition}, Entry{"messbedingung", Condition}, Entry{"prüfbedingung", Condition},
    Entry{"condiciones", Condition}, Entry{"condizioni", Condition}, Entry{"조건", Condition}, Entry{"측정 조건", Condition}, Entry{"시험 조건", Condition},
    Entry{"mess-/prüfbedingungen", Condition}, Entry{"режим измерения", Condition}, Entry{"условия", Condition}, Entry{"условия измерения", Condition}, Entry{"режим", Condition}, Entry{"режимы измерения", Condition},
    // limits
    Entry{"min", Min}, Entry{"minimum", Min}, Entry{"lower limit", Min}, Entry{"最小", Min}, Entry{"最小值", Min}, Entry{"最小値", Min}, Entry{"下限", Min}, Entry{"kleinstwert", Min},
    Entry{"мин", Min}, Entry{"не менее", Min}, Entry{"минимум", Min}, Entry{"min value", Min}, Entry{"最低", Min}, Entry{"最低值", Min},
    Entry{"minimal", Min}, Entry{"minimalwert", Min}, Entry{"mindestwert", Min}, Entry{"mín", Min}, Entry{"mínimo", Min}, Entry{"minimo", Min}, Entry{"최소", Min}, Entry{"최소값", Min}, Entry{"최솟값", Min},
    Entry{"typisch", Typ}, Entry{"typischer wert", Typ}, Entry{"típ", Typ}, Entry{"típico", Typ}, Entry{"tipico", Typ}, Entry{"typique", Typ}, Entry{"표준", Typ}, Entry{"표준값", Typ}, Entry{"대표값", Typ},
    Entry{"maximal", Max}, Entry{"maximalwert", Max}, Entry{"höchstwert", Max}, Entry{"máx", Max}, Entry{"máximo", Max}, Entry{"massimo", Max}, Entry{"최대", Max}, Entry{"최대값", Max}, Entry{"최댓값", Max},
    Entry{"typ", Typ}, Entry{"typical", Typ}, Entry{"nom", Typ}, Entry{"nominal", Typ}, Entry{"std", Typ}, Entry{"standard", Typ}, Entry{"典型", Typ}, Entry{"典型值", Typ},
    Entry{"标准值", Typ}, Entry{"標準", Typ}, Entry{"標準値", Typ}, Entry{"代表値", Typ}, Entry{"标准", Typ}, Entry{"标称", Typ}, Entry{"标称值", Typ}, Entry{"richtwert", Typ}, Entry{"nennwert", Typ},
    Entry{"тип", Typ}, Entry{"типовое", Typ}, Entry{"номинал", Typ}, Entry{"typical value", Typ}, Entry{"typ value", Typ}, Entry{"典型値", Typ}, Entry{"tvp", Typ}, Entry{"tye", Typ},
    Entry{"max", Max}, Entry{"maximum", Max}, Entry{"upper limit", Max}, Entry{"最大", Max}, Entry{"最大值", Max}, Entry{"最大値", Max}, Entry{"上限", Max}, Entry{"größtwert", Max},
    Entry{"макс", Max}, Entry{"не более", Max}, Entry{"максимум", Max}, Entry{"max value", Max}, Entry{"最高", Max}, Entry{"最高值", Max},
    // single value
    Entry{"ratings", Value}, Entry{"limit", Value}, Entry{"limits", Value}, Entry{"value", Value}, Entry{"values", Value}, Entry{"absolute value", Value},
    Entry{"rating value", Value}, Entry{"maximum ratings", Value}, Entry{"absolute maximum ratings", Value}, Entry{"limit value", Value}, Entry{"limiting value", Value}, Entry{"range", Value},
    Entry{"额定值", Value}, Entry{"極限值", Value}, Entry{"极限值", Value}, Entry{"数值", Value}, Entry{"定格", Value}, Entry{"定格値", Value}, Entry{"范围", Value}, Entry{"参数值", Value}, Entry{"额定", Value},
    Entry{"极限", Value}, Entry{"参数范围", Value}, Entry{"值", Value}, Entry{"規格値", Value}, Entry{"规格", Value}, Entry{"最大额定值", Value}, Entry{"绝对最大额定值", Value},
    Entry{"valeur", Value}, Entry{"valeurs", Value}, Entry{"valor", Value}, Entry{"valore", Value}, Entry{"정격", Value}, Entry{"정격값", Value},
    Entry{"grenzwert", Value}, Entry{"grenzwerte", Value}, Entry{"wert", Value}, Entry{"werte", Value}, Entry{"норма", Value}, Entry{"значение", Value}, Entry{"значения", Value}, Entry{"spec", Value},
    Entry{"guaranteed limits", Value}, Entry{"guaranteed limit", Value}, Entry{"design limit", Value}, Entry{"tested limit", Value},
    // unit
    Entry{"unit", Unit}, Entry{"units", Unit}, Entry{"uom", Unit}, Entry{"dim", Unit}, Entry{"单位", Unit}, Entry{"單位", Unit}, Entry{"単位", Unit}, Entry{"einheit", Unit}, Entry{"einheiten", Unit}, Entry{"единица измерения", Unit},
    Entry{"ед изм", Unit}, Entry{"единица", Unit}, Entry{"ед", Unit}, Entry{"единицы", Unit},
    Entry{"unité", Unit}, Entry{"unités", Unit}, Entry{"unidad", Unit}, Entry{"unidades", Unit}, Entry{"unità", Unit}, Entry{"단위", Unit},
    // notes
    Entry{"note", Note}, Entry{"notes", Note}, Entry{"remark", Note}, Entry{"remarks", Note}, Entry{"comment", Note}, Entry{"备注", Note}, Entry{"備註", Note}, Entry{"注释", Note}, Entry{"说明", Note}, Entry{"備考", Note}, Entry{"注", Note}, Entry{"注記", Note},
    Entry{"bemerkung", Note}, Entry{"anmerkung", Note}, Entry{"hinweis", Note}, Entry{"примечание", Note},
    // part, pin, package
    Entry{"part number", Part}, Entry{"part", Part}, Entry{"part no", Part}, Entry{"device", Part}, Entry{"devices", Part}, Entry{"type number", Part}, Entry{"product", Part}, Entry{"product name", Part}, Entry{"type", Part}, Entry{"model", Part}, Entry{"model no", Part},
    Entry{"ordering code", Part}, Entry{"order code", Part}, Entry{"order codes", Part}, Entry{"orderable part number", Part}, Entry{"ordering number", Part}, Entry{"orderable device", Part}, Entry{"ordering part number", Part}, Entry{"order number", Part}, Entry{"part numbers", Part}, Entry{"型号", Part}, Entry{"产品型号", Part}, Entry{"型號", Part}, Entry{"品名", Part}, Entry{"製品名", Part}, Entry{"产品名称", Part},
    Entry{"订货型号", Part}, Entry{"订购型号", Part}, Entry{"typ nr", Part}, Entry{"тип ис", Part}, Entry{"version", Part}, Entry{"grade", Part}, Entry{"marking", Part}, Entry{"丝印", Part}, Entry{"brand", Part},
    Entry{"pin", Pin}, Entry{"pin no", Pin}, Entry{"pin number", Pin}, Entry{"no", Pin}, Entry{"pin #", Pin}, Entry{"pins", Pin}, Entry{"terminal", Pin}, Entry{"引脚", Pin}, Entry{"管脚", Pin}, Entry{"引脚号", Pin}, Entry{"管脚号", Pin}, Entry{"序号", Pin}, Entry{"引脚序号", Pin}, Entry{"脚位", Pin}, Entry{"端子番号", Pin}, Entry{"ピン番号", Pin}, Entry{"anschluss", Pin}, Entry{"вывод", Pin}, Entry{"номер вывода", Pin}, Entry{"管脚编号", Pin}, Entry{"引脚编号", Pin},
    Entry{"pin name", PinName}, Entry{"name", PinName}, Entry{"引脚名称", PinName}, Entry{"管脚名称", PinName}, Entry{"端子名", PinName}, Entry{"引脚名", PinName}, Entry{"terminal name", PinName}, Entry{"signal", PinName}, Entry{"管脚名", PinName},
    Entry{"package", Package}, Entry{"packages", Package}, Entry{"封装", Package}, Entry{"封装形式", Package}, Entry{"package type", Package}, Entry{"パッケージ", Package}, Entry{"gehäuse", Package}, Entry{"корпус", Package},
    // others
    Entry{"test circuit", Ignored}, Entry{"circuit", Ignored}, Entry{"fig", Ignored}, Entry{"figure", Ignored}, Entry{"meas circuit", Ignored}, Entry{"measuring circuit", Ignored}, Entry{"测试电路", Ignored}, Entry{"测定电路", Ignored}, Entry{"測定回路", Ignored}, Entry{"messschaltung", Ignored}, Entry{"see figure", Ignored}, Entry{"test circuits", Ignored},
    Entry{"num", Ignored}, Entry{"item no", Ignored}, Entry{"no item", Ignored}, Entry{"lfd nr", Ignored},
    Entry{"№ п/п", Ignored}, Entry{"№", Ignored}, Entry{"test level", Ignored}, Entry{"sub-group", Ignored}, Entry{"subgroup", Ignored}, Entry{"cir", Ignored}, Entry{"figure no", Ignored}, Entry{"waveform", Ignored}, Entry{"waveforms", Ignored}, Entry{"test waveform", Ignored}, Entry{"波形", Ignored}, Entry{"测试波形", Ignored}, Entry{"diagram", Ignored}, Entry{"测试图", Ignored},
};

constexpr std::size_t kMostPieces = 5;     // words of a title; words of Latin letters and CJK run together count apart
constexpr std::size_t kLongestTitle = 96;  // bytes; longer text is no title

constexpr auto kSorted = [] {
    auto sorted = kTitles;
    std::ranges::sort(sorted, {}, &Entry::title);
    return sorted;
}();

std::optional<ColumnRole> lookup(std::string_view title) {
    auto const found = std::ranges::lower_bound(kSorted, title, {}, &Entry::title);
    return found != kSorted.end() && found->title == title ? std::optional(found->role) : std::nullopt;
}

// Folded, without brackets and what is in them, marks and punctuation.
std::string bareTitle(std::string_view title) {
    std::string const low = folded(title);
    std::string out;
    int depth = 0;
    for (char c : low) {
        if (c == '(' || c == '[') {
            ++depth;
            out.push_back(' ');
        } else if (c == ')' || c == ']') {
            if (depth > 0) --depth;
        } else if (depth == 0 && c != '.' && c != ':' && c != '*' && c != ',') {
            out.push_back(c);
        }
    }
    out = tidied(out);
    return out;
}

bool hasLetterAndDigit(std::string_view title) {
    bool letter = false;
    bool digit = false;
    for (char c : title) {
        letter = letter || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
        digit = digit || (c >= '0' && c <= '9');
    }
    return letter && digit;
}

// Titles broken by a hyphen in a narrow column: "tempera- ture" reads "temperature".
std::string closedHyphens(std::string text) {
    for (std::size_t at = text.find("- ", 1); at != std::string::npos; at = text.find("- ", at)) {
        bool const letters = text[at - 1] != ' ' && at + 2 < text.size() && text[at + 2] != '-';
        if (!letters) {
            ++at;
            continue;
        }
        text.erase(at, 2);
    }
    return text;
}

// Letter-spaced titles: "m i n" reads "min".
std::string closedLetters(std::string const& text) {
    if (text.size() < 5 || text[1] != ' ') return text;
    std::vector<std::string> const words = splitAtSpaces(text);
    if (words.size() < 3) return text;
    for (std::string const& word : words) {
        if (word.size() != 1) return text;
    }
    std::string out;
    for (std::string const& word : words) out += word;
    return out;
}

}  // namespace

ColumnRole columnRoleOf(std::string_view title) {
    if (title.empty() || title.size() > kLongestTitle) return Unknown;
    std::string bare = closedLetters(closedHyphens(bareTitle(title)));
    if (bare.empty()) {
        // a title that is bracketed as a whole
        bare = folded(title);
        std::erase_if(bare, [](char c) { return c == '(' || c == ')' || c == '[' || c == ']' || c == '.'; });
        bare = trimmed(bare);
    }
    if (bare.empty()) return Unknown;
    if (std::optional<ColumnRole> const role = lookup(bare)) return *role;
    std::vector<std::string> words = splitAtSpaces(bare);
    if (words.size() > kMostPieces) return Unknown;
    if (words.size() == 2) {
        // a title broken by a narrow column: "uni ts"
        std::optional<ColumnRole> const whole = lookup(words[0] + words[1]);
        if (whole && !lookup(words[0]) && !lookup(words[1])) return *whole;
    }
    // CJK and Latin run together ("参数parameter"): split at the change of script
    std::vector<std::string> pieces;
    for (std::string const& word : words) {
        if (standin::text::isAscii(word)) {
            pieces.push_back(word);
            continue;
        }
        std::string piece;
        bool cjk = false;
        for (char32_t c : decoded(word)) {
            bool const now = isCjk(c);
            if (!piece.empty() && now != cjk) {
                pieces.push_back(piece);
                piece.clear();
            }
            cjk = now;
            append(piece, c);
        }
        if (!piece.empty()) pieces.push_back(piece);
    }
    if (pieces.size() > kMostPieces) return Unknown;
    if (pieces.back() == "formula" || pieces.back() == "equation") return Note;  // "Typical extrapolation formula"
    // "Температура, Tj": what the values hold at
    constexpr std::array kTemperature = {"temperature", "температура", "temperatur", "温度", "溫度"};
    if (pieces.size() <= 2 && std::ranges::find(kTemperature, std::string_view(pieces.front())) != kTemperature.end() && (pieces.size() == 1 || pieces[1].size() <= 6)) {
        return Condition;
    }
    // the longest run of neighbouring words that is known, shorter than the whole
    for (std::size_t length = pieces.size() - 1; length >= 1; --length) {
        for (std::size_t at = 0; at + length <= pieces.size(); ++at) {
            std::string run = pieces[at];
            for (std::size_t k = 1; k < length; ++k) run = joined(run, pieces[at + k]);
            std::optional<ColumnRole> const role = lookup(run);
            if (!role) continue;
            // one known word beside unknown Latin words says little ("Test pin voltage", "no load")
            std::size_t const unknown = pieces.size() - length;
            bool const limit = *role == Min || *role == Typ || *role == Max || *role == Unit || *role == Symbol || *role == Condition || *role == Name;
            if (unknown >= 1 && !limit) continue;
            if (unknown > 2) continue;
            return *role;
        }
    }
    return Unknown;
}

bool isNeutralGroupTitle(std::string_view title) {
    std::string const bare = bareTitle(title);
    if (bare.empty()) return !hasLetterAndDigit(title);  // "(V)", but not "(SOT-223)"
    ColumnRole const role = columnRoleOf(title);
    if (role == Value || role == Unit) return true;
    constexpr std::array kNeutral = {"specification", "specifications", "electrical characteristics", "limits", "performance", "spec limits", "min/typ/max", "value/unit", "规格", "参数值", "参数范围", "characteristics", "ratings", "数值", "max ratings", "величина", "норма параметра"};
    return std::ranges::any_of(kNeutral, [&](std::string_view neutral) { return neutral == bare; });
}

}  // namespace standin::parameters
