#!/bin/sh
# Writes everything the server keeps to one file, while it runs or not:
#   sh deploy/backup.sh /media/stick/monday.zip
#   sh deploy/backup.sh /media/stick/monday.zip --berrywatt.home=/srv/berrywatt
set -eu
file="${1:?name the file to write, such as /media/stick/monday.zip}"
shift
exec java -jar "$(cd "$(dirname "$0")/.." && pwd)/backend/target/berrywatt.jar" --backup="$file" "$@"
