#!/usr/bin/python3
"""Fails where a text that users read calls a part safe, equivalent and the like.

forbidden_words.py ROOT: looks at string literals of the folders that write for
users and at the texts of the vocabulary. Names of match keys (phrases looked for
in datasheets) are data, not statements of ours, and are left out.
"""
import json
import os
import re
import sys

WORDS = re.compile(r"\b(safe|equivalent|certified|approved|no risk|risk-free|100 ?%|drop-in)\b", re.I)
# Said about the words themselves, or in a standing term.
ALLOWED = re.compile(r"suspected.equivalent|suspected equivalent|not an approval|safe operating area|fire-safe", re.I)
LITERAL = re.compile(r'"((?:[^"\\]|\\.)*)"')
FOLDERS = ("src/risk", "src/report", "src/record", "src/cli")
# States of a record, which people sign; never said of a part.
RECORD_STATES = ("approved", "approved with conditions")
USER_TEXTS = ("title", "text", "check", "higher", "lower", "concern", "meaning", "when")


def offending(text):
    return WORDS.search(ALLOWED.sub("", text))


def texts_of(value, key=None):
    if isinstance(value, dict):
        for k, v in value.items():
            yield from texts_of(v, k)
    elif isinstance(value, list):
        for v in value:
            yield from texts_of(v, key)
    elif isinstance(value, str) and key in USER_TEXTS + ("statements",):
        yield value


def main():
    root = sys.argv[1]
    faults, seen = [], 0
    assert offending("this part is safe") and not offending("fire-safe set-up")
    for folder in FOLDERS:
        for base, _, names in os.walk(os.path.join(root, folder)):
            for name in sorted(names):
                if not name.endswith((".cpp", ".h")):
                    continue
                for number, line in enumerate(open(os.path.join(base, name), encoding="utf-8"), 1):
                    if line.lstrip().startswith(("//", "#include")):
                        continue
                    for literal in LITERAL.findall(line):
                        seen += 1
                        if folder == "src/record" and literal in RECORD_STATES:
                            continue
                        if offending(literal):
                            faults.append(f"{folder}/{name}:{number}: {literal}")
    data = os.path.join(root, "src/vocabulary/data")
    for name in sorted(os.listdir(data)):
        for text in texts_of(json.load(open(os.path.join(data, name), encoding="utf-8"))):
            seen += 1
            if offending(text):
                faults.append(f"src/vocabulary/data/{name}: {text}")
    for fault in faults:
        print(fault)
    print(f"{seen} texts, {len(faults)} faults")
    return 1 if faults or seen == 0 else 0


sys.exit(main())
