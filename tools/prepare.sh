# Installs what is missing and sets the environment; to be sourced by bash (tests/run, sample_project/run).
# Leaves the Python to use in $python and the repository's root in $root. Works on Debian 12 and 13 as root
# or with sudo; elsewhere it takes what it finds and says what it could not install.

root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)

system_packages=(
    python3-qgis qgis qgis-providers python3-venv python3-gdal python3-shapely python3-pyproj python3-scipy
    xvfb xauth xdotool imagemagick fonts-dejavu-core poppler-utils
)

missing_packages() {
    local package
    for package in "${system_packages[@]}"; do
        if [ "$(dpkg-query -W -f='${db:Status-Status}' "$package" 2>/dev/null)" != installed ]; then
            echo "$package"
        fi
    done
}

as_root() {
    if [ "$(id -u)" -eq 0 ]; then
        "$@"
    else
        sudo "$@"
    fi
}

install_system_packages() {
    if ! command -v apt-get >/dev/null; then
        echo "prepare: no apt-get here; this needs the equivalent of: ${system_packages[*]}" >&2
        return
    fi
    local missing
    mapfile -t missing < <(missing_packages)
    if [ ${#missing[@]} -gt 0 ]; then
        echo "prepare: installing ${missing[*]}" >&2
        as_root apt-get update -q >&2
        as_root env DEBIAN_FRONTEND=noninteractive apt-get install -q -y --no-install-recommends "${missing[@]}" >&2
    fi
}

# A virtual environment that also sees the system's packages, for QGIS and GDAL come from there. It is made
# anew when Python or the list of requirements has changed.
make_environment() {
    local wanted="$root/tools/requirements.txt" data="$root/tools/requirements-data.txt"
    local ready="$root/.venv/ready" state
    state=$(/usr/bin/python3 --version && cat "$wanted" "$data")
    if [ ! -f "$ready" ] || [ "$(cat "$ready")" != "$state" ]; then
        echo "prepare: making .venv" >&2
        /usr/bin/python3 -m venv --clear --system-site-packages "$root/.venv"
        "$root/.venv/bin/python" -m pip install -q --disable-pip-version-check -r "$wanted" >&2
        "$root/.venv/bin/python" -m pip install -q --disable-pip-version-check --no-deps -r "$data" >&2
        echo "$state" >"$ready"
    fi
    python="$root/.venv/bin/python"
}

# Qt draws without a screen, PROJ finds its data from within a virtual environment and fetches nothing, and
# Qt's runtime directory is ours alone.
set_environment() {
    export QT_QPA_PLATFORM=offscreen PROJ_NETWORK=OFF LC_ALL=C.UTF-8
    if [ -f /usr/share/proj/proj.db ]; then
        export PROJ_DATA=/usr/share/proj
    fi
    export XDG_RUNTIME_DIR="$root/.venv/runtime"
    mkdir -p "$XDG_RUNTIME_DIR"
    chmod 700 "$XDG_RUNTIME_DIR"
    unset PYTHONHOME PYTHONPATH
}

# Three commands and not one list with &&: within such a list bash would run on after a failure.
install_system_packages
make_environment
set_environment
