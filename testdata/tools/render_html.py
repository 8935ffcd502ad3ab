"""Blocks to one HTML page with print styles, for printing to PDF with Chromium."""

from sheet import as_cell, runs

TAGS = {"sub": ("<sub>", "</sub>"), "sup": ("<sup>", "</sup>"), "bold": ("<b>", "</b>"), "plain": ("", "")}


def inline(text):
    return "".join(TAGS[kind][0] + part + TAGS[kind][1] for kind, part in runs(text))


def table(item):
    out = []
    if item.caption:
        out.append(f'<p class="caption">{inline(item.caption)}</p>')
    total = sum(item.widths)
    out.append(f'<table class="{item.style}" style="width:{item.width_mm}mm"><colgroup>')
    out += [f'<col style="width:{100 * width / total:.2f}%">' for width in item.widths]
    out.append("</colgroup>")
    align = {"l": "left", "c": "center", "r": "right"}

    def body(rows, tag):
        blocked = {}
        for number, row in enumerate(rows):
            out.append("<tr>")
            column = 0
            for value in row:
                while blocked.get((number, column)):
                    column += 1
                c = as_cell(value)
                side = c["al"] or ("center" if tag == "th" else align[item.aligns[column]])
                if c["cs"] == len(item.widths) and tag == "td":
                    side = c["al"] or "left"
                classes = ' class="group"' if c["shade"] else ""
                text = inline(c["t"])
                if c["b"]:
                    text = f"<b>{text}</b>"
                out.append(f'<{tag}{classes} colspan="{c["cs"]}" rowspan="{c["rs"]}" style="text-align:{side}">{text}</{tag}>')
                for down in range(c["rs"]):
                    for right in range(c["cs"]):
                        blocked[(number + down, column + right)] = True
                column += c["cs"]
            out.append("</tr>")

    out.append("<thead>")
    body(item.head, "th")
    out.append("</thead><tbody>")
    body(item.rows, "td")
    out.append("</tbody></table>")
    return "".join(out)


def render(blocks, language, title, style):
    out = [f'<!DOCTYPE html><html lang="{language}"><head><meta charset="utf-8"><title>{title}</title><style>{style}</style></head><body>']
    for block in blocks:
        kind = block[0]
        if kind in ("h1", "h2", "p"):
            out.append(f"<{kind}>{inline(block[1])}</{kind}>")
        elif kind in ("title", "subtitle", "small"):
            out.append(f'<p class="{kind}">{inline(block[1])}</p>')
        elif kind == "ul":
            out.append("<ul>" + "".join(f"<li>{inline(entry)}</li>" for entry in block[1]) + "</ul>")
        elif kind == "table":
            out.append(table(block[1]))
        elif kind == "figure":
            out.append(f'<div class="figure">{block[1]}<p class="caption">{inline(block[4])}</p></div>')
        elif kind == "break":
            out.append('<div class="break"></div>')
    out.append("</body></html>")
    return "\n".join(out)
