#!/bin/sh
# Measures agreement with published values, calibration, findings and speed anew and puts docs/validation.md together; what the
# other commands measured (deploy/promises.sh names them) stays with its date. With --quick the benchmarks are not run again;
# their last figures are taken.
set -eu
cd "$(dirname "$0")/.."
figures="$PWD/deploy/benchmarks/target/benchmarks.json"
if [ "${1:-}" != --quick ] || [ ! -f "$figures" ]; then
    sh deploy/benchmark.sh
fi
mvn -q -B -pl shared test-compile exec:java -Dexec.mainClass=org.berrywatt.validation.Validation \
    -Dexec.classpathScope=test -Dexec.args="$PWD/docs/promises/science.md $figures 500" || broken=$?
sh deploy/promises.sh
exit "${broken:-0}"
