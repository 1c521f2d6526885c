#!/bin/sh
# Installs what the tests need, builds everything and runs all tests. The build goes to .build/release, or to the
# preset named as the first argument: debug, release or sanitize.
set -eu
cd "$(dirname "$0")/.."
preset="${1:-release}"
config/install-packages.sh test
cmake --preset "$preset" >&2
cmake --build --preset "$preset" -j "$(nproc)" >&2
ctest --preset "$preset" -j "$(nproc)"
