#!/usr/bin/python3
"""Write reference.fodt, candidate.html and the label files: make.py OUT_DIRECTORY. Called by build.sh."""

import json
import os
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path.insert(0, os.path.join(HERE, "..", "tools"))

import content
import render_fodt
import render_html

STYLE = """
@page { size: A4; margin: 21mm 18mm 19mm 18mm;
  @top-left { content: "@TOPLEFT"; font: 7.5pt 'Noto Sans'; color: #555; border-bottom: 0.5pt solid #999; margin-bottom: 4mm; }
  @top-right { content: "@TOPRIGHT"; font: 7.5pt 'Noto Sans'; color: #555; border-bottom: 0.5pt solid #999; margin-bottom: 4mm; }
  @bottom-left { content: "@BOTTOMLEFT"; font: 7.5pt 'Noto Sans'; color: #555; }
  @bottom-right { content: counter(page) " / " counter(pages); font: 7.5pt 'Noto Sans'; color: #555; } }
body { font: 9pt/1.42 'Noto Sans'; margin: 0; color: #111; font-variant-ligatures: none; }
p.title { font-size: 21pt; font-weight: bold; margin: 0; color: #7a1f3d; }
p.subtitle { font-size: 12pt; margin: 0 0 4mm 0; border-bottom: 1.2pt solid #7a1f3d; padding-bottom: 1.5mm; }
h1 { font-size: 12pt; margin: 5mm 0 1.6mm 0; color: #7a1f3d; break-after: avoid; }
h2 { font-size: 9.5pt; margin: 2.6mm 0 0.8mm 0; break-after: avoid; }
p { margin: 0 0 1.6mm 0; orphans: 2; widows: 2; } p.small { font-size: 7.5pt; }
ul { margin: 0 0 1.6mm 0; padding-left: 5mm; } li { margin-bottom: 0.6mm; }
p.caption { font-size: 8.5pt; font-weight: bold; margin: 2mm 0 1mm 0; break-after: avoid; }
table {  border-collapse: collapse; font-size: 8pt; line-height: 1.3; margin-bottom: 3mm; }
th, td { border: 0.5pt solid #555; padding: 0.7mm 1.1mm; vertical-align: middle; }
th { background: #efe6ea; } td.group { background: #f6f1f3; } tr { break-inside: avoid; }
sub, sup { font-size: 68%; line-height: 0; }
div.figure { text-align: center; break-inside: avoid; margin: 1mm 0 3mm 0; } div.figure p.caption { font-weight: normal; }
div.break { break-before: page; }
"""

# Blocks before which a page begins: headings as printed.
REFERENCE_BREAKS = ("5. Pin", "7. Absolute", "11. Application", "13. Package")
CANDIDATE_BREAKS = ("5 Pin", "7 Absolute", "11 Application", "13 Package")


def broken(blocks, breaks):
    for block in blocks:
        if block[0] == "h1" and block[1].startswith(breaks):
            yield ("break",)
        yield block


def main():
    out = sys.argv[1]
    who = content.REFERENCE
    writer = render_fodt.Writer("Liberation Serif")
    writer.add(broken(content.blocks("reference"), REFERENCE_BREAKS))
    with open(os.path.join(out, "reference.fodt"), "w", encoding="utf-8") as file:
        file.write(writer.document(f"{who['part']} data sheet", f"{who['part']}   Protection IC for one lithium-ion cell",
                                   f"{who['document']} {who['revision']}", f"{who['maker']}   {who['date']}"))
    who = content.CANDIDATE
    style = STYLE.replace("@TOPLEFT", who["maker"]).replace("@TOPRIGHT", who["part"])
    style = style.replace("@BOTTOMLEFT", f"{who['document']}  {who['revision']}  {who['date']}")
    with open(os.path.join(out, "candidate.html"), "w", encoding="utf-8") as file:
        file.write(render_html.render(broken(content.blocks("candidate"), CANDIDATE_BREAKS), "en", f"{who['part']} Datasheet", style))


if __name__ == "__main__":
    main()
