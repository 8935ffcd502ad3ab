<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="zh_CN" sourcelanguage="en">
<context>
    <name>correcting</name>
    <message>
        <source>Correct the row of the &amp;reference…</source>
        <translation>更正参考件的行(&amp;R)…</translation>
    </message>
    <message>
        <source>Correct the row of the &amp;candidate…</source>
        <translation>更正候选件的行(&amp;C)…</translation>
    </message>
    <message>
        <source>The file of corrections was changed and the comparison is made anew: %1</source>
        <translation>更正文件已更改，正在重新比较：%1</translation>
    </message>
    <message numerus="yes">
        <source>%n correction(s) kept with this pair are not applied.</source>
        <translation>
            <numerusform>与此对文档一起保存的 %n 项更正尚未应用。</numerusform>
        </translation>
    </message>
    <message>
        <source>Apply</source>
        <translation>应用</translation>
    </message>
</context>
<context>
    <name>exports</name>
    <message>
        <source>HTML report</source>
        <translation>HTML 报告</translation>
    </message>
    <message>
        <source>PDF report</source>
        <translation>PDF 报告</translation>
    </message>
    <message>
        <source>Text summary</source>
        <translation>文本摘要</translation>
    </message>
    <message>
        <source>All findings as JSON</source>
        <translation>全部差异项（JSON）</translation>
    </message>
    <message>
        <source>All parameters as CSV</source>
        <translation>全部参数（CSV）</translation>
    </message>
    <message>
        <source>; choose another place, or make room</source>
        <translation>；请选择其他位置，或腾出空间</translation>
    </message>
</context>
<context>
    <name>help</name>
    <message>
        <source>open a pair, choose variants, cell profile and circuit</source>
        <translation>打开一对文件，选择型号、电芯规格和电路</translation>
    </message>
    <message>
        <source>exchange reference and candidate</source>
        <translation>交换参考与候选</translation>
    </message>
    <message>
        <source>read both documents again</source>
        <translation>重新读取两份文件</translation>
    </message>
    <message>
        <source>cancel reading</source>
        <translation>取消读取</translation>
    </message>
    <message>
        <source>go to a page of the desk</source>
        <translation>转到工作台的某一页</translation>
    </message>
    <message>
        <source>next and previous finding, from anywhere</source>
        <translation>下一个和上一个差异项（任何位置可用）</translation>
    </message>
    <message>
        <source>show the chosen row on the pages of both documents</source>
        <translation>在两份文件的页面上显示所选行</translation>
    </message>
    <message>
        <source>decide on the finding; Tab goes on to the remark</source>
        <translation>对差异项作出决定；Tab 键转到备注</translation>
    </message>
    <message>
        <source>find in the list or on the page</source>
        <translation>在列表或页面中查找</translation>
    </message>
    <message>
        <source>show all findings again</source>
        <translation>重新显示全部差异项</translation>
    </message>
    <message>
        <source>go round: sections, list, evidence, decision</source>
        <translation>依次切换：章节、列表、依据、决定</translation>
    </message>
    <message>
        <source>export a report</source>
        <translation>导出报告</translation>
    </message>
    <message>
        <source>print the report</source>
        <translation>打印报告</translation>
    </message>
    <message>
        <source>copy the chosen rows or text</source>
        <translation>复制所选行或文字</translation>
    </message>
    <message>
        <source>whole screen</source>
        <translation>全屏</translation>
    </message>
    <message>
        <source>quit</source>
        <translation>退出</translation>
    </message>
    <message>
        <source>Working at the desk</source>
        <translation>使用工作台</translation>
    </message>
    <message>
        <source>What stands where</source>
        <translation>各部分的位置</translation>
    </message>
    <message>
        <source>At the top: both documents, the verdict, what was covered, and the counts by severity. At the left: the sections of both documents as they were paired; choosing one lists its findings. In the middle: the findings, gravest first. Below: where the chosen finding stands on both pages, what it means, and your decision.</source>
        <translation>上方：两份文件、结论、覆盖情况以及按严重程度的计数。左侧：配对后的章节；选择一节即列出其差异项。中间：差异项，最严重的在前。下方：所选差异项在两页上的位置、其含义以及您的决定。</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation>严重程度</translation>
    </message>
    <message>
        <source>▲ hazard: could contribute to fire, venting or burns, or defeat a protective function. ■ function: the circuit may not work, may trip, may not recover. ● margin: works, with another margin. ▬ note: worth knowing. · editorial: no change of meaning. Hazard findings stay listed whatever the filter; what is hidden is counted.</source>
        <translation>▲ 危险：可能导致起火、泄气或烧伤，或使保护功能失效。■ 功能：电路可能不工作、误动作或不恢复。● 裕量：可工作，但裕量不同。▬ 提示：值得了解。· 编辑性：含义不变。危险项无论如何筛选都保留在列表中；被隐藏的会计数。</translation>
    </message>
    <message>
        <source>The limit strip</source>
        <translation>限值条</translation>
    </message>
    <message>
        <source>Both intervals on one axis: the reference as an open bracket above, the candidate as a solid bar below, typical values as ticks. A hatched end is a bound that is not stated. A flag is a limit of the cell profile and points to the side that holds. The arrow points to the hazardous side.</source>
        <translation>两个区间在同一轴上：上方开口括号为参考，下方实心条为候选，典型值为短线。斜线端表示未给出的界限。小旗为电芯规格的界限，指向允许的一侧。箭头指向危险一侧。</translation>
    </message>
    <message>
        <source>Decisions</source>
        <translation>决定</translation>
    </message>
    <message>
        <source>Before you rely on it</source>
        <translation>在依赖结果之前</translation>
    </message>
    <message>
        <source>The comparison covers printed documents only. It is not a test and not an approval. The cell maker&apos;s limits, local codes and licensed practice come first. Look at the page before you rely on a value.</source>
        <translation>比较仅涵盖印刷文件，不是测试，也不是批准。电芯厂商的限值、当地法规和有资质的操作优先。依赖某个数值之前请查看原页。</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>按键</translation>
    </message>
    <message>
        <source>&lt;h3&gt;Standin desk %1&lt;/h3&gt;&lt;p&gt;Compares the datasheets of a reference part and a candidate part.&lt;/p&gt;&lt;p&gt;Licence: GPL-3.0-or-later. There is no warranty.&lt;/p&gt;&lt;p&gt;Made with Qt %2 (LGPL-3.0), Poppler (GPL-2.0-or-later), ICU (Unicode-3.0), Pango and Cairo (LGPL-2.1), fmt, nlohmann-json, CLI11, dtl, tl-expected and OpenSSL.&lt;/p&gt;&lt;p&gt;The comparison covers printed documents only. It is not a test and not an approval.&lt;/p&gt;</source>
        <translation>&lt;h3&gt;Standin 工作台 %1&lt;/h3&gt;&lt;p&gt;比较参考器件与候选器件的数据手册。&lt;/p&gt;&lt;p&gt;许可：GPL-3.0-or-later。不提供任何担保。&lt;/p&gt;&lt;p&gt;使用 Qt %2 (LGPL-3.0)、Poppler (GPL-2.0-or-later)、ICU (Unicode-3.0)、Pango 和 Cairo (LGPL-2.1)、fmt、nlohmann-json、CLI11、dtl、tl-expected 和 OpenSSL。&lt;/p&gt;&lt;p&gt;比较仅涵盖印刷文件，不是测试，也不是批准。&lt;/p&gt;</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>帮助</translation>
    </message>
    <message>
        <source>About the desk</source>
        <translation>关于工作台</translation>
    </message>
    <message>
        <source>undo and redo decisions and corrections</source>
        <translation>撤销和重做决定与更正</translation>
    </message>
    <message>
        <source>in the parameters: correct the chosen row of the reference, of the candidate</source>
        <translation>在参数页：更正所选行的参考件、候选件</translation>
    </message>
    <message>
        <source>on the pages: next and previous page</source>
        <translation>在页面上：下一页和上一页</translation>
    </message>
    <message>
        <source>on the pages: larger, smaller, fit the width, whole page, turn</source>
        <translation>在页面上：放大、缩小、适合宽度、整页、旋转</translation>
    </message>
    <message>
        <source>in the field above the pages: next and previous place that was found</source>
        <translation>在页面上方的输入框：下一处和上一处找到的位置</translation>
    </message>
    <message>
        <source>The pages, and what was misread</source>
        <translation>页面与误读之处</translation>
    </message>
    <message>
        <source>The places of findings are framed on the pages; those that change no meaning have a bar beside them. Click on a place to see what was read there; its partner in the other document comes into view. Drag to choose text. A row that was misread is corrected from there or from the list of parameters: the correction is written to a file that reports name, the comparison follows, and undo takes both back.</source>
        <translation>差异的位置在页面上用框标出；不改变含义的差异旁有一条竖线。单击某处可查看那里读到的内容，另一文档中的对应处随即显示。拖动可选择文字。误读的行可在此处或在参数列表中更正：更正写入报告会列明的文件，比较随之更新，撤销可将两者一并恢复。</translation>
    </message>
    <message>
        <source>A decision and its remark are kept with this pair of documents on this computer. They are bound to the bytes of both files: a changed file starts without decisions. What quality assurance signs is kept on the page Record.</source>
        <translation>决定及其备注与这对文件一起保存在本机。它们与两个文件的字节绑定：文件改变后从无决定开始。质量部门签署的内容保存在“记录”页。</translation>
    </message>
    <message>
        <source>The record</source>
        <translation>记录</translation>
    </message>
    <message>
        <source>Make your key once, or choose it. Open a new record of the pair, or take up one that was begun; it is a file of its own, with every line that needs a decision. Choose a line, decide, give the reason, enter it. A hazard needs two persons: the second confirms with another key. When nothing is open, author and approver sign. Check tells whether the record holds and what is open or lapsed. Nothing that was entered can be taken back; enter another decision instead.</source>
        <translation>先制作一次密钥，或选择已有密钥。为此对新建记录，或继续已开始的记录；它是单独的文件，含有每一行需要决定的内容。选择一行，作出决定，写明理由，填入。危险项需要两人：第二人用另一把密钥确认。没有未决事项时，由编写人和批准人签署。“检查”说明记录是否成立、哪些未决或失效。已填入的内容不能撤回；请改填另一项决定。</translation>
    </message>
