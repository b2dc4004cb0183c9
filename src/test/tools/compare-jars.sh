#!/bin/sh
# Compares what two builds of Pegbed print and draw for every sample peg, byte for byte.
#
#   src/test/tools/compare-jars.sh OLD.jar NEW.jar [PEG…]
#
# Prints a line for each output that differs. Exit status: 0 all equal, 1 some differ, 2 wrong use. What a build did not
# give (a command that failed) counts as an output of its own: its words and its exit status are compared too.
set -u
if [ $# -lt 2 ] || [ ! -f "$1" ] || [ ! -f "$2" ]; then
    echo "usage: compare-jars.sh OLD.jar NEW.jar [PEG.peg.json ...]" >&2
    exit 2
fi
old=$1
new=$2
shift 2
if [ $# -eq 0 ]; then
    set -- "$(dirname "$0")"/../../../sample-pegs/*.peg.json
fi
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
status=0

# made JAR FOLDER ARGUMENT...: runs a command in FOLDER and keeps what it printed and its exit status.
made() {
    jar=$1
    folder=$2
    shift 2
    (cd "$folder" && java -jar "$jar" "$@" >printed 2>errors; echo $? >exit-status)
}

for peg in "$@"; do
    name=$(basename "$peg" .peg.json)
    for what in lines-text lines-json next-json check-json level-json card.pdf card.svg card.png card.html map.png map.svg; do
        for side in old new; do
            folder=$work/$side/$name/$what
            mkdir -p "$folder/pegs"
            cp "$(dirname "$peg")"/*.peg.json "$folder/pegs"
            if [ $side = old ]; then jar=$old; else jar=$new; fi
            jar=$(cd "$(dirname "$jar")" && pwd)/$(basename "$jar")
            file=pegs/$(basename "$peg")
            case $what in
                lines-text) made "$jar" "$folder" lines "$file" ;;
                lines-json) made "$jar" "$folder" lines "$file" --json ;;
                next-json) made "$jar" "$folder" next "$file" --count 3 --json ;;
                check-json) made "$jar" "$folder" check "$file" --json ;;
                level-json) made "$jar" "$folder" level "$file" --json ;;
                card.*) made "$jar" "$folder" card "$file" --out "$what" ;;
                map.*) made "$jar" "$folder" map "$file" --out "$what" ;;
            esac
        done
        if ! diff -r "$work/old/$name/$what" "$work/new/$name/$what" >/dev/null; then
            echo "differs: $name $what"
            status=1
        fi
    done
done
exit $status
