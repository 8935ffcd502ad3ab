#!/bin/sh
# The reference with groff (ms, tbl), the candidate with pdfLaTeX (booktabs).
# groff's list of font files names a directory of Ghostscript; here the same fonts come from fonts-urw-base35, so that they can be embedded.
. "$(dirname "$0")/../tools/common.sh"
mkdir -p "$work/font"
cp -r /usr/share/groff/current/font/devpdf "$work/font/devpdf"
sed -i 's#/usr/share/ghostscript/.*/Font/\(.*\)#/usr/share/fonts/type1/urw-base35/\1.t1#' "$work/font/devpdf/download"
sed 's#^my $fontdir=.*#my $fontdir="'"$work/font"'";#' /usr/bin/gropdf > "$work/gropdf"
groff -k -t -ms -Tpdf -Z -dpaper=a4 "$here/reference.ms" > "$work/reference.out"
perl "$work/gropdf" -e -pa4 "$work/reference.out" > "$here/reference.pdf"
cp "$here/candidate.tex" "$work"
for pass in 1 2; do
    (cd "$work" && pdflatex -interaction=nonstopmode candidate.tex > log || { grep -A5 '^!' log; exit 1; })
done
cp "$work/candidate.pdf" "$here/candidate.pdf"
/usr/bin/python3 "$here/labels.py"