</context>
<context>
    <name>main</name>
    <message>
        <source>Compares the datasheets of a reference part and a candidate part in a window.</source>
        <translation>在窗口中比较参考器件与候选器件的数据手册。</translation>
    </message>
    <message>
        <source>datasheet of the part fitted or specified today</source>
        <translation>目前安装或指定器件的数据手册</translation>
    </message>
    <message>
        <source>datasheet of the suspected equivalent</source>
        <translation>疑似替代器件的数据手册</translation>
    </message>
    <message>
        <source>cell profile</source>
        <translation>电芯规格</translation>
    </message>
    <message>
        <source>circuit values</source>
        <translation>电路数值</translation>
    </message>
    <message>
        <source>system, light or dark, this time</source>
        <translation>system、light 或 dark，仅本次</translation>
    </message>
    <message>
        <source>save a picture of the window and quit</source>
        <translation>保存窗口图片并退出</translation>
    </message>
    <message>
        <source>size of the window in pixels</source>
        <translation>窗口大小（像素）</translation>
    </message>
    <message>
        <source>page of the desk to show, from 1</source>
        <translation>要显示的工作台页，从 1 起</translation>
    </message>
</context>
<context>
    <name>places</name>
    <message>
        <source>parameter row</source>
        <translation>参数行</translation>
    </message>
    <message>
        <source>cell of a table</source>
        <translation>表格单元</translation>
    </message>
    <message>
        <source>sentence</source>
        <translation>句子</translation>
    </message>
    <message>
        <source>heading</source>
        <translation>标题</translation>
    </message>
    <message>
        <source>figure</source>
        <translation>图</translation>
    </message>
    <message>
        <source>lettering of a figure</source>
        <translation>图中文字</translation>
    </message>
    <message>
        <source>running head or foot</source>
        <translation>页眉或页脚</translation>
    </message>
</context>
<context>
    <name>printing</name>
    <message>
        <source>cannot be printed: the printer did not start; check it and try again</source>
        <translation>无法打印：打印机未启动；请检查后重试</translation>
    </message>
</context>
<context>
    <name>standin::ui::AskingDialog</name>
    <message>
        <source>Records (*.record);;All files (*)</source>
        <translation>记录 (*.record);;所有文件 (*)</translation>
    </message>
</context>
<context>
    <name>standin::ui::CellModel</name>
    <message>
        <source>✓ holds</source>
        <translation>✓ 满足</translation>
    </message>
    <message>
        <source>✗ violated</source>
        <translation>✗ 违反</translation>
    </message>
    <message>
        <source>? open</source>
        <translation>? 未定</translation>
    </message>
    <message>
        <source>Check or quantity</source>
        <translation>检查或导出量</translation>
    </message>
    <message>
        <source>Limit or formula</source>
        <translation>限值或公式</translation>
    </message>
    <message>
        <source>Reference</source>
        <translation>参考</translation>
    </message>
    <message>
        <source>Candidate</source>
        <translation>候选</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>结果</translation>
    </message>
    <message>
        <source>What is missing or violated</source>
        <translation>缺少或违反的内容</translation>
    </message>
    <message>
        <source>No cell profile was given: neither part was checked against a cell. Choose one under File, Open pair.</source>
        <translation>未提供电芯规格：两个器件均未与电芯核对。可在“文件 → 打开一对”中选择。</translation>
    </message>
    <message>
        <source>Cell profile: %1</source>
        <translation>电芯规格：%1</translation>
    </message>
    <message>
        <source>; circuit: %1</source>
        <translation>；电路：%1</translation>
    </message>
</context>
<context>
    <name>standin::ui::CellPage</name>
    <message>
        <source>Checks against the cell</source>
        <translation>与电芯的核对</translation>
    </message>
</context>
<context>
    <name>standin::ui::CorrectionDialog</name>
    <message>
        <source>&amp;Name</source>
        <translation>名称(&amp;N)</translation>
    </message>
    <message>
        <source>&amp;Symbol</source>
        <translation>符号(&amp;S)</translation>
    </message>
    <message>
        <source>&amp;Condition</source>
        <translation>条件(&amp;C)</translation>
    </message>
    <message>
        <source>M&amp;in</source>
        <translation>最小(&amp;I)</translation>
    </message>
    <message>
        <source>&amp;Typ</source>
        <translation>典型(&amp;T)</translation>
    </message>
    <message>
        <source>M&amp;ax</source>
        <translation>最大(&amp;A)</translation>
    </message>
    <message>
        <source>&amp;Unit</source>
        <translation>单位(&amp;U)</translation>
    </message>
    <message>
        <source>This is &amp;no parameter</source>
        <translation>这不是参数(&amp;N)</translation>
    </message>
    <message>
        <source>Correct a row that was misread</source>
        <translation>更正误读的行</translation>
    </message>
    <message>
        <source>Put in a row that was not read</source>
        <translation>补入未读到的行</translation>
    </message>
    <message>
        <source>%1, page %2</source>
        <translation>%1，第 %2 页</translation>
    </message>
    <message>
        <source>Read: %1</source>
        <translation>读到：%1</translation>
    </message>
    <message>
        <source>Write what is printed on the page; leave empty what has nothing printed.</source>
        <translation>请填写页面上印刷的内容；未印刷的留空。</translation>
    </message>
    <message>
        <source>Corrected &amp;by</source>
        <translation>更正人(&amp;B)</translation>
    </message>
    <message>
        <source>for example: the 3 was read as an 8</source>
        <translation>例如：3 被读成 8</translation>
    </message>
    <message>
        <source>&amp;Reason</source>
        <translation>原因(&amp;R)</translation>
    </message>
    <message>
        <source>Written to %1</source>
        <translation>写入 %1</translation>
    </message>
    <message>
        <source>Correct and compare anew</source>
        <translation>更正并重新比较</translation>
    </message>
    <message>
        <source>Nothing differs yet from what was read.</source>
        <translation>尚无与读到内容不同之处。</translation>
    </message>
    <message>
        <source>A name or a symbol is needed.</source>
        <translation>需要名称或符号。</translation>
    </message>
    <message>
        <source>A value is needed: min, typ or max.</source>
        <translation>需要一个值：最小、典型或最大。</translation>
    </message>
    <message>
        <source>Who corrects it is needed: it stands in every report.</source>
        <translation>需要更正人：会列在每份报告中。</translation>
    </message>
    <message>
        <source>A reason is needed: it stands in every report.</source>
        <translation>需要原因：会列在每份报告中。</translation>
    </message>
