"""Drawings of the demo sheets as SVG: pins, block diagram, circuit, outline. Every number in them stands for itself."""


class Drawing:
    def __init__(self, width, height, font, size=3.2):
        self.width, self.height, self.font, self.size, self.parts = width, height, font, size, []

    def line(self, *points, weight=0.25, dash=None):
        way = " ".join(f"{x},{y}" for x, y in points)
        dash = f' stroke-dasharray="{dash}"' if dash else ""
        self.parts.append(f'<polyline points="{way}" fill="none" stroke="#000000" stroke-width="{weight}"{dash}/>')

    def box(self, x, y, w, h, fill="none", weight=0.25, dash=None):
        dash = f' stroke-dasharray="{dash}"' if dash else ""
        self.parts.append(f'<rect x="{x}" y="{y}" width="{w}" height="{h}" fill="{fill}" stroke="#000000" stroke-width="{weight}"{dash}/>')

    def dot(self, x, y, r=0.5):
        self.parts.append(f'<circle cx="{x}" cy="{y}" r="{r}" fill="#000000" stroke="none"/>')

    def ring(self, x, y, r=0.7):
        self.parts.append(f'<circle cx="{x}" cy="{y}" r="{r}" fill="#ffffff" stroke="#000000" stroke-width="0.25"/>')

    def text(self, x, y, text, anchor="middle", size=None, bold=False):
        weight = ' font-weight="bold"' if bold else ""
        self.parts.append(
            f'<text x="{x}" y="{y}" font-family="{self.font}" font-size="{size or self.size}" text-anchor="{anchor}"{weight} fill="#000000">{text}</text>'
        )

    def svg(self):
        return (
            f'<svg xmlns="http://www.w3.org/2000/svg" width="{self.width}mm" height="{self.height}mm" viewBox="0 0 {self.width} {self.height}">'
            + "".join(self.parts) + "</svg>"
        )


def six_pin(font, pins):
    """Top view of a six-lead package; pins 1 to 3 at the lower side from left to right, 4 to 6 back along the upper side."""
    d = Drawing(60, 36, font)
    d.box(14, 11, 32, 14, weight=0.4)
    d.ring(17, 22, 0.9)
    for index in range(3):
        x = 18.5 + 10.5 * index
        d.box(x, 25, 3, 3.5)
        d.text(x + 1.5, 31.8, f"{index + 1}")
        d.text(x + 1.5, 35.3, pins[index])
        d.box(x, 7.5, 3, 3.5)
        d.text(x + 1.5, 6.4, f"{6 - index}")
        d.text(x + 1.5, 2.9, pins[5 - index])
    return d.svg()


def protector_blocks(font, words):
    """Block diagram of the protector; words: oscillator, logic, comparators (six), charger detection."""
    d = Drawing(150, 72, font, 2.9)
    d.box(14, 4, 122, 62, weight=0.35, dash="1.2,0.8")
    for index, name in enumerate(words["left"]):
        y = 9 + 14 * index
        d.box(27, y, 39, 9)
        d.text(46.5, y + 5.6, name)
        d.line((66, y + 4.5), (74, y + 4.5))
        d.line((22, y + 4.5), (27, y + 4.5))
    d.line((22, 13.5), (22, 55.5))
    d.box(74, 9, 24, 51)
    d.text(86, 31, words["logic"][0])
    d.text(86, 36, words["logic"][1])
    for index, name in enumerate(words["right"]):
        y = 9 + 14 * index
        d.box(106, y, 24, 9)
        d.text(118, y + 5.6, name)
        d.line((98, y + 4.5), (106, y + 4.5))
    for y, name in ((13.5, "VDD"), (55.5, "VSS")):
        d.line((8, y), (22, y))
        d.ring(8, y)
        d.text(8, y - 1.8, name)
    for index, name in enumerate(("CO", "DO", "VM", "TP")):
        y = 13.5 + 14 * index
        d.line((130, y), (143, y))
        d.ring(143, y)
        d.text(143, y - 1.8, name)
    return d.svg()


def resistor(d, x, y, w, h, name, value=None, at="above"):
    d.box(x, y, w, h, fill="#ffffff")
    if at == "above":
        d.text(x + w / 2, y - 1.2, name)
    else:
        d.text(x + w + 1.2, y + h / 2 + 1, name, "start")


