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

# The archive of loaded classes makes a start about a third quicker. It is made when the server ends for the first time
# and must fit this jar and this Java: named after both, an old one is never met.
stamp="$(java -version 2>&1 | cksum | cut -d' ' -f1)-$(cksum <"$jar" | cut -d' ' -f1)"
archive="$here/backend/target/classes-$stamp.jsa"
if [ -f "$archive" ]; then
    set -- -XX:SharedArchiveFile="$archive" -Xshare:auto -jar "$jar" "$@"
else
    rm -f "$here"/backend/target/classes-*.jsa
    set -- -XX:ArchiveClassesAtExit="$archive" -jar "$jar" "$@"
fi
exec java "$@"
