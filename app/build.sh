# Sourced by app/run.sh and tests/run.sh: installs what is missing and builds.

# Names the packages of the lists given that are not installed, one a line.
missing_packages() {
    local package
    sed 's/#.*//' "$@" | tr -s '[:space:]' '\n' | while read -r package; do
        [ -n "$package" ] || continue
        dpkg-query -W -f='${Status}' "$package" 2>/dev/null | grep -q ' installed$' ||
            printf '%s\n' "$package"
    done
}

# Installs only what is missing; where it can't, it lists what is needed and stops.
install_packages() {
    if ! command -v apt-get >/dev/null || ! command -v dpkg-query >/dev/null; then
        echo "This is not a Debian system. Headcap needs, by their Debian names:" >&2
        sed 's/#.*//' "$@" | tr -s '[:space:]' ' ' >&2
        echo >&2
        command -v cmake >/dev/null && command -v qmake6 >/dev/null && return 0
        exit 1
    fi
    local missing
    missing=$(missing_packages "$@")
    [ -n "$missing" ] || return 0
    local as_root=""
    if [ "$(id -u)" -ne 0 ]; then
        if ! command -v sudo >/dev/null; then
            echo "These packages are missing, and neither root nor sudo is at hand to install them:" >&2
            printf '%s\n' $missing >&2
            exit 1
        fi
        as_root=sudo
    fi
    echo "Installing:" $missing >&2
    # A list of packages that is still fresh saves the update.
    $as_root apt-get install -y -q --no-install-recommends $missing >/dev/null 2>&1 ||
        { $as_root apt-get update -q >/dev/null &&
          DEBIAN_FRONTEND=noninteractive $as_root apt-get install -y -q --no-install-recommends $missing >/dev/null; }
}

# configure_and_build SOURCE BUILD [cmake option…] [-- target…]
configure_and_build() {
    local source=$1 build=$2
    shift 2
    local options=() targets=()
    while [ $# -gt 0 ] && [ "$1" != -- ]; do
        options+=("$1")
        shift
    done
    [ $# -eq 0 ] || shift
    [ $# -eq 0 ] || targets=(--target "$@")
    cmake -S "$source" -B "$build" -G Ninja "${options[@]}" >"$build.configure.log" 2>&1 ||
        { cat "$build.configure.log" >&2; rm -f "$build.configure.log"; exit 1; }
    rm -f "$build.configure.log"
    cmake --build "$build" "${targets[@]}" >&2
}
