#!/bin/sh
# Writes docs/api.md anew from the description that the server gives of itself, and docs/permissions.md from what is tried.
set -eu
cd "$(dirname "$0")/.."
mkdir -p backend/target
rm -f backend/target/api.md backend/target/permissions.md
mvn -q -B -pl backend -am test -Dtest='*#isTheDocumentThatIsKept' -Dsurefire.failIfNoSpecifiedTests=false ||
    echo "A document had changed."
cp backend/target/api.md backend/target/permissions.md docs/
