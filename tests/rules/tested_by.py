#!/usr/bin/python3
"""Fails where a source file names a test file that there is none of.

A path is taken from the root; a bare name may stand in any folder of tests/.

tested_by.py ROOT         checks the tree
tested_by.py --self-test  checks that the check notices each kind of fault
"""
import os
import re
import sys

from source_files import run

TEST = re.compile(r"[\w/]*\w_test\.cpp")
COMMENT = re.compile(r"//(.*)")


def test_files(root):
    """Paths of all test files, relative to the root."""
    found = set()
    for folder, _, names in os.walk(os.path.join(root, "tests")):
        found.update(os.path.relpath(os.path.join(folder, name), root) for name in names if name.endswith("_test.cpp"))
    return found


def is_there(name, tests):
    return name in tests if "/" in name else any(path.endswith("/" + name) for path in tests)


def faults_in(path, text, tests):
    """Names in the comments of one source file that no test file has. `path` is relative to the root."""
    faults = []
    for number, line in enumerate(text.splitlines(), 1):
        comment = COMMENT.search(line)
        for name in TEST.findall(comment.group(1)) if comment else []:
            if not is_there(name, tests):
                faults.append(f"{path}:{number}: {name} is no test file")
    return faults


KNOWN = {"tests/src/a/b_test.cpp"}
CASES = [
    ("src/a/b.cpp", "// Tested by tests/src/a/b_test.cpp.", 0),
    ("src/a/b.cpp", "// Tested by b_test.cpp.", 0),
    ("src/a/b.cpp", "// Tested by tests/src/a/c_test.cpp.", 1),
    ("src/a/b.cpp", "// Tested by c_test.cpp and b_test.cpp.", 1),
    ("src/a/b.cpp", "// Tested by\n// tests/src/b_test.cpp.", 1),
    ("src/a/b.cpp", "int tested = 1;", 0),
]

TESTS = KNOWN if sys.argv[1] == "--self-test" else test_files(sys.argv[1])
sys.exit(run(lambda path, text: faults_in(path, text, TESTS), CASES, ("src", "extractors", "ui")))
