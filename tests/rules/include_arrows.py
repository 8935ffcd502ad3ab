#!/usr/bin/python3
"""Fails on an #include that goes against the arrows of DEVELOPERS.md.

include_arrows.py ROOT         checks the tree
include_arrows.py --self-test  checks that the check notices each kind of fault
"""
import re
import sys

from source_files import run

# folder -> folders of ours that it may include, besides itself
ALLOWED = {
    "model": set(),
    "text": {"model"},
    "quantity": {"model", "text"},
    "vocabulary": {"model", "quantity", "text"},
    "compare": {"model", "quantity", "text", "vocabulary"},
    "risk": {"model", "quantity", "text", "vocabulary", "compare"},
    "report": {"model", "quantity", "text", "vocabulary", "compare", "risk"},
    "record": {"model", "quantity", "text", "vocabulary", "compare", "risk", "report"},
    "cli": {"model", "quantity", "text", "vocabulary", "compare", "risk", "report", "record", "extractors"},
    "ui": {"model", "quantity", "text", "vocabulary", "compare", "risk", "report", "record", "cli", "extractors"},
    "extractors": {"model", "quantity", "text", "vocabulary"},
}
# third party -> the one folder that may include it
GATES = [
    (re.compile(r"^(poppler/|PDFDoc|OutputDev|GfxState|GfxFont|GlobalParams|Splash|Object\.h|Page\.h|Catalog\.h|Stream\.h|goo/)"), "extractors/poppler"),
    (re.compile(r"^(tesseract|leptonica)/"), "extractors/recognition"),
    (re.compile(r"^unicode/"), "src/text"),
    (re.compile(r"^dtl/"), "src/compare"),
    (re.compile(r"^Q[A-Z]|^Qt"), "ui"),
    (re.compile(r"^(cairo|pango)"), "src/report/pdf"),
    (re.compile(r"^png\.h"), "src/report"),
]
INCLUDE = re.compile(r'^\s*#\s*include\s*[<"]([^>"]+)[>"]')


def folder_of(path):
    parts = path.split("/")
    if parts[0] == "src" and len(parts) > 2:
        return parts[1]
    return parts[0] if parts[0] in ("extractors", "ui") else None


def faults_in(path, text):
    """Lines of one source file that break a rule. `path` is relative to the root."""
    owner = folder_of(path)
    if owner is None:
        return []
    faults = []
    for number, line in enumerate(text.splitlines(), 1):
        found = INCLUDE.match(line)
        if not found:
            continue
        target = found.group(1)
        for pattern, gate in GATES:
            if pattern.match(target) and not path.startswith(gate + "/"):
                faults.append(f"{path}:{number}: {target} may be included in {gate}/ only")
        first = target.split("/")[0]
        if "/" in target and first in ALLOWED and first != owner and first not in ALLOWED.get(owner, set()):
            faults.append(f"{path}:{number}: {owner}/ may not include {first}/")
    return faults


CASES = [
    ("src/model/a.h", '#include "quantity/decimal.h"', 1),
    ("src/compare/a.cpp", '#include "extractors/layout/layout.h"', 1),
    ("extractors/tables/a.cpp", '#include "compare/align.h"', 1),
    ("src/report/a.cpp", "#include <unicode/ustring.h>", 1),
    ("extractors/layout/a.cpp", "#include <OutputDev.h>", 1),
    ("extractors/poppler/a.cpp", "#include <OutputDev.h>", 0),
    ("extractors/poppler/a.cpp", "#include <tesseract/baseapi.h>", 1),
    ("extractors/recognition/a.cpp", "#include <leptonica/allheaders.h>", 0),
    ("src/cli/a.cpp", "#include <QString>", 1),
    ("src/report/a.cpp", "#include <cairo-pdf.h>", 1),
    ("src/report/pdf/a.cpp", "#include <pango/pangocairo.h>", 0),
    ("src/cli/a.cpp", "#include <png.h>", 1),
    ("src/risk/a.cpp", '#include "compare/align.h"', 0),
    ("src/risk/a.cpp", '#include "report/html_report.h"', 1),
    ("src/record/a.cpp", '#include "report/html_escape.h"', 0),
    ("src/report/a.cpp", '#include "record/record.h"', 1),
]

sys.exit(run(faults_in, CASES, ("src", "extractors", "ui")))
