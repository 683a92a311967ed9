#!/bin/sh
# Builds the server where it is not built yet and starts it; all words after the name go to the server:
#   sh deploy/run.sh --demo
#   sh deploy/run.sh --server.port=80
set -eu
here="$(cd "$(dirname "$0")/.." && pwd)"
jar="$here/backend/target/berrywatt.jar"

if [ ! -f "$jar" ]; then
    (cd "$here" && mvn -q -B -DskipTests package)
fi

# An archive of loaded classes halves the work of a start. It is made when the server ends for the first time and fits
# only this Java and these files: it is named after both, so an old one is never met.
stamp="$({ java -version 2>&1; ls -ln "$jar" "$here/backend/target/lib"; } | cksum | cut -d' ' -f1)"
archive="$here/backend/target/classes-$stamp.jsa"
if [ -f "$archive" ]; then
    set -- -Xlog:cds=error -XX:SharedArchiveFile="$archive" -jar "$jar" "$@"
else
    rm -f "$here"/backend/target/classes-*.jsa
    set -- -Xlog:cds=error -XX:ArchiveClassesAtExit="$archive" -jar "$jar" "$@"
fi
exec java "$@"
