#!/bin/sh
# The one-feature sheets with reportlab and by hand; two of them encrypted by qpdf (the keys are random, so those two differ from run to run).
. "$(dirname "$0")/../tools/common.sh"
/usr/bin/python3 "$here/make.py" "$here"
cp "$here/labels/plain.json" "$work/plain.json"
printf 'weather-logger\n' > "$here/encrypted-user-password.txt"
qpdf --encrypt "" owner-word 256 -- "$here/plain.pdf" "$here/encrypted-empty-password.pdf"
qpdf --encrypt weather-logger owner-word 256 -- "$here/plain.pdf" "$here/encrypted-user-password.pdf"
for name in encrypted-empty-password encrypted-user-password; do
    sed "s/plain.pdf/$name.pdf/" "$work/plain.json" > "$here/labels/$name.json"
done
