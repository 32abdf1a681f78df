# shellcheck shell=bash
# The shared part of the scripts beside it: gets what a job needs and shows long steps at work.
# A script sources this file, sets LOG, and calls set_up with the kinds of tools it wants.

ROOT="$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)"
cd "$ROOT" || exit 1

BEAT=10 # seconds between two signs of life of a long step

# Texts of other languages and file names in them must not depend on the caller's settings.
export LC_ALL=C.UTF-8
export DEBIAN_FRONTEND=noninteractive

stop() { # stop STATUS SENTENCE…
  local status=$1
  shift
  printf '%s\n' "$@" >&2
  exit "$status"
}

# ---- long steps ----

running=
let_go() {
  [ -n "$running" ] || return
  kill "$running" 2>/dev/null
  for _ in 1 2 3 4 5 6 7 8 9 10; do
    kill -0 "$running" 2>/dev/null || return
    sleep 0.5
  done
  kill -KILL "$running" 2>/dev/null
}
trap 'let_go; exit 130' INT
trap 'let_go; exit 143' TERM HUP

open_log() {
  mkdir -p "$(dirname "$LOG")" 2>/dev/null && : 2>/dev/null >"$LOG" ||
    stop 1 "Cannot write $LOG: this folder belongs to another user ($(stat -c %U "$ROOT" 2>/dev/null))."
}

# What a person wants to read of a failed step, of the log from line $1 on.
troubles() {
  local lines
  lines=$(tail -n "+$1" "$LOG" |
    grep -E '^\[ERROR\]|^E: |^Err:|^error|^Error|^Exception|Caused by|No space left|: not found' |
    sed 's/ -> \[Help [0-9]*\]$//' |
    grep -v -E '^\[ERROR\] *$|\[Help [0-9]|Re-run Maven|full stack trace|more information about|After correcting|mvn <args>' |
    uniq | head -n 25)
  [ -n "$lines" ] || lines=$(tail -n "+$1" "$LOG" | tail -n 15)
  printf '%s\n' "$lines" | cut -c 1-300 | sed 's/^/    /'
}

# step WORDS COMMAND…: runs the command with its output in the log, with a sign of life as long as
# it runs; gives the command's status.
step() {
  local words=$1 began=$SECONDS beat=$BEAT status=0 from last
  shift
  from=$(($(wc -l <"$LOG") + 1))
  printf '== %s: %s\n' "$words" "$*" >>"$LOG"
  printf '%s …\n' "$words"
  "$@" >>"$LOG" 2>&1 </dev/null &
  running=$!
  while kill -0 "$running" 2>/dev/null; do
    sleep 0.5
    if ((SECONDS - began >= beat)); then
      last=$(tail -n 1 "$LOG" | sed -e 's/\r//g; s/\x1b\[[0-9;]*m//g; s/^\[INFO\] *//; s/^== .*//' | cut -c 1-90)
      printf '  %4d s  %s\n' "$((SECONDS - began))" "$last"
      beat=$((SECONDS - began + BEAT))
    fi
  done
  wait "$running" || status=$?
  running=
  if [ "$status" = 0 ]; then
    printf '  done, %d s\n' "$((SECONDS - began))"
  else
    printf '  failed after %d s:\n' "$((SECONDS - began))" >&2
    troubles "$from" >&2
    printf '  All of it: %s\n' "$LOG" >&2
  fi
  return "$status"
}

# ---- what is needed ----

# Sets JAVA_HOME to a development kit of Java 17 or newer, the caller's own first.
find_jdk() {
  local home version
  for home in "$JAVA_HOME" "$(dirname "$(dirname "$(readlink -f "$(command -v javac)")")")" \
    /usr/lib/jvm/* /Library/Java/JavaVirtualMachines/*/Contents/Home; do
    [ -x "$home/bin/javac" ] || continue
    version=$("$home/bin/javac" -version 2>&1 | sed -n 's/^javac \([0-9]*\).*/\1/p')
    if [ "$version" -ge 17 ] 2>/dev/null; then
      export JAVA_HOME=$home
      return 0
    fi
  done
  return 1
}

