#!/bin/sh
# Measures one school on this machine: accepted readings a second from 500 phones beside bare inserts, the time from acceptance
# to the last of 520 listeners beside a bare broadcast, and what a reading costs with 1, 100 and 10000 days stored.
#   sh deploy/one-school.sh                     all
#   sh deploy/one-school.sh accepting telling   some of accepting, telling and growth
set -eu
cd "$(dirname "$0")/.."
[ $# -gt 0 ] || set -- accepting telling growth
sh deploy/of-tests.sh org.berrywatt.server.OneSchool "$@"
sh deploy/promises.sh "$@"
