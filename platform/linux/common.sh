# Shared by run and test: installs what is missing, builds a preset. Sourced, never run.
# shellcheck shell=bash

top=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)

say() { printf '%s\n' "$*"; }

as_root() {
  if [ "$(id -u)" -eq 0 ]; then
    "$@"
  elif command -v sudo >/dev/null; then
    sudo "$@"
  else
    say "Installing packages needs root or sudo." >&2
    return 1
  fi
}

# install_missing run|test|npm: only what dpkg does not have; a second call costs a tenth of a second.
install_missing() {
  local wanted missing=()
  case $1 in
    run) wanted='^run ' ;;
    test) wanted='^(run|test) ' ;;
    npm) wanted='^npm ' ;;
  esac
  local package
  for package in $(grep -E "$wanted" "$top/platform/linux/packages.txt" | sed -E 's/^[a-z]+ +//'); do
    [ "$(dpkg-query -W -f='${db:Status-Abbrev}' "$package" 2>/dev/null)" = 'ii ' ] || missing+=("$package")
  done
  [ ${#missing[@]} -eq 0 ] && return 0
  say "Installing ${#missing[@]} packages: ${missing[*]}"
  as_root env DEBIAN_FRONTEND=noninteractive apt-get update -q
  as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends "${missing[@]}"
}

# install_checks: the npm packages that read our exports back in the tests, as their package-lock.json has them, from
# the machine's own registry. Without them those tests are skipped and say so.
install_checks() {
  local checks="$top/tests/sync/export/checks"
  [ "$checks/node_modules/.package-lock.json" -nt "$checks/package-lock.json" ] && return 0
  command -v npm >/dev/null || install_missing npm
  say 'Installing what reads the exports back in the tests'
  (cd "$checks" && npm ci --ignore-scripts --no-audit --no-fund --loglevel=error) ||
    say 'It could not be installed: the tests that need it are skipped.' >&2
}

# build_preset NAME [cmake arguments]: configures once, then builds what changed. build_options: for the builder itself.
build_options=()
build_preset() {
  local preset=$1
  shift
  local folder="$top/build/$preset" extra=()
  if [ ! -f "$folder/build.ninja" ]; then
    command -v ccache >/dev/null && extra+=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache)
    # Fast, but it scatters what runs at the start only: a program holds three megabytes more. Not for what people run.
    case $preset in
      release | bench) ;;
      *) command -v mold >/dev/null && extra+=(-DCMAKE_EXE_LINKER_FLAGS=-fuse-ld=mold) ;;
    esac
    (cd "$top" && cmake --preset "$preset" "${extra[@]}" "$@")
  fi
  CCACHE_BASEDIR=$top CCACHE_NOHASHDIR=1 cmake --build "$folder" ${build_target:+--target "$build_target"} "${build_options[@]}"
}

# The fuzz targets alone, with clang and libFuzzer.
build_fuzz() { build_target=fuzz_targets build_preset fuzz; }

# fuzz_all SECONDS: every target for so long, one a core, from its kept corpus and what earlier runs here found.
# An input that breaks something stays in out/fuzz.
fuzz_all() {
  mkdir -p "$top/out/fuzz"
  ls "$top/tests/fuzz/corpus" | xargs -P "$(nproc)" -I NAME bash -c '
    mkdir -p "$1/out/fuzz/NAME"
    "$1/build/fuzz/tests/fuzz_NAME" -max_total_time="$2" -print_final_stats=1 -rss_limit_mb=4096 -timeout=25 \
      -artifact_prefix="$1/out/fuzz/NAME-" "$1/out/fuzz/NAME" "$1/tests/fuzz/corpus/NAME" \
      >"$1/out/fuzz/NAME.log" 2>&1
    status=$?
    echo "fuzz NAME: $(grep -oE "stat::number_of_executed_units: *[0-9]+" "$1/out/fuzz/NAME.log" | grep -oE "[0-9]+") inputs, status $status"
    [ "$status" -eq 0 ] || tail -n 40 "$1/out/fuzz/NAME.log"
    exit "$status"' fuzz "$top" "$1"
}
