#!/bin/sh
# Opens binders in Debian's chromium and uses them as a person does: run.sh MAKE_BINDERS CONFIG WORK. Ends with 77
# where there is no chromium; config/install-packages.sh test installs it.
set -eu
here="$(cd "$(dirname "$0")" && pwd)"
make_binders="$1"
config="$2"
work="$3"
if ! command -v chromium >/dev/null; then
  echo "skipped: chromium is not installed; config/install-packages.sh test installs it" >&2
  exit 77
fi
mkdir -p "$work"
cp "$here/package.json" "$here/binder_test.mjs" "$work/"
cd "$work"
if [ ! -d node_modules/playwright-core ] || [ ! -d node_modules/axe-core ]; then
  npm install --no-audit --no-fund --no-package-lock >&2
fi
"$make_binders" "$config" "$work"
exec node --test binder_test.mjs
