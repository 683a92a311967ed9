#!/bin/sh
# Kills server and database under a class that sends, and looks whether each acknowledged reading is stored once:
#   sh deploy/kill-test.sh           200 clients, 10000 readings, 10 kills, seed 1
#   sh deploy/kill-test.sh 42        the same with other moments and victims
set -eu
cd "$(dirname "$0")/.."
mvn -q -B -pl backend -am verify -Dtest=none -Dsurefire.failIfNoSpecifiedTests=false \
    -Dit.test=AcknowledgedReadingsIT -Dfailsafe.failIfNoSpecifiedTests=false \
    -Dberrywatt.kill.clients=200 -Dberrywatt.kill.readings=10000 -Dberrywatt.kill.kills=10 \
    -Dberrywatt.kill.seed="${1:-1}"
sh deploy/promises.sh kill-test
