// A table of known headings, keyed by text::foldKey so that capitals, plurals,
// spaces and hyphens make no difference. Tested by headings_test.cpp.
#include "extractors/sections/headings.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <string>
#include <unordered_map>
#include <vector>

#include "text/fold.h"
#include "text/script.h"
#include "text/utf8.h"

namespace standin::sections {

namespace {

using Kind = model::SectionKind;

struct KnownHeadings {
    Kind kind;
    std::string_view words;  // separated by '|'
};

constexpr std::array kKnown{
    KnownHeadings{Kind::Features,
                  "Features|Key Features|Main Features|Highlights|Features and Benefits|Product Features|Advantages|Unique Characteristics|"
                  "特性|特点|产品特点|主要特点|主要特性|产品特性|功能特点|特點|產品特點|特長|特徴|主な特長|Merkmale|Eigenschaften|Leistungsmerkmale|Besondere Merkmale|"
                  "Особенности|Основные особенности"},
    KnownHeadings{Kind::Description,
                  "General Description|Description|Overview|Outline|Introduction|Summary|Product Description|Product Overview|Product Summary|General|"
                  "概述|简介|描述|产品概述|产品描述|产品简介|概要|製品概要|説明|簡介|產品概述|Beschreibung|Allgemeine Beschreibung|Überblick|Kurzbeschreibung|"
                  "Описание|Общее описание|Назначение"},
    KnownHeadings{Kind::Ordering,
                  "Ordering Information|Ordering Guide|Order Codes|Order Code|Part Numbering|Part Numbering System|Product Name Structure|How to Order|Ordering Code|Ordering|Package/Order Information|"
                  "Package and Ordering Information|Package Marking and Ordering Information|Device Ordering|Naming Rules|Type Number|Available Types|"
                  "订购信息|订货信息|命名规则|产品命名|型号说明|订购指南|产品订购信息|選購指南|訂購資訊|注文情報|発注情報|品名の構成|製品名の構成|型番構成|"
                  "Bestellinformationen|Bestellbezeichnung|Typenschlüssel|Информация для заказа"},
    KnownHeadings{Kind::Selection,
                  "Selection Guide|Product List|Product Name List|Device Options|Variants|Version Table|Product Selection|Product Selection Guide|Model List|Available Options|Device Comparison|Device Comparison Table|"
                  "选型表|选型指南|选购指南|产品目录|产品型号一览|型号列表|产品选型|产品列表|製品名リスト|セレクションガイド|品目コード一覧|ラインアップ|Typenübersicht|Auswahltabelle|Variantenübersicht"},
    KnownHeadings{Kind::Marking,
                  "Marking|Top Marking|Marking Information|Device Marking|Marking Specification|Markings|Marking Diagrams|Package Marking|"
                  "丝印|打标|标识|印字|印章说明|产品标记|丝印说明|打印信息|マーキング|捺印仕様|マーク仕様|表示|Kennzeichnung|Beschriftung|Stempelung|Маркировка"},
    KnownHeadings{Kind::Pins,
                  "Pin Configuration|Pinout|Pin Assignment|Pin Assignments|Connection Diagram|Connection Diagrams|Terminal Arrangement|Pin Diagram|Pin Connections|Pin Description|Pin Descriptions|Pin Functions|"
                  "Pin Function|Terminal Functions|Pin Definitions|Pin Definition|Pinning|Pinning Information|Pin Information|Pin Configuration and Functions|Pin Configurations|Terminal Configuration|Terminal Description|"
                  "引脚排列|引脚配置|管脚排列|引脚图|管脚图|脚位图|管脚配置|引脚说明|引脚功能|引脚定义|管脚描述|脚位功能说明|管脚定义|管脚说明|管脚功能|引脚描述|引脚功能描述|引脚功能说明|"
                  "ピン配置図|端子配置|端子接続図|ピン接続図|端子説明|端子機能|ピン説明|ピン機能|Anschlussbelegung|Pinbelegung|Anschlussbeschreibung|Pinfunktionen|Назначение выводов|Расположение выводов"},
    KnownHeadings{Kind::BlockDiagram,
                  "Block Diagram|Functional Block Diagram|Internal Block|Internal Block Diagram|Equivalent Circuit|Schematic Diagram|Internal Schematic Diagram|Logic Diagram|Logic Diagrams|Functional Diagram|Simplified Schematic|"
                  "Internal Equivalent Circuit|Representative Circuit Schematic|Schematic|"
                  "功能框图|内部框图|方框图|电路框图|等效电路|内部电路框图|结构框图|原理框图|ブロック図|内部ブロック図|等価回路|Blockschaltbild|Blockdiagramm|Ersatzschaltbild|Структурная схема"},
    KnownHeadings{Kind::Ratings,
                  "Absolute Maximum Ratings|Maximum Ratings|Limiting Values|Absolute Ratings|Absolute Maximum Rating|ESD Ratings|ESD Susceptibility|Handling Ratings|Absolute Maximum Conditions|Maximum Ratings and Thermal Characteristics|"
                  "绝对最大额定值|最大额定值|极限参数|极限值|绝对最大值|极限工作条件|绝对最大额定参数|最大绝对额定值|极限条件|絕對最大額定值|静电|ESD等级|湿敏等级|"
                  "絶対最大定格|最大定格|静電気耐圧|ESD耐量|耐湿性レベル|吸湿感度レベル|Grenzwerte|Grenzdaten|Absolute Grenzwerte|absolute Höchstwerte|ESD-Festigkeit|Feuchteempfindlichkeit|"
                  "Предельные значения|Предельно допустимые значения|Предельные режимы|Предельные параметры"},
    KnownHeadings{Kind::OperatingConditions,
                  "Recommended Operating Conditions|Operating Ratings|Operating Range|Operating Conditions|Recommended Operating Range|Recommended Working Conditions|"
                  "推荐工作条件|建议工作条件|推荐工作范围|推荐操作条件|推奨動作条件|推奨動作範囲|動作範囲|Empfohlene Betriebsbedingungen|Betriebsbereich|Рекомендуемые условия эксплуатации|Рекомендуемые режимы"},
    KnownHeadings{Kind::Thermal,
                  "Thermal Information|Thermal Characteristics|Thermal Resistance|Thermal Resistances|Power Dissipation|Dissipation Ratings|Thermal Data|Thermal Resistance Ratings|Thermal Considerations|Thermal Metrics|"
                  "热特性|热阻|热性能|功耗|热阻参数|熱特性|熱抵抗|許容損失|Thermische Eigenschaften|Wärmewiderstand|Verlustleistung|Тепловые характеристики"},
    KnownHeadings{Kind::Characteristics,
                  "Electrical Characteristics|Electrical Characteristic|Electrical Specifications|DC Characteristics|AC Characteristics|DC and AC Characteristics|Switching Characteristics|Timing Requirements|Electrical Parameters|Specifications|"
                  "DC Electrical Characteristics|AC Electrical Characteristics|Electro-optical Characteristics|Static Characteristics|Dynamic Characteristics|Characteristics|Quick Reference Data|Electrical Data|Electrical Properties|"
                  "电气特性|电气参数|电特性|电学特性|电性参数|直流特性|交流特性|开关特性|时序特性|电气特性参数|电参数|電氣特性|主要参数|技术参数|性能参数|"
                  "電気的特性|直流特性|交流特性|スイッチング特性|電気的仕様|Elektrische Eigenschaften|Elektrische Kennwerte|Kenndaten|Kennwerte|Schaltzeiten|"
                  "Электрические характеристики|Электрические параметры|Основные характеристики|Основные электрические параметры"},
    KnownHeadings{Kind::Timing,
                  "Timing Diagram|Timing Diagrams|Timing Chart|Timing Charts|Operation Timing|Detection Delay Time|Delay Time|Output Delay Time|Timing|Timing Waveforms|Waveforms|Switching Waveforms|State Diagram|"
                  "时序图|工作时序|检测延迟时间|延迟时间|延时参数|工作时序图|タイミングチャート|タイミング図|検出遅延時間|遅延時間|出力遅延時間|Impulsdiagramm|Zeitdiagramm|Verzögerungszeiten|Ansprechverzögerung|Временные диаграммы"},
    KnownHeadings{Kind::TestCircuit,
                  "Test Circuits|Test Circuit|Measurement Circuits|Measurement Circuit|Test Conditions|Parameter Measurement Information|Test Circuits and Waveforms|Test Information|"
                  "测试电路|测定电路|测量电路|测试电路图|測定回路|試験回路|Messschaltung|Prüfschaltung|Схема измерения"},
    KnownHeadings{Kind::Curves,
                  "Typical Characteristics|Typical Performance Curves|Reference Data|Characteristics Curves|Characteristic Curves|Typical Performance Characteristics|Typical Electrical Characteristics|Typical Operating Characteristics|"
                  "Typical Electrical and Thermal Characteristics|Typical Curves|Performance Curves|Typical Electrical and Thermal Characteristics Curves|Typical Characteristic Curves|Ratings and Characteristic Curves|"
                  "典型特性|典型特性曲线|典型性能特性|特性曲线|各种特性数据|典型性能曲线|典型曲线|典型性能参数曲线|特性例|代表特性|諸特性データ|標準特性例|Typische Kennlinien|Diagramme|Kennlinien|Типовые характеристики"},
    KnownHeadings{Kind::Function,
                  "Functional Description|Function Description|Operation|Theory of Operation|Detailed Description|Function Explanation|Description of Operation|Operation Description|Device Functional Modes|Feature Description|Functional Modes|"
                  "Principle of Operation|Working Principle|Operating Modes|Function Table|Truth Table|Mode of Operation|Operation Mode|"
                  "功能描述|功能说明|工作说明|工作原理|功能描述说明|工作模式|工作过程|動作説明|機能説明|Funktionsbeschreibung|Arbeitsweise|Принцип работы|Описание работы|Таблица истинности"},
    KnownHeadings{Kind::Application,
                  "Application Information|Typical Application Circuit|Typical Application Circuits|Application Circuit|Application Circuits|Connection Example|External Parts|Applications|Application|Typical Applications|Typical Application|Uses|"
                  "Application Fields|Applications Information|Application and Implementation|Application Hints|Application Notes|Application Note|Design Guide|Application Example|Application Examples|Typical Applications Circuit|Layout Guidelines|"
                  "Layout|PCB Layout|Land Pattern|Power Supply Recommendations|Component Selection|Layout Considerations|Typical Circuit|Application Suggestions|"
                  "应用信息|典型应用电路|应用电路|连接例|外接元器件|应用|用途|应用领域|典型应用|产品应用|应用说明|应用范围|主要应用|典型应用电路图|应用电路图|布局指南|PCB布线|焊盘图|應用|應用電路|参考电路|典型电路|"
                  "応用回路例|接続例|使用例|外付け部品|アプリケーション|基板レイアウト|ランドパターン|Anwendungshinweise|Applikationsschaltung|Beschaltungsbeispiel|Anwendungen|Einsatzgebiete|Layout-Hinweise|Lötflächen|Padlayout|"
                  "Применение|Схема включения|Типовая схема включения|Типовые схемы включения"},
    KnownHeadings{Kind::Precautions,
                  "Precautions|Caution|Cautions|Usage Notes|Warning|Warnings|Precautions for Use|Handling Precautions|Electrostatic Discharge Caution|Attention|"
                  "注意事项|使用注意|警告|注意事項|使用注意事项|ご使用上の注意|ご注意|Vorsichtsmaßnahmen|Меры предосторожности"},
    KnownHeadings{Kind::Package,
                  "Package Dimensions|Package Outline|Package Outlines|Mechanical Data|Outline Drawing|Package Information|Physical Dimensions|Outline Dimensions|Package Mechanical Data|Mechanical Dimensions|Package Outline Dimensions|"
                  "Mechanical, Packaging, and Orderable Information|Package Drawing|Package Description|Mechanical Case Outline|Package Outline Drawing|Package Drawings|Packages|Soldering|"
                  "封装尺寸|封装外形|外形尺寸|封装信息|封装外形图|封装尺寸图|封装形式|封装说明|封装|外形寸法図|外形図|パッケージ図|パッケージ寸法|Gehäuseabmessungen|Maßbild|Gehäuse|Габаритные размеры|Корпус|Габаритный чертеж"},
    KnownHeadings{Kind::Packing,
                  "Tape and Reel|Packing|Carrier Tape|Tape and Reel Information|Packing Information|Packaging Information|Tape and Reel Data|Tape and Reel Specification|Reel Dimensions|"
                  "编带|载带|包装信息|包装|テーピング仕様|リール仕様|包装仕様|Gurtung|Verpackung|Упаковка"},
    KnownHeadings{Kind::Revision,
                  "Revision History|Change Log|Document History|Document Revision History|Revision|Version History|Change History|"
                  "修订历史|版本历史|修订记录|更新记录|版本记录|历史版本|改訂履歴|改版履歴|変更履歴|Änderungshistorie|Änderungsverzeichnis|Revisionshistorie|История изменений"},
    KnownHeadings{Kind::Other, "Table of Contents|Contents|目录|目次|Inhaltsverzeichnis|Inhalt|Содержание|Оглавление"},
    KnownHeadings{Kind::Legal,
                  "Disclaimer|Disclaimers|Important Notice|Legal Notice|Terms of Use|Legal Information|Life Support Policy|Life Support Applications|Definitions|Data Sheet Status|Trademarks|Contact Information|Product Status Definitions|"
                  "Important Notice and Disclaimer|Restrictions on Product Use|"
                  "免责声明|重要声明|声明|免責事項|重要なお知らせ|本資料の取り扱い|Haftungsausschluss|Rechtliche Hinweise"},
};

// Inside a longer heading only what can't be meant otherwise.
constexpr std::size_t kInsideBytes = 12;
constexpr std::size_t kInsideCjkBytes = 12;  // four characters
static_assert(kInsideBytes >= 2 && kInsideBytes <= kInsideCjkBytes);  // kindInside() looks no nearer to the end

struct Table {
    std::unordered_map<std::string, Kind> exact;
    std::vector<std::pair<std::string, Kind>> inside;  // longest first
    std::unordered_map<std::uint16_t, std::vector<std::size_t>> insideByStart;  // by the first two bytes, in that order
};

std::uint16_t twoBytesAt(std::string_view text, std::size_t at) {
    return static_cast<std::uint16_t>(static_cast<unsigned char>(text[at]) << 8U | static_cast<unsigned char>(text[at + 1]));
}

Table makeTable() {
    Table table;
    for (KnownHeadings const& known : kKnown) {
        std::string_view rest = known.words;
        while (!rest.empty()) {
            std::size_t const bar = rest.find('|');
            std::string_view const words = rest.substr(0, bar);
            rest = bar == std::string_view::npos ? std::string_view{} : rest.substr(bar + 1);
            if (words.empty()) continue;
            std::string key = text::foldKey(words);
            bool const several = words.find(' ') != std::string_view::npos;
            bool const cjk = text::isCjk(words);
            if ((several && key.size() >= kInsideBytes) || (cjk && key.size() >= kInsideCjkBytes)) table.inside.emplace_back(key, known.kind);
            table.exact.emplace(std::move(key), known.kind);
        }
    }
    std::stable_sort(table.inside.begin(), table.inside.end(), [](auto const& a, auto const& b) { return a.first.size() > b.first.size(); });
    for (std::size_t i = 0; i < table.inside.size(); ++i) table.insideByStart[twoBytesAt(table.inside[i].first, 0)].push_back(i);
    return table;
}

Table const& table() {
    static Table const made = makeTable();
    return made;
}

// The kind of the longest known heading that stands somewhere in the key.
std::optional<Kind> kindInside(std::string_view key) {
    auto const& inside = table().inside;
    std::size_t longest = inside.size();  // its place in the list, which is in that order
    for (std::size_t at = 0; at + kInsideBytes <= key.size(); ++at) {
        auto const starting = table().insideByStart.find(twoBytesAt(key, at));
        if (starting == table().insideByStart.end()) continue;
        for (std::size_t const index : starting->second) {
            if (index >= longest) break;
            if (key.substr(at).starts_with(inside[index].first)) longest = index;
        }
    }
    return longest < inside.size() ? std::optional(inside[longest].second) : std::nullopt;
}

bool isSkippedInFront(char32_t c) {
    if (c < 0x80) return !(c >= 'A' && c <= 'Z') && !(c >= 'a' && c <= 'z');
    return !text::isLetter(c) && !(c >= 0x3040 && c <= 0x9FFF);
}

// "(continued)", "(cont.)", "(续)" and colons at the end.
std::string_view withoutTail(std::string_view title) {
    for (;;) {
        title = text::trimmed(title);
        std::size_t at = title.size();
        if (at == 0) return title;
        char32_t const last = text::decodePrevious(title, at);
        if (last == U':' || last == 0xFF1A || last == U'.' || last == U'-' || last == 0x2013 || last == 0x2014 || last == U'*' || last == 0x3011) {
            title = title.substr(0, at);
            continue;
        }
        return title;
    }
}

std::string_view withoutBracket(std::string_view title) {
    title = withoutTail(title);
    std::size_t at = title.size();
    if (at == 0) return title;
    char32_t const last = text::decodePrevious(title, at);
    if (last != U')' && last != 0xFF09 && last != U']') return title;
    std::size_t const open = std::min(title.rfind(last == U']' ? "[" : "("), title.rfind("\uFF08"));
    if (open == std::string_view::npos || open == 0) return title;
    return withoutTail(title.substr(0, open));
}

std::optional<Kind> exactKind(std::string_view title) {
    if (title.empty()) return std::nullopt;
    auto const it = table().exact.find(text::foldKey(title));
    if (it == table().exact.end()) return std::nullopt;
    return it->second;
}

}  // namespace

std::string_view strippedTitle(std::string_view title) {
    title = text::trimmed(title);
    // "一、", "二．": Chinese numbering.
    std::size_t at = 0;
    if (!title.empty()) {
        std::size_t const first = at;
        char32_t const code = text::decodeNext(title, at);
        static constexpr std::u32string_view kNumerals = U"\u4E00\u4E8C\u4E09\u56DB\u4E94\u516D\u4E03\u516B\u4E5D\u5341";
        bool const numeral = kNumerals.find(code) != std::u32string_view::npos;
        if (numeral && at < title.size()) {
            std::size_t next = at;
            char32_t mark = text::decodeNext(title, next);
            if (kNumerals.find(mark) != std::u32string_view::npos && next < title.size()) mark = text::decodeNext(title, next);
            if (mark == 0x3001 || mark == U'.' || mark == 0xFF0E || mark == U' ') return withoutTail(title.substr(next));
        }
        at = first;
    }
    while (at < title.size()) {
        std::size_t next = at;
        if (!isSkippedInFront(text::decodeNext(title, next))) break;
        at = next;
    }
    // "a)" and "A." in front; "n" of a symbol font.
    std::string_view rest = title.substr(at);
    if (rest.size() > 2 && text::isAsciiLetter(rest[0]) && (rest[1] == ')' || (rest[1] == '.' && rest[2] == ' '))) rest = text::trimmed(rest.substr(2));
    if (rest.size() > 2 && rest[1] == ' ' && text::isAsciiLower(rest[0]) && text::isAsciiUpper(rest[2])) rest = rest.substr(2);
    return withoutTail(rest);
}

int numberingDepth(std::string_view title) {
    title = text::trimmed(title);
    int depth = 0;
    std::size_t at = 0;
    while (at < title.size() && text::isAsciiDigit(title[at])) {
        std::size_t end = at;
        while (end < title.size() && text::isAsciiDigit(title[end])) ++end;
        if (end - at > 2) return 0;
        ++depth;
        if (end < title.size() && title[end] == '.') ++end;
        at = end;
    }
    if (depth == 0 || at >= title.size() || (title[at] != ' ' && static_cast<unsigned char>(title[at]) < 0x80)) return 0;
    return depth;
}

bool isContinuation(std::string_view title) {
    std::string const lower = text::asciiLower(title);
    for (std::string_view word : {"(continued", "continued)", "(cont", " cont.", "continued", "\u7EED)", "\u7EED\uFF09", "\uFF08\u7EED", "(\u7EED", "(fortsetzung", "(\u7D9A"})
        if (lower.find(word) != std::string::npos) return true;
    return false;
}

std::optional<Kind> headingKind(std::string_view title, Look look) {
    constexpr std::size_t kBytesAtMost = 160;
    std::string_view const stripped = strippedTitle(title);
    if (stripped.empty() || stripped.size() > kBytesAtMost) return std::nullopt;
    if (auto kind = exactKind(stripped)) return kind;
    std::string_view const bare = withoutBracket(stripped);
    if (bare.size() != stripped.size())
        if (auto kind = exactKind(bare)) return kind;
    // Two languages on one line: each for itself.
    if (!text::isAscii(stripped)) {
        std::string latin;
        std::string cjk;
        for (std::size_t at = 0; at < stripped.size();) {
            std::size_t const from = at;
            char32_t const code = text::decodeNext(stripped, at);
            (text::isCjk(code) ? cjk : latin).append(stripped.substr(from, at - from));
        }
        if (!cjk.empty() && !latin.empty()) {
            std::string_view const latinPart = withoutTail(strippedTitle(latin));
            if (auto kind = exactKind(latinPart)) return kind;
            if (latinPart.empty() || look == Look::Heading)
                if (auto kind = exactKind(cjk)) return kind;
        }
    }
    if (look == Look::Plain) return std::nullopt;
    return kindInside(text::foldKey(stripped));
}

}  // namespace standin::sections
