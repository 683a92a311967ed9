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

# What is sent to the server in bad faith is measured by the server's own tests.
promises="$PWD/backend/target/promises"
if [ "${1:-}" != --quick ] || [ ! -f "$promises/malformed-requests.md" ]; then
    sh deploy/malformed.sh
fi
{
    printf '\n## Security\n\nMade from the server'"'"'s own description; docs/security.md says what else is tried.\n\n'
    printf '| what | measured against | wanted | found | holds |\n|---|---|---|---|---|\n'
    cat "$promises/malformed-requests.md" "$promises/malformed-frames.md"
} >>docs/validation.md
