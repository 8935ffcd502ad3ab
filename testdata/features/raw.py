"""A PDF written byte by byte: text in Type 3 fonts whose glyphs are bitmaps, as older typesetting systems made them."""

import html
import os
import sys
import zlib

from PIL import Image, ImageDraw, ImageFont

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "tools"))
from sheet import runs

FACE = "/usr/share/fonts/truetype/liberation2/LiberationSans-Regular.ttf"
PIXELS = 64
LEFT, HEIGHT = 54.0, 842.0


class Writer:
    def __init__(self):
        self.objects = []

    def add(self, body=None, stream=None):
        if stream is not None:
            packed = zlib.compress(stream, 9)
            body = f"<< /Length {len(packed)} /Filter /FlateDecode >>"
            self.objects.append(body.encode() + b"\nstream\n" + packed + b"\nendstream")
        else:
            self.objects.append(body.encode())
        return len(self.objects)

    def save(self, path, root):
        out, offsets = bytearray(b"%PDF-1.4\n%\xe2\xe3\xcf\xd3\n"), []
        for number, body in enumerate(self.objects, 1):
            offsets.append(len(out))
            out += f"{number} 0 obj\n".encode() + body + b"\nendobj\n"
        start = len(out)
        out += f"xref\n0 {len(offsets) + 1}\n0000000000 65535 f \n".encode()
        out += b"".join(f"{offset:010d} 00000 n \n".encode() for offset in offsets)
        out += f"trailer\n<< /Size {len(offsets) + 1} /Root {root} 0 R >>\nstartxref\n{start}\n%%EOF\n".encode()
        with open(path, "wb") as file:
            file.write(out)


def glyph(character, face):
    """The glyph procedure of one character in a space of PIXELS units an em, and its width."""
    width = round(face.getlength(character))
    box = face.getbbox(character, anchor="ls")
    w, h = box[2] - box[0], box[3] - box[1]
    if w <= 0 or h <= 0:
        return f"{width} 0 0 0 0 0 d1".encode(), width
    image = Image.new("1", (w, h), 1)
    ImageDraw.Draw(image).text((-box[0], -box[1]), character, 0, face, anchor="ls")
    data = image.tobytes()
    head = f"{width} 0 {box[0]} {-box[3]} {box[2]} {-box[1]} d1\nq {w} 0 0 {h} {box[0]} {-box[3]} cm\nBI /W {w} /H {h} /IM true /BPC 1 /D [0 1] ID ".encode()
    return head + data + b"\nEI Q", width


def type3(path, captions, rows, widths):
    """One page: the captions, then a ruled table of the rows."""
    texts = captions + [value for row in rows for value in row] + ["Featherlake Instruments", "A font of bitmaps"]
    alphabet = sorted({c for text in texts for _, part in runs(text) for c in html.unescape(part)})
    codes = {character: 33 + index for index, character in enumerate(alphabet)}
    face = ImageFont.truetype(FACE, PIXELS)
    writer = Writer()
    procedures, advances = {}, {}
    for character in alphabet:
        body, advances[character] = glyph(character, face)
        procedures[character] = writer.add(stream=body)
    unicode_map = "/CIDInit /ProcSet findresource begin 12 dict begin begincmap /CMapName /Demo def /CMapType 2 def\n1 begincodespacerange <00> <FF> endcodespacerange\n"
    unicode_map += f"{len(alphabet)} beginbfchar\n" + "".join(f"<{codes[c]:02X}> <{ord(c):04X}>\n" for c in alphabet) + "endbfchar\nendcmap end end"
    to_unicode = writer.add(stream=unicode_map.encode())
    names = " ".join(f"/a{codes[c]}" for c in alphabet)
    procs = " ".join(f"/a{codes[c]} {procedures[c]} 0 R" for c in alphabet)
    last = 33 + len(alphabet) - 1
    font = writer.add(
        f"<< /Type /Font /Subtype /Type3 /FontBBox [-10 -20 {PIXELS + 20} {PIXELS + 10}] /FontMatrix [{1 / PIXELS} 0 0 {1 / PIXELS} 0 0] /CharProcs << {procs} >> "
        f"/Encoding << /Type /Encoding /Differences [33 {names}] >> /FirstChar 33 /LastChar {last} /Widths [{' '.join(str(advances[c]) for c in alphabet)}] "
        f"/Resources << /ProcSet [/PDF /ImageB] >> /ToUnicode {to_unicode} 0 R >>")

    content = []

    def measure(text, size):
        return sum(advances[c] for c in text) * size / PIXELS

    def write(x, y, text, size, align="l"):
        parts = [(kind, html.unescape(part)) for kind, part in runs(text)]
        whole = sum(measure(part, size * (0.68 if kind == "sub" else 1)) for kind, part in parts)
        x -= {"l": 0, "c": whole / 2, "r": whole}[align]
        for kind, part in parts:
            points, drop = (size * 0.68, size * 0.18) if kind == "sub" else (size, 0)
            code = "".join(f"{codes[c]:02X}" for c in part)
            content.append(f"BT /F {points:.2f} Tf 1 0 0 1 {x:.2f} {HEIGHT - y - drop:.2f} Tm <{code}> Tj ET")
            x += measure(part, points)

    write(LEFT, 40, "Featherlake Instruments", 8)
    write(LEFT, 76, "A font of bitmaps", 13)
    y = 96
    for caption in captions:
        write(LEFT, y, caption, 9)
        y += 8
    for row in rows:
        x = LEFT
        for index, (width, value) in enumerate(zip(widths, row)):
            content.append(f"0.6 w {x:.2f} {HEIGHT - y - 16:.2f} {width:.2f} 16 re S")
            if value:
                write(*((x + 3, y + 11, value, 8.5) if index in (0, 2) else (x + width / 2, y + 11, value, 8.5, "c")))
            x += width
        y += 16
    stream = writer.add(stream="\n".join(content).encode())
    pages = len(writer.objects) + 2
    page = writer.add(f"<< /Type /Page /Parent {pages} 0 R /MediaBox [0 0 595 842] /Contents {stream} 0 R /Resources << /Font << /F {font} 0 R >> >> >>")
    writer.add(f"<< /Type /Pages /Kids [{page} 0 R] /Count 1 >>")
    root = writer.add(f"<< /Type /Catalog /Pages {pages} 0 R >>")
    writer.save(path, root)
