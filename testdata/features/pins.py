"""Sheets with pins in lists and drawings: each returns its pins as (number, name, package) in the order of the label."""

import io

from PIL import Image, ImageDraw, ImageFont
from reportlab.lib.utils import ImageReader

from kit import FONTS, LEFT


def circled(page, x, y, number, size=6.4):
    page.text(x, y, str(number), size if number < 10 else size * 0.8, align="c")
    page.c.circle(x, page.height - y + size * 0.35, size * 0.75)


def lead(page, x, y, width=12, height=6):
    page.c.rect(x, page.height - y - height / 2, width, height)


def frame(page, x0, y0, x1, y1):
    for ends in ((x0, y0, x1, y0), (x0, y1, x1, y1), (x0, y0, x0, y1), (x1, y0, x1, y1)):
        page.line(*ends)


def coupler(page, x, y, channels):
    """An outline with numbered leads: the lower row from the left, the upper from the right."""
    width = 28 * channels + 8
    page.c.rect(x, page.height - y - 40, width, 40)
    for index in range(2 * channels):
        circled(page, x + 8 + 14 * index, y + 52, index + 1)
        circled(page, x + 8 + 14 * index, y - 8, 4 * channels - index)


def coupler_pins(channels):
    inputs = [(number, "Anode" if number % 2 else "Cathode") for number in range(1, 2 * channels + 1)]
    outputs = [(number, "Emitter" if number % 2 else "Collector") for number in range(2 * channels + 1, 4 * channels + 1)]
    return inputs + outputs


def list_of(page, x, y, pins):
    """Numbers in circles before the name they share."""
    for name in dict.fromkeys(name for _, name in pins):
        numbers = [number for number, other in pins if other == name]
        for index, number in enumerate(numbers):
            circled(page, x + 12 * index, y, number)
        page.text(x + 12 * len(numbers), y, name, 6.4)
        y += 9


