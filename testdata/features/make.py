#!/usr/bin/python3
"""Write the one-feature sheets and their labels: make.py OUT_DIRECTORY. Called by build.sh, which then encrypts two of them."""

import importlib.util
import io
import os
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
TOOLS = os.path.join(HERE, "..", "tools")
sys.path.insert(0, TOOLS)

from reportlab.lib.colors import Color
from reportlab.lib.utils import ImageReader

import pins
import raw
from kit import HEIGHT, LEFT, WIDTH, Page
from rows import BASIC, GENERAL, GROUPS, HEAD, MERGED, OPERATING, RATINGS
from sheet import cell

spec = importlib.util.spec_from_file_location("label_tools", os.path.join(TOOLS, "labels.py"))
label_tools = importlib.util.module_from_spec(spec)
spec.loader.exec_module(label_tools)

OUT = sys.argv[1] if len(sys.argv) > 1 else HERE
WIDTHS, ALIGNS = [130, 50, 110, 46, 46, 46, 40], "lclcccc"


STORY = [
    ("Description", "The FX100 watches the voltage of a line and reports when it leaves its window. It was made for instruments that stand in the field, "
                    "such as weather loggers, where a line can be long and its supply weak."),
    ("Input", "The input compares the voltage of the line with an internal reference. The threshold lies below the reference by a fixed share, so that noise on the line does not move the output."),
    ("Output", "The output goes low when the input voltage falls below the threshold and stays there for the response time. It goes high again when the input rises above the threshold."),
    ("Supply", "The supply pin must be connected to a ceramic capacitor close to the pin. The supply may rise and fall at any rate."),
    ("Use on coated boards", "Boards that are coated have to be cleaned first, because residues of flux lower the resistance of the input."),
]


def path(name):
    return os.path.join(OUT, name)


def blank(values, dash=""):
    return [value or dash for value in values]


def basic_labels(page=1, general=GENERAL, entries=BASIC):
    return [{"page": page, **label_tools.row("characteristic", n, s, c, general, lo, mid, hi, u)} for n, s, c, lo, mid, hi, u in entries]


def rating_labels(page=1, kind="rating", entries=RATINGS):
    return [{"page": page, **label_tools.row(kind, n, s, None, None, lo, None, hi, u)} for n, s, lo, hi, u in entries]


def label(name, rows, notes, pages=(1,), pins=()):
    os.makedirs(path("labels"), exist_ok=True)
    entries = [{"number": number, "name": pin, **({"package": package} if package else {})} for number, pin, package in pins]
    label_tools.write(path(f"labels/{name}.json"), f"{name}.pdf", list(pages), rows, entries, notes)


def basic_table(page, y=104, x=LEFT, rules="grid", entries=BASIC, caption=True, widths=WIDTHS):
    if caption:
        page.text(x, y - 8, f"Electrical characteristics ({GENERAL})", 9)
    return page.table(x, y, widths, ALIGNS, [HEAD], [blank(entry) for entry in entries], rules)


def simple(name, heading, notes, draw, rows=None, pages=(1,)):
    page = Page(path(f"{name}.pdf"))
    page.frame(heading)
    draw(page)
    page.save()
    label(name, basic_labels() if rows is None else rows, notes, pages)


def with_pins(name, heading, notes, draw):
    page = Page(path(f"{name}.pdf"))
    page.frame(heading)
    label(name, [], notes, pins=draw(page))
    page.save()


def merged(page):
    page.text(LEFT, 96, f"Electrical characteristics ({GENERAL})", 9)
    rows = []
    for name, symbol, lines, unit in MERGED:
        for index, line in enumerate(lines):
            span = len(lines)
            rows.append([cell(name, rs=span), cell(symbol, rs=span), *blank(line), cell(unit, rs=span)] if index == 0 else blank(line))
    page.table(LEFT, 104, WIDTHS, ALIGNS, [HEAD], rows)


def merged_labels():
    return [{"page": 1, **label_tools.row("characteristic", n, s, line[0], GENERAL, *line[1:], u)} for n, s, lines, u in MERGED for line in lines]


def grouped(first, second):
    def draw(page):
        head = [[cell("Parameter", rs=2), cell("Symbol", rs=2), cell(first, cs=3), cell(second, cs=3), cell("Unit", rs=2)], ["Min", "Typ", "Max"] * 2]
        rows = [[n, s, *blank(a), *blank(b), u] for n, s, a, b, u in GROUPS]
        page.text(LEFT, 96, "Electrical characteristics", 9)
        page.table(LEFT, 104, [120, 52, 46, 46, 46, 46, 46, 46, 38], "lcccccccc", head, rows)
    rows = []
    for n, s, a, b, u in GROUPS:
        rows += [{"page": 1, **label_tools.row("characteristic", n, s, None, None, *values, u, variant)} for variant, values in ((first, a), (second, b))]
    return draw, rows


