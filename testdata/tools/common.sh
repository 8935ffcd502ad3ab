# Sourced by the build.sh of each folder. Not used by tests: those take the PDFs as they lie here.
set -eu
export PYTHONDONTWRITEBYTECODE=1
export SOURCE_DATE_EPOCH=1700000000 TZ=UTC LC_ALL=C.UTF-8
here=$(cd "$(dirname "$0")" && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

# fix_dates FILE.pdf      sets the times in the document information to one fixed moment, byte for byte as long
fix_dates() {
    /usr/bin/python3 - "$1" <<'PY'
import re, sys
data = open(sys.argv[1], "rb").read()
data = re.sub(rb"\(D:\d{14}", b"(D:20231114221320", data)
open(sys.argv[1], "wb").write(data)
PY
}

# odt_to_pdf FILE.fodt OUT.pdf
odt_to_pdf() {
    soffice "-env:UserInstallation=file://$work/profile" --headless --convert-to pdf:writer_pdf_Export --outdir "$work" "$1" >/dev/null 2>&1
    mv "$work/$(basename "$1" .fodt).pdf" "$2"
    fix_dates "$2"
}

# html_to_pdf FILE.html OUT.pdf
html_to_pdf() {
    chromium --headless --no-sandbox --disable-gpu --user-data-dir="$work/chromium" --no-pdf-header-footer --print-to-pdf="$2" "file://$1" >/dev/null 2>&1
    fix_dates "$2"
}
