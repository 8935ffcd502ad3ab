#!/usr/bin/python3
"""Draw revision-b.pdf and revision-c.pdf and write their labels: make.py OUT_DIRECTORY. Called by build.sh."""

import importlib.util
import os
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
TOOLS = os.path.join(HERE, "..", "tools")
sys.path.insert(0, TOOLS)

import content
from draw import LEFT, RIGHT, Sheet
from sheet import cell

spec = importlib.util.spec_from_file_location("label_tools", os.path.join(TOOLS, "labels.py"))
label_tools = importlib.util.module_from_spec(spec)
spec.loader.exec_module(label_tools)


def pin_drawing(sheet):
    x, y = LEFT + 330, sheet.y - 36
    c = sheet.c
    c.set_line_width(0.8)
    c.set_source_rgb(0, 0, 0)
    c.rectangle(x, y, 86, 36)
    for px, py in ((x + 12, y + 36), (x + 62, y + 36), (x + 37, y - 12)):
        c.rectangle(px, py, 12, 12)
    c.stroke()
    for px, py, name in ((x + 18, y + 58, "1  G"), (x + 68, y + 58, "2  S"), (x + 43, y - 16, "3  D")):
        sheet.text(px, py, name, 8, align="c")
    sheet.text(x + 43, y + 72, "SOT-23, top view", 8, align="c")


def curve(sheet):
    """On-resistance over gate voltage, as in the typical column."""
    x, y, w, h = LEFT + 120, sheet.y + 6, 250, 130
    c = sheet.c
    c.set_source_rgb(0, 0, 0)
    c.set_line_width(0.7)
    c.rectangle(x, y, w, h)
    c.stroke()
    c.set_line_width(0.25)
    for index in range(1, 4):
        c.move_to(x + w * index / 4, y)
        c.line_to(x + w * index / 4, y + h)
        c.move_to(x, y + h * index / 4)
        c.line_to(x + w, y + h * index / 4)
    c.stroke()
    for index in range(5):
        sheet.text(x + w * index / 4, y + h + 10, f"{1 + index}", 7.5, align="c")
        sheet.text(x - 4, y + h - h * index / 4 + 2.5, f"{20 * index}", 7.5, align="r")
    sheet.text(x + w / 2, y + h + 21, "V_{GS} (V)", 8, align="c")
    sheet.text(x - 24, y + h / 2, "R_{DS(on)} (mΩ)", 8, align="r")
    c.set_line_width(1.2)
    points = [(1.6, 47), (1.8, 36), (2.1, 30.5), (2.5, 27), (3.2, 23.6), (4.5, 21), (5, 20.6)]
    for index, (volt, ohm) in enumerate(points):
        (c.line_to if index else c.move_to)(x + w * (volt - 1) / 4, y + h - h * ohm / 80)
    c.stroke()
    sheet.y = y + h + 34
    sheet.text(x + w / 2, sheet.y, "Figure 1. Typical on-resistance over gate-source voltage, T_{J}=25 °C", 8, align="c")
    sheet.y += 8


