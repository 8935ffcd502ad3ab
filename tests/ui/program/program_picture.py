#!/usr/bin/python3
"""Starts the desk on a virtual X server and looks at its picture.

program_picture.py XVFB_RUN STANDIN_DESK FOLDER   (FOLDER holds reference.pdf and candidate.pdf)

The picture has the size that was asked for, many colours, and both hues: slate
of the reference and ochre of the candidate.
"""
import os
import struct
import subprocess
import sys
import tempfile
import zlib

WIDTH, HEIGHT = 1280, 800
SLATE, OCHRE = (0x2F, 0x4D, 0x6B), (0x95, 0x57, 0x08)


def pixels_of(path):
    """Width, height and the rows of an 8-bit RGB or RGBA PNG, as (r, g, b) counts."""
    data = open(path, "rb").read()
    assert data[:8] == b"\x89PNG\r\n\x1a\n", "no PNG"
    position, packed = 8, b""
    while position < len(data):
        length, kind = struct.unpack(">I4s", data[position:position + 8])
        body = data[position + 8:position + 8 + length]
        if kind == b"IHDR":
            width, height, depth, colour = struct.unpack(">IIBB", body[:10])
        elif kind == b"IDAT":
            packed += body
        position += 12 + length
    assert depth == 8 and colour in (2, 6), "another form of PNG than expected"
    size = 3 if colour == 2 else 4
    raw, stride = zlib.decompress(packed), width * size
    before, counts = bytearray(stride), {}
    for y in range(height):
        method = raw[y * (stride + 1)]
        row = bytearray(raw[y * (stride + 1) + 1:(y + 1) * (stride + 1)])
        for x in range(stride):
            left = row[x - size] if x >= size else 0
            up = before[x]
            corner = before[x - size] if x >= size else 0
            if method == 1:
                row[x] = (row[x] + left) & 255
            elif method == 2:
                row[x] = (row[x] + up) & 255
            elif method == 3:
                row[x] = (row[x] + (left + up) // 2) & 255
            elif method == 4:
                guess = left + up - corner
                near = min((abs(guess - left), 0, left), (abs(guess - up), 1, up), (abs(guess - corner), 2, corner))[2]
                row[x] = (row[x] + near) & 255
        for x in range(0, stride, size):
            pixel = (row[x], row[x + 1], row[x + 2])
            counts[pixel] = counts.get(pixel, 0) + 1
        before = row
    return width, height, counts


def main():
    xvfb_run, desk, folder = sys.argv[1:4]
    with tempfile.TemporaryDirectory() as home:
        picture = os.path.join(home, "desk.png")
        environment = dict(os.environ, HOME=home, XDG_CONFIG_HOME=home, XDG_DATA_HOME=home, XDG_RUNTIME_DIR=home, LC_ALL="C.UTF-8", QT_QPA_PLATFORM="xcb")
        command = [xvfb_run, "-a", "-s", f"-screen 0 {WIDTH}x{HEIGHT}x24", desk, os.path.join(folder, "reference.pdf"), os.path.join(folder, "candidate.pdf"),
                   "--appearance", "light", "--size", f"{WIDTH}x{HEIGHT}", "--screenshot", picture]
        subprocess.run(command, check=True, timeout=150, env=environment)
        width, height, counts = pixels_of(picture)
    assert (width, height) == (WIDTH, HEIGHT), (width, height)
    assert len(counts) > 50, f"{len(counts)} colours: blank?"
    assert max(counts.values()) < 0.97 * width * height, "one colour all over"
    for name, hue in (("slate", SLATE), ("ochre", OCHRE)):
        assert counts.get(hue, 0) > 100, f"no {name}"
    print(f"{len(counts)} colours, slate {counts[SLATE]}, ochre {counts[OCHRE]} pixels")


main()
