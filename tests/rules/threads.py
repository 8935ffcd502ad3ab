#!/usr/bin/python3
"""Fails where a thread is started outside of src/model/crew.cpp and ui/.

threads.py ROOT         checks the tree
threads.py --self-test  checks that the check notices each kind of fault
"""
import re
import sys

from source_files import run

CREW = "src/model/crew.cpp"
START = re.compile(r"\b(std::(?:thread|jthread|async)|pthread_create)\b(?!::)")  # std::thread::id starts none
COMMENT = re.compile(r"//.*")


def faults_in(path, text):
    """Lines of one source file that start a thread. `path` is relative to the root."""
    if path == CREW:
        return []
    faults = []
    for number, line in enumerate(text.splitlines(), 1):
        for found in START.findall(COMMENT.sub("", line)):
            faults.append(f"{path}:{number}: {found}; work is shared by model/crew.h")
    return faults


CASES = [
    ("src/risk/a.cpp", "    std::thread other([&] { judge(); });", 1),
    ("src/risk/a.h", "    std::vector<std::jthread> threads;", 1),
    ("extractors/a.cpp", "    auto later = std::async(std::launch::async, read);", 1),
    ("extractors/poppler/a.cpp", "    pthread_create(&id, nullptr, read, nullptr);", 1),
    ("src/model/crew.cpp", "    std::thread([this] { help(); }).detach();", 0),
    ("src/risk/crew.cpp", "    std::thread([this] { help(); }).detach();", 1),
    ("src/model/a.h", "    std::thread::id owner = std::this_thread::get_id();", 0),
    ("src/model/a.h", "    int kept;  // once by std::async", 0),
    ("src/model/a.h", "#include <thread>", 0),
]

sys.exit(run(faults_in, CASES, ("src", "extractors")))
