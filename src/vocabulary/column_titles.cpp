// A column of another kind than all of these is told by what stands in it.
// Tested by tests/src/vocabulary/column_titles_test.cpp.
#include "vocabulary/column_titles.h"

#include <algorithm>
#include <array>

#include "text/script.h"
#include "text/utf8.h"

namespace standin::vocabulary {

namespace {

using T = ColumnTitle;

struct Entry {
    std::string_view key;
    ColumnTitle title;
};

// clang-format off
constexpr auto kTitles = std::to_array<Entry>({
    {"parameter", T::Parameter}, {"parameters", T::Parameter}, {"item", T::Parameter}, {"items", T::Parameter}, {"characteristic", T::Parameter},
    {"characteristics", T::Parameter}, {"property", T::Parameter}, {"quantity", T::Parameter}, {"specification", T::Parameter},
    {"parametername", T::Parameter}, {"thermalmetric", T::Parameter}, {"symbolparameter", T::Parameter}, {"parameterdescription", T::Parameter},
    {"kenngröße", T::Parameter}, {"bezeichnung", T::Parameter}, {"paramètre", T::Parameter}, {"paramètres", T::Parameter}, {"caractéristique", T::Parameter},
    {"parámetro", T::Parameter}, {"característica", T::Parameter}, {"parametro", T::Parameter}, {"electricalcharacteristic", T::Parameter},
    {"parameter/condition", T::Parameter}, {"characteristicortest", T::Parameter}, {"kenndaten", T::Parameter},
    {"参数", T::Parameter}, {"项目", T::Parameter}, {"参数名称", T::Parameter}, {"特性", T::Parameter}, {"項目", T::Parameter}, {"參數", T::Parameter},
    {"特性項目", T::Parameter}, {"参数项目", T::Parameter}, {"指标", T::Parameter}, {"名称", T::Parameter}, {"参数描述", T::Parameter}, {"参数说明", T::Parameter},
    {"测试项目", T::Parameter}, {"パラメータ", T::Parameter}, {"항목", T::Parameter}, {"파라미터", T::Parameter}, {"특성", T::Parameter},
    {"параметр", T::Parameter}, {"параметры", T::Parameter}, {"наименованиепараметра", T::Parameter}, {"наименование", T::Parameter},
    {"наименованиепараметров", T::Parameter},
    {"symbol", T::Symbol}, {"symbols", T::Symbol}, {"sym", T::Symbol}, {"sign", T::Symbol}, {"symb", T::Symbol}, {"formelzeichen", T::Symbol},
    {"kurzzeichen", T::Symbol}, {"zeichen", T::Symbol}, {"symbole", T::Symbol}, {"símbolo", T::Symbol}, {"simbolo", T::Symbol}, {"code", T::Symbol},
    {"parametersymbol", T::Symbol}, {"符号", T::Symbol}, {"代号", T::Symbol}, {"代码", T::Symbol}, {"符號", T::Symbol}, {"記号", T::Symbol}, {"略号", T::Symbol},
    {"参数符号", T::Symbol}, {"记号", T::Symbol}, {"标号", T::Symbol},
    {"シンボル", T::Symbol}, {"기호", T::Symbol}, {"обозначение", T::Symbol}, {"буквенноеобозначение", T::Symbol}, {"символ", T::Symbol},
    {"condition", T::Conditions}, {"conditions", T::Conditions}, {"testcondition", T::Conditions}, {"testconditions", T::Conditions}, {"test", T::Conditions},
    {"measurementconditions", T::Conditions}, {"measuringconditions", T::Conditions}, {"testconditon", T::Conditions}, {"conditionsnote", T::Conditions},
    {"conditionnote", T::Conditions}, {"comments", T::Conditions}, {"bedingung", T::Conditions}, {"bedingungen", T::Conditions},
    {"messbedingungen", T::Conditions}, {"prüfbedingungen", T::Conditions}, {"prüfbedingung", T::Conditions}, {"messbedingung", T::Conditions},
    {"condiciones", T::Conditions}, {"condizioni", T::Conditions}, {"testconditions/comments", T::Conditions}, {"conditions/comments", T::Conditions},
    {"cond", T::Conditions}, {"operatingconditions", T::Conditions}, {"mess/prüfbedingungen", T::Conditions},
    {"测试条件", T::Conditions}, {"条件", T::Conditions}, {"测定条件", T::Conditions}, {"測試條件", T::Conditions}, {"測定条件", T::Conditions}, {"試験条件", T::Conditions},
    {"测量条件", T::Conditions}, {"條件", T::Conditions}, {"工作条件", T::Conditions}, {"参数条件", T::Conditions},
    {"조건", T::Conditions}, {"측정조건", T::Conditions}, {"시험조건", T::Conditions},
    {"условия", T::Conditions}, {"режимизмерения", T::Conditions}, {"условие", T::Conditions}, {"условияизмерения", T::Conditions}, {"режим", T::Conditions},
    {"режимыизмерения", T::Conditions},
    {"min", T::Min}, {"minimum", T::Min}, {"lowerlimit", T::Min}, {"minvalue", T::Min}, {"mix", T::Min}, {"kleinstwert", T::Min}, {"minimal", T::Min},
    {"minimalwert", T::Min}, {"mindestwert", T::Min}, {"mín", T::Min}, {"mínimo", T::Min}, {"minimo", T::Min},
    {"最小", T::Min}, {"最小值", T::Min}, {"下限", T::Min}, {"最小値", T::Min}, {"最低", T::Min}, {"最低值", T::Min},
    {"최소", T::Min}, {"최소값", T::Min}, {"최솟값", T::Min}, {"мин", T::Min}, {"неменее", T::Min}, {"минимум", T::Min},
    {"typ", T::Typ}, {"typical", T::Typ}, {"nom", T::Typ}, {"nominal", T::Typ}, {"std", T::Typ}, {"standard", T::Typ}, {"typvalue", T::Typ},
    {"typicalvalue", T::Typ}, {"tye", T::Typ}, {"richtwert", T::Typ}, {"nennwert", T::Typ}, {"typisch", T::Typ}, {"typischerwert", T::Typ}, {"típ", T::Typ},
    {"típico", T::Typ}, {"tipico", T::Typ}, {"typique", T::Typ}, {"tvp", T::Typ},
    {"典型", T::Typ}, {"典型值", T::Typ}, {"标准值", T::Typ}, {"标称", T::Typ}, {"標準", T::Typ}, {"標準値", T::Typ}, {"代表値", T::Typ}, {"标称值", T::Typ}, {"公称値", T::Typ},
    {"一般", T::Typ}, {"标准", T::Typ}, {"典型値", T::Typ}, {"표준", T::Typ}, {"표준값", T::Typ}, {"대표값", T::Typ},
    {"тип", T::Typ}, {"типовое", T::Typ}, {"типичное", T::Typ}, {"номинал", T::Typ},
    {"max", T::Max}, {"maximum", T::Max}, {"upperlimit", T::Max}, {"maxvalue", T::Max}, {"größtwert", T::Max}, {"maximal", T::Max}, {"maximalwert", T::Max},
    {"höchstwert", T::Max}, {"máx", T::Max}, {"máximo", T::Max}, {"massimo", T::Max},
    {"最大", T::Max}, {"最大值", T::Max}, {"上限", T::Max}, {"最大値", T::Max}, {"最高", T::Max}, {"最高值", T::Max},
    {"최대", T::Max}, {"최대값", T::Max}, {"최댓값", T::Max}, {"макс", T::Max}, {"неболее", T::Max}, {"максимум", T::Max},
    {"rating", T::Value}, {"ratings", T::Value}, {"value", T::Value}, {"values", T::Value}, {"limit", T::Value}, {"limits", T::Value},
    {"guaranteedlimit", T::Value}, {"guaranteedlimits", T::Value}, {"absolutevalue", T::Value}, {"absolutemaximumrating", T::Value},
    {"absolutemaximumratings", T::Value}, {"maximumratings", T::Value}, {"ratingvalue", T::Value}, {"grenzwert", T::Value}, {"grenzwerte", T::Value},
    {"wert", T::Value}, {"werte", T::Value}, {"valeur", T::Value}, {"valeurs", T::Value}, {"valor", T::Value}, {"valore", T::Value}, {"limitvalue", T::Value},
    {"limitingvalue", T::Value}, {"spec", T::Value}, {"designlimit", T::Value}, {"testedlimit", T::Value},
    {"额定值", T::Value}, {"极限值", T::Value}, {"数值", T::Value}, {"定格", T::Value}, {"定格値", T::Value}, {"額定值", T::Value}, {"参数值", T::Value}, {"值", T::Value},
    {"范围", T::Value}, {"参数范围", T::Value}, {"极限参数", T::Value}, {"规格值", T::Value}, {"規格値", T::Value}, {"極限值", T::Value}, {"额定", T::Value}, {"极限", T::Value},
    {"规格", T::Value}, {"最大额定值", T::Value}, {"绝对最大额定值", T::Value},
    {"정격", T::Value}, {"정격값", T::Value}, {"норма", T::Value}, {"значение", T::Value}, {"значения", T::Value},
    {"unit", T::Unit}, {"units", T::Unit}, {"uom", T::Unit}, {"unite", T::Unit}, {"einheit", T::Unit}, {"einheiten", T::Unit}, {"unité", T::Unit},
    {"unités", T::Unit}, {"unidad", T::Unit}, {"unidades", T::Unit}, {"unità", T::Unit}, {"dim", T::Unit},
    {"单位", T::Unit}, {"単位", T::Unit}, {"單位", T::Unit}, {"단위", T::Unit},
    {"единицаизмерения", T::Unit}, {"едизм", T::Unit}, {"ед", T::Unit}, {"единицы", T::Unit}, {"единица", T::Unit},
    {"note", T::Note}, {"notes", T::Note}, {"remark", T::Note}, {"remarks", T::Note}, {"comment", T::Note}, {"bemerkung", T::Note}, {"anmerkung", T::Note},
    {"hinweis", T::Note}, {"备注", T::Note}, {"注释", T::Note}, {"備考", T::Note}, {"注記", T::Note}, {"備註", T::Note}, {"注", T::Note},
    {"примечание", T::Note},
    {"testcircuit", T::TestCircuit}, {"circuit", T::TestCircuit}, {"fig", T::TestCircuit}, {"figure", T::TestCircuit}, {"meascircuit", T::TestCircuit},
    {"testfig", T::TestCircuit}, {"messschaltung", T::TestCircuit}, {"measuringcircuit", T::TestCircuit}, {"seefigure", T::TestCircuit},
    {"testcircuits", T::TestCircuit}, {"testfigure", T::TestCircuit}, {"cir", T::TestCircuit}, {"figureno", T::TestCircuit}, {"waveform", T::TestCircuit}, {"waveforms", T::TestCircuit},
    {"testwaveform", T::TestCircuit}, {"diagram", T::TestCircuit},
    {"测试电路", T::TestCircuit}, {"测定电路", T::TestCircuit}, {"測定回路", T::TestCircuit}, {"回路", T::TestCircuit}, {"波形", T::TestCircuit}, {"测试波形", T::TestCircuit},
    {"测试图", T::TestCircuit},
    {"num", T::ItemNumber}, {"itemno", T::ItemNumber}, {"noitem", T::ItemNumber}, {"lfdnr", T::ItemNumber}, {"testlevel", T::ItemNumber},
    {"subgroup", T::ItemNumber}, {"№п/п", T::ItemNumber}, {"№", T::ItemNumber},
    {"pin", T::Pin}, {"pins", T::Pin}, {"pinno", T::Pin}, {"no", T::Pin}, {"number", T::ItemNumber}, {"pinnumber", T::Pin}, {"pin#", T::Pin}, {"terminal", T::Pin},
    {"terminalno", T::Pin}, {"pinnum", T::Pin}, {"#", T::Pin}, {"anschluss", T::Pin},
    {"引脚", T::Pin}, {"管脚", T::Pin}, {"引脚号", T::Pin}, {"管脚号", T::Pin}, {"序号", T::Pin}, {"端子", T::Pin}, {"端子番号", T::Pin}, {"脚位", T::Pin}, {"引脚序号", T::Pin},
    {"管脚序号", T::Pin}, {"端口", T::Pin}, {"引脚编号", T::Pin}, {"编号", T::ItemNumber}, {"管脚编号", T::Pin},
    {"ピン番号", T::Pin}, {"вывод", T::Pin}, {"номервывода", T::Pin},
    {"name", T::Name}, {"pinname", T::Name}, {"terminalname", T::Name}, {"signal", T::Name}, {"signalname", T::Name}, {"mnemonic", T::Name},
    {"引脚名称", T::Name}, {"管脚名称", T::Name}, {"端子名", T::Name}, {"端子記号", T::Name}, {"引脚名", T::Name}, {"管脚名", T::Name}, {"名", T::Name}, {"符号名称", T::Name},
    {"i/o", T::PinType}, {"io", T::PinType},
    {"description", T::Description}, {"descriptions", T::Description}, {"function", T::Description}, {"functions", T::Description},
    {"pinfunction", T::Description}, {"pindescription", T::Description}, {"functiondescription", T::Description}, {"changes", T::Description},
    {"changenotice", T::Description}, {"beschreibung", T::Description}, {"funktion", T::Description},
    {"说明", T::Description}, {"描述", T::Description}, {"功能", T::Description}, {"功能说明", T::Description}, {"功能描述", T::Description}, {"引脚说明", T::Description},
    {"引脚功能", T::Description}, {"端子内容", T::Description}, {"機能", T::Description}, {"说明书", T::Description}, {"引脚描述", T::Description}, {"管脚功能", T::Description},
    {"管脚描述", T::Description}, {"назначение", T::Description},
    {"type", T::Type}, {"類型", T::Type}, {"类型", T::Type},
    {"package", T::Package}, {"packages", T::Package}, {"packagetype", T::Package}, {"packaging", T::Package}, {"gehäuse", T::Package},
    {"封装", T::Package}, {"封装形式", T::Package}, {"封裝", T::Package},
    {"パッケージ", T::Package}, {"корпус", T::Package},
    {"partnumber", T::PartNumber}, {"partno", T::PartNumber}, {"part", T::PartNumber}, {"device", T::PartNumber}, {"model", T::PartNumber},
    {"typenumber", T::PartNumber}, {"ordercode", T::PartNumber}, {"orderingcode", T::PartNumber}, {"orderingnumber", T::PartNumber},
    {"ordernumber", T::PartNumber}, {"product", T::PartNumber}, {"productname", T::PartNumber}, {"partnumbers", T::PartNumber}, {"modelno", T::PartNumber},
    {"ordercodes", T::PartNumber}, {"orderinginformation", T::PartNumber}, {"productid", T::PartNumber}, {"version", T::PartNumber},
    {"devices", T::PartNumber}, {"orderablepartnumber", T::PartNumber}, {"orderabledevice", T::PartNumber}, {"orderingpartnumber", T::PartNumber},
    {"typnr", T::PartNumber}, {"grade", T::PartNumber}, {"brand", T::PartNumber},
    {"型号", T::PartNumber}, {"产品型号", T::PartNumber}, {"品名", T::PartNumber}, {"製品名", T::PartNumber}, {"型號", T::PartNumber}, {"产品名称", T::PartNumber},
    {"订货型号", T::PartNumber}, {"订购型号", T::PartNumber}, {"типис", T::PartNumber},
    {"marking", T::Marking}, {"topmark", T::Marking}, {"topmarking", T::Marking}, {"mark", T::Marking},
    {"打标", T::Marking}, {"丝印", T::Marking}, {"印字", T::Marking}, {"标识", T::Marking},
    {"date", T::Date}, {"releasedate", T::Date}, {"日期", T::Date},
    {"revision", T::Revision}, {"rev", T::Revision}, {"supersedes", T::Revision}, {"documentid", T::Revision},
    {"版本", T::Revision}
});
// clang-format on

// Shorter keys first: most of what is asked for differs in length from what is known.
constexpr bool before(std::string_view a, std::string_view b) {
    return a.size() != b.size() ? a.size() < b.size() : a < b;
}

constexpr auto kSorted = [] {
    auto sorted = kTitles;
    std::ranges::sort(sorted, before, &Entry::key);
    return sorted;
}();
static_assert(std::ranges::adjacent_find(kSorted, {}, &Entry::key) == kSorted.end(), "a title stands in the list twice");

}  // namespace

bool isInColumnTitleKey(char32_t lowered) {
    if (lowered < 0x80) return (lowered >= U'a' && lowered <= U'z') || lowered == U'/' || lowered == U'#';
    if ((lowered >= U'\u3000' && lowered <= U'\u303F') || (lowered >= U'\uFF00' && lowered <= U'\uFF0F') || (lowered >= U'\uFF1A' && lowered <= U'\uFF20')) return false;
    return text::isCjk(lowered) || (lowered >= U'\u00DF' && lowered <= U'\u024F') || (lowered >= U'\u0430' && lowered <= U'\u0451') || lowered == U'\u2116';
}

std::string columnTitleKey(std::string_view lowered) {
    std::string key;
    for (std::size_t at = 0; at < lowered.size();) {
        char32_t const c = text::decodeNext(lowered, at);
        if (c >= U'0' && c <= U'9') return {};
        if (isInColumnTitleKey(c)) text::append(key, c);
    }
    return key;
}

ColumnTitle columnTitleOf(std::string_view key) {
    auto const found = std::ranges::lower_bound(kSorted, key, before, &Entry::key);
    return found != kSorted.end() && found->key == key ? found->title : ColumnTitle::None;
}

}  // namespace standin::vocabulary
