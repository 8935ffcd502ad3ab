#!/usr/bin/python3
"""make.py html OUT.html: the page to print; make.py labels: labels/reference-zh.json from the printed PDF. Called by build.sh."""

import importlib.util
import os
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
TOOLS = os.path.join(HERE, "..", "tools")
sys.path.insert(0, TOOLS)

import content
import render_html

spec = importlib.util.spec_from_file_location("label_tools", os.path.join(TOOLS, "labels.py"))
label_tools = importlib.util.module_from_spec(spec)
spec.loader.exec_module(label_tools)

STYLE = """
@page { size: A4; margin: 20mm 20mm 18mm 20mm;
  @top-left { content: "1节锂离子电池保护IC"; font: 7.5pt 'WenQuanYi Micro Hei'; color: #333; }
  @top-right { content: "@RIGHT"; font: 7.5pt 'WenQuanYi Micro Hei'; color: #333; }
  @bottom-left { content: "@LEFT"; font: 7.5pt 'WenQuanYi Micro Hei'; color: #333; }
  @bottom-right { content: "第" counter(page) "页 共" counter(pages) "页"; font: 7.5pt 'WenQuanYi Micro Hei'; color: #333; } }
body { font: 9pt/1.5 'WenQuanYi Micro Hei'; margin: 0; color: #000; }
p.title { font-size: 20pt; margin: 0; } p.subtitle { font-size: 12pt; margin: 0 0 3mm 0; }
h1 { font-size: 12pt; margin: 4mm 0 1.4mm 0; border-left: 3mm solid #b03020; padding-left: 2mm; break-after: avoid; }
h2 { font-size: 9.5pt; margin: 2.2mm 0 0.6mm 0; break-after: avoid; } p { margin: 0 0 1.4mm 0; } p.small { font-size: 7.5pt; }
ul { margin: 0 0 1.4mm 0; padding-left: 5mm; list-style: square; } li { margin-bottom: 0.4mm; }
p.caption { font-size: 8.5pt; margin: 2mm 0 1mm 0; break-after: avoid; }
table { border-collapse: collapse; font-size: 8pt; line-height: 1.45; margin-bottom: 2.5mm; }
th, td { border: 0.6pt solid #000; padding: 0.6mm 1mm; } th { background: #e8e8e8; font-weight: normal; } tr { break-inside: avoid; }
h1, h2, b, p.title { font-weight: normal; } svg text { font-weight: normal; } tr:has(td.group) { break-after: avoid; } sub, sup { font-size: 68%; line-height: 0; }
div.figure { text-align: center; break-inside: avoid; margin: 1mm 0 2mm 0; } div.break { break-before: page; }
"""
BREAKS = ("5. ", "7. ", "11. ", "13. ")


def write_html(path):
    blocks = []
    for block in content.blocks():
        if block[0] == "h1" and block[1].startswith(BREAKS):
            blocks.append(("break",))
        blocks.append(block)
    style = STYLE.replace("@RIGHT", content.PART).replace("@LEFT", f"{content.MAKER}  {content.DOCUMENT}")
    with open(path, "w", encoding="utf-8") as file:
        file.write(render_html.render(blocks, "zh-CN", f"{content.PART} 数据手册", style))


def write_labels():
    rows = [label_tools.row("rating", name, symbol, None, content.GENERAL, low, None, high, unit) for name, symbol, _, low, high, unit in content.RATINGS]
    rows += [label_tools.row("operating-condition", name, symbol, condition, None, low, middle, high, unit)
             for name, symbol, condition, low, middle, high, unit in content.OPERATING]
    for group, name, symbol, lines, unit in content.CHARACTERISTICS:
        rows += [label_tools.row("characteristic", f"{group} {name}", symbol, condition, content.GENERAL, low, middle, high, unit) for condition, low, middle, high in lines]
    pdf = os.path.join(HERE, "reference-zh.pdf")
    rows = label_tools.place(rows, pdf)
    pins = [{"number": number, "name": name, "function": function} for number, name, function in content.PINS]
    os.makedirs(os.path.join(HERE, "labels"), exist_ok=True)
    label_tools.write(os.path.join(HERE, "labels", "reference-zh.json"), "reference-zh.pdf", list(range(1, max(r["page"] for r in rows) + 1)), rows, pins,
                      "表1 is a selection table (no rows). Headings inside 表5 go in front of the name. The pages of the external parts and of the package dimensions are not labelled.")


if __name__ == "__main__":
    write_html(sys.argv[2]) if sys.argv[1] == "html" else write_labels()
