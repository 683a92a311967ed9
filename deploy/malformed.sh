#!/bin/sh
# Sends 10,000 malformed requests and frames, made from the server's own description with a fixed seed, and prints how many of
# them met a fault of the server (none is promised) and how long the slowest answer took. Every check tries a tenth of them.
set -eu
cd "$(dirname "$0")/.."
mvn -q -B -pl backend -am test -Dtest=MalformedRequestsTest -Dsurefire.failIfNoSpecifiedTests=false \
    -Dmalformed.requests=9000 -Dmalformed.frames=1000
sh deploy/promises.sh malformed-requests malformed-frames