</context>
<context>
    <name>standin::ui::Corrections</name>
    <message>
        <source>the row is no longer there</source>
        <translation>该行已不存在</translation>
    </message>
    <message>
        <source>Not corrected. %1</source>
        <translation>未更正。%1</translation>
    </message>
    <message>
        <source>a row put in</source>
        <translation>补入的行</translation>
    </message>
    <message>
        <source>correction of %1</source>
        <translation>更正 %1</translation>
    </message>
    <message>
        <source>The file of corrections was changed by somebody else and is left as it is: %1</source>
        <translation>更正文件已被他人更改，保持不动：%1</translation>
    </message>
    <message>
        <source>The correction could not be saved. %1</source>
        <translation>更正无法保存。%1</translation>
    </message>
    <message>
        <source>The file of corrections could not be removed: %1</source>
        <translation>更正文件无法删除：%1</translation>
    </message>
</context>
<context>
    <name>standin::ui::CoverageModel</name>
    <message>
        <source>all</source>
        <translation>全部</translation>
    </message>
    <message>
        <source>Document</source>
        <translation>文件</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>页</translation>
    </message>
    <message>
        <source>What was not compared</source>
        <translation>未比较的内容</translation>
    </message>
    <message>
        <source>As printed</source>
        <translation>印刷原文</translation>
    </message>
    <message>
        <source>%1: %2 numbers printed; %3 in parameters, %4 in other tables, %5 in text, %6 in figures, %7 in running heads and page numbers, %8 unaccounted for</source>
        <translation>%1：印刷数字 %2 个；参数中 %3，其他表格中 %4，正文中 %5，图中 %6，页眉和页码中 %7，未归属 %8</translation>
    </message>
    <message>
        <source>number without an owner</source>
        <translation>未归属的数字</translation>
    </message>
    <message>
        <source>page without a text layer</source>
        <translation>没有文本层的页</translation>
    </message>
    <message>
        <source>table that was not read</source>
        <translation>未读取的表格</translation>
    </message>
    <message>
        <source>figure that was not read</source>
        <translation>未读取的图</translation>
    </message>
    <message>
        <source>pins that were not read</source>
        <translation>未读取的引脚</translation>
    </message>
    <message>
        <source>sign that is a drawing and was not read</source>
        <translation>以图形绘制、未读取的符号</translation>
    </message>
    <message>
        <source>recognised from a picture</source>
        <translation>从图片识别</translation>
    </message>
    <message>
        <source>lettering of a picture that was not made out</source>
        <translation>图片中未能识别的文字</translation>
    </message>
    <message>
        <source>while reading</source>
        <translation>读取时</translation>
    </message>
</context>
<context>
    <name>standin::ui::CoveragePage</name>
    <message>
        <source>What was not compared</source>
        <translation>未比较的内容</translation>
    </message>
</context>
<context>
    <name>standin::ui::Decisions</name>
    <message>
        <source>The decisions kept for this pair cannot be read. The file was set aside as %1.</source>
        <translation>无法读取为这对文件保存的决定。文件已另存为 %1。</translation>
    </message>
    <message>
        <source>The decisions kept for this pair cannot be read: %1</source>
        <translation>无法读取为这对文件保存的决定：%1</translation>
    </message>
    <message>
        <source>The decision could not be saved to %1. It is kept until this window closes; make room and decide again.</source>
        <translation>决定无法保存到 %1。它保留到窗口关闭为止；请腾出空间后再次决定。</translation>
    </message>
</context>
<context>
    <name>standin::ui::DistributeDialog</name>
    <message>
        <source>Distribution</source>
        <translation>分发</translation>
    </message>
    <message>
        <source>&amp;To</source>
        <translation>发给(&amp;T)</translation>
    </message>
    <message>
        <source>a person, a department, a list</source>
        <translation>人员、部门或分发名单</translation>
    </message>
    <message>
        <source>&amp;What</source>
        <translation>内容(&amp;W)</translation>
    </message>
    <message>
        <source>With &amp;change</source>
        <translation>随变更(&amp;C)</translation>
    </message>
    <message>
        <source>number of the change to drawing, parts list or work instruction</source>
        <translation>图纸、物料清单或作业指导书的变更号</translation>
    </message>
    <message>
        <source>&amp;Date</source>
        <translation>日期(&amp;D)</translation>
    </message>
    <message>
        <source>2031-05-06; none: today</source>
        <translation>2031-05-06；留空则为今天</translation>
    </message>
    <message>
        <source>Say who was given it.</source>
        <translation>请填写发给谁。</translation>
    </message>
    <message>
        <source>Say what was given.</source>
        <translation>请填写发了什么。</translation>
    </message>
    <message>
        <source>The date is no date such as 2031-05-06.</source>
        <translation>日期须写成 2031-05-06 这样的形式。</translation>
    </message>
</context>
<context>
    <name>standin::ui::DocumentCard</name>
    <message>
        <source> · variant %1</source>
        <translation> · 型号 %1</translation>
    </message>
    <message>
        <source>%1
SHA-256 %2</source>
        <translation>%1
SHA-256 %2</translation>
    </message>
</context>
<context>
    <name>standin::ui::EvidenceView</name>
    <message>
        <source>Nothing of it stands in the %1.</source>
        <translation>%1中没有此项。</translation>
    </message>
    <message>
        <source>%1, page %2</source>
        <translation>%1，第 %2 页</translation>
    </message>
</context>
<context>
    <name>standin::ui::FileLine</name>
    <message>
        <source>none</source>
        <translation>无</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>选择…</translation>
    </message>
    <message>
        <source>Choose a file: %1</source>
        <translation>选择文件：%1</translation>
    </message>
</context>
<context>
    <name>standin::ui::FileSlot</name>
    <message>
        <source>Variant</source>
        <translation>型号</translation>
    </message>
    <message>
        <source>Reference: the part fitted or specified today</source>
        <translation>参考：目前安装或指定的器件</translation>
    </message>
    <message>
        <source>Candidate: the suspected equivalent</source>
        <translation>候选：疑似替代器件</translation>
    </message>
    <message>
        <source>datasheet.pdf: choose it, or drop it here</source>
        <translation>datasheet.pdf：选择文件或拖放到此处</translation>
    </message>
    <message>
        <source>File of the %1</source>
        <translation>%1的文件</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>选择…</translation>
    </message>
    <message>
        <source>Choose the file of the %1</source>
        <translation>选择%1的文件</translation>
    </message>
    <message>
        <source>Variant of the %1</source>
        <translation>%1的型号</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>未选择</translation>
    </message>
    <message>
        <source>Choose the datasheet of the reference</source>
        <translation>选择参考器件的数据手册</translation>
    </message>
    <message>
        <source>Choose the datasheet of the candidate</source>
        <translation>选择候选器件的数据手册</translation>
    </message>
    <message>
        <source>Datasheets (*.pdf *.json);;All files (*)</source>
        <translation>数据手册 (*.pdf *.json);;所有文件 (*)</translation>
    </message>
</context>
<context>
    <name>standin::ui::FindingDelegate</name>
    <message>
        <source>  p %1</source>
        <translation>  第 %1 页</translation>
    </message>
    <message>
        <source>cannot be filtered away; %1</source>
        <translation>不能被筛选掉；%1</translation>
    </message>
    <message>
        <source>decided: %1</source>
        <translation>已决定：%1</translation>
    </message>