def story(page):
    y = 100
    for heading, text in STORY:
        page.text(LEFT, y, heading, 10.5, bold=True)
        y = page.paragraph(LEFT, y + 16, text, 480) + 14


def continued():
    page = Page(path("continued-table.pdf"))
    more = BASIC + [("Hold time", "t_{H}", "V_{DD}=3.0 V", "15", "20", "25", "µs"), ("Leakage current", "I_{LK}", "V_{IN}=0 V", None, None, "50", "nA")]
    page.frame("A table continued over a page", number=1)
    story(page)
    page.text(LEFT, 650, f"Table 1. Electrical characteristics ({GENERAL})", 9)
    page.table(LEFT, 658, WIDTHS, ALIGNS, [HEAD], [blank(entry) for entry in more[:4]])
    page.c.showPage()
    page.frame("Notes", number=2)
    page.text(LEFT, 98, "Table 1. Electrical characteristics (continued)", 9)
    y = page.table(LEFT, 106, WIDTHS, ALIGNS, [HEAD], [blank(entry) for entry in more[4:]])
    page.paragraph(LEFT, y + 14, "The values of this table are tested on every piece.", 480)
    page.save()
    label("continued-table", basic_labels(1, entries=more[:4]) + basic_labels(2, entries=more[4:]),
          "The head is printed again on page 2; the condition of the whole table is printed on page 1 only.", (1, 2))


def continued_without_head():
    page = Page(path("continued-without-head.pdf"))
    page.frame("A table that goes on without its head", number=1)
    story(page)
    page.text(LEFT, 680, f"Electrical characteristics ({GENERAL})", 9)
    page.table(LEFT, 688, WIDTHS, ALIGNS, [HEAD], [blank(entry) for entry in BASIC[:3]])
    page.c.showPage()
    page.frame("", number=2)
    page.table(LEFT, 60, WIDTHS, ALIGNS, [], [blank(entry) for entry in BASIC[3:]])
    page.save()
    label("continued-without-head", basic_labels(1, entries=BASIC[:3]) + basic_labels(2, entries=BASIC[3:]), "Neither head nor caption is printed on page 2.", (1, 2))


def heading_lines(page):
    page.text(LEFT, 96, f"Electrical characteristics ({GENERAL})", 9)
    rows = []
    for heading, entries in (("Supply", BASIC[:1]), ("Input", [BASIC[1], BASIC[4]]), ("Output", BASIC[2:4])):
        rows.append([cell(heading, cs=len(HEAD), b=True, al="l")])
        rows += [blank(entry) for entry in entries]
    page.table(LEFT, 104, WIDTHS, ALIGNS, [HEAD], rows)


def heading_lines_labels():
    return basic_labels(entries=[BASIC[0], BASIC[1], BASIC[4], BASIC[2], BASIC[3]])


def value_lines(page):
    page.text(LEFT, 96, f"Electrical characteristics ({GENERAL})", 9)
    rows = []
    for name, symbol, lines, unit in MERGED:
        rows += [[name if index == 0 else "", symbol if index == 0 else "", *blank(line), unit if index == 0 else ""] for index, line in enumerate(lines)]
    page.table(LEFT, 104, WIDTHS, ALIGNS, [HEAD], rows, "half")


def bilingual(page):
    head = ["Kenngröße / Parameter", "Symbol", "Bedingungen / Conditions", "Min", "Typ", "Max", "Einheit / Unit"]
    page.text(LEFT, 96, f"Electrical characteristics ({GENERAL})", 9)
    page.table(LEFT, 104, [126, 48, 116, 42, 42, 42, 52], ALIGNS, [head], [blank(entry) for entry in BASIC])


def transposed(page):
    entries = [BASIC[1], BASIC[3], BASIC[4]]
    page.text(LEFT, 96, "Electrical characteristics", 9)
    head = [["Parameter", *[n for n, *_ in entries]]]
    rows = [["Symbol", *[e[1] for e in entries]]] + [[title, *blank([e[k] for e in entries])] for title, k in (("Min", 3), ("Typ", 4), ("Max", 5))] + [["Unit", *[e[6] for e in entries]]]
    page.table(LEFT, 104, [80, 120, 120, 120], "lccc", head, rows)


