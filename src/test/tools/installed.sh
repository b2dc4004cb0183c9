#!/usr/bin/env bash
# Unpacks a Debian package into a folder of its own and runs what is in it with no other Java in reach.
#
# usage: installed.sh PACKAGE.deb, in the project's folder
set -euo pipefail

deb=$1
largest=$((70 * 1000 * 1000))
root=$(mktemp -d)
trap 'rm -rf "$root"' EXIT
dpkg-deb -x "$deb" "$root"

fail() {
    echo "$deb: $1" >&2
    exit 1
}

[ "$(stat -c %s "$deb")" -le "$largest" ] || fail "it is larger than $largest bytes"
[ -h "$root/usr/bin/pegbed" ] || fail "there is no command /usr/bin/pegbed"
zcat "$root/usr/share/man/man1/pegbed.1.gz" >"$root/page"
grep -q '^\.TH PEGBED 1' "$root/page" || fail "the manual page is missing"
bash -n "$root/usr/share/bash-completion/completions/pegbed" || fail "the completion is no bash script"
ls "$root"/opt/pegbed/lib/*.desktop >/dev/null || fail "there is no entry for the menu"
grep -q 'glob pattern="\*.peg.json"' "$root"/opt/pegbed/lib/*.xml || fail "there is no kind of file for *.peg.json"

mkdir "$root/home" "$root/nothing"
cp sample-pegs/tansy-cut-14.peg.json "$root/home/"
run() {
    env -i PATH="$root/nothing" HOME="$root/home" LC_ALL=C.UTF-8 "$root/opt/pegbed/bin/pegbed" "$@"
}
run --version
run lines "$root/home/tansy-cut-14.peg.json" >"$root/said"
grep -q '^Deepest usable' "$root/said" || fail "pegbed lines did not answer"
run export "$root/home/tansy-cut-14.peg.json" --out "$root/home/peg.gpkg" || fail "pegbed export did not work"
[ -s "$root/home/peg.gpkg" ] || fail "pegbed export wrote nothing"
# Taking the package away leaves the pegs: none of its files lies in a home folder.
dpkg-deb -c "$deb" | awk '{print $6}' >"$root/files"
! grep -qvE '^\./($|opt|usr)' "$root/files" || fail "it puts files beside /opt and /usr"
echo "$deb: runs without another Java, $(stat -c %s "$deb") bytes"
