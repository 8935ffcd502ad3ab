#!/usr/bin/python3
"""Validates every line of the golden records against the JSON Schema of records.

check_record_schema.py ROOT
"""
import glob
import json
import os
import sys

import jsonschema


def main():
    root = sys.argv[1]
    with open(os.path.join(root, "src/report/schemas/standin.record.1.schema.json"), encoding="utf-8") as file:
        schema = json.load(file)
    jsonschema.Draft202012Validator.check_schema(schema)
    validator = jsonschema.Draft202012Validator(schema)
    lines = 0
    for path in sorted(glob.glob(os.path.join(root, "tests/golden/record/*.record"))):
        with open(path, encoding="utf-8") as file:
            for text in file:
                line = json.loads(text)
                validator.validate(line)
                lines += 1
                # Written by another language, an entry has the same bytes: the format is open.
                assert json.dumps(line, sort_keys=True, separators=(",", ":"), ensure_ascii=False) + "\n" == text or line["kind"] == "opened", path
    assert lines > 0, "no golden record was found"
    # A schema that accepts anything would check nothing.
    last = dict(line)
    for wrong in ({**last, "count": 0}, {**last, "kind": "decided"}, {**last, "signature": last["signature"].upper()}, {"schema": "standin.record/1"}):
        assert not validator.is_valid(wrong), wrong
    print(f"{lines} lines hold to their schema")


main()
