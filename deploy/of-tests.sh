#!/bin/sh
# Runs a program that lives among the server's tests, for the other scripts:
#   sh deploy/of-tests.sh org.berrywatt.server.OneSchool growth
set -eu
cd "$(dirname "$0")/.."
mvn -q -B -pl backend -am test-compile dependency:build-classpath -Dmdep.outputFile=target/test.classpath -Dmdep.includeScope=test
cd backend
libraries="$(tr ':' '\n' < target/test.classpath | grep -v -e /berrywatt- -e '/target/classes$' | paste -s -d : -)"
exec java -cp "target/test-classes:target/classes:../shared/target/classes:../frontend/target/classes:$libraries" "$@"
