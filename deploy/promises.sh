#!/bin/sh
# Puts docs/validation.md together from docs/promises, where each command leaves what it last measured, with the date. The words
# after the name are measurements that were just made, to be taken from backend/target/promises:
#   sh deploy/promises.sh                put together what is there
#   sh deploy/promises.sh long-run       the same with the rows that deploy/long-run.sh just wrote
set -eu
cd "$(dirname "$0")/.."
for measurement in "$@"; do
    cp "backend/target/promises/$measurement.md" docs/promises/
done

table() {
    printf '\n## %s\n\n%s\n\n' "$1" "$2"
    printf '| what | measured against | wanted | found | holds | measured |\n|---|---|---|---|---|---|\n'
    shift 2
    for measurement in "$@"; do
        cat "docs/promises/$measurement.md"
    done
}

{
    cat docs/promises/science.md
    table Reliability 'By `deploy/kill-test.sh`, `full-disk.sh` and `long-run.sh`; docs/reliability.md says what is tried in every check.' \
        kill-test full-disk long-run
    table Size 'By `deploy/one-school.sh` and `long-run.sh sockets`.' accepting telling growth sockets
    table Security 'By `deploy/malformed.sh`, from the server'"'"'s own description; docs/security.md says what else is tried.' \
        malformed-requests malformed-frames
} >docs/validation.md
