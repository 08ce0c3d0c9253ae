# Installs what is missing of Debian's packages. To be read by other scripts:
#   . tests/packages.sh; need_packages PACKAGE...

# What a build of the program needs, and its tests on top.
program_packages=(g++ cmake ninja-build pkg-config libcgal-dev libeigen3-dev libcli11-dev
  libboost-math-dev libtomlplusplus-dev nlohmann-json3-dev libfmt-dev libexpected-dev
  libcsv-dev libsqlite3-dev libpango1.0-dev libxlsxwriter-dev libdxflib-dev fonts-dejavu-core)
test_packages=(libboost-test-dev libgsl-dev libgeos-dev libglpk-dev sqlite3
  python3 python3-ezdxf python3-numpy python3-scipy python3-openpyxl poppler-utils librecad
  libreoffice-calc-nogui chromium chromium-driver)

is_installed() {
  [ "$(dpkg-query -W -f='${db:Status-Status}' "$1" 2>/dev/null)" = installed ]
}

need_packages() {
  local missing=() package as_root=()
  for package in "$@"; do
    is_installed "$package" || missing+=("$package")
  done
  [ ${#missing[@]} -eq 0 ] && return 0
  echo "installing ${missing[*]}" >&2
  if [ "$(id -u)" -ne 0 ]; then
    command -v sudo >/dev/null || {
      echo "these packages are missing: ${missing[*]}: install them, or run this as root" >&2
      return 1
    }
    as_root=(sudo)
  fi
  "${as_root[@]}" apt-get update -qq &&
    "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq \
      --no-install-recommends "${missing[@]}" >&2
}
