#!/bin/sh
# Fills the disk under a class that sends, makes room again, and counts what is stored of what was acknowledged. The disk is one
# of 250 MB in memory, so this needs Linux and root, or a kernel that gives ordinary users a name space of their own.
set -eu
cd "$(dirname "$0")/.."
if [ "$(id -u)" != 0 ]; then
    exec unshare --user --map-root-user --mount sh "$0" "$@"
fi
disk="$(mktemp -d)"
mount -t tmpfs -o size=250m,mode=777 tmpfs "$disk"
trap 'umount "$disk"; rmdir "$disk"' EXIT
sh deploy/of-tests.sh org.berrywatt.server.FullDisk "$disk"
sh deploy/promises.sh full-disk
