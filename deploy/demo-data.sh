#!/bin/sh
# Writes demo-data/*.csv anew from the generator's seed.
set -eu
cd "$(dirname "$0")/.."
mvn -q -B -pl shared test-compile exec:java -Dexec.mainClass=org.berrywatt.demo.DemoDay \
  -Dexec.classpathScope=test -Dexec.args="$PWD/demo-data"
