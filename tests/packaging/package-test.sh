#!/bin/sh
# Makes the Debian package of a build folder, looks into it, installs it into an empty root, and runs the program that
# lies there: its data files must be those of that root. Ends with 77 where the tools for it are missing.
#
#   tests/packaging/package-test.sh .build/release
set -eu
build="$1"
for tool in cpack dpkg-deb dpkg-shlibdeps; do
  command -v "$tool" > /dev/null || { echo "there is no $tool" >&2; exit 77; }
done
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
fail() { echo "package-test: $*" >&2; exit 1; }

(cd "$build" && cpack -G DEB -B "$work/package") > "$work/cpack.log" 2>&1 || { cat "$work/cpack.log" >&2; fail "no package"; }
package=$(ls "$work"/package/*.deb)
depends=$(dpkg-deb -f "$package" Depends)
for library in tesseract-ocr-eng libtesseract libpoppler-cpp libqpdf libxapian libpangocairo libseccomp libc6; do
  case "$depends" in
    *"$library"*) ;;
    *) fail "the package does not depend on $library: $depends" ;;
  esac
done

root="$work/root"
mkdir -p "$root"
if [ "$(id -u)" = 0 ]; then
  mkdir -p "$root/var/lib/dpkg/info" "$root/var/lib/dpkg/updates"
  : > "$root/var/lib/dpkg/status"
  # The libraries are those of the machine: only this package lies in the root.
  dpkg --root="$root" --force-depends --install "$package" > "$work/dpkg.log" 2>&1 || { cat "$work/dpkg.log" >&2; fail "not installed"; }
else
  dpkg-deb -x "$package" "$root"
fi
for file in bin/benchleaf share/benchleaf/tubes.tsv share/benchleaf/binder/binder.css share/benchleaf/lettering.net \
  share/man/man1/benchleaf.1 share/bash-completion/completions/benchleaf share/zsh/vendor-completions/_benchleaf \
  share/fish/vendor_completions.d/benchleaf.fish share/doc/benchleaf/README.md share/doc/benchleaf/json.md share/doc/benchleaf/copyright; do
  [ -s "$root/usr/$file" ] || fail "usr/$file is missing"
done
[ ! -e "$root/usr/share/benchleaf/install-packages.sh" ] || fail "the build's own tools are installed"

program="$root/usr/bin/benchleaf"
run() { (cd "$work" && env -i PATH=/usr/bin:/bin LC_ALL=C.UTF-8 "$program" "$@"); }
version=$(dpkg-deb -f "$package" Version)
run --version | grep -q "^benchleaf $version\$" || fail "another version runs than the package's, $version"
# There is no index, which is told by 4; what the tube is stands in the installed table.
status=0
run tube 6CB6 > "$work/tube.txt" 2> "$work/tube.err" || status=$?
[ "$status" = 4 ] || fail "tube gave $status: $(cat "$work/tube.err")"
grep -q "pentode" "$work/tube.txt" || fail "the installed table of tubes was not read"
mv "$root/usr/share/benchleaf/tubes.tsv" "$work/"
run tube 6CB6 2>&1 | grep -q "$root/usr/share/benchleaf/tubes.tsv" || fail "data files of another place are read"
mv "$work/tubes.tsv" "$root/usr/share/benchleaf/"
cmp -s "$root/usr/share/bash-completion/completions/benchleaf" - << EOF || fail "the completion is not that of the program"
$(run completion bash)
EOF
if command -v man > /dev/null && [ ! -e /usr/bin/man.REAL ]; then
  complaints=$(LC_ALL=C.UTF-8 MANWIDTH=80 man --warnings -E UTF-8 -l "$root/usr/share/man/man1/benchleaf.1" 2>&1 > /dev/null)
  [ -z "$complaints" ] || fail "the manual page: $complaints"
fi
if command -v apt-get > /dev/null && apt-cache show libc6 > /dev/null 2>&1; then
  apt-get --simulate --quiet install "$package" > "$work/apt.log" 2>&1 || { cat "$work/apt.log" >&2; fail "its dependencies cannot be had"; }
fi
echo "package-test: $(basename "$package") installs and runs"