</context>
<context>
    <name>standin::ui::FindingsFilter</name>
    <message>
        <source>hidden: %1</source>
        <translation>已隐藏：%1</translation>
    </message>
</context>
<context>
    <name>standin::ui::FindingsModel</name>
    <message>
        <source>%1, page %2: %3</source>
        <translation>%1，第 %2 页：%3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>condition %1</source>
        <translation>条件 %1</translation>
    </message>
    <message>
        <source>decision: %1</source>
        <translation>决定：%1</translation>
    </message>
    <message>
        <source>No section</source>
        <translation>无章节</translation>
    </message>
</context>
<context>
    <name>standin::ui::FindingsPage</name>
    <message>
        <source>&amp;undecided only</source>
        <translation>仅未决定(&amp;U)</translation>
    </message>
    <message>
        <source>Sho&amp;w all</source>
        <translation>全部显示(&amp;W)</translation>
    </message>
    <message>
        <source>Findings, gravest first</source>
        <translation>差异项，最严重的在前</translation>
    </message>
    <message>
        <source>Find in findings</source>
        <translation>在差异项中查找</translation>
    </message>
    <message>
        <source>List findings that hold these words</source>
        <translation>列出含这些词的差异项</translation>
    </message>
    <message>
        <source>List findings of this kind</source>
        <translation>列出此类差异项</translation>
    </message>
    <message>
        <source>Order of the findings</source>
        <translation>差异项的顺序</translation>
    </message>
    <message>
        <source>by severity</source>
        <translation>按严重程度</translation>
    </message>
    <message>
        <source>by section</source>
        <translation>按章节</translation>
    </message>
    <message>
        <source>by kind</source>
        <translation>按类别</translation>
    </message>
    <message>
        <source>by name</source>
        <translation>按名称</translation>
    </message>
    <message>
        <source>by decision</source>
        <translation>按决定</translation>
    </message>
    <message>
        <source>every kind</source>
        <translation>所有类别</translation>
    </message>
    <message>
        <source>No finding is listed: all are hidden by the filter.</source>
        <translation>没有列出差异项：全部被筛选隐藏。</translation>
    </message>
    <message>
        <source>No difference found in what was compared.</source>
        <translation>在已比较的内容中未发现差异。</translation>
    </message>
</context>
<context>
    <name>standin::ui::KeyDialog</name>
    <message>
        <source>New key</source>
        <translation>新密钥</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>姓名(&amp;N)</translation>
    </message>
    <message>
        <source>of the person who signs</source>
        <translation>签署人的姓名</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>文件(&amp;F)</translation>
    </message>
    <message>
        <source>File of the new key</source>
        <translation>新密钥的文件</translation>
    </message>
    <message>
        <source>Keys (*.key);;All files (*)</source>
        <translation>密钥 (*.key);;所有文件 (*)</translation>
    </message>
    <message>
        <source>&amp;Passphrase</source>
        <translation>口令(&amp;P)</translation>
    </message>
    <message>
        <source>none: whoever has the file can sign</source>
        <translation>无：持有文件者即可签署</translation>
    </message>
    <message>
        <source>The same &amp;again</source>
        <translation>再次输入(&amp;A)</translation>
    </message>
    <message>
        <source>Give the name of the person who signs.</source>
        <translation>请填写签署人的姓名。</translation>
    </message>
    <message>
        <source>Say where the key is to be kept; only you will be able to read it.</source>
        <translation>请指定密钥的保存位置；只有您能读取它。</translation>
    </message>
    <message>
        <source>The two passphrases differ.</source>
        <translation>两次输入的口令不同。</translation>
    </message>
</context>
<context>
    <name>standin::ui::MainWindow</name>
    <message>
        <source>Standin desk</source>
        <translation>Standin 工作台</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>取消</translation>
    </message>
    <message>
        <source>reading, page %v of %m</source>
        <translation>正在读取，第 %v 页，共 %m 页</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>差异项</translation>
    </message>
    <message>
        <source>All parameters</source>
        <translation>全部参数</translation>
    </message>
    <message>
        <source>Wording</source>
        <translation>措辞</translation>
    </message>
    <message>
        <source>Pins</source>
        <translation>引脚</translation>
    </message>
    <message>
        <source>Cell</source>
        <translation>电芯</translation>
    </message>
    <message>
        <source>Pages</source>
        <translation>页面</translation>
    </message>
    <message>
        <source>Not compared</source>
        <translation>未比较</translation>
    </message>
    <message>
        <source>The file of the %1 changed on disk; what is shown is as it was read: %2</source>
        <translation>%1的文件在磁盘上已改变；显示的是读取时的内容：%2</translation>
    </message>
    <message>
        <source>The file of the %1 is gone from disk; what is shown is as it was read: %2</source>
        <translation>%1的文件已从磁盘消失；显示的是读取时的内容：%2</translation>
    </message>
    <message>
        <source>Read again</source>
        <translation>重新读取</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>已写入：%1</translation>
    </message>
    <message>
        <source>Not written. %1</source>
        <translation>未写入。%1</translation>
    </message>
    <message>
        <source>Not read. %1</source>
        <translation>未读取。%1</translation>
    </message>
    <message>
        <source>Open pair…</source>
        <translation>打开一对…</translation>
    </message>
    <message>
        <source>%1 – %2 – Standin desk</source>
        <translation>%1 – %2 – Standin 工作台</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>文件(&amp;F)</translation>
    </message>
    <message>
        <source>&amp;Open pair…</source>
        <translation>打开一对(&amp;O)…</translation>
    </message>
    <message>
        <source>Opened &amp;before</source>
        <translation>最近打开(&amp;B)</translation>
    </message>
    <message>
        <source>E&amp;xchange reference and candidate</source>
        <translation>交换参考与候选(&amp;X)</translation>
    </message>
    <message>
        <source>Ctrl+Shift+X</source>
        <translation>Ctrl+Shift+X</translation>
    </message>
    <message>
        <source>Read a&amp;gain</source>
        <translation>重新读取(&amp;G)</translation>
    </message>
    <message>
        <source>&amp;Cancel reading</source>
        <translation>取消读取(&amp;C)</translation>
    </message>
    <message>
        <source>&amp;Export…</source>
        <translation>导出(&amp;E)…</translation>
    </message>
    <message>
        <source>Ctrl+E</source>
        <translation>Ctrl+E</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>打印(&amp;P)…</translation>
    </message>
    <message>
        <source>&amp;Settings…</source>
        <translation>设置(&amp;S)…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>退出(&amp;Q)</translation>
    </message>
    <message>
        <source>Ctrl+Q</source>
        <translation>Ctrl+Q</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>编辑(&amp;E)</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>撤销(&amp;U)</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>重做(&amp;R)</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Z</source>
        <translation>Ctrl+Shift+Z</translation>
    </message>
    <message>
        <source>Ctrl+Y</source>
        <translation>Ctrl+Y</translation>
    </message>
    <message>
        <source>&amp;Decide on the finding</source>
        <translation>对差异项作决定(&amp;D)</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation>Ctrl+D</translation>
    </message>
    <message>
        <source>&amp;Find in findings</source>
        <translation>在差异项中查找(&amp;F)</translation>
    </message>
    <message>
        <source>Ctrl+F</source>
        <translation>Ctrl+F</translation>
    </message>
    <message>
        <source>Show &amp;all findings</source>
        <translation>显示全部差异项(&amp;A)</translation>
    </message>
    <message>
        <source>Ctrl+Shift+F</source>
        <translation>Ctrl+Shift+F</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>视图(&amp;V)</translation>
    </message>
    <message>
        <source>&amp;Next finding</source>
        <translation>下一个差异项(&amp;N)</translation>
    </message>
    <message>
        <source>Ctrl+Down</source>
        <translation>Ctrl+Down</translation>
    </message>
    <message>
        <source>&amp;Previous finding</source>
        <translation>上一个差异项(&amp;P)</translation>
    </message>
    <message>
        <source>Ctrl+Up</source>
        <translation>Ctrl+Up</translation>
    </message>
    <message>
        <source>Show its p&amp;laces on the pages</source>
        <translation>在页面上显示其位置(&amp;L)</translation>
    </message>
    <message>
        <source>Ctrl+Return</source>
        <translation>Ctrl+Return</translation>
    </message>
    <message>
        <source>Go &amp;round the parts</source>
        <translation>依次切换各部分(&amp;R)</translation>
    </message>
    <message>
        <source>&amp;Whole screen</source>
        <translation>全屏(&amp;W)</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>帮助(&amp;H)</translation>
    </message>
    <message>
        <source>&amp;About the desk</source>
        <translation>关于工作台(&amp;A)</translation>
    </message>
    <message>
        <source>&amp;Forget these</source>
        <translation>清除这些(&amp;F)</translation>
    </message>
    <message>
        <source>Open pair</source>
        <translation>打开一对</translation>
    </message>
    <message>
        <source>Export a report</source>
        <translation>导出报告</translation>
    </message>
    <message>
        <source>An export is under way; wait until it is done.</source>
        <translation>正在导出；请等待完成。</translation>
    </message>
    <message>
        <source>Writing %1 …</source>
        <translation>正在写入 %1 …</translation>
    </message>
    <message>
        <source>Not printed. %1</source>
        <translation>未打印。%1</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>记录</translation>
    </message>