def transposed_labels():
    return [{"page": 1, **label_tools.row("characteristic", n, s, None, None, lo, mid, hi, u)} for n, s, _, lo, mid, hi, u in (BASIC[1], BASIC[3], BASIC[4])]


def leaders(page):
    page.text(LEFT, 98, "Absolute maximum ratings", 10, bold=True)
    y = 118
    for name, symbol, low, high, unit in RATINGS:
        left, right = f"{name}, {symbol}", f"{low} {unit} to {high} {unit}" if low else f"{high} {unit}"
        page.text(LEFT, y, left)
        page.text(LEFT + 380, y, right, align="r")
        gap = 380 - page.measure(left, 9) - page.measure(right, 9) - 8
        dots = "." * int(gap / page.measure(".", 9))
        page.text(LEFT + page.measure(left, 9) + 4, y, dots)
        y += 16


def rotated():
    """/Rotate 90: drawn turned, so that it stands upright as displayed (842 wide, 595 high)."""
    page = Page(path("rotated-page.pdf"), height=595, size=(842.0, 595.0))  # reportlab exchanges the sides itself
    page.c.setPageRotation(90)
    page.c.transform(0, 1, -1, 0, 595, 0)
    page.text(LEFT, 40, "Featherlake Instruments", 8)
    page.text(842 - LEFT, 40, "FX100", 8, align="r")
    page.text(LEFT, 76, "A page turned by 90 degrees", 13, bold=True)
    basic_table(page, widths=[200, 70, 160, 76, 76, 76, 60])
    page.text(LEFT, 570, "FX100 sample sheet, issue 1", 8)
    page.save()
    label("rotated-page", basic_labels(), "/Rotate 90; boxes are those of the page as displayed, 842 by 595 points.")


def cropped():
    """The crop box lies 50 points right of and 60 above the corner of the media box; marks outside it are not displayed."""
    page = Page(path("crop-box-offset.pdf"), size=(700, 980), height=HEIGHT)
    page.c.setCropBox((50, 60, 50 + WIDTH, 60 + HEIGHT))
    page.c.setFont("Sans", 8)
    page.c.drawString(4, 968, "Trim sheet 4711, colour bar 12")
    page.c.translate(50, 60)
    page.frame("A crop box with an offset")
    basic_table(page)
    page.save()
    label("crop-box-offset", basic_labels(), "Text outside the crop box ('Trim sheet 4711') is not displayed. Boxes count from the corner of the crop box.")


def columns(page):
    left = ["The FX100 watches the voltage of a line and reports when it leaves its window. It was made for instruments in the field.",
            "The output goes low when the input voltage falls below the threshold and stays there for the response time. It goes high again when the input rises.",
            "The supply pin must be connected to a ceramic capacitor. The capacitor should lie within 5 mm of the pin."]
    right = ["The input may be left open when it is not used. It is then pulled to the supply by 1 MΩ.",
             "Boards that are coated have to be cleaned first, because residues of flux lower the resistance of the input."]
    for x, heading, items in ((LEFT, "Description", left), (310, "Application", right)):
        page.text(x, 104, heading, 10.5, bold=True)
        y = 122
        for item in items:
            y = page.paragraph(x, y, item, 222)
        if x > LEFT:
            page.text(x, y + 14, "Recommended operating conditions", 10.5, bold=True)
            page.table(x, y + 22, [96, 40, 32, 32, 30], "lcccc", [["Parameter", "Symbol", "Min", "Max", "Unit"]], [list(entry) for entry in OPERATING], size=8)


def side_by_side(page):
    page.text(LEFT, 98, "Absolute maximum ratings", 9.5, bold=True)
    page.text(322, 98, "Recommended operating conditions", 9.5, bold=True)
    rows = [[n, s, f"{lo} to {hi}" if lo else hi, u] for n, s, lo, hi, u in RATINGS]
    page.table(LEFT, 104, [104, 46, 76, 28], "lccc", [["Parameter", "Symbol", "Value", "Unit"]], rows)
    page.table(322, 104, [100, 42, 32, 32, 28], "lcccc", [["Parameter", "Symbol", "Min", "Max", "Unit"]], [list(entry) for entry in OPERATING])


