#!/bin/sh
# Leaves a picture book in backend/target/pictures: every page in its main states, as the check looks at it.
set -eu
cd "$(dirname "$0")/.."
mvn -q -B -pl backend -am test -Dtest=PagesTest -Dsurefire.failIfNoSpecifiedTests=false -Dberrywatt.pictures=true
echo "Pictures: backend/target/pictures"
