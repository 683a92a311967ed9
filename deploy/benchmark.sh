#!/bin/sh
# Measures how fast the science is and prints the ratios; only ratios count, since other work may share the machine. All
# words after the name go to the benchmark runner:
#   sh deploy/benchmark.sh                   all
#   sh deploy/benchmark.sh DiodeSolve        one class
# The figures are kept in deploy/benchmarks/target/benchmarks.json, where deploy/validate.sh reads them.
set -eu
cd "$(dirname "$0")/.."
mvn -q -B -pl deploy/benchmarks -am process-classes
exec java -cp "deploy/benchmarks/target/classes:$(cat deploy/benchmarks/target/classpath)" \
    org.openjdk.jmh.Main -rf json -rff deploy/benchmarks/target/benchmarks.json -f 1 -wi 3 -i 5 -w 1 -r 1 "$@"
