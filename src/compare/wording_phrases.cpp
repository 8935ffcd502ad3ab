// Data only; each line is one meaning in one language. Longer phrases win over
// shorter ones, so "not guaranteed" is not a negation as well.
// Tested by tests/src/compare/wording_classes_test.cpp.
#include "compare/wording_phrases.h"

#include <algorithm>
#include <array>

namespace standin::compare {

namespace {

using enum Meaning;
using L = PhraseLanguage;

constexpr PhraseLine kLines[] = {
    // English
    {Not, L::English, "not|no|never|without|neither|nor|none|absent|lacks|does not|is not|are not|do not have|unable to|fails to|free of|non|ceases to|cease to"},
    {Disabled, L::English, "disabled|inhibited|inhibit|disables|inhibits|disable|suspended|deactivated|blocked|refuses|refuse|refused|denies|denied"},
    {Prohibition, L::English,
     "must not|shall not|should never|must never|may not|never|do not|prohibited|prohibit|forbidden|is not allowed|are not allowed|not allowed|is not permitted|are not permitted|"
     "ruled out|banned|not authorised|not tolerated|not permitted|must be avoided|should be avoided|shall be avoided|avoid|not intended for|is not intended for|not suitable "
     "for|is not suitable for|not recommended|not designed for|"
     "can not be used|cannot be used|not authorized|not to be used"},
    {Obligation, L::English,
     "must|shall|is required|are required|required to|required|mandatory|be sure to|always|has to|have to|make sure|ensure|necessary|essential|is to be|are to "
     "be|compulsory|obligatory|needs to|need to"},
    {Recommendation, L::English, "should|recommended|is recommended|recommend|preferable|preferably|advisable|advised|suggested|desirable|ought to"},
    {Permission, L::English, "may"},
    {Ability, L::English, "can|is able to|are able to|might|could|capable of|possible"},
    {Permitted, L::English,
     "permitted|allowed|permissible|is permitted|is allowed|permits|allows|allow to|acceptable|suitable for|is suitable for|intended for|enabled|authorized|authorised|tolerated|tolerable"},
    {Lets, L::English, "permit|allow|lets|let"},
    {Optional, L::English,
     "optional|optionally|need not|needs not|not required|is not required|are not required|not necessary|unnecessary|not mandatory|does not need to|do not need to"},
    {And, L::English, "and"},
    {Or, L::English, "or|and / or"},
    {Both, L::English, "both"},
    {Either, L::English, "either|one of"},
    {Until, L::English, "until|till"},
    {Unless, L::English, "unless"},
    {If, L::English, "if|in case|provided that|as long as|on condition that"},
    {When, L::English, "when|whenever|once|where|while"},
    {Except, L::English, "except|except when|except for|except if|excluding|other than|apart from"},
    {Whether, L::English, "whether or not|regardless of|irrespective of|whether|independent of"},
    {Depends, L::English, "depending on|depends on|depend on|dependent on|varies with|vary with|a function of|function of"},
    {Each, L::English, "each|every|individual|individually|per"},
    {Any, L::English, "any|at least one|one or more"},
    {All, L::English, "all|entire|whole"},
    {Only, L::English, "only|solely|exclusively|alone"},
    {Total, L::English, "total|sum of|overall|summed"},
    {Guaranteed, L::English, "guaranteed|assured|warranted|guarantee|guarantees"},
    {NotGuaranteed, L::English, "not guaranteed|is not guaranteed|are not guaranteed|no guarantee|cannot be guaranteed|can not be guaranteed"},
    {ByDesign, L::English, "by design|guaranteed by design|by characterization|characterized|not tested|not production tested|by characterisation"},
    {Tested, L::English, "tested|production tested|tested in production|measured in production|screened"},
    {Typical, L::English, "typ|typical|typically|approximately|approx|nominal|about|nominally"},
    {ForReference, L::English, "for reference|reference only|for reference only|reference value|for information only"},
    {Maximum, L::English, "maximum|max|maximally"},
    {Minimum, L::English, "minimum|min|minimally"},
    {Above, L::English, "above|over|in excess of|exceed|exceeds|exceeding|exceeded|more|more than|higher|higher than|greater than|greater|larger|larger than|longer|longer than|upper"},
    {Below, L::English, "below|under|less|less than|lower|lower than|smaller|smaller than|shorter|shorter than|falls below|drops below"},
    {AtLeast, L::English, "at least|not less than|no less than|or more|or longer|or higher|or above|equal to or higher than|reaches|reach|equal to or more than|or greater"},
    {AtMost, L::English, "at most|not more than|no more than|up to|or less|or lower|or below|or shorter|equal to or lower than|equal to or less than"},
    {Rising, L::English, "rising|rises|rise|increases|increasing|goes up|increase"},
    {Falling, L::English, "falling|falls|fall|drops|decreases|decreasing|goes down|decrease|fading"},
    {Before, L::English, "before|prior to|preceding"},
    {After, L::English, "after|following|subsequent to|subsequently"},
    {First, L::English, "first|initially|initial"},
    {Last, L::English, "last|finally|final"},
    {Within, L::English, "within"},
    {During, L::English, "during|throughout"},
    {Immediately, L::English, "immediately|at once|instantly"},
    {Automatic, L::English, "automatic|automatically|by itself|self recovering|auto"},
    {Manual, L::English, "manual|manually|by hand"},
    {Latched, L::English, "latched|latches|latch|latching|locked"},
    {Charger, L::English, "charger|chargers"},
    {Load, L::English, "load|loads"},
    {Removed, L::English, "removed|disconnected|disconnecting|removing|detached|remove|disconnect|removal|opened"},
    {Cell, L::English, "cell|cells"},
    {Fet, L::English, "fet|fets|mosfet|mosfets|transistor|transistors"},
    {SenseResistor, L::English, "sense resistor|shunt|shunt resistor|current sense resistor|sensing resistor"},
    {Charging, L::English, "charging|charge"},
    {Discharging, L::English, "discharging|discharge"},
    {Overcharge, L::English, "overcharge|over charge|overcharging|overcharged"},
    {Overdischarge, L::English, "overdischarge|over discharge|overdischarging|overdischarged"},
    {Detected, L::English, "detection|detected|detects|detect|detecting"},
    {Released, L::English, "release|released|releases|releasing|recovery|recovers|recovered"},
    {LeftOpen, L::English, "open|left open|leave open|floating|float|unconnected|left floating|leave floating"},
    {Tied, L::English, "tie|tied|connect|connected|connects|connecting|connection|connections|short|shorted|wired|attached|attach|soldered"},
    {Unconnected, L::English, "nc|no connection|not connected|no connect|do not connect|is not connected|dnc|n/c"},
    {High, L::English, "high|hi|high level|logic high|active high"},
    {Low, L::English, "low|low level|logic low|active low"},
    {Cmos, L::English, "cmos"},
    {OpenDrain, L::English, "open drain|open collector"},
    {PushPull, L::English, "push pull|totem pole"},
    {NChannel, L::English, "n channel|nch|n ch|nmos"},
    {PChannel, L::English, "p channel|pch|p ch|pmos"},
    {On, L::English, "on|turned on|turn on|turns on|switched on|switch on|is on|conducting"},
    {Off, L::English, "off|turned off|turn off|turns off|switched off|switch off|is off|cut off|shut off"},
    {Positive, L::English, "positive"},
    {Negative, L::English, "negative"},
    {Internal, L::English, "internal|internally|inside|built in|integrated|on chip"},
    {External, L::English, "external|externally|outside|off chip"},
    {Series, L::English, "series|in series"},
    {Parallel, L::English, "parallel|in parallel"},
    {Source, L::English, "source|sources|sourcing"},
    {Sink, L::English, "sink|sinks|sinking"},
    {Input, L::English, "input|inputs"},
    {Output, L::English, "output|outputs"},
    {Suffix, L::English, "suffix|suffixes|ordering code|order code|ordering number|product code|type code|part number suffix|last letter|first letter|the letter|letter"},
    {Nothing, L::English,
     "power on|power up|based on|on the|on a|carried out on|low side|high side|low power|low voltage|high voltage|low current|high current|"
     "stand alone|standalone|capital letter|low cost|high accuracy|high precision|low profile|overview|in order to|as well as|please|over temperature|under voltage|over "
     "current|short circuit|cross over|hand over|"
     "in addition|before use|mounted on|printed on|on page|on resistance|on board|open wire|open circuit|cannot be|after all|first of all|at all|over the"},
    {PullUp, L::English, "pull up|pulled up|pulls up|pullup"},
    {PullDown, L::English, "pull down|pulled down|pulls down|pulldown"},
    {RoomTemperature, L::English, "room temperature|normal temperature"},
    {FullTemperature, L::English, "full temperature range|entire temperature range|whole temperature range|over temperature range"},
    // German
    {Not, L::German, "nicht|kein|keine|keinen|keiner|ohne|nie|niemals"},
    {Disabled, L::German, "gesperrt|deaktiviert|abgeschaltet"},
    {Prohibition, L::German, "darf nicht|dürfen nicht|nicht zulässig|verboten|ist nicht zulässig|unzulässig|nicht erlaubt|nicht gestattet"},
    {Obligation, L::German, "muss|müssen|ist zu|sind zu|erforderlich|unbedingt|zwingend|soll"},
    {Recommendation, L::German, "sollte|sollten|empfohlen|empfehlenswert"},
    {Permission, L::German, "darf|dürfen"},
    {Ability, L::German, "kann|können|könnte|möglich"},
    {Permitted, L::German, "zulässig|erlaubt|gestattet|ist zulässig"},
    {Optional, L::German, "optional|muss nicht|müssen nicht|nicht erforderlich|braucht nicht"},
    {And, L::German, "und"},
    {Or, L::German, "oder"},
    {Both, L::German, "beide|beiden"},
    {Either, L::German, "entweder"},
    {Until, L::German, "bis"},
    {Unless, L::German, "es sei denn|sofern nicht"},
    {If, L::German, "falls|sofern"},
    {When, L::German, "wenn|sobald"},
    {Except, L::German, "außer|ausgenommen"},
    {Each, L::German, "jede|jeder|jedes|jeden"},
    {All, L::German, "alle|allen|aller"},
    {Only, L::German, "nur|ausschließlich"},
    {Guaranteed, L::German, "garantiert|gewährleistet"},
    {NotGuaranteed, L::German, "nicht garantiert|nicht gewährleistet"},
    {Typical, L::German, "typisch|ca"},
    {Maximum, L::German, "maximal|höchstens"},
    {Minimum, L::German, "minimal|mindestens"},
    {Above, L::German, "über|überschreitet|höher|größer|mehr"},
    {Below, L::German, "unter|unterschreitet|niedriger|kleiner|weniger"},
    {Before, L::German, "vor|bevor"},
    {After, L::German, "nach|nachdem"},
    {Automatic, L::German, "automatisch|selbsttätig"},
    {Charger, L::German, "ladegerät|ladegeräts"},
    {Load, L::German, "last"},
    {Removed, L::German, "entfernt|getrennt"},
    {LeftOpen, L::German, "offen|offen lassen"},
    {Tied, L::German, "verbinden|verbunden|anschließen|angeschlossen"},
    {High, L::German, "hoch|high"},
    {Low, L::German, "niedrig|low"},
    {Internal, L::German, "intern|interne|interner"},
    {External, L::German, "extern|externe|externer|externen"},
    {Positive, L::German, "positiv|positive|positiven"},
    {Negative, L::German, "negativ|negative|negativen"},
    // Chinese, simplified and traditional
    {Not, L::Chinese, "不会|不能|不|未|无|無|没有|沒有|非"},
    {Disabled, L::Chinese, "禁用|关闭功能|屏蔽"},
    {Prohibition, L::Chinese, "不得|不可以|不可|禁止|严禁|嚴禁|请勿|請勿|切勿|不允许|不允許|不应|不應|不适用于|勿"},
    {Obligation, L::Chinese, "必须|必須|务必|務必|应当|应该|應該|应|應|须|須|需要|需"},
    {Recommendation, L::Chinese, "建议|建議|推荐|推薦|宜|最好"},
    {Permission, L::Chinese, "可以"},
    {Ability, L::Chinese, "能够|能夠|可能|能"},
    {Permitted, L::Chinese, "允许|允許|适用于|適用於"},
    {Optional, L::Chinese, "可选|可選|不必|无需|無需|不需要"},
    {And, L::Chinese, "并且|而且|和|与|與|及|且|同时|同時"},
    {Or, L::Chinese, "或者|或"},
    {Both, L::Chinese, "两者都|均"},
    {Either, L::Chinese, "任意一个|任一"},
    {Until, L::Chinese, "直到|直至"},
    {Unless, L::Chinese, "除非"},
    {If, L::Chinese, "如果|若"},
    {When, L::Chinese, "当|當|时|時"},
    {Except, L::Chinese, "除了|除"},
    {Each, L::Chinese, "每个|每個|各|每"},
    {Any, L::Chinese, "任何|任意"},
    {All, L::Chinese, "所有|全部"},
    {Only, L::Chinese, "只有|仅|僅|只"},
    {Total, L::Chinese, "总|總"},
    {Guaranteed, L::Chinese, "保证|保證"},
    {NotGuaranteed, L::Chinese, "不保证|不保證"},
    {ByDesign, L::Chinese, "设计保证|由设计保证|設計保證"},
    {Typical, L::Chinese, "典型|约|約|大约"},
    {ForReference, L::Chinese, "仅供参考|参考值|僅供參考"},
    {Maximum, L::Chinese, "最大|最高"},
    {Minimum, L::Chinese, "最小|最低"},
    {AtLeast, L::Chinese, "以上|至少|不低于|不小于"},
    {AtMost, L::Chinese, "以下|至多|不高于|不大于|不超过"},
    {Above, L::Chinese, "高于|高於|超过|超過|大于|大於"},
    {Below, L::Chinese, "低于|低於|小于|小於|不足"},
    {Rising, L::Chinese, "上升|升高"},
    {Falling, L::Chinese, "下降|降低"},
    {Before, L::Chinese, "之前|以前|前"},
    {After, L::Chinese, "之后|之後|以后|后|後"},
    {Automatic, L::Chinese, "自动|自動"},
    {Manual, L::Chinese, "手动|手動"},
    {Latched, L::Chinese, "锁定|鎖定|锁存"},
    {Charger, L::Chinese, "充电器|充電器"},
    {Load, L::Chinese, "负载|負載"},
    {Removed, L::Chinese, "断开|斷開|移除|拔出"},
    {Charging, L::Chinese, "充电|充電"},
    {Discharging, L::Chinese, "放电|放電"},
    {Overcharge, L::Chinese, "过充电|过充|過充電|過充"},
    {Overdischarge, L::Chinese, "过放电|过放|過放電|過放"},
    {Released, L::Chinese, "解除|释放|釋放|恢复|恢復"},
    {Detected, L::Chinese, "检测|檢測"},
    {LeftOpen, L::Chinese, "悬空|懸空|开路|開路|浮空"},
    {Tied, L::Chinese, "连接|連接|接到|接至|短接"},
    {Unconnected, L::Chinese, "空脚|空腳|未使用|不连接"},
    {High, L::Chinese, "高电平|高電平"},
    {Low, L::Chinese, "低电平|低電平"},
    {OpenDrain, L::Chinese, "开漏|開漏|漏极开路"},
    {On, L::Chinese, "导通|導通|开启"},
    {Off, L::Chinese, "关断|關斷|截止|关闭"},
    {Positive, L::Chinese, "正极|正極|正"},
    {Negative, L::Chinese, "负极|負極|负"},
    {Internal, L::Chinese, "内部|內部|内置"},
    {External, L::Chinese, "外部|外接"},
    {Series, L::Chinese, "串联|串聯"},
    {Parallel, L::Chinese, "并联|並聯"},
    {Input, L::Chinese, "输入|輸入"},
    {Output, L::Chinese, "输出|輸出"},
    {Suffix, L::Chinese, "后缀|後綴|尾缀|尾綴|字母"},
    {Nothing, L::Chinese, "正常|时间|時間|应用|應用|响应|響應|及时|不同|总线|前面|后面|适应|对应|對應|需求|未来|平均|均匀|和谐|涉及"},
    // Japanese
    {Nothing, L::Japanese, "時間|正常|全体|前面|後面|応用|同時|平均|時定数"},
    {Not, L::Japanese, "しない|できない|なし|ません|ない|未|無"},
    {Disabled, L::Japanese, "停止|無効"},
    {Prohibition, L::Japanese, "してはならない|してはいけません|禁止|しないでください|しないで下さい|不可|許容されません|許容されない|許可されません|許可されない"},
    {Obligation, L::Japanese, "しなければならない|必ず|すること|してください|して下さい|必要"},
    {Recommendation, L::Japanese, "推奨|することが望ましい|望ましい"},
    {Permission, L::Japanese, "してもよい|しても構いません"},
    {Ability, L::Japanese, "できます|できる|可能性がある|可能性"},
    {Permitted, L::Japanese, "可能|許可|許容"},
    {Optional, L::Japanese, "不要|必要ありません|任意"},
    {And, L::Japanese, "かつ|および|及び"},
    {Or, L::Japanese, "または|又は|もしくは"},
    {Both, L::Japanese, "両方"},
    {Until, L::Japanese, "まで"},
    {If, L::Japanese, "場合|もし"},
    {When, L::Japanese, "とき|時"},
    {Except, L::Japanese, "除く|以外"},
    {Each, L::Japanese, "各|毎"},
    {All, L::Japanese, "すべて|全て|全"},
    {Only, L::Japanese, "のみ|だけ"},
    {Guaranteed, L::Japanese, "保証"},
    {NotGuaranteed, L::Japanese, "保証しません|保証できません|保証するものではありません"},
    {ByDesign, L::Japanese, "設計保証"},
    {Typical, L::Japanese, "標準|約"},
    {Maximum, L::Japanese, "最大"},
    {Minimum, L::Japanese, "最小"},
    {AtLeast, L::Japanese, "以上"},
    {AtMost, L::Japanese, "以下"},
    {Above, L::Japanese, "超え|上回"},
    {Below, L::Japanese, "未満|下回"},
    {Before, L::Japanese, "前に|前"},
    {After, L::Japanese, "後に|後"},
    {Automatic, L::Japanese, "自動"},
    {Charger, L::Japanese, "充電器"},
    {Load, L::Japanese, "負荷"},
    {Removed, L::Japanese, "取り外|切り離"},
    {Charging, L::Japanese, "充電"},
    {Discharging, L::Japanese, "放電"},
    {Overcharge, L::Japanese, "過充電"},
    {Overdischarge, L::Japanese, "過放電"},
    {Released, L::Japanese, "解除|復帰"},
    {Detected, L::Japanese, "検出"},
    {LeftOpen, L::Japanese, "オープン|開放"},
    {Tied, L::Japanese, "接続|ショート|短絡"},
    {Unconnected, L::Japanese, "未接続|無接続"},
    {High, L::Japanese, "ハイレベル"},
    {Low, L::Japanese, "ローレベル"},
    {OpenDrain, L::Japanese, "オープンドレイン"},
    {On, L::Japanese, "オン"},
    {Off, L::Japanese, "オフ"},
    {Positive, L::Japanese, "正極|正"},
    {Negative, L::Japanese, "負極"},
    {Internal, L::Japanese, "内部|内蔵"},
    {External, L::Japanese, "外部|外付"},
};

}  // namespace

std::span<PhraseLine const> phraseLines() { return kLines; }

model::WordingClass classOf(Meaning meaning) {
    using model::WordingClass;
    if (meaning <= Disabled) return WordingClass::Neg;
    if (meaning <= Ability) return WordingClass::Mod;
    if (meaning <= Optional) return WordingClass::Perm;
    if (meaning <= Unless) return WordingClass::Conn;
    if (meaning <= Depends) return WordingClass::Cond;
    if (meaning <= Total) return WordingClass::Scope;
    if (meaning <= ForReference) return WordingClass::Grade;
    if (meaning <= FullTemperature) return WordingClass::Temp;
    if (meaning <= Falling) return WordingClass::Num;
    if (meaning <= Immediately) return WordingClass::Time;
    if (meaning <= Released) return WordingClass::Trig;
    if (meaning <= Output) return WordingClass::Pin;
    if (meaning == Suffix) return WordingClass::Ord;
    return WordingClass::Style;
}

Counting countingOf(Meaning meaning) {
    bool const thing = meaning == Depends || (meaning >= Charger && meaning <= Released) || (meaning >= LeftOpen && meaning <= Unconnected) || meaning == Input ||
                       meaning == Output || meaning == Suffix;
    return thing ? Counting::AtAll : Counting::Often;
}

bool isCommonPinName(std::string_view name) {
    static constexpr std::array<std::string_view, 46> kNames{
        "vdd", "vss", "vcc", "vee", "gnd", "agnd", "pgnd", "vm", "v-", "v+", "p+", "p-", "b+", "b-", "pack+", "pack-", "bat+", "bat-", "co", "do", "cout", "dout", "oc", "od",
        "cs", "vin", "vout", "out", "in", "en", "ce", "shdn", "fb", "sw", "lx", "bst", "test", "nc", "ct", "td", "dp", "ds", "prog", "bat", "vbat", "vbus"};
    return isOneOf(name, kNames);
}

bool isFiller(std::string_view word, PhraseLanguage language) {
    static constexpr std::array<std::string_view, 14> kEnglish{"a", "an", "the", "please", "etc", "this", "that", "these", "there", "also", "then", "thus", "therefore", "its"};
    static constexpr std::array<std::string_view, 12> kGerman{"der", "die", "das", "den", "dem", "des", "ein", "eine", "einen", "einem", "einer", "bitte"};
    return isOneOf(word, kEnglish) || (language == L::German && isOneOf(word, kGerman));
}

std::string_view commonWord(std::string_view word) {
    static constexpr std::pair<std::string_view, std::string_view> kSynonyms[] = {
        {"terminal", "pin"}, {"lead", "pin"}, {"pole", "pin"}, {"figure", "fig"}, {"figures", "fig"}, {"figs", "fig"}, {"abb", "fig"}, {"abbildung", "fig"}, {"eg", "e.g."}, {"volt", "V"},
        {"utilized", "used"}, {"ambient", "ambient"}, {"temp", "temperature"}, {"approx", "approximately"}, {"max", "maximum"}, {"min", "minimum"}, {"typ", "typical"},
        {"versus", "vs"}, {"mosfet", "fet"}, {"till", "until"}, {"ic", "device"}, {"chip", "device"}, {"product", "device"}, {"fuer", "für"}, {"recovery", "release"}, {"hi", "high"}};
    for (auto const& [word_, common] : kSynonyms) {
        if (word_.size() == word.size() && word_.front() == word.front() && word_ == word) return common;
    }
    return word;
}

}  // namespace standin::compare