def hidden(page):
    y = basic_table(page)
    page.c.setFillColor(Color(1, 1, 1))
    page.text(LEFT, y + 20, "White on white: supply current 888 µA, not for print.")
    page.c.setFillColor(Color(0, 0, 0))
    text = page.c.beginText(LEFT, HEIGHT - y - 50)
    text.setFont("Sans", 9)
    text.setTextRenderMode(3)
    text.textLine("Invisible: response time 777 ms, left by a scanner.")
    page.c.drawText(text)
    page.c._code.append("0 Tr")
    page.paragraph(LEFT, y + 80, "This sentence is the only one below the table that can be seen.", 480)


def fake_bold():
    page = Page(path("fake-bold.pdf"))
    page.twice = True
    page.frame("Bold type made by drawing twice")
    rows = [[cell(value or "", b=index in (0, 4)) for index, value in enumerate(entry)] for entry in BASIC]
    page.text(LEFT, 96, f"Electrical characteristics ({GENERAL})", 9)
    page.table(LEFT, 104, WIDTHS, ALIGNS, [HEAD], rows)
    page.save()
    label("fake-bold", basic_labels(), "The head, the names and the typical values are drawn twice, 0.3 points apart.")


def form(page):
    page.c.beginForm("table", 0, 0, WIDTH, HEIGHT)
    basic_table(page, y=104)
    page.c.endForm()
    page.c.beginForm("outer", 0, 0, WIDTH, HEIGHT)
    page.c.saveState()
    page.c.translate(10, -20)
    page.c.scale(0.9, 0.9)
    page.c.doForm("table")
    page.c.restoreState()
    page.c.endForm()
    page.c.translate(0, 60)
    page.c.doForm("outer")
    page.c.translate(0, -60)


def actual_text(page):
    def replaced(x, y, glyphs, meaning):
        page.c._code.append(f"/Span << /ActualText <FEFF{meaning.encode('utf-16-be').hex().upper()}> >> BDC")
        page.text(x, y, glyphs)
        page.c._code.append("EMC")
        return x + page.measure(glyphs, 9)
    y = basic_table(page) + 16
    x = LEFT
    page.text(x, y, "The ")
    x = replaced(x + page.measure("The ", 9), y, "\ufb01", "fi")
    page.text(x, y, "lter needs a capacitor of 100 nF at the input.")
    page.text(LEFT, y + 16, "The hysteresis is ")
    x = replaced(LEFT + page.measure("The hysteresis is ", 9), y + 16, "45", "54")
    page.text(x, y + 16, " mV, typically.")


def watermark(page):
    c = page.c
    basic_table(page)
    page.paragraph(LEFT, 220, "The values are first results and can still change.", 480)
    c.saveState()
    c.setFillColor(Color(0.85, 0.85, 0.85, alpha=0.6))
    c.translate(110, 500)
    c.rotate(40)
    c.setFont("Sans-Bold", 74)
    c.drawString(0, 0, "PRELIMINARY")
    c.restoreState()


def footnotes(page):
    rows = [blank(entry) for entry in BASIC]
    rows[0][0] += "^{(1)}"
    rows[2][4] += "^{2}"
    rows[3][1] += "^{*}"
    page.text(LEFT, 96, f"Electrical characteristics ({GENERAL})", 9)
    y = page.table(LEFT, 104, WIDTHS, ALIGNS, [HEAD], rows)
    for index, text in enumerate(("(1) Without the current of the output.", "2 Measured with a pulse of 5 ms.", "* By design, not tested.")):
        page.text(LEFT, y + 6 + 12 * index, text, 7.5)


def picture():
    """A page that is nothing but an image: the plain table, drawn as pixels."""
    from PIL import Image, ImageDraw, ImageFont
    scale = 2.0
    image = Image.new("L", (int(WIDTH * scale), int(HEIGHT * scale)), 255)
    pen = ImageDraw.Draw(image)
    font = ImageFont.truetype("/usr/share/fonts/truetype/liberation2/LiberationSans-Regular.ttf", int(9 * scale))
    pen.text((LEFT * scale, 70 * scale), f"Electrical characteristics ({GENERAL})", 0, font)
    y = 100
    for row in [HEAD] + [blank(entry) for entry in BASIC]:
        x = LEFT
        for width, value in zip(WIDTHS, row):
            pen.rectangle([x * scale, y * scale, (x + width) * scale, (y + 18) * scale], outline=0)
            pen.text(((x + 3) * scale, (y + 4) * scale), value.replace("_{", "").replace("}", ""), 0, font)
            x += width
        y += 18
    page = Page(path("image-only.pdf"))
    data = io.BytesIO()
    image.save(data, "PNG")
    page.c.drawImage(ImageReader(data), 0, 0, WIDTH, HEIGHT)
    page.save()


