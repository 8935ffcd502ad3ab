"""Blocks to a flat OpenDocument text, for LibreOffice's PDF export."""

import base64
from xml.sax.saxutils import escape

from sheet import as_cell, runs

NAMESPACES = " ".join(
    f'xmlns:{name}="{value}"'
    for name, value in {
        "office": "urn:oasis:names:tc:opendocument:xmlns:office:1.0",
        "style": "urn:oasis:names:tc:opendocument:xmlns:style:1.0",
        "text": "urn:oasis:names:tc:opendocument:xmlns:text:1.0",
        "table": "urn:oasis:names:tc:opendocument:xmlns:table:1.0",
        "draw": "urn:oasis:names:tc:opendocument:xmlns:drawing:1.0",
        "fo": "urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0",
        "svg": "urn:oasis:names:tc:opendocument:xmlns:svg-compatible:1.0",
        "xlink": "http://www.w3.org/1999/xlink",
        "dc": "http://purl.org/dc/elements/1.1/",
        "meta": "urn:oasis:names:tc:opendocument:xmlns:meta:1.0",
    }.items()
)


def inline(text):
    out = []
    for kind, part in runs(text):
        part = part.replace("\n", "<text:line-break/>")
        out.append(part if kind == "plain" else f'<text:span text:style-name="{kind}">{part}</text:span>')
    return "".join(out)


def paragraph_style(name, font, size, extra="", text_extra="", parent=None):
    parent = f' style:parent-style-name="{parent}"' if parent else ""
    return (
        f'<style:style style:name="{name}" style:family="paragraph"{parent}><style:paragraph-properties {extra}/>'
        f'<style:text-properties style:font-name="{font}" style:font-name-asian="{font}" fo:font-family="{font}" '
        f'style:font-family-asian="{font}" fo:font-size="{size}pt" style:font-size-asian="{size}pt" {text_extra}/></style:style>'
    )


