#!/bin/sh
# Measures one school on this machine: accepted readings a second from 500 phones beside bare inserts, the time from acceptance
# to the last of 520 listeners beside a bare broadcast, and what a reading costs with 1, 100 and 10000 days stored.
#   sh deploy/one-school.sh          all
#   sh deploy/one-school.sh growth   the last alone
set -eu
cd "$(dirname "$0")/.."
mvn -q -B -pl backend -am test-compile dependency:build-classpath -Dmdep.outputFile=target/test.classpath -Dmdep.includeScope=test
cd backend
libraries="$(tr ':' '\n' < target/test.classpath | grep -v -e /berrywatt- -e '/target/classes$' | paste -s -d : -)"
exec java -cp "target/test-classes:target/classes:../shared/target/classes:../frontend/target/classes:$libraries" \
    org.berrywatt.server.OneSchool "$@"
