#!/usr/bin/env bash
# Makes the packages of this system from target/pegbed.jar, by jlink and jpackage: an image of the program with a Java of
# its own and, where dpkg-deb is there, a .deb. Called by mvn -P installer package.
#
# usage: package.sh VERSION TIMESTAMP TEST_CLASS_PATH, in the project's folder; PEGBED_JDK names the JDK to take, otherwise
# it is the newest of /usr/lib/jvm, or JAVA_HOME's.
set -euo pipefail

version=$1
timestamp=$2
classes=$3
out=target/installer
epoch=$(date -u -d "$timestamp" +%s)
export SOURCE_DATE_EPOCH=$epoch

# The newest JDK that has jpackage and jlink.
newest() {
    for home in "${PEGBED_JDK:-}" /usr/lib/jvm/* "${JAVA_HOME:-}" "$(dirname "$(dirname "$(readlink -f "$(command -v javac)")")")"; do
        if [ -x "$home/bin/jpackage" ] && [ -x "$home/bin/jlink" ]; then
            release=$("$home/bin/jpackage" --version | cut -d. -f1)
            [ -n "${PEGBED_JDK:-}" ] && [ "$home" = "${PEGBED_JDK:-}" ] && release=999
            echo "$release $home"
        fi
    done | sort -rn | head -n 1 | cut -d' ' -f2
}

jdk=$(newest)
if [ -z "$jdk" ]; then
    echo "No JDK with jpackage and jlink was found; install one, such as openjdk-17-jdk, or name it by PEGBED_JDK." >&2
    exit 2
fi
echo "Packaging with $("$jdk/bin/java" -version 2>&1 | head -n 1) of $jdk"
rm -rf "$out"
mkdir -p "$out/input" "$out/files"

# A Java with what the program uses and no more; not compressed, for the package does that better and starts are quicker.
compress=zip-0
release=$("$jdk/bin/jlink" --version | cut -d. -f1)
[ "$release" -lt 21 ] && compress=0
"$jdk/bin/jlink" --output "$out/runtime" --strip-debug --no-header-files --no-man-pages --compress "$compress" \
    --add-modules java.base,java.desktop,java.logging,java.management,java.naming,java.prefs,java.rmi,java.scripting,java.sql,java.xml,jdk.unsupported

cp target/pegbed.jar LICENSE "$out/input/"
touch -d "@$epoch" "$out/input/pegbed.jar" "$out/input/LICENSE"
"$jdk/bin/java" -Djava.awt.headless=true -cp "$classes" pegbed.launcher.Icon "$out/files/pegbed.png"
"$jdk/bin/java" -cp "$classes" pegbed.cli.CommandFiles "$out/files" "$version" "${timestamp%%T*}"
printf 'extension=peg.json\nmime-type=application/vnd.pegbed+json\ndescription=Peg file\n' >"$out/files/peg.properties"

# JavaFX and SQLite load native parts, of which Java 24 and later warn otherwise.
options=()
[ "$release" -ge 22 ] && options=(--java-options --enable-native-access=ALL-UNNAMED)

# A start touches much new memory, which takes fewer faults in huge pages; only Linux knows the option.
[ "$(uname)" = Linux ] && options+=(--java-options -XX:+UseTransparentHugePages)

# One sitting is short: see the start script. Java's own words go to standard error.
"$jdk/bin/jpackage" --type app-image --dest "$out" --name pegbed --app-version "$version" \
    --description "Maps the bottom of a fishing peg from plumbed readings" --vendor Pegbed --icon "$out/files/pegbed.png" \
    --runtime-image "$out/runtime" --input "$out/input" --main-jar pegbed.jar --main-class pegbed.Pegbed \
    --java-options "-XX:SharedArchiveFile=\$APPDIR/pegbed.jsa" --java-options -Xshare:auto \
    --java-options -XX:+UseSerialGC --java-options -XX:TieredStopAtLevel=1 \
    --java-options -XX:Tier0BackedgeNotifyFreqLog=8 --java-options -XX:Tier3BackEdgeThreshold=2000 \
    "${options[@]}" --java-options -Xlog:disable --java-options "-Xlog:all=error,cds=off:stderr"

# The archive of classes belongs to a Java and a jar; from Java 19 on it also holds elsewhere than where it was made.
archive() {
    touch -d "@$epoch" "$1/lib/app/pegbed.jar"
    "$1/lib/runtime/bin/java" -cp "$classes" pegbed.launcher.ClassArchive "$1/lib/app/pegbed.jar" \
        sample-pegs/tansy-cut-14.peg.json
    rm -f "$1/lib/app/pegbed.jsa.cksum"
}
archive "$out/pegbed"
rm -rf "$out/runtime"

if command -v dpkg-deb >/dev/null && command -v fakeroot >/dev/null; then
    # It is packed anew below; packing it twice would take long.
    DPKG_DEB_COMPRESSOR_TYPE=none "$jdk/bin/jpackage" --type deb --dest "$out" --name pegbed --app-version "$version" --app-image "$out/pegbed" \
        --description "Maps the bottom of a fishing peg from plumbed readings" --vendor Pegbed \
        --linux-package-name pegbed --linux-deb-maintainer pegbed@localhost --linux-app-category science \
        --linux-menu-group "Science" --linux-shortcut --file-associations "$out/files/peg.properties" \
        --license-file LICENSE
    deb=$(ls "$out"/*.deb)
    root=$out/root
    dpkg-deb -R "$deb" "$root"
    rm "$deb"
    # A machine without a desktop has no menu to put an entry into; the program works there all the same.
    sed -i -E 's/^((xdg-|do_if_file_belongs_to_single_package )[^()]*)$/\1 || true/' "$root/DEBIAN/postinst" "$root/DEBIAN/prerm"
    # What jpackage does not know of: the command on the path, its manual page and its completion.
    mkdir -p "$root/usr/bin" "$root/usr/share/man/man1" "$root/usr/share/bash-completion/completions"
    ln -s /opt/pegbed/bin/pegbed "$root/usr/bin/pegbed"
    gzip -9n <"$out/files/pegbed.1" >"$root/usr/share/man/man1/pegbed.1.gz"
    cp "$out/files/pegbed.bash" "$root/usr/share/bash-completion/completions/pegbed"
    # Copying may have changed the jar's time, to which the archive holds.
    rm -f "$root/opt/pegbed/lib/app/pegbed.jsa"
    archive "$root/opt/pegbed"
    find "$root" -newermt "@$epoch" -print0 | xargs -0 touch -h -d "@$epoch"
    dpkg-deb -Zxz -z4 --root-owner-group -b "$root" "$deb" >/dev/null
    rm -rf "$root"
fi
rm -rf "$out/input"
ls -l "$out"