</context>
<context>
    <name>standin::ui::MeaningPanel</name>
    <message>
        <source>What it means</source>
        <translation>含义</translation>
    </message>
    <message>
        <source>What the finding means</source>
        <translation>差异项的含义</translation>
    </message>
    <message>
        <source>&amp;Decision</source>
        <translation>决定(&amp;D)</translation>
    </message>
    <message>
        <source>Decision on the finding</source>
        <translation>对差异项的决定</translation>
    </message>
    <message>
        <source>Remark: why, under which condition, what to test</source>
        <translation>备注：原因、条件、需要测试的内容</translation>
    </message>
    <message>
        <source>Remark on the decision</source>
        <translation>决定的备注</translation>
    </message>
    <message>
        <source>Caution:</source>
        <translation>注意：</translation>
    </message>
    <message>
        <source>Follows from it: %1</source>
        <translation>由此产生：%1</translation>
    </message>
    <message>
        <source>%1, %2, %3; finding %4</source>
        <translation>%1，%2，%3；差异项 %4</translation>
    </message>
    <message>
        <source>decision on “%1”</source>
        <translation>关于“%1”的决定</translation>
    </message>
</context>
<context>
    <name>standin::ui::NewRecordDialog</name>
    <message>
        <source>New record</source>
        <translation>新记录</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>文件(&amp;F)</translation>
    </message>
    <message>
        <source>File of the new record</source>
        <translation>新记录的文件</translation>
    </message>
    <message>
        <source>&amp;Earlier record</source>
        <translation>早先的记录(&amp;E)</translation>
    </message>
    <message>
        <source>Record whose decisions are carried over</source>
        <translation>沿用其决定的记录</translation>
    </message>
    <message>
        <source>N&amp;umber</source>
        <translation>编号(&amp;U)</translation>
    </message>
    <message>
        <source>of the record in your files</source>
        <translation>记录在您档案中的编号</translation>
    </message>
    <message>
        <source>&amp;Title</source>
        <translation>标题(&amp;T)</translation>
    </message>
    <message>
        <source>what it is about</source>
        <translation>内容</translation>
    </message>
    <message>
        <source>&amp;Product</source>
        <translation>产品(&amp;P)</translation>
    </message>
    <message>
        <source>product and assembly</source>
        <translation>产品和组件</translation>
    </message>
    <message>
        <source>P&amp;ositions</source>
        <translation>位号(&amp;O)</translation>
    </message>
    <message>
        <source>on the assembly</source>
        <translation>在组件上的位置</translation>
    </message>
    <message>
        <source>&amp;Scope</source>
        <translation>适用范围(&amp;S)</translation>
    </message>
    <message>
        <source>which product, lot, quantity it holds for</source>
        <translation>适用于哪种产品、批次、数量</translation>
    </message>
    <message>
        <source>&amp;Valid until</source>
        <translation>有效期至(&amp;V)</translation>
    </message>
    <message>
        <source>one a line; none: the usual ones</source>
        <translation>每行一项；留空则为通常各项</translation>
    </message>
    <message>
        <source>What asks for a new review</source>
        <translation>哪些情况需要重新审查</translation>
    </message>
    <message>
        <source>&amp;Review again upon</source>
        <translation>重新审查(&amp;R)</translation>
    </message>
    <message>
        <source>Say where the record is to be written.</source>
        <translation>请指定记录的保存位置。</translation>
    </message>
    <message>
        <source>The end of validity is no date such as 2032-01-31.</source>
        <translation>有效期不是 2032-01-31 这样的日期。</translation>
    </message>
</context>
<context>
    <name>standin::ui::NoticeBar</name>
    <message>
        <source>Close</source>
        <translation>关闭</translation>
    </message>
    <message>
        <source>Close the message</source>
        <translation>关闭消息</translation>
    </message>
</context>
<context>
    <name>standin::ui::PackageDrawing</name>
    <message>
        <source>%1: package with its pins, as in the table below</source>
        <translation>%1：封装及引脚，见下表</translation>
    </message>
    <message>
        <source>No pins were read.</source>
        <translation>未读取到引脚。</translation>
    </message>
</context>
<context>
    <name>standin::ui::PageCanvas</name>
    <message>
        <source>Pages of the %1</source>
        <translation>%1的页面</translation>
    </message>
    <message>
        <source>The pages cannot be shown. %1</source>
        <translation>无法显示页面。%1</translation>
    </message>
    <message>
        <source>Page %1 cannot be drawn; what was read of it is listed all the same.</source>
        <translation>第 %1 页无法绘制；从中读到的内容仍然列出。</translation>
    </message>
</context>
<context>
    <name>standin::ui::PageCutting</name>
    <message>
        <source>Cutting of the %1</source>
        <translation>%1的截图</translation>
    </message>
</context>
<context>
    <name>standin::ui::PageDrawer</name>
    <message>
        <source>This document was opened from what was read of it before; open its PDF to see the pages.</source>
        <translation>此文档由先前的读取结果打开；请打开其 PDF 以查看页面。</translation>
    </message>
</context>
<context>
    <name>standin::ui::PagesView</name>
    <message>
        <source>What was read here</source>
        <translation>此处读到的内容</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>宽度</translation>
    </message>
    <message>
        <source>Fit the width of the pages (W)</source>
        <translation>适合页面宽度 (W)</translation>
    </message>
    <message>
        <source>Whole page</source>
        <translation>整页</translation>
    </message>
    <message>
        <source>Fit whole pages (G)</source>
        <translation>适合整页 (G)</translation>
    </message>
    <message>
        <source>Smaller (-)</source>
        <translation>缩小 (-)</translation>
    </message>
    <message>
        <source>Larger (+)</source>
        <translation>放大 (+)</translation>
    </message>
    <message>
        <source>Turn</source>
        <translation>旋转</translation>
    </message>
    <message>
        <source>Turn the pages by a quarter (R)</source>
        <translation>将页面旋转四分之一圈 (R)</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Find on the pages</source>
        <translation>在页面中查找</translation>
    </message>
    <message>
        <source>Find in what was read of both documents</source>
        <translation>在两份文档读到的内容中查找</translation>
    </message>
    <message>
        <source>Found before (Shift+Enter)</source>
        <translation>上一处 (Shift+Enter)</translation>
    </message>
    <message>
        <source>Found next (Enter)</source>
        <translation>下一处 (Enter)</translation>
    </message>
    <message>
        <source>Page of the %1</source>
        <translation>%1的页码</translation>
    </message>
    <message>
        <source>page</source>
        <translation>页</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>of %1</source>
        <translation>/ %1</translation>
    </message>
    <message>
        <source>Click on a place to see what was read there; drag to choose text.</source>
        <translation>单击某处查看读到的内容；拖动选择文字。</translation>
    </message>
    <message>
        <source>%1, page %2, %3: %4</source>
        <translation>%1，第 %2 页，%3：%4</translation>
    </message>
    <message>
        <source>&amp;Correct this row…</source>
        <translation>更正此行(&amp;C)…</translation>
    </message>
    <message>
        <source>&amp;Put a row in…</source>
        <translation>补入一行(&amp;P)…</translation>
    </message>
    <message>
        <source>not found</source>
        <translation>未找到</translation>
    </message>
    <message>
        <source>%1 / %2</source>
        <translation>%1 / %2</translation>
    </message>
