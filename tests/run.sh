#!/usr/bin/env bash
# Builds and runs the tests.
#   tests/run.sh              everything, through ctest, under the offscreen platform
#   tests/run.sh --faults     the long fault programs: kills, power losses, full disks, damage;
#                             each says how far it is, and none takes more than a quarter of an
#                             hour: two hours for all at the very most
#   tests/run.sh --fuzz 10    every reader over changed text and files for twenty minutes
#   tests/run.sh --bench      the benchmarks, each beside its bare counterpart
#   tests/run.sh --sanitize   everything under the address and undefined sanitizers
#   tests/run.sh --lint       clang-format and clang-tidy
# Further words go to ctest (tests/run.sh -R Ledger).
set -euo pipefail
root=$(cd "$(dirname "$0")/.." && pwd)
# shellcheck source=app/build.sh
. "$root/app/build.sh"

install_packages "$root/app/packages.txt" "$root/tests/packages.txt"
export QT_QPA_PLATFORM=offscreen

run_ctest() {
    local build=$1
    shift
    ctest --test-dir "$build" --no-tests=error --output-on-failure -j "$(nproc)" "$@"
}

case "${1:-}" in
--faults)
    shift
    configure_and_build "$root" "$root/build" -DCMAKE_BUILD_TYPE=Release
    for program in "$root"/build/tests/faults/headcap_fault_*; do
        [ -x "$program" ] && [ -f "$program" ] && "$program" --long --minutes 15 "$@"
    done
    ;;
--fuzz)
    configure_and_build "$root" "$root/build" -DCMAKE_BUILD_TYPE=Release
    "$root/build/tests/fuzz/headcap_fuzz" --minutes "${2:-5}"
    "$root/build/tests/fuzz/headcap_fuzz_files" --minutes "${2:-5}"
    ;;
--bench)
    shift
    configure_and_build "$root" "$root/build" -DCMAKE_BUILD_TYPE=Release -DHEADCAP_BENCH=ON
    for program in "$root"/build/tests/bench/*_bench; do
        [ -x "$program" ] && [ -f "$program" ] && "$program" "$@"
    done
    ;;
--sanitize)
    shift
    install_packages <(printf 'clang\n')
    # clang takes two thirds of gcc's time over it, and a third where there are many variants. The
    # library's own checks of bounds and of empty optionals are on as well.
    configure_and_build "$root" "$root/build-sanitize" -DCMAKE_CXX_COMPILER=clang++ \
        -DCMAKE_BUILD_TYPE=Debug "-DCMAKE_CXX_FLAGS_DEBUG=-O1 -g1 -D_GLIBCXX_ASSERTIONS" \
        "-DHEADCAP_SANITIZE=address,undefined"
    export LSAN_OPTIONS="suppressions=$root/tests/support/leaks_of_libraries.txt:print_suppressions=0"
    run_ctest "$root/build-sanitize" "$@"
    ;;
--lint)
    install_packages <(printf 'clang\nclang-format\nclang-tidy\n')
    cd "$root"
    git ls-files '*.cpp' '*.h' | xargs clang-format --dry-run -Werror
    # clang-tidy reads how clang would compile; nothing need be compiled for it.
    cmake -S "$root" -B "$root/build-lint" -G Ninja -DCMAKE_CXX_COMPILER=clang++ \
        -DCMAKE_BUILD_TYPE=Debug -DCMAKE_EXPORT_COMPILE_COMMANDS=ON \
        -DHEADCAP_TESTS=OFF >/dev/null
    git ls-files 'core/*.cpp' 'db/*.cpp' 'app/*.cpp' 'demo-data/*.cpp' |
        xargs -P "$(nproc)" -n 4 clang-tidy -p "$root/build-lint" --quiet
    ;;
*)
    configure_and_build "$root" "$root/build" -DCMAKE_BUILD_TYPE=Release
    run_ctest "$root/build" "$@"
    ;;
esac
