#!/usr/bin/python3
"""program_command_line.py STANDIN_DESK: what can be said without a window."""
import os
import subprocess
import sys

ENVIRONMENT = dict(os.environ, QT_QPA_PLATFORM="offscreen", LC_ALL="C.UTF-8")


NO_DISPLAY = {name: value for name, value in ENVIRONMENT.items() if name not in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")}


def run(*arguments, environment=ENVIRONMENT):
    return subprocess.run([sys.argv[1], *arguments], capture_output=True, text=True, timeout=50, env=environment)


helped = run("--help")
assert helped.returncode == 0 and "REFERENCE" in helped.stdout and "CANDIDATE" in helped.stdout, helped
for asked in ("--help", "--version"):
    bare = run(asked, environment=NO_DISPLAY)
    assert bare.returncode == 0 and bare.stdout, bare
version = run("--version")
assert version.returncode == 0 and version.stdout.startswith("standin-desk "), version
one = run("only-one.pdf")
assert one.returncode == 2 and "give two files" in one.stderr, one
unknown = run("--no-such-option")
assert unknown.returncode != 0, unknown
print("as it should be")