</context>
<context>
    <name>standin::ui::PairForm</name>
    <message>
        <source>none</source>
        <translation>无</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>选择…</translation>
    </message>
    <message>
        <source>Choose a file: %1</source>
        <translation>选择文件：%1</translation>
    </message>
    <message>
        <source>C&amp;ompare</source>
        <translation>比较(&amp;O)</translation>
    </message>
    <message>
        <source>⇅  E&amp;xchange reference and candidate</source>
        <translation>⇅  交换参考与候选(&amp;X)</translation>
    </message>
    <message>
        <source>Exchange reference and candidate</source>
        <translation>交换参考与候选</translation>
    </message>
    <message>
        <source>JSON files (*.json);;All files (*)</source>
        <translation>JSON 文件 (*.json);;所有文件 (*)</translation>
    </message>
    <message>
        <source>Ce&amp;ll profile</source>
        <translation>电芯规格(&amp;L)</translation>
    </message>
    <message>
        <source>C&amp;ircuit</source>
        <translation>电路(&amp;I)</translation>
    </message>
    <message>
        <source>Own &amp;vocabulary</source>
        <translation>自定义词汇(&amp;V)</translation>
    </message>
    <message>
        <source>Correctio&amp;ns</source>
        <translation>更正(&amp;N)</translation>
    </message>
    <message>
        <source>Password of the documents</source>
        <translation>文件的密码</translation>
    </message>
    <message>
        <source>Pass&amp;word</source>
        <translation>密码(&amp;W)</translation>
    </message>
</context>
<context>
    <name>standin::ui::ParametersModel</name>
    <message>
        <source>both intervals on one axis</source>
        <translation>两个区间在同一轴上</translation>
    </message>
    <message>
        <source>no common axis</source>
        <translation>没有共同的轴</translation>
    </message>
    <message>
        <source>%1  p %2</source>
        <translation>%1  第 %2 页</translation>
    </message>
    <message>
        <source>Parameter</source>
        <translation>参数</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation>条件</translation>
    </message>
    <message>
        <source>Reference  min / typ / max</source>
        <translation>参考  最小 / 典型 / 最大</translation>
    </message>
    <message>
        <source>Candidate  min / typ / max</source>
        <translation>候选  最小 / 典型 / 最大</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>限值</translation>
    </message>
    <message>
        <source>Relation</source>
        <translation>关系</translation>
    </message>
    <message>
        <source>Paired</source>
        <translation>配对</translation>
    </message>
</context>
<context>
    <name>standin::ui::ParametersPage</name>
    <message>
        <source>All parameters, paired</source>
        <translation>全部参数（已配对）</translation>
    </message>
    <message>
        <source>Find in parameters</source>
        <translation>在参数中查找</translation>
    </message>
    <message>
        <source>List parameters that hold these words</source>
        <translation>列出含这些词的参数</translation>
    </message>
    <message>
        <source>&amp;only those that differ</source>
        <translation>仅不同的(&amp;O)</translation>
    </message>
    <message numerus="yes">
        <source>%n pair(s)</source>
        <translation>
            <numerusform>%n 对</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n hidden</source>
        <translation>
            <numerusform>，隐藏 %n 对</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>standin::ui::PinsModel</name>
    <message>
        <source>package not named</source>
        <translation>封装未命名</translation>
    </message>
    <message>
        <source>differs</source>
        <translation>不同</translation>
    </message>
    <message>
        <source>Pin</source>
        <translation>引脚</translation>
    </message>
    <message>
        <source>Reference</source>
        <translation>参考</translation>
    </message>
    <message>
        <source>Function there</source>
        <translation>其功能</translation>
    </message>
    <message>
        <source>Candidate</source>
        <translation>候选</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>说明</translation>
    </message>
</context>
<context>
    <name>standin::ui::PinsPage</name>
    <message>
        <source>Pins of both packages, by number</source>
        <translation>两种封装的引脚（按编号）</translation>
    </message>
    <message>
        <source>Package of the &amp;reference</source>
        <translation>参考的封装(&amp;R)</translation>
    </message>
    <message>
        <source>Package of the &amp;candidate</source>
        <translation>候选的封装(&amp;C)</translation>
    </message>
    <message>
        <source>Seen from above, not to scale; ≠ marks a pin that differs. Check the drawing of the package on its page.</source>
        <translation>俯视图，不按比例；≠ 标出不同的引脚。请在原页核对封装图。</translation>
    </message>
</context>
<context>
    <name>standin::ui::RecordModel</name>
    <message>
        <source>needs no decision</source>
        <translation>无需决定</translation>
    </message>
    <message>
        <source>%1 (carried)</source>
        <translation>%1（沿用）</translation>
    </message>
    <message>
        <source>author</source>
        <translation>编写人</translation>
    </message>
    <message>
        <source>reviewer</source>
        <translation>审查人</translation>
    </message>
    <message>
        <source>approver</source>
        <translation>批准人</translation>
    </message>
    <message>
        <source>open</source>
        <translation>未决</translation>
    </message>
    <message>
        <source>second person missing</source>
        <translation>缺第二人</translation>
    </message>
    <message>
        <source>waiting</source>
        <translation>等待中</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>已结</translation>
    </message>
    <message>
        <source>rejected</source>
        <translation>拒绝</translation>
    </message>
    <message>
        <source>draft</source>
        <translation>草稿</translation>
    </message>
    <message>
        <source>in review</source>
        <translation>审查中</translation>
    </message>
    <message>
        <source>approved</source>
        <translation>已批准</translation>
    </message>
    <message>
        <source>approved with conditions</source>
        <translation>有条件批准</translation>
    </message>
    <message>
        <source>refused</source>
        <translation>已拒绝</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>发现</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation>严重程度</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>级别</translation>
    </message>
    <message>
        <source>What differs</source>
        <translation>差异</translation>
    </message>
    <message>
        <source>No record is in hand. Open a new one for this pair, or take up one that was begun.</source>
        <translation>尚无记录。请为此对新建一份，或继续已开始的一份。</translation>
    </message>
    <message>
        <source>%1: %2; %3 of %4 lines open</source>
        <translation>%1：%2；%4 行中有 %3 行未决</translation>
    </message>
    <message>
        <source>%1, level %2</source>
        <translation>%1，级别 %2</translation>
    </message>
    <message>
        <source>Follows from it: %1</source>
        <translation>由此引起：%1</translation>
    </message>
    <message>
        <source>Measured: %1</source>
        <translation>测得：%1</translation>
    </message>
    <message>
        <source>Nobody has signed yet.</source>
        <translation>尚无人签署。</translation>
    </message>
    <message>
        <source>%1: %2; %3 of %4 lines open. It is about other documents than those shown here.</source>
        <translation>%1：%2；%4 行中有 %3 行未决。它所涉文件与此处所示不同。</translation>
    </message>
    <message>
        <source>How it stands</source>
        <translation>状态</translation>
    </message>
    <message>
        <source>superseded</source>
        <translation>已被取代</translation>
    </message>
    <message>
        <source>Superseded %1</source>
        <translation>已被取代 %1</translation>
    </message>
    <message>
        <source>Given to: %1</source>
        <translation>已分发给：%1</translation>
    </message>
    <message>
        <source>Not yet told that it is superseded: %1</source>
        <translation>尚未告知已被取代：%1</translation>
    </message>
