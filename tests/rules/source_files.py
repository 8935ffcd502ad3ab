"""What the checks of source files share: the walk over the tree, the report, the self-test.

    sys.exit(run(faults_in, CASES, ("src", "extractors")))

`faults_in(path, text)` lists the faults of one file, whose path is relative to the root; a
case is such a path, a text, and how many faults are to be noticed in it.
"""
import os
import sys


def sources(root, tops):
    for top in tops:
        for folder, _, names in os.walk(os.path.join(root, top)):
            for name in names:
                if name.endswith((".h", ".cpp")):
                    path = os.path.join(folder, name)
                    with open(path, encoding="utf-8") as source:
                        yield os.path.relpath(path, root), source.read()


def self_test(faults_in, cases):
    wrong = [c for c in cases if len(faults_in(c[0], c[1])) != c[2]]
    for case in wrong:
        print("not noticed as it should be:", case)
    return 1 if wrong else 0


def run(faults_in, cases, tops):
    """The exit code: 1 where there is a fault, or no file at all."""
    if sys.argv[1] == "--self-test":
        return self_test(faults_in, cases)
    faults, seen = [], 0
    for path, text in sources(sys.argv[1], tops):
        seen += 1
        faults += faults_in(path, text)
    for fault in faults:
        print(fault)
    print(f"{seen} files, {len(faults)} faults")
    return 1 if faults or seen == 0 else 0
