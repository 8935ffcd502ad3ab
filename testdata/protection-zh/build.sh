#!/bin/sh
# The Chinese sheet through Chromium's printing.
. "$(dirname "$0")/../tools/common.sh"
/usr/bin/python3 "$here/make.py" html "$work/sheet.html"
html_to_pdf "$work/sheet.html" "$here/reference-zh.pdf"
/usr/bin/python3 "$here/make.py" labels
