// The text is brought to a key (lower case, no spaces, points and bracketed
// additions) and looked up in one list; a bilingual title is looked up by its two
// halves.
// Tested by tests/extractors/tables/head_words_test.cpp.
#include "extractors/tables/head_words.h"

#include <string>
#include <unordered_map>

#include "text/script.h"
#include "text/utf8.h"

namespace standin::tables {

namespace {

using Titles = std::unordered_map<std::string_view, ColumnTitle>;

constexpr std::size_t kLongestTitle = 60;  // bytes

Titles knownTitles() {
    using T = ColumnTitle;
    return {
        // specifications, English
        {"parameter", T::Parameter}, {"parameters", T::Parameter}, {"item", T::Parameter}, {"items", T::Parameter},
        {"characteristic", T::Parameter}, {"characteristics", T::Parameter}, {"rating", T::Value}, {"ratings", T::Value},
        {"property", T::Parameter}, {"quantity", T::Parameter}, {"specification", T::Parameter}, {"parametername", T::Parameter},
        {"thermalmetric", T::Parameter}, {"symbolparameter", T::Parameter}, {"parameterdescription", T::Parameter},
        {"symbol", T::Symbol}, {"symbols", T::Symbol}, {"sym", T::Symbol}, {"sign", T::Symbol}, {"symb", T::Symbol},
        {"condition", T::Conditions}, {"conditions", T::Conditions}, {"testcondition", T::Conditions}, {"testconditions", T::Conditions},
        {"test", T::Conditions}, {"measurementconditions", T::Conditions}, {"measuringconditions", T::Conditions}, {"testconditon", T::Conditions},
        {"conditionsnote", T::Conditions}, {"conditionnote", T::Conditions},
        {"min", T::Min}, {"minimum", T::Min}, {"lowerlimit", T::Min}, {"minvalue", T::Min},
        {"typ", T::Typ}, {"typical", T::Typ}, {"nom", T::Typ}, {"nominal", T::Typ}, {"std", T::Typ}, {"standard", T::Typ}, {"typvalue", T::Typ},
        {"type", T::Type}, {"typicalvalue", T::Typ},
        {"max", T::Max}, {"maximum", T::Max}, {"upperlimit", T::Max}, {"maxvalue", T::Max}, {"mix", T::Min}, {"tye", T::Typ},
        {"value", T::Value}, {"values", T::Value}, {"limit", T::Value}, {"limits", T::Value}, {"guaranteedlimit", T::Value},
        {"guaranteedlimits", T::Value}, {"absolutevalue", T::Value}, {"absolutemaximumrating", T::Value}, {"absolutemaximumratings", T::Value},
        {"maximumratings", T::Value}, {"ratingvalue", T::Value},
        {"unit", T::Unit}, {"units", T::Unit}, {"uom", T::Unit}, {"unite", T::Unit},
        {"note", T::Note}, {"notes", T::Note}, {"remark", T::Note}, {"remarks", T::Note}, {"comment", T::Note}, {"comments", T::Note},
        {"testcircuit", T::TestCircuit}, {"circuit", T::TestCircuit}, {"fig", T::TestCircuit}, {"figure", T::TestCircuit},
        {"meascircuit", T::TestCircuit}, {"testfig", T::TestCircuit},
        // other tables, English
        {"pin", T::Pin}, {"pins", T::Pin}, {"pinno", T::Pin}, {"no", T::Pin}, {"number", T::Pin}, {"pinnumber", T::Pin}, {"pin#", T::Pin},
        {"terminal", T::Pin}, {"terminalno", T::Pin}, {"pinnum", T::Pin}, {"#", T::Pin},
        {"name", T::Name}, {"pinname", T::Name}, {"terminalname", T::Name}, {"signal", T::Name}, {"signalname", T::Name}, {"mnemonic", T::Name},
        {"description", T::Description}, {"descriptions", T::Description}, {"function", T::Description}, {"functions", T::Description},
        {"pinfunction", T::Description}, {"pindescription", T::Description}, {"functiondescription", T::Description}, {"i/o", T::Type},
        {"io", T::Type}, {"package", T::Package}, {"packages", T::Package}, {"packagetype", T::Package}, {"packaging", T::Package},
        {"partnumber", T::PartNumber}, {"partno", T::PartNumber}, {"part", T::PartNumber}, {"device", T::PartNumber}, {"model", T::PartNumber},
        {"typenumber", T::PartNumber}, {"ordercode", T::PartNumber}, {"orderingcode", T::PartNumber}, {"orderingnumber", T::PartNumber},
        {"ordernumber", T::PartNumber}, {"product", T::PartNumber}, {"productname", T::PartNumber}, {"partnumbers", T::PartNumber},
        {"modelno", T::PartNumber}, {"ordercodes", T::PartNumber}, {"orderinginformation", T::PartNumber}, {"productid", T::PartNumber},
        {"marking", T::Marking}, {"topmark", T::Marking}, {"topmarking", T::Marking}, {"mark", T::Marking}, {"date", T::Date},
        {"releasedate", T::Date}, {"revision", T::Revision}, {"rev", T::Revision}, {"version", T::Revision}, {"changes", T::Description},
        {"changenotice", T::Description}, {"supersedes", T::Revision}, {"documentid", T::Revision},
        // 中文, 日本語
        {"参数", T::Parameter}, {"项目", T::Parameter}, {"参数名称", T::Parameter}, {"特性", T::Parameter}, {"項目", T::Parameter},
        {"參數", T::Parameter}, {"パラメータ", T::Parameter}, {"特性項目", T::Parameter}, {"参数项目", T::Parameter}, {"指标", T::Parameter},
        {"符号", T::Symbol}, {"代号", T::Symbol}, {"代码", T::Symbol}, {"符號", T::Symbol}, {"記号", T::Symbol}, {"略号", T::Symbol},
        {"シンボル", T::Symbol}, {"参数符号", T::Symbol},
        {"测试条件", T::Conditions}, {"条件", T::Conditions}, {"测定条件", T::Conditions}, {"測試條件", T::Conditions}, {"測定条件", T::Conditions},
        {"試験条件", T::Conditions}, {"测量条件", T::Conditions}, {"條件", T::Conditions}, {"工作条件", T::Conditions},
        {"最小", T::Min}, {"最小值", T::Min}, {"下限", T::Min}, {"最小値", T::Min}, {"最低", T::Min}, {"最低值", T::Min},
        {"典型", T::Typ}, {"典型值", T::Typ}, {"标准值", T::Typ}, {"标称", T::Typ}, {"標準", T::Typ}, {"標準値", T::Typ}, {"代表値", T::Typ},
        {"标称值", T::Typ}, {"公称値", T::Typ}, {"一般", T::Typ},
        {"最大", T::Max}, {"最大值", T::Max}, {"上限", T::Max}, {"最大値", T::Max}, {"最高", T::Max}, {"最高值", T::Max},
        {"额定值", T::Value}, {"极限值", T::Value}, {"数值", T::Value}, {"定格", T::Value}, {"定格値", T::Value}, {"額定值", T::Value},
        {"参数值", T::Value}, {"值", T::Value}, {"范围", T::Value}, {"参数范围", T::Value}, {"极限参数", T::Value}, {"规格值", T::Value}, {"規格値", T::Value},
        {"单位", T::Unit}, {"単位", T::Unit}, {"單位", T::Unit},
        {"备注", T::Note}, {"注释", T::Note}, {"備考", T::Note}, {"注記", T::Note}, {"備註", T::Note},
        {"测试电路", T::TestCircuit}, {"测定电路", T::TestCircuit}, {"測定回路", T::TestCircuit}, {"回路", T::TestCircuit},
        {"引脚", T::Pin}, {"管脚", T::Pin}, {"引脚号", T::Pin}, {"管脚号", T::Pin}, {"序号", T::Pin}, {"端子", T::Pin}, {"端子番号", T::Pin},
        {"脚位", T::Pin}, {"引脚序号", T::Pin}, {"管脚序号", T::Pin}, {"端口", T::Pin}, {"引脚编号", T::Pin}, {"编号", T::Pin},
        {"名称", T::Name}, {"引脚名称", T::Name}, {"管脚名称", T::Name}, {"端子名", T::Name}, {"端子記号", T::Name}, {"引脚名", T::Name},
        {"管脚名", T::Name}, {"名", T::Name}, {"符号名称", T::Name},
        {"说明", T::Description}, {"描述", T::Description}, {"功能", T::Description}, {"功能说明", T::Description}, {"功能描述", T::Description},
        {"引脚说明", T::Description}, {"引脚功能", T::Description}, {"端子内容", T::Description}, {"機能", T::Description}, {"说明书", T::Description},
        {"引脚描述", T::Description}, {"管脚功能", T::Description}, {"管脚描述", T::Description}, {"類型", T::Type}, {"类型", T::Type}, {"型号", T::PartNumber},
        {"产品型号", T::PartNumber}, {"品名", T::PartNumber}, {"製品名", T::PartNumber}, {"封装", T::Package}, {"封装形式", T::Package}, {"封裝", T::Package},
        {"パッケージ", T::Package}, {"打标", T::Marking}, {"丝印", T::Marking}, {"印字", T::Marking}, {"标识", T::Marking}, {"日期", T::Date}, {"版本", T::Revision},
        // Deutsch
        {"kenngröße", T::Parameter}, {"bezeichnung", T::Parameter}, {"formelzeichen", T::Symbol}, {"kurzzeichen", T::Symbol}, {"zeichen", T::Symbol},
        {"bedingung", T::Conditions}, {"bedingungen", T::Conditions}, {"messbedingungen", T::Conditions}, {"prüfbedingungen", T::Conditions},
        {"prüfbedingung", T::Conditions}, {"messbedingung", T::Conditions}, {"kleinstwert", T::Min}, {"richtwert", T::Typ}, {"nennwert", T::Typ}, {"größtwert", T::Max},
        {"grenzwert", T::Value}, {"grenzwerte", T::Value}, {"wert", T::Value}, {"werte", T::Value}, {"einheit", T::Unit}, {"einheiten", T::Unit},
        {"bemerkung", T::Note}, {"anmerkung", T::Note}, {"hinweis", T::Note}, {"messschaltung", T::TestCircuit}, {"anschluss", T::Pin},
        {"beschreibung", T::Description}, {"funktion", T::Description}, {"gehäuse", T::Package},
        {"minimal", T::Min}, {"minimalwert", T::Min}, {"mindestwert", T::Min}, {"typisch", T::Typ}, {"typischerwert", T::Typ}, {"maximal", T::Max},
        {"maximalwert", T::Max}, {"höchstwert", T::Max},
        // français, español, italiano
        {"paramètre", T::Parameter}, {"paramètres", T::Parameter}, {"caractéristique", T::Parameter}, {"parámetro", T::Parameter},
        {"característica", T::Parameter}, {"parametro", T::Parameter}, {"symbole", T::Symbol}, {"símbolo", T::Symbol}, {"simbolo", T::Symbol},
        {"condiciones", T::Conditions}, {"condizioni", T::Conditions}, {"mín", T::Min}, {"mínimo", T::Min}, {"minimo", T::Min}, {"típ", T::Typ},
        {"típico", T::Typ}, {"tipico", T::Typ}, {"typique", T::Typ}, {"máx", T::Max}, {"máximo", T::Max}, {"massimo", T::Max},
        {"valeur", T::Value}, {"valeurs", T::Value}, {"valor", T::Value}, {"valore", T::Value}, {"unité", T::Unit}, {"unités", T::Unit},
        {"unidad", T::Unit}, {"unidades", T::Unit}, {"unità", T::Unit},
        // 한국어
        {"항목", T::Parameter}, {"파라미터", T::Parameter}, {"특성", T::Parameter}, {"기호", T::Symbol}, {"조건", T::Conditions}, {"측정조건", T::Conditions},
        {"시험조건", T::Conditions}, {"최소", T::Min}, {"최소값", T::Min}, {"최솟값", T::Min}, {"표준", T::Typ}, {"표준값", T::Typ}, {"대표값", T::Typ},
        {"최대", T::Max}, {"최대값", T::Max}, {"최댓값", T::Max}, {"정격", T::Value}, {"정격값", T::Value}, {"단위", T::Unit},
        // русский
        {"параметр", T::Parameter}, {"параметры", T::Parameter}, {"наименованиепараметра", T::Parameter}, {"наименование", T::Parameter},
        {"обозначение", T::Symbol}, {"буквенноеобозначение", T::Symbol}, {"символ", T::Symbol}, {"условия", T::Conditions}, {"режимизмерения", T::Conditions},
        {"условие", T::Conditions}, {"условияизмерения", T::Conditions}, {"режим", T::Conditions}, {"мин", T::Min}, {"неменее", T::Min}, {"минимум", T::Min},
        {"тип", T::Typ}, {"типовое", T::Typ}, {"типичное", T::Typ}, {"макс", T::Max}, {"неболее", T::Max}, {"максимум", T::Max}, {"норма", T::Value},
        {"значение", T::Value}, {"значения", T::Value}, {"единицаизмерения", T::Unit}, {"едизм", T::Unit}, {"ед", T::Unit}, {"единицы", T::Unit},
        {"единица", T::Unit}, {"примечание", T::Note}, {"вывод", T::Pin}, {"номервывода", T::Pin}, {"назначение", T::Description}, {"корпус", T::Package}};
}

ColumnTitle lookUp(std::string_view key) {
    static Titles const kTitles = knownTitles();
    auto const it = kTitles.find(key);
    return it != kTitles.end() ? it->second : ColumnTitle::None;
}

char32_t lowered(char32_t c) {
    if (c < 0x80) return c >= U'A' && c <= U'Z' ? c + 32 : c;
    if (c >= U'\u0410' && c <= U'\u042F') return c + 32;
    if (c >= U'\u00C0' && c <= U'\u00DE' && c != U'\u00D7') return c + 32;
    if (c >= U'\uFF21' && c <= U'\uFF3A') return c - U'\uFF21' + U'a';
    if (c >= U'\uFF41' && c <= U'\uFF5A') return c - U'\uFF41' + U'a';
    return c;
}

}  // namespace

ColumnTitle columnTitle(std::string_view text) {
    if (text.empty() || text.size() > kLongestTitle) return ColumnTitle::None;
    std::string key;
    std::string latin;  // of a key that holds CJK as well
    std::string wide;
    int depth = 0;
    for (std::size_t at = 0; at < text.size();) {
        auto const byte = static_cast<unsigned char>(text[at]);
        char32_t const c = lowered(byte < 0x80 ? static_cast<char32_t>(text[at++]) : text::decodeNext(text, at));
        if (c >= U'a' && c <= U'z') {  // most of all text
            if (depth > 0) continue;
            key.push_back(static_cast<char>(c));
            if (!wide.empty()) latin.push_back(static_cast<char>(c));
            continue;
        }
        if (c == U' ') continue;
        if (c == U'(' || c == U'[' || c == U'\uFF08' || c == U'\u3010') {
            ++depth;
            continue;
        }
        if (c == U')' || c == U']' || c == U'\uFF09' || c == U'\u3011') {
            depth = depth > 0 ? depth - 1 : 0;
            continue;
        }
        if (depth > 0) continue;
        if (c >= U'0' && c <= U'9') return ColumnTitle::None;  // "4 PINS" is a value
        bool const cjk = text::isCjk(c);
        bool const keep = c == U'/' || c == U'#' || cjk || (c >= U'\u00DF' && c <= U'\u024F') || (c >= U'\u0430' && c <= U'\u0451');
        bool const mark = (c >= U'\u3000' && c <= U'\u303F') || (c >= U'\uFF00' && c <= U'\uFF0F') || (c >= U'\uFF1A' && c <= U'\uFF20');
        if (!keep || mark) continue;
        if (cjk && wide.empty()) latin = key;
        text::append(key, c);
        if (cjk) {
            text::append(wide, c);
        } else if (!wide.empty()) {
            text::append(latin, c);
        }
    }
    if (auto const title = lookUp(key); title != ColumnTitle::None) return title;
    if (latin.empty() || wide.empty()) return ColumnTitle::None;
    if (auto const title = lookUp(wide); title != ColumnTitle::None) return title;
    return lookUp(latin);
}

}  // namespace standin::tables
