#!/bin/sh
# Starts the planner with the runtime of this folder; no Java need be installed.
# One existing file or folder as the only argument is planned: growing-on.sh my-nursery
here=$(CDPATH= cd -- "${0%/*}" && pwd)
if [ $# -eq 1 ] && [ -e "$1" ]; then
  set -- plan "$1"
fi
exec "$here/bin/growing-on" "$@"
