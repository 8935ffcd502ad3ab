"""Blocks of which the demo sheets are made, and the inline markup inside their strings.

A sheet is a list of blocks: ("title", text), ("subtitle", text), ("h1", text), ("h2", text), ("p", text), ("small", text),
("ul", [text, ..]), ("table", Table), ("figure", svg text, width in mm, height in mm, caption), ("break",).
Markup: V_{CU} subscript, TP^{*1} superscript, **bold**.
A cell is a string or cell(text, cs=column span, rs=row span, al="left|center|right", b=bold).
"""

import re
from xml.sax.saxutils import escape

TOKEN = re.compile(r"(_\{[^}]*\}|\^\{[^}]*\}|\*\*[^*]+\*\*)")


def cell(text, cs=1, rs=1, al=None, b=False, shade=False):
    return {"t": text, "cs": cs, "rs": rs, "al": al, "b": b, "shade": shade}


def as_cell(value):
    return value if isinstance(value, dict) else cell(value)


class Table:
    """caption above the table or None; widths relative; aligns one letter a column (l c r)."""

    def __init__(self, caption, widths, aligns, head, rows, width_mm=170, style="grid"):
        self.caption, self.widths, self.aligns, self.head, self.rows = caption, widths, aligns, head, rows
        self.width_mm, self.style = width_mm, style


def runs(text):
    """Yield (kind, escaped text) with kind in plain, sub, sup, bold."""
    for part in TOKEN.split(text):
        if not part:
            continue
        if part.startswith("_{"):
            yield "sub", escape(part[2:-1])
        elif part.startswith("^{"):
            yield "sup", escape(part[2:-1])
        elif part.startswith("**"):
            yield "bold", escape(part[2:-2])
        else:
            yield "plain", escape(part)


def plain(text):
    """The text as the labels want it: subscripts joined, superscripts (footnote marks) dropped."""
    return re.sub(r"\^\{[^}]*\}", "", text).replace("_{", "").replace("}", "").replace("**", "")
