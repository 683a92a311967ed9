#!/bin/sh
# The whole check on a bare machine: brings what is missing where it may, says what to install where it may not, then
# builds everything and runs every test, those in a real browser included.
set -eu
cd "$(dirname "$0")/.."

has() { command -v "$1" >/dev/null 2>&1; }

# Java 17 with its compiler, since the tests build, too.
has_jdk() { has javac && javac -version 2>&1 | grep -Eq '^javac (1[7-9]|[2-9][0-9])'; }

missing=""
has_jdk || missing="$missing openjdk-17-jdk-headless"
has mvn || missing="$missing maven"
[ -x /usr/bin/chromium ] || missing="$missing chromium"
[ -x /usr/bin/chromedriver ] || missing="$missing chromium-driver"

may_install() { [ "$(id -u)" = 0 ] && has apt-get; }

install() {
    export DEBIAN_FRONTEND=noninteractive
    apt-get -o DPkg::Lock::Timeout=600 update
    # shellcheck disable=SC2086  # a list of names
    apt-get -o DPkg::Lock::Timeout=600 install --yes --no-install-recommends $missing
}

if [ -n "$missing" ]; then
    if may_install; then
        install
    else
        echo "Missing on this machine:$missing" >&2
        echo "Install them (on Debian, as root: apt-get install$missing), then run this again." >&2
        exit 1
    fi
fi

# The edition of Chromium without windows makes the browser tests a third cheaper. The check does without it where it, of the
# version that the driver is for, cannot be had.
install_lean_browser() {
    timeout 120 apt-get -o DPkg::Lock::Timeout=60 install --yes --no-install-recommends \
        "chromium-headless-shell=$(dpkg-query -W -f='${Version}' chromium)"
}

if [ ! -x /usr/bin/chromium-headless-shell ] && may_install; then
    install_lean_browser || echo "Going on with chromium itself."
fi

exec mvn -B verify
