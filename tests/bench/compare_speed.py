#!/usr/bin/python3
"""How long a comparison takes, as a share of pdftotext over the same two files.

compare_speed.py STANDIN FOLDER [--pairs N] [--runs R]

Pairs neighbours by name of the PDFs in FOLDER (only those that standin can
compare), N pairs spread over the folder, and times with hyperfine, in one run
on one machine:

    standin compare A B --json -          against
    pdftotext A - ; pdftotext B -

Prints wall and CPU ratios of each pair and their medians. Limits to hold:
wall 0.8, CPU 1.25.
"""
import argparse
import json
import os
import shlex
import statistics
import subprocess
import sys
import tempfile


def comparable(standin, a, b):
    done = subprocess.run([standin, "compare", a, b, "--json", os.devnull], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    return done.returncode in (0, 1)


def pairs_of(standin, folder, count):
    files = sorted(os.path.join(folder, n) for n in os.listdir(folder) if n.endswith(".pdf"))
    neighbours = [(files[i], files[i + 1]) for i in range(0, len(files) - 1, 2)]
    step = max(1, len(neighbours) // count)
    ordered = neighbours[::step] + [p for i, p in enumerate(neighbours) if i % step]
    chosen = []
    for pair in ordered:
        if len(chosen) == count:
            break
        if comparable(standin, *pair):
            chosen.append(pair)
    return chosen


def measured(commands, runs):
    with tempfile.NamedTemporaryFile(suffix=".json") as out:
        subprocess.run(["hyperfine", "--warmup", "2", "--runs", str(runs), "--ignore-failure", "--style", "none", "--export-json", out.name, *commands],
                       check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        return json.load(open(out.name))["results"]


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("standin")
    parser.add_argument("folder")
    parser.add_argument("--pairs", type=int, default=10)
    parser.add_argument("--runs", type=int, default=10)
    a = parser.parse_args()
    wall, cpu = [], []
    for first, second in pairs_of(a.standin, a.folder, a.pairs):
        x, y, exe = shlex.quote(first), shlex.quote(second), shlex.quote(a.standin)
        ours, theirs = measured([f"{exe} compare {x} {y} --json - >/dev/null", f"pdftotext {x} - >/dev/null; pdftotext {y} - >/dev/null"], a.runs)
        w = ours["median"] / theirs["median"]
        c = (ours["user"] + ours["system"]) / (theirs["user"] + theirs["system"])
        wall.append(w)
        cpu.append(c)
        print(f"{os.path.basename(first)} + {os.path.basename(second)}: {ours['median'] * 1000:.0f} ms against {theirs['median'] * 1000:.0f} ms, wall {w:.2f}, CPU {c:.2f}")
    if not wall:
        sys.exit("no pair could be compared")
    print(f"median of {len(wall)} pairs: wall {statistics.median(wall):.2f} (limit 0.8), CPU {statistics.median(cpu):.2f} (limit 1.25)")


main()
