#!/usr/bin/python3
"""Write labels/reference.json and labels/candidate.json beside the PDFs. Called by build.sh after printing."""

import os
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path.insert(0, os.path.join(HERE, "..", "tools"))

import importlib.util

import content

spec = importlib.util.spec_from_file_location("label_tools", os.path.join(HERE, "..", "tools", "labels.py"))
label_tools = importlib.util.module_from_spec(spec)
spec.loader.exec_module(label_tools)

NOTES = ("Table 1 is a selection table (no rows). Headings inside table 5 go in front of the name. "
         "The pages of the external parts and of the package dimensions are not labelled.")


def main():
    for side in ("reference", "candidate"):
        pick = (lambda a, b: a) if side == "reference" else (lambda a, b: b)
        general = pick("Ta=25 °C unless otherwise specified", "TA = 25 °C unless otherwise specified")
        rows = [label_tools.row("rating", name, symbol, None, general, low, None, high, unit) for name, symbol, _, low, high, unit in content.ratings(pick)]
        rows += [label_tools.row("operating-condition", name, symbol, condition, None, low, middle, high, unit)
                 for name, symbol, condition, low, middle, high, unit in content.operating(pick)]
        for group, name, symbol, lines, unit in content.characteristics(pick):
            rows += [label_tools.row("characteristic", f"{group} {name}", symbol, condition, general, low, middle, high, unit)
                     for condition, low, middle, high in lines]
        pdf = os.path.join(HERE, f"{side}.pdf")
        rows = label_tools.place(rows, pdf)
        last = max(entry["page"] for entry in rows)
        pins = [{"number": number, "name": name, "function": function} for number, name, function in content.PINS]
        os.makedirs(os.path.join(HERE, "labels"), exist_ok=True)
        label_tools.write(os.path.join(HERE, "labels", f"{side}.json"), f"{side}.pdf", list(range(1, last + 1)), rows, pins, NOTES)


if __name__ == "__main__":
    main()