def main():
    simple("plain", "A ruled table", "The ground for the other sheets: the same rows, fully ruled.", basic_table)
    simple("merged-name-cells", "Merged cells", "Name, symbol and unit are merged over the conditions of a parameter.", merged, merged_labels())
    draw, rows = grouped("TA=25 °C", "TA=-40 to 85 °C")
    simple("two-row-head", "A head of two rows", "Two groups of value columns by temperature: the heading of the group is the variant.", draw, rows)
    draw, rows = grouped("FX100-A", "FX100-B")
    simple("variant-columns", "Variants as groups of columns", "Two groups of value columns by variant.", draw, rows)
    continued()
    continued_without_head()
    simple("heading-lines", "Headings inside a table", "Lines with a heading only part the table; they are no rows.", heading_lines, heading_lines_labels())
    simple("value-lines", "Lines of values under one name", "Half-ruled; name, symbol and unit stand beside the first of their lines only.", value_lines, merged_labels())
    simple("bilingual-head", "A head in two languages", "The head in German and English.", bilingual)
    simple("transposed-table", "A table on its side", "Each parameter is a column; its symbol, values and unit stand below it.", transposed, transposed_labels())
    simple("dot-leader-ratings", "A list with dot leaders", "A list, not a table; unit printed after each value.", leaders, rating_labels())
    simple("borderless-table", "A table without rules", "No rules at all.", lambda page: basic_table(page, rules="none"))
    simple("half-ruled-table", "A table with three rules", "Rules above, under the head and below only.", lambda page: basic_table(page, rules="half"))
    simple("dashed-rules", "Dashed rules", "Every rule is dashed.", lambda page: basic_table(page, rules="dashed"))
    rotated()
    cropped()
    simple("two-columns", "A page of two columns", "The table stands in the right column.", columns, rating_labels(kind="operating-condition", entries=OPERATING))
    simple("side-by-side-tables", "Tables side by side", "Two tables on the same lines.", side_by_side,
           rating_labels() + rating_labels(kind="operating-condition", entries=OPERATING))
    simple("hidden-text", "Text that cannot be seen", "'White on white' (888 µA) and render mode 3 (777 ms) are not displayed and give no rows.", hidden)
    fake_bold()
    simple("form-xobject", "A table inside a form", "The table is a form inside a form, scaled by 0.9 and moved.", form)
    simple("actual-text", "ActualText", "A ligature with ActualText 'fi'; the glyphs '45' carry the ActualText '54': the digits printed count, the disagreement is to be listed.", actual_text)
    simple("watermark", "A watermark", "'PRELIMINARY' across the page, drawn last.", watermark)
    simple("footnote-marks", "Footnote marks", "Raised (1), 2 and * are footnote marks; '35' with a raised 2 is typ '35'.", footnotes)
    raw.type3(path("type3-font.pdf"), [f"Electrical characteristics ({GENERAL})"], [HEAD] + [blank(entry) for entry in BASIC], WIDTHS)
    label("type3-font", basic_labels(), "All text is in bitmap fonts of Type 3 with a ToUnicode map; subscripts are smaller and lower.")
    with_pins("pin-lists", "Lists of pins side by side", "Four versions on one page; numbers in circles before the name they share.", pins.lists_side_by_side)
    with_pins("pin-drawing-four-sides", "Pins on four sides", "Names of the upper and lower side are turned.", pins.four_sides)
    with_pins("pin-drawing-braces", "Pins joined by braces", "'Inputs A' and 'Inputs B' are the names of two leads each; signs of the amplifiers are no names.", pins.braces)
    with_pins("pin-name-as-picture", "A pin whose name is a picture", "The name of pin 3 has no letters: it is to be listed as not read.", pins.picture_of_a_name)
    with_pins("pin-drawing-as-picture", "Pins that are a picture", "No letters in the drawing: it is to be listed as not read.", pins.picture_of_leads)
    picture()
    with open(path("plain.pdf"), "rb") as file:
        data = file.read()
    with open(path("truncated.pdf"), "wb") as file:
        file.write(data[: len(data) * 2 // 5])
    with open(path("not-a-pdf.pdf"), "w", encoding="utf-8") as file:
        file.write("This file is a text that was given the ending of a PDF by mistake.\n")
    open(path("empty.pdf"), "wb").close()


if __name__ == "__main__":
    main()
