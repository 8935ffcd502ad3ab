#!/bin/sh
# Both revisions drawn with cairo.
. "$(dirname "$0")/../tools/common.sh"
/usr/bin/python3 "$here/make.py" "$here"
