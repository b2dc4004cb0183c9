#!/bin/sh
# Runs the commands under many environments and compares all that they say and write, byte by byte.
# usage: same-bytes.sh target/pegbed
set -eu
program=$(CDPATH='' cd "$(dirname "$1")" && pwd)/$(basename "$1")
sample=$(CDPATH='' cd "$(dirname "$0")/../../.." && pwd)/sample-pegs/tansy-cut-14.peg.json
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

# All commands in one folder, with what they say; the folder has the same name each time.
answers() {
    rm -rf "$work/run"
    mkdir "$work/run"
    cd "$work/run"
    cp "$sample" peg.peg.json
    {
        "$@" "$program" add peg.peg.json "6.25m 11 1.35m silt für"
        "$@" "$program" add peg.peg.json "6m 400 1m" || true
        "$@" "$program" check peg.peg.json || true
        "$@" "$program" lines peg.peg.json
        "$@" "$program" lines peg.peg.json --json
        "$@" "$program" next peg.peg.json
        "$@" "$program" level peg.peg.json --board 0.3 --json
        "$@" "$program" shelf . --json
        "$@" "$program" map peg.peg.json --out map.svg
        "$@" "$program" map peg.peg.json --out map.png
        "$@" "$program" card peg.peg.json --out card.html
        printf 'x_m,y_m\n0,5\n1,6\n' >points.csv
        "$@" "$program" position peg.peg.json --at "51.5 -1.25" --bearing 312
        "$@" "$program" day peg.peg.json --add "2026-06-13 14:20 line 2 fish F1 1.5lb" || true
        "$@" "$program" day peg.peg.json --json
        for kind in geojson gpkg tif csv; do
            "$@" "$program" export peg.peg.json --out "out.$kind"
        done
        "$@" "$program" import peg.peg.json out.geojson || true
        "$@" "$program" card peg.peg.json --out card.pdf
        "$@" "$program" map peg.peg.json --out joined.svg --joined-up
        "$@" "$program" depths peg.peg.json --points points.csv
    } >said.txt 2>&1
    rm -rf .pegbed-earlier
    cksum ./* >"$work/$name.sums"
}

count=0
compare() {
    name=$1
    shift
    answers "$@"
    if ! cmp -s "$work/usual.sums" "$work/$name.sums"; then
        echo "$name differs:"
        diff "$work/usual.sums" "$work/$name.sums" || true
        exit 1
    fi
    count=$((count + 1))
}

name=usual
answers env LC_ALL=C.UTF-8 TZ=UTC
compare C env LC_ALL=C TZ=UTC
compare none env -u LANG -u LC_ALL TZ=UTC
for language in de_DE tr_TR ar_SA hi_IN; do
    compare "$language" env LC_ALL=C.UTF-8 TZ=UTC \
        JAVA_TOOL_OPTIONS="-Duser.language=${language%_*} -Duser.country=${language#*_} -Xlog:disable" \
        sh -c '"$@" 2>&1 | grep -v "^Picked up JAVA_TOOL_OPTIONS"; exit 0' sh
done
compare th_TH env LC_ALL=C.UTF-8 TZ=UTC \
    JAVA_TOOL_OPTIONS="-Duser.language=th -Duser.country=TH -Duser.extensions=u-nu-thai" \
    sh -c '"$@" 2>&1 | grep -v "^Picked up JAVA_TOOL_OPTIONS"; exit 0' sh
for zone in Asia/Kolkata America/St_Johns Pacific/Kiritimati; do
    compare "$(basename $zone)" env LC_ALL=C.UTF-8 TZ=$zone
done
compare nohome env -u HOME -u XDG_DATA_HOME -u DISPLAY LC_ALL=C.UTF-8 TZ=UTC
# A system without any face, where this user may hide them from the commands.
if unshare -rm true 2>/dev/null; then
    compare nofonts env LC_ALL=C.UTF-8 TZ=UTC unshare -rm sh -c \
        'for folder in /usr/share/fonts /usr/local/share/fonts; do [ ! -d $folder ] || mount -t tmpfs none $folder; done
        "$@"' sh
fi
compare deaddisplay env DISPLAY=:4711 LC_ALL=C.UTF-8 TZ=UTC
echo "The same bytes in $count environments."
