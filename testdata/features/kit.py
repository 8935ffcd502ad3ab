"""Drawing for the one-feature sheets: a reportlab canvas with the y axis turned down, and a table in several ruling styles.

Coordinates: points from the top left of the page as displayed. Fonts are embedded subsets.
"""

import html
import os
import sys

from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.pdfgen.canvas import Canvas

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "tools"))
from sheet import as_cell, runs

FONTS = "/usr/share/fonts/truetype/liberation2/LiberationSans-"
WIDTH, HEIGHT = 595.0, 842.0
LEFT = 54.0

pdfmetrics.registerFont(TTFont("Sans", FONTS + "Regular.ttf"))
pdfmetrics.registerFont(TTFont("Sans-Bold", FONTS + "Bold.ttf"))


class Page:
    """One canvas; text() and table() write at (x, y) with y down. height is that of the coordinate system in use."""

    def __init__(self, path, height=HEIGHT, size=(WIDTH, HEIGHT), title=None):
        self.c = Canvas(path, pagesize=size, invariant=1, pageCompression=1)
        self.c.setTitle(title or os.path.basename(path)[:-4])
        self.c.setProducer("hand-made demo sheet")
        self.height = height
        self.twice = False

    def measure(self, text, size, bold=False):
        font = "Sans-Bold" if bold else "Sans"
        return sum(pdfmetrics.stringWidth(html.unescape(part), font, size * (0.68 if kind in ("sub", "sup") else 1)) for kind, part in runs(text))

    def text(self, x, y, text, size=9, bold=False, align="l"):
        if align != "l":
            x -= self.measure(text, size, bold) * (0.5 if align == "c" else 1.0)
        for kind, part in runs(text):
            part = html.unescape(part)
            points = size * (0.68 if kind in ("sub", "sup") else 1)
            drop = size * 0.18 if kind == "sub" else (-size * 0.35 if kind == "sup" else 0)
            font = "Sans-Bold" if bold and not self.twice else "Sans"
            self.c.setFont(font, points)
            self.c.drawString(x, self.height - y - drop, part)
            if bold and self.twice:
                self.c.drawString(x + 0.3, self.height - y - drop, part)
            x += pdfmetrics.stringWidth(part, font, points)

    def line(self, x0, y0, x1, y1, width=0.6):
        self.c.setLineWidth(width)
        self.c.line(x0, self.height - y0, x1, self.height - y1)

    def frame(self, heading, part="FX100", foot="FX100 sample sheet, issue 1", number=1):
        self.text(LEFT, 40, "Featherlake Instruments", 8)
        self.text(WIDTH - LEFT, 40, part, 8, align="r")
        self.text(LEFT, 76, heading, 13, bold=True)
        self.text(LEFT, 810, foot, 8)
        self.text(WIDTH - LEFT, 810, f"{number}", 8, align="r")

    def wrap(self, text, width, size, bold=False):
        lines, line = [], ""
        for word in text.split(" "):
            longer = f"{line} {word}".strip()
            if line and self.measure(longer, size, bold) > width:
                lines.append(line)
                line = word
            else:
                line = longer
        return lines + [line]

    def paragraph(self, x, y, text, width, size=9):
        for line in self.wrap(text, width, size):
            self.text(x, y, line, size)
            y += size * 1.35
        return y + 3

    def table(self, x, y, widths, aligns, head, rows, rules="grid", size=8.5):
        """head: list of rows, rows: list of rows, cells as in tools/sheet.py. rules: grid, half, none, dashed. Returns the y below."""
        edges = [x]
        for width in widths:
            edges.append(edges[-1] + width)
        lines = [list(map(as_cell, line)) for line in head + rows]
        owner, places = set(), []
        for r, line in enumerate(lines):
            column = 0
            for c in line:
                while (r, column) in owner:
                    column += 1
                places.append((r, column, c))
                owner |= {(r + down, column + right) for down in range(c["rs"]) for right in range(c["cs"])}
                column += c["cs"]
        heights = [size * 1.75] * len(lines)
        parts = []
        for r, column, c in places:
            pieces = self.wrap(c["t"], edges[column + c["cs"]] - edges[column] - 6, size, r < len(head) or c["b"])
            parts.append(pieces)
            if c["rs"] == 1:
                heights[r] = max(heights[r], size * (0.6 + 1.2 * len(pieces)))
        tops = [y]
        for height in heights:
            tops.append(tops[-1] + height)
        for (r, column, c), pieces in zip(places, parts):
            top, bottom = tops[r], tops[r + c["rs"]]
            align = c["al"] or ("c" if r < len(head) and rules in ("grid", "dashed") else aligns[column])
            at = {"l": edges[column] + 3, "c": (edges[column] + edges[column + c["cs"]]) / 2, "r": edges[column + c["cs"]] - 3}[align]
            base = (top + bottom) / 2 - size * 1.2 * len(pieces) / 2 + size * 0.95
            for piece in pieces:
                self.text(at, base, piece, size, bold=r < len(head) or c["b"], align=align)
                base += size * 1.2
            if rules in ("grid", "dashed"):
                if rules == "dashed":
                    self.c.setDash(2, 1.5)
                x1 = edges[column + c["cs"]]
                self.line(edges[column], top, x1, top)
                self.line(edges[column], bottom, x1, bottom)
                self.line(edges[column], top, edges[column], bottom)
                self.line(x1, top, x1, bottom)
                self.c.setDash()
        if rules == "half":
            for level in (tops[0], tops[len(head)], tops[-1]):
                self.line(edges[0], level, edges[-1], level)
        return tops[-1] + 8

    def save(self):
        self.c.showPage()
        self.c.save()
