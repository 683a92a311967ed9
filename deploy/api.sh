#!/bin/sh
# Writes docs/api.md anew from the description that the server gives of itself.
set -eu
cd "$(dirname "$0")/.."
mkdir -p backend/target
rm -f backend/target/api.md
mvn -q -B -pl backend -am test -Dtest=ApiDocumentTest#isTheDocumentThatIsKept -Dsurefire.failIfNoSpecifiedTests=false ||
    echo "The document had changed."
cp backend/target/api.md docs/api.md
