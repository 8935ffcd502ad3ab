"""Write label files (the format of the labelled corpus) from the rows a sheet was made of, with each row's page looked up in the PDF."""

import json
import re
import subprocess
import unicodedata

from sheet import plain

FIELDS = ("page", "kind", "name", "symbol", "condition", "table_condition", "variant", "min", "typ", "max", "unit")


def tidy(value):
    """Label spelling of a printed string: joined symbols, hyphen for every dash and minus."""
    return None if value is None else plain(value).replace("\u2212", "-").replace("\u2013", "-")


def row(kind, name, symbol, condition, table_condition, low, middle, high, unit, variant=None):
    values = (kind, name, symbol, condition, table_condition, variant, low, middle, high, unit)
    return dict(zip(FIELDS[1:], map(tidy, values)))


def squeeze(text):
    return re.sub(r"[\s\u2212\u2013-]+", "", unicodedata.normalize("NFKC", text))


def place(rows, pdf, first_page=1):
    """Give each row the page on which its values stand, in order from first_page on; stop with an error where there is none."""
    pages = subprocess.run(["pdftotext", "-raw", pdf, "-"], capture_output=True, text=True, check=True).stdout.split("\f")
    at = first_page
    out = []
    for entry in rows:
        values = squeeze("".join(v for v in (entry["min"], entry["typ"], entry["max"]) if v))
        if entry["kind"] == "rating":
            values = squeeze(entry["max"] or entry["min"])
        word = squeeze((entry["name"] or entry["symbol"]).split()[-1])
        for page in range(at, len(pages) + 1):
            text = squeeze(pages[page - 1])
            if values in text and word in text:
                at = page
                break
        else:
            raise SystemExit(f"{pdf}: no page for {entry}")
        out.append({"page": at, **entry})
    return out


def write(path, pdf, labelled_pages, rows, pins, notes):
    head = {"pdf": pdf, "labelled_pages": labelled_pages}
    lines = ",\n".join("  " + json.dumps({key: entry.get(key) for key in FIELDS}, ensure_ascii=False) for entry in rows)
    pin_lines = ",\n".join("  " + json.dumps(pin, ensure_ascii=False) for pin in pins)
    with open(path, "w", encoding="utf-8") as file:
        file.write(json.dumps(head, ensure_ascii=False)[:-1] + ',\n "rows": [\n' + lines + '\n ],\n "pins": [\n' + pin_lines + "\n ],\n")
        file.write(' "notes": ' + json.dumps(notes, ensure_ascii=False) + "}\n")


def check(rows, pdf):
    """Stop with an error where a value, name or unit of a row is not in the text of its page."""
    pages = subprocess.run(["pdftotext", "-raw", pdf, "-"], capture_output=True, text=True, check=True).stdout.split("\f")
    for entry in rows:
        text = squeeze(pages[entry["page"] - 1])
        for key in ("min", "typ", "max", "unit"):
            if entry[key] and squeeze(entry[key]) not in text:
                raise SystemExit(f"{pdf}: {key} not on page: {entry}")
        for word in (entry["name"] or "").split():
            if squeeze(word) not in text:
                raise SystemExit(f"{pdf}: {word} not on page: {entry}")
