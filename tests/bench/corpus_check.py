#!/usr/bin/python3
"""Reads and compares every PDF of a folder and says what went wrong.

corpus_check.py STANDIN FOLDER

For each PDF: `read` ends with 0, or with 2 and one line, within 20 s and 200 MB;
`compare` with a copy that qpdf saved again has no finding but coverage, and
pairs its parameters; numbers add up. Exits with 1 where any of that fails.
Needs qpdf.
"""
import json
import os
import subprocess
import sys
import tempfile
import time

SECONDS = 20
MEGABYTES = 200


def run(command):
    begin = time.monotonic()
    process = subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.PIPE)
    try:
        out, err = process.communicate(timeout=4 * SECONDS)
    except subprocess.TimeoutExpired:
        process.kill()
        return None, b"", "no end", 4 * SECONDS
    return process.returncode, out, err.decode("utf-8", "replace"), time.monotonic() - begin


def peak_megabytes(command):
    done = subprocess.run(["/usr/bin/env", "python3", "-c",
                           "import resource,subprocess,sys; subprocess.run(sys.argv[1:],stdout=subprocess.DEVNULL,stderr=subprocess.DEVNULL);"
                           "print(resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss)", *command], capture_output=True, text=True)
    return int(done.stdout) / 1024


def check(standin, path, folder):
    faults, name = [], os.path.basename(path)
    status, out, err, seconds = run([standin, "read", path, "--json", "-"])
    if seconds > SECONDS:
        faults.append(f"{name}: read took {seconds:.1f} s")
    if status == 2:
        if err.count("\n") != 1 or not err.startswith("standin: "):
            faults.append(f"{name}: exit 2 without one clear line: {err!r}")
        print(f"  {name}: {err.strip()}")
        return faults, None
    if status != 0:
        return faults + [f"{name}: read ended with {status}: {err[:200]}"], None
    megabytes = peak_megabytes([standin, "read", path, "--json", "-"])
    if megabytes > MEGABYTES:
        faults.append(f"{name}: read took {megabytes:.0f} MB")
    sheet = json.loads(out)
    c = sheet["coverage"]
    owned = c["in_parameters"] + c["in_tables"] + c["in_text"] + c["in_figures"] + c["in_furniture"]
    if c["numbers"] != owned + len(c["unaccounted"]):
        faults.append(f"{name}: {c['numbers']} numbers, {owned} owned, {len(c['unaccounted'])} unaccounted")
    again = os.path.join(folder, "again.pdf")
    subprocess.run(["qpdf", "--object-streams=generate", path, again], stderr=subprocess.DEVNULL)
    status, out, err, _ = run([standin, "compare", path, again, "--json", "-"])
    if status not in (0, 1):
        return faults + [f"{name}: compare ended with {status}: {err[:200]}"], c
    comparison = json.loads(out)
    loud = [f for f in comparison["findings"] if f["kind"] != "coverage"]
    for finding in loud[:3]:
        faults.append(f"{name}: saved again: {finding['kind']} {finding['relation']} {finding['title'][:80]}")
    if sheet["parameters"] and len([p for p in comparison["pairs"] if p["reference"] and p["candidate"]]) < len(sheet["parameters"]):
        faults.append(f"{name}: {len(sheet['parameters'])} parameters, {len(comparison['pairs'])} pairs")
    return faults, c


def main():
    standin, folder = sys.argv[1:3]
    faults, numbers, unaccounted, count = [], 0, 0, 0
    with tempfile.TemporaryDirectory() as scratch:
        for name in sorted(os.listdir(folder)):
            if not name.endswith(".pdf"):
                continue
            count += 1
            found, coverage = check(standin, os.path.join(folder, name), scratch)
            faults += found
            if coverage:
                numbers += coverage["numbers"]
                unaccounted += len(coverage["unaccounted"])
    for fault in faults:
        print(fault)
    share = 100 * unaccounted / numbers if numbers else 0
    print(f"{count} documents, {len(faults)} faults, {numbers} numbers, {share:.2f} % unaccounted for")
    return 1 if faults or count == 0 else 0


sys.exit(main())
