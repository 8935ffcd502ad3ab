#!/usr/bin/python3
"""Validates the program's JSON outputs against the project's JSON Schema files.

check_schemas.py STANDIN ROOT
"""
import json
import os
import subprocess
import sys

import jsonschema


def output(command):
    done = subprocess.run(command, capture_output=True, timeout=120)
    if done.returncode not in (0, 1):
        sys.exit(f"{command}: exit status {done.returncode}: {done.stderr.decode()}")
    return json.loads(done.stdout)


def main():
    standin, root = sys.argv[1:3]
    schemas = {}
    for name in ("datasheet", "comparison", "vocabulary", "corrections", "cell", "circuit"):
        with open(os.path.join(root, f"src/report/schemas/standin.{name}.1.schema.json"), encoding="utf-8") as file:
            schemas[name] = json.load(file)
            jsonschema.Draft202012Validator.check_schema(schemas[name])
    checked = 0
    data = os.path.join(root, "testdata")
    for folder, reference, candidate in (("protection", "reference.pdf", "candidate.pdf"), ("regulator", "reference.pdf", "candidate.pdf"),
                                         ("mosfet", "revision-b.pdf", "revision-c.pdf")):
        pair = [os.path.join(data, folder, name) for name in (reference, candidate)]
        jsonschema.validate(output([standin, "compare", *pair, "--json", "-"]), schemas["comparison"])
        checked += 1
        for path in pair:
            sheet = output([standin, "read", path, "--json", "-"])
            jsonschema.validate(sheet, schemas["datasheet"])
            assert sheet["parameters"], path
            checked += 1
    corrections = os.path.join(data, "protection", "corrections.json")
    with open(corrections, encoding="utf-8") as file:
        jsonschema.validate(json.load(file), schemas["corrections"])
    pair = [os.path.join(data, "protection", name) for name in ("reference.pdf", "candidate.pdf")]
    comparison = output([standin, "compare", *pair, "--corrections", corrections, "--json", "-"])
    jsonschema.validate(comparison, schemas["comparison"])
    assert [c["outcome"] for c in comparison["candidate"]["corrections"]] == ["applied"] * 3, comparison["candidate"]["corrections"]
    sheet = output([standin, "read", pair[1], "--corrections", corrections, "--json", "-"])
    jsonschema.validate(sheet, schemas["datasheet"])
    assert [p["corrected"] for p in sheet["parameters"] if p["corrected"]] == [["max"], ["parameter"]]
    checked += 3
    given = [os.path.join(data, "protection", name) for name in ("cell.json", "circuit.json")]
    for name, path in zip(("cell", "circuit"), given):
        with open(path, encoding="utf-8") as file:
            jsonschema.validate(json.load(file), schemas[name])
    around = ["--cell", given[0], "--circuit", given[1]]
    for command in (["compare", *pair], ["check", pair[1]]):
        comparison = output([standin, *command, *around, "--json", "-"])
        jsonschema.validate(comparison, schemas["comparison"])
        assert len(comparison["cell"]) == 17 and len(comparison["derived"]) > 10, command
    checked += 4
    vocabularies = os.path.join(root, "src/vocabulary/data")
    for name in sorted(os.listdir(vocabularies)):
        with open(os.path.join(vocabularies, name), encoding="utf-8") as file:
            jsonschema.validate(json.load(file), schemas["vocabulary"])
        checked += 1
    # A schema that accepts anything would check nothing.
    for name, schema in schemas.items():
        if jsonschema.Draft202012Validator(schema).is_valid({"schema": "another"}):
            sys.exit(f"the schema of {name} accepts anything")
    print(f"{checked} documents hold to their schemas")


main()
