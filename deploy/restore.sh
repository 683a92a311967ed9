#!/bin/sh
# Makes a server's folder of a backup; the folder must not have data yet:
#   sh deploy/restore.sh /media/stick/monday.zip
#   sh deploy/restore.sh /media/stick/monday.zip --berrywatt.home=/srv/berrywatt
set -eu
file="${1:?name the backup to restore, such as /media/stick/monday.zip}"
shift
exec java -jar "$(cd "$(dirname "$0")/.." && pwd)/backend/target/berrywatt.jar" --restore="$file" "$@"
