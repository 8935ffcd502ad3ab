// The style sheet of the HTML report. Reference slate, candidate ochre
// everywhere; severity by word and shape, never by colour alone.
#pragma once

#include <string_view>

namespace standin::report {

inline constexpr std::string_view kHtmlStyle = R"(
:root{--ink:#1d2430;--soft:#5a6372;--paper:#fff;--ground:#f4f3ef;--edge:#d9d6cc;--ref:#2f4d6b;--cand:#a4620c;color-scheme:light dark}
@media (prefers-color-scheme:dark){:root{--ink:#e8e6e0;--soft:#a7adb8;--paper:#1e2228;--ground:#15181c;--edge:#3a4049;--ref:#9dbddd;--cand:#e2a553}}
*{box-sizing:border-box}
body{margin:0;background:var(--ground);color:var(--ink);font:15px/1.45 "DejaVu Sans",Verdana,"Noto Sans",sans-serif}
main{max-width:1080px;margin:0 auto;padding:20px}
h1{font-size:15px;margin:0 0 10px;color:var(--soft);font-weight:normal}
h2{font-size:18px;margin:28px 0 6px}
h2 small{font-weight:normal;font-size:14px;color:var(--soft)}
.docs{display:grid;grid-template-columns:1fr 1fr;gap:12px}
.doc{background:var(--paper);border:1px solid var(--edge);border-left:6px solid var(--ref);border-radius:4px;padding:8px 12px;overflow-wrap:anywhere}
.doc.c{border-left-color:var(--cand)}
.doc b{display:block;font-size:17px}
.doc span{color:var(--soft);font-size:13px;display:block}
.tag{font-size:12px;letter-spacing:.06em;text-transform:uppercase;color:var(--ref);font-weight:bold}
.c .tag{color:var(--cand)}
.verdict{background:var(--paper);border:2px solid var(--ink);border-radius:4px;margin:14px 0;padding:12px 16px}
.verdict p{margin:4px 0}
.verdict .level{font-size:24px;font-weight:bold;margin:0 0 4px}
.counts{display:flex;flex-wrap:wrap;gap:6px 22px;padding:0;margin:8px 0 0;list-style:none}
.card,.caution{background:var(--paper);border:1px solid var(--edge);border-radius:4px;margin:8px 0;padding:10px 14px;break-inside:avoid;overflow-wrap:anywhere}
.caution{border-left:6px double var(--ink)}
.card h3{font-size:15px;margin:0 0 6px;display:flex;gap:8px;align-items:baseline}
.card h3 .mark{flex:none}
.sides{display:grid;grid-template-columns:minmax(0,1fr) 270px;gap:4px 14px;align-items:center}
.sides.plain{grid-template-columns:minmax(0,1fr)}
.side{margin:2px 0;padding-left:8px;border-left:4px solid var(--ref)}
.side.c{border-left-color:var(--cand)}
.side .who{font-size:12px;color:var(--soft)}
.side .values{font-weight:bold;color:var(--ref)}
.side.c .values{color:var(--cand)}
.side .values.text{color:var(--ink);font-weight:normal}
.side .cond{font-size:13px;color:var(--soft)}
.cuts{margin:8px 0 0}
.cut{margin:6px 0 0;max-width:100%}
.cut .paper{position:relative;display:inline-block;max-width:100%;background:#fff;border:1px solid var(--edge);border-left:4px solid var(--ref);line-height:0}
.cut.c .paper{border-left-color:var(--cand)}
.cut img{max-width:100%;height:auto;width:auto;max-height:420px}
.cut i{position:absolute;border:2px solid #2f4d6b;border-radius:2px}
.cut.c i{border-color:#a4620c}
.cut figcaption{font-size:12px;color:var(--soft)}
.why{margin:6px 0 0}
.meta{margin:4px 0 0;font-size:12px;color:var(--soft)}
.strip{width:260px;max-width:100%;height:34px}
.strip .axis{fill:none;stroke:var(--edge)}
.strip .ref{fill:none;stroke:var(--ref);stroke-width:2}
.strip .dots{stroke-dasharray:2 2;stroke-width:1}
.strip .cand{fill:var(--cand)}
.strip .open{fill-opacity:.35}
.strip .candtyp{stroke:var(--ink);stroke-width:2}
.strip .hazard,.strip .flag{fill:var(--ink)}
.strip .pole{stroke:var(--ink);stroke-width:1}
table{border-collapse:collapse;width:100%;font-size:13px;background:var(--paper)}
th,td{border:1px solid var(--edge);padding:3px 6px;text-align:left;vertical-align:top;overflow-wrap:anywhere}
td.r{color:var(--ref)}td.k{color:var(--cand)}
summary{cursor:pointer;font-weight:bold;margin:8px 0}
.foot{font-size:13px;color:var(--soft)}
@media (max-width:720px){.docs,.sides{grid-template-columns:minmax(0,1fr)}.cut{overflow-x:auto}.cut .paper,.cut img{max-width:none}}
@media print{body{background:#fff;font-size:11px}main{max-width:none;padding:0 2px}h2,h3,.sides,summary{break-after:avoid}details{display:block}
details::details-content{content-visibility:visible;height:auto}tr,.cut,.why{break-inside:avoid}.card{break-inside:auto}.cut img{max-height:300px}}
)";

}  // namespace standin::report
