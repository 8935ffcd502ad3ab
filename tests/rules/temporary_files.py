#!/usr/bin/python3
"""Fails where a test asks the system for its folder of temporary files by itself.

Tests run side by side: what they write belongs in a testing::TemporaryFolder.

temporary_files.py ROOT         checks the tree
temporary_files.py --self-test  checks that the check notices each kind of fault
"""
import re
import sys

from source_files import run

HELPER = "tests/support/temporary_folder.h"
SHARED = re.compile(r"\b(temp_directory_path|TempDir(?=\(\))|tmpnam|QDir::tempPath)\b")


def faults_in(path, text):
    """Lines of one source file that do so. `path` is relative to the root."""
    if path == HELPER:
        return []
    return [f"{path}:{number}: {found}; use support/temporary_folder.h" for number, line in enumerate(text.splitlines(), 1) for found in SHARED.findall(line)]


CASES = [
    ("tests/src/a_test.cpp", '    auto const path = ::testing::TempDir() + "/page.pdf";', 1),
    ("tests/src/a_test.cpp", '    auto const path = std::filesystem::temp_directory_path() / "page.pdf";', 1),
    ("tests/ui/a_test.cpp", '    auto const path = QDir::tempPath() + "/page.pdf";', 1),
    ("tests/src/a_test.cpp", "    testing::TemporaryFolder const folder;", 0),
    ("tests/ui/a_test.cpp", "    QTemporaryDir const folder;", 0),
    ("tests/support/temporary_folder.h", "    auto name = std::filesystem::temp_directory_path();", 0),
]

sys.exit(run(faults_in, CASES, ("tests",)))