# The office's own folder: the caller's choice, or that of the soffice on the path.
office_home() {
  if [ -n "$SETPOWER_OFFICE_HOME" ]; then
    echo "$SETPOWER_OFFICE_HOME"
  else
    dirname "$(dirname "$(readlink -f "$(command -v soffice)")")"
  fi
}

office_has() { # office_has PATH, seen from the office's own folder
  [ -e "$(office_home)/$1" ]
}

# Build, tests and demo take the same office.
choose_office() {
  SETPOWER_OFFICE_HOME=$(office_home)
  export SETPOWER_OFFICE_HOME
  if [ -z "$SETPOWER_OFFICE_ROOT" ]; then
    export SETPOWER_OFFICE="${SETPOWER_OFFICE:-$SETPOWER_OFFICE_HOME/program/soffice}"
  fi
}

has_font() {
  fc-list | grep -q -i "$1"
}

# The name of the package with the development kit: some releases take Java 11 as default.
jdk_package() {
  local default
  default=$(apt-cache policy default-jdk-headless 2>/dev/null |
    sed -n 's/^ *Candidate: [0-9]*:1\.\([0-9]*\).*/\1/p')
  if [ "${default:-17}" -ge 17 ]; then echo default-jdk-headless; else echo openjdk-17-jdk-headless; fi
}

packages=()
names=()
need() { # need PACKAGE WORDS TEST…
  local package=$1 words=$2
  shift 2
  if ! "$@" >/dev/null 2>&1; then
    packages+=("$package")
    names+=("$words")
  fi
}

look_for() { # look_for KIND…
  local kind
  packages=()
  names=()
  for kind in "$@"; do
    case $kind in
      build)
        need "$(jdk_package)" "a Java development kit, 17 or newer" find_jdk
        need maven "Apache Maven 3.6 or newer" command -v mvn
        ;;
      office)
        need libreoffice-calc "LibreOffice Calc 7.4 or newer" office_has program/soffice
        need libreoffice-java-common "LibreOffice's Java support" office_has share/Scripts/java
        need libreoffice-dev "LibreOffice's development kit" office_has sdk/bin/unoidl-write
        need fonts-liberation "the Liberation fonts" has_font "liberation"
        need poppler-utils "the Poppler tools (pdftoppm)" command -v pdftoppm
        ;;
      python)
        need python3-uno "LibreOffice's Python support" office_has program/pythonloader.py
        ;;
      oracles)
        need ngspice "ngspice" command -v ngspice
        need units "GNU units" command -v units
        need glpk-utils "the GNU linear programming kit (glpsol)" command -v glpsol
        ;;
    esac
  done
}

# set_up KIND…: installs what is missing, or says what is missing and stops with status 2.
set_up() {
  open_log
  look_for "$@"
  [ "${#packages[@]}" = 0 ] || install "$@"
  PATH="$JAVA_HOME/bin:$PATH" # what the build starts runs on the same Java
  choose_office
}

install() {
  if ! command -v apt-get >/dev/null; then
    stop 2 "Please install, then run this again:" "${names[@]/#/  }"
  fi
  if [ "$(id -u)" != 0 ]; then
    stop 2 "Something is missing here. Please run this line, then this script again:" \
      "  sudo apt-get update && sudo apt-get install --no-install-recommends ${packages[*]}"
  fi
  local apt=(apt-get -y -q -o DPkg::Lock::Timeout=300 -o Dpkg::Use-Pty=0)
  step "Refresh the lists of packages" "${apt[@]}" update || exit 1
  look_for "$@" # the lists may name another development kit
  step "Install ${packages[*]}" "${apt[@]}" install --no-install-recommends "${packages[@]}" || exit 1
  look_for "$@"
  [ "${#packages[@]}" = 0 ] || stop 2 "Installed, yet still not found:" "${names[@]/#/  }"
}
