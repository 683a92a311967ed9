#!/bin/sh
# Writes docs/validation.md anew: agreement with published values and the ratios of the benchmarks, all measured now.
# With --quick the benchmarks are not run again; their last figures are taken.
set -eu
cd "$(dirname "$0")/.."
figures="$PWD/deploy/benchmarks/target/benchmarks.json"
if [ "${1:-}" != --quick ] || [ ! -f "$figures" ]; then
    sh deploy/benchmark.sh
fi
mvn -q -B -pl shared test-compile exec:java -Dexec.mainClass=org.berrywatt.validation.Validation \
    -Dexec.classpathScope=test -Dexec.args="$PWD/docs/validation.md $figures 500"
