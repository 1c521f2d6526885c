#!/bin/sh
# Installs the Debian packages of config/debian-packages.txt: those marked "build", and with the argument "test" those
# marked "test" too. Asks for the superuser's rights only when something is missing.
set -eu
list="$(dirname "$0")/debian-packages.txt"
wanted=$(awk -F '\t' -v all="${1:-build}" '$1 == "build" || $1 == all { print $2 ":" $3 }' "$list")
missing=""
for line in $wanted; do
  package="${line%%:*}"
  command="${line#*:}"
  if [ -n "$command" ] && command -v "$command" >/dev/null; then
    continue
  fi
  if [ "$(dpkg-query -W -f '${db:Status-Status}' "$package" 2>/dev/null)" != installed ]; then
    missing="$missing $package"
  fi
done
[ -n "$missing" ] || exit 0
echo "installing:$missing" >&2
as_root=""
if [ "$(id -u)" != 0 ]; then
  if ! command -v sudo >/dev/null; then
    echo "these packages are missing, and sudo is not there to install them; as root, run this and try again:" >&2
    echo "  apt-get update && apt-get install -y --no-install-recommends$missing" >&2
    exit 1
  fi
  as_root="sudo"
fi
export DEBIAN_FRONTEND=noninteractive
$as_root apt-get update -qq >&2
# shellcheck disable=SC2086 # a list of packages
$as_root apt-get install -y -qq --no-install-recommends $missing >&2