class Writer:
    def __init__(self, font, language="en", country="GB", accent="#1d3557", size=9.5):
        self.font, self.language, self.country, self.accent, self.size = font, language, country, accent, size
        self.automatic, self.body, self.count = [], [], 0

    def table(self, item):
        self.count += 1
        name = f"T{self.count}"
        if item.caption:
            self.body.append(f'<text:p text:style-name="Caption">{inline(item.caption)}</text:p>')
        total = sum(item.widths)
        self.automatic.append(
            f'<style:style style:name="{name}" style:family="table"><style:table-properties style:width="{item.width_mm}mm" table:align="left" '
            f'table:border-model="collapsing" fo:margin-bottom="3mm"/></style:style>'
        )
        out = [f'<table:table table:name="{name}" table:style-name="{name}">']
        for number, width in enumerate(item.widths):
            style = f"{name}.{number}"
            self.automatic.append(
                f'<style:style style:name="{style}" style:family="table-column"><style:table-column-properties '
                f'style:column-width="{item.width_mm * width / total:.2f}mm"/></style:style>'
            )
            out.append(f'<table:table-column table:style-name="{style}"/>')
        align = {"l": "left", "c": "center", "r": "right"}

        def rows(lines, head):
            covered = set()
            for number, row in enumerate(lines):
                out.append('<table:table-row table:style-name="Row">')
                column, cells = 0, iter(row)
                while column < len(item.widths):
                    if (number, column) in covered:
                        out.append("<table:covered-table-cell/>")
                        column += 1
                        continue
                    c = as_cell(next(cells))
                    side = c["al"] or ("center" if head else align[item.aligns[column]])
                    if c["cs"] == len(item.widths) and not head:
                        side = c["al"] or "left"
                    style = "Head" if head else ("Group" if c["shade"] else "Cell")
                    text = f"**{c['t']}**" if (c["b"] or head) and "_{" not in c["t"] else c["t"]
                    out.append(
                        f'<table:table-cell table:style-name="{style}" table:number-columns-spanned="{c["cs"]}" '
                        f'table:number-rows-spanned="{c["rs"]}" office:value-type="string">'
                        f'<text:p text:style-name="Cell{side}">{inline(text)}</text:p></table:table-cell>'
                    )
                    for down in range(c["rs"]):
                        for right in range(c["cs"]):
                            covered.add((number + down, column + right))
                    for _ in range(c["cs"] - 1):
                        out.append("<table:covered-table-cell/>")
                    column += c["cs"]
                out.append("</table:table-row>")

        out.append("<table:table-header-rows>")
        rows(item.head, True)
        out.append("</table:table-header-rows>")
        rows(item.rows, False)
        out.append("</table:table>")
        self.body.append("".join(out))
        self.body.append('<text:p text:style-name="Gap"/>')

    def figure(self, svg, width, height, caption):
        self.count += 1
        data = base64.b64encode(svg.encode()).decode()
        self.body.append(
            f'<text:p text:style-name="Figure"><draw:frame draw:name="F{self.count}" text:anchor-type="as-char" svg:width="{width}mm" '
            f'svg:height="{height}mm"><draw:image draw:mime-type="image/svg+xml"><office:binary-data>{data}</office:binary-data></draw:image>'
            f"</draw:frame></text:p>"
        )
        self.body.append(f'<text:p text:style-name="FigureCaption">{inline(caption)}</text:p>')

    def add(self, blocks):
        styles = {"title": "Title", "subtitle": "Subtitle", "p": "Body", "small": "Small"}
        broken = False
        for block in blocks:
            kind = block[0]
            if kind in ("h1", "h2"):
                style = kind.upper() + ("break" if broken else "")
                self.body.append(f'<text:h text:style-name="{style}" text:outline-level="{kind[1]}">{inline(block[1])}</text:h>')
                broken = False
            elif kind in styles:
                self.body.append(f'<text:p text:style-name="{styles[kind]}">{inline(block[1])}</text:p>')
            elif kind == "ul":
                entries = "".join(f'<text:list-item><text:p text:style-name="Item">{inline(e)}</text:p></text:list-item>' for e in block[1])
                self.body.append(f'<text:list text:style-name="Bullets">{entries}</text:list>')
            elif kind == "table":
                self.table(block[1])
            elif kind == "figure":
                self.figure(*block[1:])
            elif kind == "break":
                broken = True

    def document(self, title, head_left, head_right, foot_left, page_word="Page {n} of {m}"):
        font, size = self.font, self.size
        accent = f'fo:color="{self.accent}" fo:font-weight="bold" style:font-weight-asian="bold"'
        number = page_word.replace("{n}", "<text:page-number/>").replace("{m}", "<text:page-count/>")
        tab = 'fo:margin-top="0mm"'
        stops = '<style:tab-stops><style:tab-stop style:position="170mm" style:type="right"/></style:tab-stops>'
        cells = "".join(
            f'<style:style style:name="{name}" style:family="table-cell"><style:table-cell-properties fo:padding="0.7mm" fo:border="0.4pt solid #000000" '
            f'style:vertical-align="middle" {extra}/></style:style>'
            for name, extra in (("Cell", ""), ("Head", 'fo:background-color="#dfe6ee"'), ("Group", 'fo:background-color="#f2f2f2"'))
        )
        styles = [
            paragraph_style("Body", font, size, 'fo:margin-bottom="1.6mm" fo:line-height="118%"'),
            paragraph_style("Small", font, size - 1.5, 'fo:margin-bottom="1.2mm"'),
            paragraph_style("Item", font, size, 'fo:margin-bottom="0.6mm"'),
            paragraph_style("Title", font, 20, 'fo:margin-bottom="1mm"', accent),
            paragraph_style("Subtitle", font, 13, 'fo:margin-bottom="3mm"'),
            paragraph_style("Caption", font, size - 0.5, 'fo:margin-top="1.5mm" fo:margin-bottom="1mm" fo:keep-with-next="always"', 'fo:font-weight="bold"'),
            paragraph_style("FigureCaption", font, size - 0.5, 'fo:margin-bottom="3mm" fo:text-align="center"'),
            paragraph_style("Figure", font, size, 'fo:text-align="center" fo:keep-with-next="always" fo:margin-top="1mm"'),
            paragraph_style("Gap", font, 4),
            paragraph_style("Celleft", font, size - 1), paragraph_style("Cellleft", font, size - 1, 'fo:text-align="left"'),
            paragraph_style("Cellcenter", font, size - 1, 'fo:text-align="center"'), paragraph_style("Cellright", font, size - 1, 'fo:text-align="right"'),
            paragraph_style("Running", font, size - 1.5, tab).replace(f"<style:paragraph-properties {tab}/>", f"<style:paragraph-properties {tab}>{stops}</style:paragraph-properties>"),
        ]
        for level, points in (("H1", 13), ("H2", 10.5)):
            base = f'fo:margin-top="{3.5 if level == "H1" else 2}mm" fo:margin-bottom="1.3mm" fo:keep-with-next="always"'
            styles.append(paragraph_style(level, font, points, base, accent))
            styles.append(paragraph_style(level + "break", font, points, base + ' fo:break-before="page"', accent))
        text_styles = (
            '<style:style style:name="sub" style:family="text"><style:text-properties style:text-position="sub 65%"/></style:style>'
            '<style:style style:name="sup" style:family="text"><style:text-properties style:text-position="super 65%"/></style:style>'
            '<style:style style:name="bold" style:family="text"><style:text-properties fo:font-weight="bold" style:font-weight-asian="bold"/></style:style>'
            '<text:list-style style:name="Bullets"><text:list-level-style-bullet text:level="1" text:bullet-char="•"><style:list-level-properties '
            'text:space-before="2mm" text:min-label-width="4mm"/></text:list-level-style-bullet></text:list-style>'
        )
        page = (
            '<style:page-layout style:name="A4"><style:page-layout-properties fo:page-width="210mm" fo:page-height="297mm" fo:margin-top="12mm" '
            'fo:margin-bottom="11mm" fo:margin-left="20mm" fo:margin-right="20mm"/><style:header-style><style:header-footer-properties '
            'fo:min-height="6mm" fo:margin-bottom="4mm" fo:border-bottom="0.6pt solid #444444"/></style:header-style><style:footer-style>'
            '<style:header-footer-properties fo:min-height="6mm" fo:margin-top="3mm" fo:border-top="0.6pt solid #444444"/></style:footer-style></style:page-layout>'
        )
        return (
            f'<?xml version="1.0" encoding="UTF-8"?><office:document {NAMESPACES} office:version="1.3" office:mimetype="application/vnd.oasis.opendocument.text">'
            f"<office:meta><dc:title>{escape(title)}</dc:title></office:meta>"
            f'<office:font-face-decls><style:font-face style:name="{font}" svg:font-family="\'{font}\'"/></office:font-face-decls>'
            f'<office:styles><style:default-style style:family="paragraph"><style:text-properties style:font-name="{font}" fo:language="{self.language}" '
            f'fo:country="{self.country}" fo:hyphenate="false"/></style:default-style>{"".join(styles)}{text_styles}</office:styles>'
            f'<office:automatic-styles><style:style style:name="Row" style:family="table-row"><style:table-row-properties fo:keep-together="always"/></style:style>'
            f'{cells}{"".join(self.automatic)}{page}</office:automatic-styles><office:master-styles><style:master-page style:name="Standard" '
            f'style:page-layout-name="A4"><style:header><text:p text:style-name="Running">{escape(head_left)}<text:tab/>{escape(head_right)}</text:p></style:header>'
            f'<style:footer><text:p text:style-name="Running">{escape(foot_left)}<text:tab/>{number}</text:p></style:footer></style:master-page></office:master-styles>'
            f'<office:body><office:text>{"".join(self.body)}</office:text></office:body></office:document>'
        )