def lists_side_by_side(page):
    """Four versions in a frame each: the lists stand on the same lines, one goes on in a column beside it."""
    page.text(LEFT, 104, "Outline dimensions", 10.5, bold=True)
    labels = []
    for index, channels in enumerate((1, 2, 3, 4)):
        x, y = LEFT + 243 * (index % 2), 112 + 150 * (index // 2)
        frame(page, x, y, x + 243, y + 150)
        part = f"FX21{index + 1}"
        page.text(x + 3, y + 11, part, 8.5, bold=True)
        coupler(page, x + 20, y + 44, channels)
        pins = coupler_pins(channels)
        if channels == 4:
            list_of(page, x + 20, y + 128, pins[:8])
            list_of(page, x + 130, y + 128, pins[8:])
        else:
            list_of(page, x + 160, y + 90, pins)
        labels += [(str(number), name, part) for number, name in pins]
    return labels


def turned(page, x, y, text, size=8):
    """Upwards, centred on x; y is where the text begins (its lower end)."""
    page.c.saveState()
    page.c.translate(x + size * 0.35, page.height - y)
    page.c.rotate(90)
    page.c.setFont("Sans", size)
    page.c.drawString(0, 0, text)
    page.c.restoreState()


def four_sides(page):
    """Sixteen leads on four sides; the names of the upper and lower one are turned."""
    page.text(LEFT, 104, "Pin configuration", 10.5, bold=True)
    names = ["SENSE", "VBAT", "VBAT", "HOLD", "SEL2", "SEL1", "READY", "VSS", "ALERT", "VOUT", "VOUT", "LIMIT", "VIN", "TIME", "TERM", "RATE"]
    x, y, pitch = 250, 200, 18
    page.c.rect(x, page.height - y - 5 * pitch, 5 * pitch, 5 * pitch)
    for index in range(4):
        at = pitch * (index + 1)
        page.text(x + 5, y + at + 3, str(index + 1), 7)
        page.text(x - 16, y + at + 3, names[index], 8, align="r")
        lead(page, x - 12, y + at)
        page.text(x + 5 * pitch - 5, y + at + 3, str(12 - index), 7, align="r")
        page.text(x + 5 * pitch + 16, y + at + 3, names[11 - index], 8)
        lead(page, x + 5 * pitch, y + at)
        page.text(x + at, y + 5 * pitch - 5, str(index + 5), 7, align="c")
        turned(page, x + at, y + 5 * pitch + 16 + page.measure(names[index + 4], 8), names[index + 4])
        page.text(x + at, y + 11, str(16 - index), 7, align="c")
        turned(page, x + at, y - 16, names[15 - index])
    page.text(x + 2.5 * pitch, y + 2.7 * pitch, "FX216", 8, align="c")
    page.text(x + 2.5 * pitch, y + 9.4 * pitch, "QFN-16 (top view)", 8, align="c")
    return [(str(index + 1), name, None) for index, name in enumerate(names)]


def amplifier(page, x, y, back):
    """A triangle with the signs of its inputs, pointing right, or left where `back`."""
    h, d = page.height, -1 if back else 1
    path = page.c.beginPath()
    path.moveTo(x, h - y + 9)
    path.lineTo(x, h - y - 9)
    path.lineTo(x + 16 * d, h - y)
    path.close()
    page.c.drawPath(path)
    page.text(x + 3 * d, y - 2, "\u2013", 6, align="c")
    page.text(x + 3 * d, y + 7, "+", 6, align="c")


def braces(page):
    """Two amplifiers: a name that a brace gives to two leads, and a supply whose sign is raised."""
    page.text(LEFT, 104, "Pin connections", 10.5, bold=True)
    x, y = 250, 140
    page.c.rect(x, page.height - y - 62, 60, 62)
    left, right = ["Output A", None, None, "V_{EE}"], ["V_{CC}^{+}", "Output B", None, None]
    for index in range(4):
        at = y + 10 + 14 * index
        page.text(x - 5, at + 3, str(index + 1), 7, align="c")
        page.text(x + 65, at + 3, str(8 - index), 7, align="c")
        if left[index]:
            page.text(x - 14, at + 3, left[index], 7, align="r")
        if right[index]:
            page.text(x + 74, at + 3, right[index], 7)
    for brace, side, name, top in ((x - 11, -1, "Inputs A", 24), (x + 71, 1, "Inputs B", 38)):
        page.line(brace, y + top - 4, brace, y + top + 18)
        page.text(brace + 4 * side, y + top + 9, name, 7, align="r" if side < 0 else "l")
    amplifier(page, x + 14, y + 31, False)
    amplifier(page, x + 46, y + 45, True)
    page.text(x + 30, y + 76, "FX212 (top view)", 8, align="c")
    names = ["Output A", "Inputs A", "Inputs A", "VEE", "Inputs B", "Inputs B", "Output B", "VCC+"]
    return [(str(index + 1), name, None) for index, name in enumerate(names)]


def letters_as_picture(page, x, y, text, size=8):
    """Letters as pixels, nothing of them in the text layer; (x, y) is where text() would begin."""
    scale = 4
    font = ImageFont.truetype(FONTS + "Regular.ttf", size * scale)
    image = Image.new("L", (int(page.measure(text, size) * scale) + 4, size * scale + 8), 255)
    ImageDraw.Draw(image).text((0, 0), text, 0, font)
    data = io.BytesIO()
    image.save(data, "PNG")
    data.seek(0)
    page.c.drawImage(ImageReader(data), x, page.height - y - size * 0.3, image.width / scale, image.height / scale)


def picture_of_a_name(page):
    """A pin table: one name is a picture."""
    page.text(LEFT, 104, "Pin functions", 10.5, bold=True)
    rows = [["1", "VIN", "Supply of the circuit"], ["2", "VSS", "Ground"], ["3", "", "Low while the supply is good"], ["4", "SENSE", "Watches the line"]]
    page.table(LEFT, 112, [50, 80, 240], "ccl", [["Pin No.", "Name", "Function"]], rows)
    letters_as_picture(page, LEFT + 75, 112 + 8.5 * 1.75 * 3.65, "READY", 8)
    return [(number, name, None) for number, name, _ in rows]


def picture_of_leads(page):
    """A drawing of the package whose letters are all pixels, below a caption."""
    page.text(LEFT, 104, "Pin connection (top view)", 10.5, bold=True)
    x, y = 250, 140
    page.c.rect(x, page.height - y - 62, 60, 62)
    for index, (left, right) in enumerate((("VIN", "READY"), ("VSS", "SENSE"), ("HOLD", "VOUT"))):
        at = y + 14 + 16 * index
        letters_as_picture(page, x - 34, at, left)
        letters_as_picture(page, x + 3, at, str(index + 1))
        letters_as_picture(page, x + 50, at, str(6 - index))
        letters_as_picture(page, x + 70, at, right)
    return []
