#!/usr/bin/python3
"""Changes one digit at a time in copies of datasheets: each has to give a finding.

owner_classes.py STANDIN FOLDER|FILE… [--seed S] [--each N] [--tries T] [--show]

A digit belongs to a parameter, another table, text, a figure or furniture, and a
change in any of them must be seen. For every sheet, digits are drawn at random
until N of each class were changed or T copies were made. A copy counts where
pdftotext sees one changed digit in it; its class is that part of the reading that
changed, "lost" where none did though the page looks otherwise. Prints a line a sheet and the sums; exits with 1
where a change was not found. Needs python3-pikepdf and poppler-utils.
"""
import argparse
import collections
import json
import os
import random
import re
import subprocess
import sys
import tempfile

import pikepdf

CLASSES = ("furniture", "parameter", "table", "figure", "text")  # in the order in which a difference decides


def character_map(font):
    """code -> character of a font, as its ToUnicode says; of one-byte fonts plain ASCII where it says nothing."""
    wide = font.get("/Subtype") == "/Type0"
    codes = {} if wide else {code: chr(code) for code in range(32, 127)}
    if "/ToUnicode" not in font:
        return codes, wide
    data = font["/ToUnicode"].read_bytes().decode("latin-1")
    for block in re.findall(r"beginbfchar(.*?)endbfchar", data, re.S):
        for code, text in re.findall(r"<(\w+)>\s*<(\w+)>", block):
            codes[int(code, 16)] = chr(int(text[-4:], 16))
    for block in re.findall(r"beginbfrange(.*?)endbfrange", data, re.S):
        for first, last, text in re.findall(r"<(\w+)>\s*<(\w+)>\s*<(\w+)>", block):
            for code in range(int(first, 16), min(int(last, 16), int(first, 16) + 255) + 1):
                codes[code] = chr(int(text[-4:], 16) + code - int(first, 16))
    return codes, wide


def digits_of(pdf):
    """Places of digits: (page, instruction, piece, byte offset, [codes of other digits], wide)."""
    places = []
    for number, page in enumerate(pdf.pages):
        fonts, maps, current = page.get("/Resources", {}).get("/Font", {}), {}, None
        shown = collections.defaultdict(set)
        found = []
        for index, (operands, operator) in enumerate(pikepdf.parse_content_stream(page)):
            if str(operator) == "Tf":
                current = str(operands[0])
            if str(operator) not in ("Tj", "TJ") or current not in fonts:
                continue
            if current not in maps:
                maps[current] = character_map(fonts[current])
            codes, wide = maps[current]
            step = 2 if wide else 1
            for at, piece in enumerate(operands[0] if str(operator) == "TJ" else [operands[0]]):
                if not isinstance(piece, pikepdf.String):
                    continue
                raw = bytes(piece)
                for offset in range(0, len(raw) - step + 1, step):
                    code = int.from_bytes(raw[offset:offset + step], "big")
                    if codes.get(code, "") in tuple("0123456789"):
                        shown[current].add(code)
                        found.append((number, index, at, offset, code, current, wide))
        for number_, index, at, offset, code, font, wide in found:
            others = sorted(other for other in shown[font] if maps[font][0][other] != maps[font][0][code])
            if others:
                places.append((number_, index, at, offset, others, wide))
    return places


def changed_copy(path, place, rng, out):
    number, index, at, offset, others, wide = place
    with pikepdf.open(path) as pdf:
        page = pdf.pages[number]
        instructions = list(pikepdf.parse_content_stream(page))
        operands, operator = instructions[index]
        operands = list(operands)
        pieces = list(operands[0]) if str(operator) == "TJ" else [operands[0]]
        raw, step = bytearray(bytes(pieces[at])), 2 if wide else 1
        raw[offset:offset + step] = rng.choice(others).to_bytes(step, "big")
        pieces[at] = pikepdf.String(bytes(raw))
        operands[0] = pikepdf.Array(pieces) if str(operator) == "TJ" else pieces[0]
        instructions[index] = (operands, operator)
        page.Contents = pdf.make_stream(pikepdf.unparse_content_stream(instructions))
        pdf.save(out)


def printed(path):
    return subprocess.run(["pdftotext", "-raw", path, "-"], capture_output=True, timeout=120).stdout.decode("utf-8", "replace")


