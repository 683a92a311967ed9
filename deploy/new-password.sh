#!/bin/sh
# Prints a one-time key with which a teacher who forgot the password sets a new one on the server's page:
#   sh deploy/new-password.sh
#   sh deploy/new-password.sh --berrywatt.home=/srv/berrywatt
# Run it on the server's own computer, as the user who runs the server; the server may run meanwhile.
set -eu
exec java -jar "$(cd "$(dirname "$0")/.." && pwd)/backend/target/berrywatt.jar" --new-password "$@"