def transistor(d, x, y, name):
    """An N-channel FET lying in a horizontal line at height y, gate above it."""
    d.line((x - 5, y), (x - 2, y), (x - 2, y - 1.6))
    d.line((x + 5, y), (x + 2, y), (x + 2, y - 1.6))
    for k in (-2.6, -0.6, 1.4):
        d.line((x + k, y - 1.6), (x + k + 1.2, y - 1.6), weight=0.5)
    d.line((x - 2.4, y - 2.5), (x + 2.4, y - 2.5), weight=0.35)
    d.line((x, y - 2.5), (x, y - 5))
    d.line((x - 3.4, y), (x - 3.4, y + 3), (x - 0.9, y + 3))
    d.line((x + 3.4, y), (x + 3.4, y + 3), (x + 0.9, y + 3))
    d.parts.append(f'<path d="M {x - 0.9} {y + 2} L {x - 0.9} {y + 4} L {x + 0.9} {y + 3} Z" fill="#000000"/>')
    d.line((x + 0.9, y + 2), (x + 0.9, y + 4))
    d.text(x, y + 7.6, name)


def protector_circuit(font, part, words):
    d = Drawing(150, 76, font, 3.0)
    d.line((12, 8), (138, 8))
    d.ring(138, 8)
    d.text(142, 9, "P+", "start")
    d.line((12, 8), (12, 30))
    d.line((8, 30), (16, 30), weight=0.5)
    d.line((9.8, 32), (14.2, 32), weight=0.5)
    d.line((12, 32), (12, 62))
    d.text(7, 32, words["cell"], "end", 2.8)
    d.dot(34, 8)
    d.line((34, 8), (34, 24), (58, 24))
    resistor(d, 32.8, 11.5, 2.4, 7, "R1", at="right")
    d.dot(34, 24)
    d.line((34, 24), (34, 31))
    d.line((31, 31), (37, 31), weight=0.45)
    d.line((31, 32.6), (37, 32.6), weight=0.45)
    d.line((34, 32.6), (34, 62))
    d.text(38.5, 33, "C1", "start")
    d.box(58, 18, 36, 26, weight=0.4)
    d.text(76, 30, part, bold=True)
    for y, name in ((24, "VDD"), (38, "VSS")):
        d.text(59.2, y + 1, name, "start", 2.6)
    d.text(92.8, 25, "TP", "end", 2.6)
    d.line((94, 24), (101, 24))
    d.text(103, 25, words["open"], "start", 2.6)
    d.line((58, 38), (48, 38), (48, 62))
    for x, name in ((66, "DO"), (76, "CO")):
        d.text(x, 43, name, size=2.6)
    d.text(88, 43, "VM", size=2.6)
    d.line((12, 62), (61, 62))
    d.line((66, 44), (66, 57))
    transistor(d, 66, 62, "FET1")
    d.line((71, 62), (77, 62))
    transistor(d, 82, 62, "FET2")
    d.line((76, 44), (76, 50), (82, 50), (82, 57))
    d.line((87, 62), (138, 62))
    d.ring(138, 62)
    d.text(142, 63, "P−", "start")
    d.line((88, 44), (88, 48), (108, 48), (108, 62))
    d.box(106.8, 51, 2.4, 7, fill="#ffffff")
    d.text(110.6, 55.6, "R2", "start")
    for point in ((12, 8), (34, 62), (48, 62), (108, 62)):
        d.dot(*point)
    return d.svg()


def outline(font):
    """Top and side view with the dimension letters of the table."""
    d = Drawing(120, 44, font, 3)
    d.box(12, 14, 34, 16, weight=0.4)
    d.ring(15, 27, 0.8)
    for index in range(3):
        x = 16.5 + 11 * index
        d.box(x, 30, 3, 6)
        d.box(x, 8, 3, 6)
    d.line((12, 5.4), (46, 5.4), weight=0.18)
    d.text(29, 4.4, "D")
    d.line((49, 14), (55, 14), weight=0.18)
    d.line((49, 30), (55, 30), weight=0.18)
    d.line((53, 14), (53, 30), weight=0.18)
    d.text(55, 23, "E1", "start")
    d.line((38, 36), (66, 36), weight=0.18)
    d.line((38, 8), (66, 8), weight=0.18)
    d.line((63, 8), (63, 36), weight=0.18)
    d.text(65, 23, "E", "start")
    d.line((18, 39), (29, 39), weight=0.18)
    d.text(23.5, 42.4, "e")
    d.line((38.5, 38.4), (41.5, 38.4), weight=0.18)
    d.text(40, 42.4, "b")
    d.box(82, 16, 22, 9, weight=0.4)
    d.line((82, 23), (78, 23), (77, 28), (72, 28), weight=0.8)
    d.line((104, 23), (108, 23), (109, 28), (114, 28), weight=0.8)
    d.line((70, 28.5), (117, 28.5), weight=0.15)
    d.line((93, 16), (93, 28.5), weight=0.18)
    d.text(94.5, 21.5, "A", "start")
    d.line((109, 31.5), (114, 31.5), weight=0.18)
    d.text(111.5, 35, "L")
    return d.svg()