def picture(path, page):
    return subprocess.run(["pdftoppm", "-f", str(page), "-l", str(page), "-r", "100", "-gray", path], capture_output=True, timeout=120).stdout


def one_digit(before, after):
    """The changed line, where the texts differ in one digit and nothing else."""
    if len(before) != len(after):
        return None
    places = [i for i in range(len(before)) if before[i] != after[i]]
    if len(places) != 1 or not (before[places[0]].isdigit() and after[places[0]].isdigit()):
        return None
    begin, end = after.rfind("\n", 0, places[0]) + 1, after.find("\n", places[0])
    return before[begin:end].strip(), after[begin:end].strip()


def parts(sheet):
    """What each class holds, without ids and places."""
    def values(p):
        return [p["name"], p["symbol"], p["condition"], p["table_condition"], p["unit"], p["printed"]] + [(p[k] or {}).get("text") for k in ("min", "typ", "max")]
    return {
        "furniture": [f["text"] for f in sheet["furniture"]],
        "parameter": [values(p) for p in sheet["parameters"]],
        "table": [[t["caption"], t["lead"], [c["text"] for c in t["cells"]]] for t in sheet["tables"]],
        "figure": [[f["caption"], [t["text"] for t in f["texts"]]] for f in sheet["figures"]],
        "text": [x["text"] for x in sheet["text"]] + [s["title"] for s in sheet["sections"]],
    }


def read(standin, path, out):
    subprocess.run([standin, "read", path, "--json", out], check=True, capture_output=True, timeout=120)
    with open(out, encoding="utf-8") as file:
        return parts(json.load(file))


def findings(standin, reference, candidate):
    done = subprocess.run([standin, "compare", reference, candidate, "--json", "-"], capture_output=True, timeout=120)
    return [f for f in json.loads(done.stdout)["findings"] if f["kind"] != "coverage"]


def check(standin, path, options, folder):
    rng, name = random.Random(f"{options.seed} {os.path.basename(path)}"), os.path.basename(path)
    base, base_json, copy, copy_json = (os.path.join(folder, n) for n in ("base.pdf", "base.json", "copy.pdf", "copy.json"))
    with pikepdf.open(path) as pdf:
        pdf.save(base)
    with pikepdf.open(base) as pdf:
        places = digits_of(pdf)
    rng.shuffle(places)
    before, known = printed(base), read(standin, base, base_json)
    made, missed = collections.Counter(), []
    for place in places[:options.tries]:
        if all(made[c] >= options.each for c in CLASSES):
            break
        changed_copy(base, place, rng, copy)
        lines = one_digit(before, printed(copy))
        if lines is None:
            continue
        now = read(standin, copy, copy_json)
        owner = next((c for c in CLASSES if now[c] != known[c]), "lost")
        if owner == "lost" and picture(base, place[0] + 1) == picture(copy, place[0] + 1):
            continue  # text that is not drawn: nobody can read it
        if made[owner] >= options.each:
            continue
        made[owner] += 1
        if not findings(standin, base_json, copy_json):
            missed.append((owner, place[0] + 1, *lines))
    print(f"{name:36} " + " ".join(f"{c} {made[c]}" for c in (*CLASSES, "lost")) + f"  missed {len(missed)}", flush=True)
    if options.show:
        for owner, page, old, new in missed:
            print(f"    {owner}, page {page}: {old[:90]!r} -> {new[:90]!r}")
    return made, missed


def main():
    arguments = argparse.ArgumentParser()
    arguments.add_argument("standin")
    arguments.add_argument("sheets", nargs="+")
    arguments.add_argument("--seed", default="1")
    arguments.add_argument("--each", type=int, default=3)
    arguments.add_argument("--tries", type=int, default=60)
    arguments.add_argument("--show", action="store_true")
    options = arguments.parse_args()
    files = []
    for sheet in options.sheets:
        files += sorted(os.path.join(sheet, n) for n in os.listdir(sheet) if n.endswith(".pdf")) if os.path.isdir(sheet) else [sheet]
    total, misses = collections.Counter(), 0
    with tempfile.TemporaryDirectory() as folder:
        for path in files:
            made, missed = check(options.standin, path, options, folder)
            total += made
            misses += len(missed)
    print(f"{sum(total.values())} digits changed in {len(files)} sheets ({', '.join(f'{c} {total[c]}' for c in (*CLASSES, 'lost'))}), {misses} not found")
    return 1 if misses or not total else 0


sys.exit(main())
