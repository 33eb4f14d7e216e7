#!/bin/sh
# Runs the given test with a fresh keyring in a folder of its own.
set -e
home=$(mktemp -d)
trap 'rm -rf "$home"' EXIT
export HOME="$home" XDG_DATA_HOME="$home/data" XDG_RUNTIME_DIR="$home/run"
mkdir -m 700 "$home/data" "$home/run"
printf 'only for this test' | gnome-keyring-daemon --unlock --components=secrets >/dev/null
"$@" --gtest_filter='SecretService.*'
