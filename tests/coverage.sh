#!/bin/sh
# coverage.sh [REPORT.html]: which lines and branches of extraction and linking their own tests run, by file and in
# all. Fails under 95 % of lines or 85 % of branches. Branches that only an exception takes are not counted;
# tests of time are left out, for counting takes most of it.
set -eu
cd "$(dirname "$0")/.."
config/install-packages.sh test
config/install-packages.sh coverage
build=.build/coverage
cmake --preset coverage >&2
cmake --build "$build" -j "$(nproc)" --target test_extract test_linking >&2
find "$build" -name '*.gcda' -delete
for test in extract linking; do
  "$build/tests/test_$test" --gtest_brief=1 --gtest_filter='-*TakesTime*' >&2
done
gcovr --root . --filter src/extract/ --filter src/linking/ --filter include/benchleaf/extract/ \
  --filter include/benchleaf/linking/ --exclude-throw-branches --exclude-unreachable-branches \
  ${1:+--html-details "$1"} --txt /dev/stdout --print-summary --fail-under-line 95 --fail-under-branch 85 \
  "$build"