</context>
<context>
    <name>standin::ui::RecordPage</name>
    <message>
        <source>Lines of the record, gravest first</source>
        <translation>记录各行，最严重者在前</translation>
    </message>
    <message>
        <source>What was done last</source>
        <translation>最近的操作</translation>
    </message>
    <message>
        <source>Ne&amp;w record…</source>
        <translation>新记录(&amp;W)…</translation>
    </message>
    <message>
        <source>&amp;Take up…</source>
        <translation>继续(&amp;T)…</translation>
    </message>
    <message>
        <source>Take up a record that was begun</source>
        <translation>继续已开始的记录</translation>
    </message>
    <message>
        <source>Chec&amp;k</source>
        <translation>检查(&amp;K)</translation>
    </message>
    <message>
        <source>Check whether the record holds</source>
        <translation>检查记录是否成立</translation>
    </message>
    <message>
        <source>More</source>
        <translation>更多</translation>
    </message>
    <message>
        <source>More commands on the record</source>
        <translation>记录的更多命令</translation>
    </message>
    <message>
        <source>Save its &amp;report…</source>
        <translation>保存报告(&amp;R)…</translation>
    </message>
    <message>
        <source>Enter a &amp;bench result…</source>
        <translation>填写测试结果(&amp;B)…</translation>
    </message>
    <message>
        <source>&amp;Merge a second copy…</source>
        <translation>合并另一副本(&amp;M)…</translation>
    </message>
    <message>
        <source>The line and what was decided on it</source>
        <translation>该行及其决定</translation>
    </message>
    <message>
        <source>Decision on the line</source>
        <translation>对该行的决定</translation>
    </message>
    <message>
        <source>Reason of the decision</source>
        <translation>决定的理由</translation>
    </message>
    <message>
        <source>Why; always required</source>
        <translation>理由；必填</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation>条件</translation>
    </message>
    <message>
        <source>what, how it is verified, where it is written</source>
        <translation>条件内容、验证方法、记载位置</translation>
    </message>
    <message>
        <source>Asked</source>
        <translation>询问对象</translation>
    </message>
    <message>
        <source>who is asked for a statement</source>
        <translation>向谁索取声明</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>期限</translation>
    </message>
    <message>
        <source>Samples</source>
        <translation>样品</translation>
    </message>
    <message>
        <source>how many of how many lots</source>
        <translation>多少批次、多少件</translation>
    </message>
    <message>
        <source>File that the decision relies on</source>
        <translation>决定所依据的文件</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>所有文件 (*)</translation>
    </message>
    <message>
        <source>&amp;Decision</source>
        <translation>决定(&amp;D)</translation>
    </message>
    <message>
        <source>Reaso&amp;n</source>
        <translation>理由(&amp;N)</translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation>证据</translation>
    </message>
    <message>
        <source>Enter the dec&amp;ision</source>
        <translation>填入决定(&amp;I)</translation>
    </message>
    <message>
        <source>C&amp;onfirm</source>
        <translation>确认(&amp;O)</translation>
    </message>
    <message>
        <source>Confirm the decision in force as a second person</source>
        <translation>以第二人身份确认现行决定</translation>
    </message>
    <message>
        <source>Your key</source>
        <translation>您的密钥</translation>
    </message>
    <message>
        <source>Keys (*.key);;All files (*)</source>
        <translation>密钥 (*.key);;所有文件 (*)</translation>
    </message>
    <message>
        <source>Make a new key</source>
        <translation>制作新密钥</translation>
    </message>
    <message>
        <source>Passphrase of the key</source>
        <translation>密钥的口令</translation>
    </message>
    <message>
        <source>none</source>
        <translation>无</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>口令</translation>
    </message>
    <message>
        <source>Role in which you sign</source>
        <translation>签署时的角色</translation>
    </message>
    <message>
        <source>Note to the signature</source>
        <translation>签署附注</translation>
    </message>
    <message>
        <source>note</source>
        <translation>附注</translation>
    </message>
    <message>
        <source>Si&amp;gn</source>
        <translation>签署(&amp;G)</translation>
    </message>
    <message>
        <source>Sign as</source>
        <translation>签署为</translation>
    </message>
    <message>
        <source>Not done. %1</source>
        <translation>未完成。%1</translation>
    </message>
    <message>
        <source>Choose your key first, or make one.</source>
        <translation>请先选择您的密钥，或制作一个。</translation>
    </message>
    <message>
        <source>Not done. &apos;%1&apos; is no date such as 2031-06-30.</source>
        <translation>未完成。“%1”不是 2031-06-30 这样的日期。</translation>
    </message>
    <message>
        <source>Take up a record</source>
        <translation>继续记录</translation>
    </message>
    <message>
        <source>Save the report of the record</source>
        <translation>保存记录的报告</translation>
    </message>
    <message>
        <source>The second copy of this record</source>
        <translation>此记录的另一副本</translation>
    </message>
    <message>
        <source>File of the merged record, a new one</source>
        <translation>合并后记录的新文件</translation>
    </message>
    <message>
        <source>New key…</source>
        <translation>新密钥…</translation>
    </message>
    <message>
        <source>Signatures and distribution</source>
        <translation>签名与分发</translation>
    </message>
    <message>
        <source>Who was &amp;given it…</source>
        <translation>分发给谁(&amp;G)…</translation>
    </message>
    <message>
        <source>S&amp;uperseded by another record…</source>
        <translation>被另一份记录取代(&amp;U)…</translation>
    </message>
</context>
<context>
    <name>standin::ui::ResultDialog</name>
    <message>
        <source>Bench result</source>
        <translation>测试结果</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>测试</translation>
    </message>
    <message>
        <source>Limit that the values are held against</source>
        <translation>数值所对照的限值</translation>
    </message>
    <message>
        <source>&amp;Test</source>
        <translation>测试(&amp;T)</translation>
    </message>
    <message>
        <source>&amp;Limit</source>
        <translation>限值(&amp;L)</translation>
    </message>
    <message>
        <source>&amp;Values</source>
        <translation>数值(&amp;V)</translation>
    </message>
    <message>
        <source>the extremes, or one a sample, parted by blanks</source>
        <translation>极值或每件样品一个，以空格分隔</translation>
    </message>
    <message>
        <source>&amp;Unit</source>
        <translation>单位(&amp;U)</translation>
    </message>
    <message>
        <source>&amp;Condition</source>
        <translation>条件(&amp;C)</translation>
    </message>
    <message>
        <source>temperature, supply, load</source>
        <translation>温度、电源、负载</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>未说明</translation>
    </message>
    <message>
        <source>&amp;Samples</source>
        <translation>样品(&amp;S)</translation>
    </message>
    <message>
        <source>L&amp;ots</source>
        <translation>批次(&amp;O)</translation>
    </message>
    <message>
        <source>Number of samples</source>
        <translation>样品数</translation>
    </message>
    <message>
        <source>Number of lots</source>
        <translation>批次数</translation>
    </message>
    <message>
        <source>&amp;Instrument</source>
        <translation>仪器(&amp;I)</translation>
    </message>
    <message>
        <source>and its uncertainty</source>
        <translation>及其不确定度</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>备注(&amp;N)</translation>
    </message>
    <message>
        <source>&amp;Evidence</source>
        <translation>证据(&amp;E)</translation>
    </message>
    <message>
        <source>File with the measurements</source>
        <translation>测量数据文件</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>所有文件 (*)</translation>
    </message>
    <message>
        <source>no limit is stated</source>
        <translation>未说明限值</translation>
    </message>
    <message>
        <source>The record asks for no bench test.</source>
        <translation>记录不要求任何测试。</translation>
    </message>
    <message>
        <source>Enter what was measured.</source>
        <translation>请填写测得的数值。</translation>
    </message>
</context>
<context>
    <name>standin::ui::SectionLadder</name>
    <message>
        <source>Sections, paired</source>
        <translation>配对的章节</translation>
    </message>
    <message>
        <source>Sections of both documents, paired</source>
        <translation>两份文件的章节（已配对）</translation>
    </message>
