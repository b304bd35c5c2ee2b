#!/bin/sh
# Starts the planner with the runtime of this folder; no Java need be installed.
# One existing file or folder as the only argument is planned: growing-on.sh my-nursery
here=$0
# A link to this file stands elsewhere than the runtime.
if [ -L "$here" ]; then
  here=$(readlink -f -- "$here")
fi
case $here in
  */*) here=${here%/*}/ ;;
  *) here=. ;;
esac
here=$(CDPATH= cd -- "$here" && pwd)
if [ $# -eq 1 ] && [ -e "$1" ]; then
  set -- plan "$1"
fi
exec "$here/bin/growing-on" "$@"
