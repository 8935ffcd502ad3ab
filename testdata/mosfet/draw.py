"""A page drawn with cairo: text with sub- and superscripts, and tables whose rules are thin filled rectangles. Points, y down."""

import html
import os
import sys

import cairo

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "tools"))
from sheet import as_cell, runs

WIDTH, HEIGHT = 595.0, 842.0
LEFT, RIGHT, TOP, BOTTOM = 48.0, 547.0, 70.0, 780.0
RULE = 0.6


class Sheet:
    def __init__(self, path, title, running):
        self.surface = cairo.PDFSurface(path, WIDTH, HEIGHT)
        self.surface.set_metadata(cairo.PDFMetadata.TITLE, title)
        self.surface.set_metadata(cairo.PDFMetadata.CREATE_DATE, "2023-11-14T22:13:20Z")
        self.c = cairo.Context(self.surface)
        self.running, self.page, self.y = running, 0, TOP
        self.new_page()

    def font(self, size, bold=False):
        self.c.select_font_face("Liberation Sans", cairo.FONT_SLANT_NORMAL, cairo.FONT_WEIGHT_BOLD if bold else cairo.FONT_WEIGHT_NORMAL)
        self.c.set_font_size(size)

    def bar(self, x, y, w, h, grey=0.0, colour=None):
        self.c.set_source_rgb(*(colour or (grey, grey, grey)))
        self.c.rectangle(x, y, w, h)
        self.c.fill()

    def measure(self, text, size, bold=False):
        width = 0
        for kind, part in runs(text):
            small = kind in ("sub", "sup")
            self.font(size * 0.68 if small else size, bold or kind == "bold")
            width += self.c.text_extents(html.unescape(part)).x_advance
        return width

    def text(self, x, y, text, size=8.5, bold=False, colour=(0, 0, 0), align="l"):
        if align != "l":
            x -= self.measure(text, size, bold) * (0.5 if align == "c" else 1.0)
        for kind, part in runs(text):
            part = html.unescape(part)
            self.font(size * 0.68 if kind in ("sub", "sup") else size, bold or kind == "bold")
            drop = size * 0.18 if kind == "sub" else (-size * 0.35 if kind == "sup" else 0)
            self.c.set_source_rgb(*colour)
            self.c.move_to(x, y + drop)
            self.c.show_text(part)
            x += self.c.text_extents(part).x_advance

    def new_page(self):
        if self.page:
            self.c.show_page()
        self.page += 1
        self.y = TOP
        self.text(LEFT, 40, self.running[0], 8)
        self.text(RIGHT, 40, self.running[1], 8, align="r")
        self.bar(LEFT, 45, RIGHT - LEFT, RULE)
        self.bar(LEFT, 800, RIGHT - LEFT, RULE)
        self.text(LEFT, 812, self.running[2], 7.5)
        self.text(RIGHT, 812, f"{self.page}", 7.5, align="r")

    def heading(self, text):
        self.y += 8
        self.bar(LEFT, self.y, RIGHT - LEFT, 14, colour=(0.16, 0.27, 0.42))
        self.text(LEFT + 4, self.y + 10.2, text, 9.5, bold=True, colour=(1, 1, 1))
        self.y += 21

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

    def paragraph(self, text, size=8.5, indent=0.0, bullet=None):
        for index, line in enumerate(self.wrap(text, RIGHT - LEFT - indent, size)):
            self.y += size
            if bullet and index == 0:
                self.text(LEFT + 2, self.y, bullet, size)
            self.text(LEFT + indent, self.y, line, size)
            self.y += size * 0.38
        self.y += 2

    def table(self, widths, aligns, head, rows, size=8.0, left=LEFT):
        """Rows of cells as in tools/sheet.py; every rule is a filled rectangle."""
        edges = [left]
        for width in widths:
            edges.append(edges[-1] + width)
        grid = [list(map(as_cell, line)) for line in [head] + rows]
        owner, places = {}, []
        for r, line in enumerate(grid):
            column = 0
            for c in line:
                while (r, column) in owner:
                    column += 1
                number = len(places)
                places.append((r, column, c))
                for down in range(c["rs"]):
                    for right in range(c["cs"]):
                        owner[(r + down, column + right)] = number
                column += c["cs"]
        heights = [size * 1.75] * len(grid)
        broken = []
        for r, column, c in places:
            bold = c["b"] or r == 0
            lines = self.wrap(c["t"], edges[column + c["cs"]] - edges[column] - 6, size, bold)
            broken.append(lines)
            if c["rs"] == 1:
                heights[r] = max(heights[r], size * (0.6 + 1.15 * len(lines)))
        tops = [self.y]
        for height in heights:
            tops.append(tops[-1] + height)
        for (r, column, c), lines in zip(places, broken):
            x0, x1, y0, y1 = edges[column], edges[column + c["cs"]], tops[r], tops[r + c["rs"]]
            if r == 0 or c["shade"]:
                self.bar(x0, y0, x1 - x0, y1 - y0, grey=0.9 if r == 0 else 0.95)
            align = c["al"] or ("c" if r == 0 else ("l" if c["cs"] == len(widths) else aligns[column]))
            x = {"l": x0 + 3, "c": (x0 + x1) / 2, "r": x1 - 3}[align]
            y = (y0 + y1) / 2 - size * 1.15 * len(lines) / 2 + size * 0.93
            for line in lines:
                self.text(x, y, line, size, bold=c["b"] or r == 0, align=align)
                y += size * 1.15
        for r, column, c in places:
            x0, x1, y0, y1 = edges[column], edges[column + c["cs"]], tops[r], tops[r + c["rs"]]
            self.bar(x0, y0 - RULE / 2, x1 - x0, RULE)
            self.bar(x0 - RULE / 2, y0, RULE, y1 - y0)
        self.bar(edges[0], tops[-1] - RULE / 2, edges[-1] - edges[0], RULE)
        self.bar(edges[-1] - RULE / 2, tops[0], RULE, tops[-1] - tops[0])
        self.y = tops[-1] + 6

    def finish(self):
        self.c.show_page()
        self.surface.finish()