</context>
<context>
    <name>standin::ui::SectionsModel</name>
    <message>
        <source>All sections</source>
        <translation>全部章节</translation>
    </message>
    <message numerus="yes">
        <source>%n finding(s)</source>
        <translation>
            <numerusform>%n 个差异项</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n editorial</source>
        <translation>
            <numerusform>，%n 个编辑性</numerusform>
        </translation>
    </message>
    <message>
        <source>All sections: %1</source>
        <translation>全部章节：%1</translation>
    </message>
    <message>
        <source>no such section</source>
        <translation>无此章节</translation>
    </message>
    <message>
        <source>reference: %1; candidate: %2; %3</source>
        <translation>参考：%1；候选：%2；%3</translation>
    </message>
    <message numerus="yes">
        <source>Wording: %n sentence(s) differ in meaning</source>
        <translation>
            <numerusform>措辞：%n 句含义不同</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n in form only</source>
        <translation>
            <numerusform>，%n 句仅形式不同</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>standin::ui::SettingsDialog</name>
    <message>
        <source>Settings</source>
        <translation>设置</translation>
    </message>
    <message>
        <source>as the system</source>
        <translation>跟随系统</translation>
    </message>
    <message>
        <source>light</source>
        <translation>浅色</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>深色</translation>
    </message>
    <message>
        <source>&amp;Appearance</source>
        <translation>外观(&amp;A)</translation>
    </message>
    <message>
        <source>Size of &amp;text</source>
        <translation>文字大小(&amp;T)</translation>
    </message>
    <message>
        <source>&amp;Language (from the next start)</source>
        <translation>语言（下次启动生效）(&amp;L)</translation>
    </message>
    <message>
        <source>Decisions are kept in</source>
        <translation>决定保存于</translation>
    </message>
</context>
<context>
    <name>standin::ui::SeverityCount</name>
    <message>
        <source>always listed; goes to the first</source>
        <translation>始终列出；转到第一个</translation>
    </message>
    <message>
        <source>listed; press to hide</source>
        <translation>已列出；按下隐藏</translation>
    </message>
    <message>
        <source>hidden; press to list</source>
        <translation>已隐藏；按下列出</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: %2
%3</source>
        <translation>%1: %2
%3</translation>
    </message>
    <message>
        <source>hidden</source>
        <translation>隐藏</translation>
    </message>
</context>
<context>
    <name>standin::ui::StartPage</name>
    <message>
        <source>Opened before</source>
        <translation>最近打开</translation>
    </message>
    <message>
        <source>Which two parts?</source>
        <translation>哪两个器件？</translation>
    </message>
    <message>
        <source>Standin reads both datasheets and shows every difference in numbers and wording with its place on the page. It covers printed documents only: it is not a test and not an approval.</source>
        <translation>Standin 读取两份数据手册，显示数字和措辞的每一处差异及其在页面上的位置。仅涵盖印刷文件：不是测试，也不是批准。</translation>
    </message>
    <message>
        <source>Pairs that were opened before</source>
        <translation>最近打开过的文件对</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>取消</translation>
    </message>
    <message>
        <source>reading, page %v of %m</source>
        <translation>正在读取，第 %v 页，共 %m 页</translation>
    </message>
    <message>
        <source>Progress of reading</source>
        <translation>读取进度</translation>
    </message>
</context>
<context>
    <name>standin::ui::SupersedeDialog</name>
    <message>
        <source>Superseded</source>
        <translation>被取代</translation>
    </message>
    <message>
        <source>&amp;By the record</source>
        <translation>取代它的记录(&amp;B)</translation>
    </message>
    <message>
        <source>Record that takes its place</source>
        <translation>取代它的记录</translation>
    </message>
    <message>
        <source>&amp;Reason</source>
        <translation>理由(&amp;R)</translation>
    </message>
    <message>
        <source>why; always required</source>
        <translation>理由；必填</translation>
    </message>
    <message>
        <source>Choose the record that takes its place.</source>
        <translation>请选择取代它的记录。</translation>
    </message>
    <message>
        <source>Say why.</source>
        <translation>请填写理由。</translation>
    </message>
    <message>
        <source>Nothing is decided, measured or signed in this record afterwards.</source>
        <translation>此后不再在本记录中作决定、录入测量结果或签名。</translation>
    </message>
</context>
<context>
    <name>standin::ui::TitleStrip</name>
    <message>
        <source> (incomplete)</source>
        <translation>（不完整）</translation>
    </message>
    <message>
        <source>Verdict: %1. %2</source>
        <translation>结论：%1。%2</translation>
    </message>
</context>
<context>
    <name>standin::ui::WordingModel</name>
    <message>
        <source>%1: %2; reference: %3; candidate: %4</source>
        <translation>%1：%2；参考：%3；候选：%4</translation>
    </message>
    <message>
        <source>page %1</source>
        <translation>第 %1 页</translation>
    </message>
</context>
<context>
    <name>standin::ui::WordingPage</name>
    <message>
        <source>also those that differ in &amp;form only</source>
        <translation>也显示仅形式不同的(&amp;F)</translation>
    </message>
    <message>
        <source>Sentences that differ</source>
        <translation>有差异的句子</translation>
    </message>
    <message numerus="yes">
        <source>%n sentence(s) listed</source>
        <translation>
            <numerusform>列出 %n 句</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n that differ in form only hidden</source>
        <translation>
            <numerusform>，隐藏 %n 句仅形式不同</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>words</name>
    <message>
        <source>hazard</source>
        <translation>危险</translation>
    </message>
    <message>
        <source>function</source>
        <translation>功能</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>裕量</translation>
    </message>
    <message>
        <source>note</source>
        <translation>提示</translation>
    </message>
    <message>
        <source>editorial</source>
        <translation>编辑性</translation>
    </message>
    <message>
        <source>could contribute to fire, venting or burns, or defeat a protective function</source>
        <translation>可能导致起火、泄气或烧伤，或使保护功能失效</translation>
    </message>
    <message>
        <source>the circuit may not work, may trip, may not recover</source>
        <translation>电路可能不工作、误动作或不恢复</translation>
    </message>
    <message>
        <source>works, with another margin, heat, run time or accuracy</source>
        <translation>可工作，但裕量、发热、运行时间或精度不同</translation>
    </message>
    <message>
        <source>worth knowing</source>
        <translation>值得了解</translation>
    </message>
    <message>
        <source>no change of meaning</source>
        <translation>含义不变</translation>
    </message>
    <message>
        <source>parameter</source>
        <translation>参数</translation>
    </message>
    <message>
        <source>table</source>
        <translation>表格</translation>
    </message>
    <message>
        <source>wording</source>
        <translation>措辞</translation>
    </message>
    <message>
        <source>pin</source>
        <translation>引脚</translation>
    </message>
    <message>
        <source>package</source>
        <translation>封装</translation>
    </message>
    <message>
        <source>ordering</source>
        <translation>订购</translation>
    </message>
    <message>
        <source>mode</source>
        <translation>模式</translation>
    </message>
    <message>
        <source>figure</source>
        <translation>图</translation>
    </message>
    <message>
        <source>section</source>
        <translation>章节</translation>
    </message>
    <message>
        <source>document</source>
        <translation>文件</translation>
    </message>
    <message>
        <source>derived quantity</source>
        <translation>导出量</translation>
    </message>
    <message>
        <source>cell limit</source>
        <translation>电芯限值</translation>
    </message>
    <message>
        <source>not compared</source>
        <translation>未比较</translation>
    </message>
    <message>
        <source>open</source>
        <translation>未定</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>接受</translation>
    </message>
    <message>
        <source>accepted with a condition</source>
        <translation>有条件接受</translation>
    </message>
    <message>
        <source>bench test</source>
        <translation>台架测试</translation>
    </message>
    <message>
        <source>supplier statement</source>
        <translation>供应商声明</translation>
    </message>
    <message>
        <source>not applicable</source>
        <translation>不适用</translation>
    </message>
    <message>
        <source>rejected</source>
        <translation>拒绝</translation>
    </message>
    <message>
        <source>reference</source>
        <translation>参考</translation>
    </message>
    <message>
        <source>candidate</source>
        <translation>候选</translation>
    </message>
    <message>
        <source>rev %1</source>
        <translation>版本 %1</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s)</source>
        <translation>
            <numerusform>%n 页</numerusform>
        </translation>
    </message>
    <message>
        <source>page %1</source>
        <translation>第 %1 页</translation>
    </message>
</context>
</TS>
