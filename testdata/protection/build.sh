#!/bin/sh
# Both sheets from content.py: the reference through LibreOffice Writer, the candidate through Chromium's printing.
. "$(dirname "$0")/../tools/common.sh"
/usr/bin/python3 "$here/make.py" "$work"
odt_to_pdf "$work/reference.fodt" "$here/reference.pdf"
html_to_pdf "$work/candidate.html" "$here/candidate.pdf"
/usr/bin/python3 "$here/labels.py"