def draw(path, revision, date, pick):
    sheet = Sheet(path, f"{content.PART} revision {revision}", (content.MAKER, content.PART, f"OP-{content.PART}, revision {revision}, {date}"))
    sheet.text(LEFT, 86, content.PART, 20, bold=True)
    sheet.text(LEFT, 102, "N-channel MOSFET, 20 V, 5.5 A", 11)
    sheet.y = 108
    sheet.heading("Features")
    for text in ("Low on-resistance at low gate voltage", "Small SOT-23 package", "Gate without protection diode"):
        sheet.paragraph(text, indent=10, bullet="•")
    sheet.heading("Description")
    sheet.paragraph(f"The {content.PART} is an N-channel MOSFET for load switches in equipment that runs on one lithium cell, such as a field weather logger. "
                    f"It is {pick('deliverd', 'delivered')} on tape. The drain is connected to the single lead on one side of the package.")
    sheet.heading("Pin description")
    sheet.table([40, 40, 120], "ccl", ["Pin", "Name", "Function"], [list(pin) for pin in content.PINS])
    pin_drawing(sheet)
    sheet.y += 40
    sheet.heading(f"Absolute maximum ratings ({content.GENERAL_RATINGS})")
    rows = []
    for name, symbol, lines, unit in content.ratings(pick):
        for index, (condition, low, _, high) in enumerate(lines):
            value = f"{low} to {high}" if low else high
            span = len(lines)
            rows.append([cell(name, rs=span), cell(symbol, rs=span), condition or "", value, cell(unit, rs=span)] if index == 0 else [condition or "", value])
    sheet.table([180, 80, 110, 85, 44], "lclcc", ["Parameter", "Symbol", "Condition", "Rating", "Unit"], rows)
    sheet.paragraph("Above these ratings the device can be destroyed.", 7.5)
    sheet.heading("Thermal characteristics")
    head = ["Parameter", "Symbol", "Condition", "Min.", "Typ.", "Max.", "Unit"]
    widths = [146, 52, 159, 35, 35, 35, 37]
    sheet.table(widths, "lclcccc", head, content.rows_of(content.thermal(pick)))
    sheet.new_page()
    sheet.heading(f"Electrical characteristics ({content.GENERAL})")
    rows = []
    for group, entries in content.characteristics(pick):
        rows.append([cell(group, cs=7, b=True, shade=True)])
        rows += content.rows_of(entries)
    sheet.table(widths, "lclcccc", head, rows)
    sheet.paragraph("Pulse tests are made with pulses of 300 µs or shorter and a duty cycle of 2 % or less.", 7.5)
    sheet.new_page()
    sheet.heading("Typical characteristics")
    curve(sheet)
    sheet.heading("Application notes")
    for text in ("The gate must not be left open, since charge on it can turn the device on.",
                 "The body diode conducts when the source is above the drain; the load is not disconnected in this direction.",
                 "The thermal resistance holds for a board with 1 square inch of copper and has to be measured again on the board that is used."):
        sheet.paragraph(text, indent=10, bullet="•")
    sheet.heading("Package dimensions, SOT-23 (mm)")
    sheet.table([60, 60, 60, 60], "cccc", ["Symbol", "Min.", "Nom.", "Max."], [list(row) for row in content.PACKAGE])
    sheet.heading("Revision history")
    sheet.table([60, 80, 359], "ccl", ["Revision", "Date", "Change"], content.history(pick))
    sheet.finish()


def label(directory, pdf, pick):
    rows = []
    for name, symbol, lines, unit in content.ratings(pick):
        rows += [(1, "rating", name, symbol, line, content.GENERAL_RATINGS, unit) for line in lines]
    for name, symbol, lines, unit in content.thermal(pick):
        rows += [(1, "thermal", name, symbol, line, None, unit) for line in lines]
    for group, entries in content.characteristics(pick):
        for name, symbol, lines, unit in entries:
            rows += [(2, "characteristic", f"{group} {name}", symbol, line, content.GENERAL, unit) for line in lines]
    rows = [{"page": page, **label_tools.row(kind, name, symbol, line[0], general, line[1], line[2], line[3], unit)}
            for page, kind, name, symbol, line, general, unit in rows]
    label_tools.check(rows, os.path.join(directory, pdf))
    os.makedirs(os.path.join(directory, "labels"), exist_ok=True)
    pins = [{"number": number, "name": name, "function": function} for number, name, function in content.PINS]
    label_tools.write(os.path.join(directory, "labels", pdf.replace(".pdf", ".json")), pdf, [1, 2], rows, pins,
                      "Headings inside the table of characteristics go in front of the name. Condition cells are not merged. Page 3 is not labelled.")


def main():
    out = sys.argv[1]
    for name, revision, date, pick in (("revision-b.pdf", "B", "2019-07-08", lambda b, c: b), ("revision-c.pdf", "C", "2022-03-30", lambda b, c: c)):
        draw(os.path.join(out, name), revision, date, pick)
        label(out, name, pick)


if __name__ == "__main__":
    main()
