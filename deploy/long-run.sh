#!/bin/sh
# A class at ten times real speed for an hour, and whether the server holds more afterwards: memory, threads, files, connections.
#   sh deploy/long-run.sh           60 minutes
#   sh deploy/long-run.sh 10        10 minutes, for a first look
#   sh deploy/long-run.sh sockets   what 500 open sockets and 100 followed days take instead, within two minutes
set -eu
cd "$(dirname "$0")/.."
if [ "${1:-}" = sockets ]; then
    sh deploy/of-tests.sh org.berrywatt.server.OpenSockets
    exec sh deploy/promises.sh sockets
fi
sh deploy/of-tests.sh org.berrywatt.server.LongRun "$@"
sh deploy/promises.sh long-run
