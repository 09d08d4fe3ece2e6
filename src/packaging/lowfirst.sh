#!/bin/sh
# Starts Lowfirst from its own image; a link to this file works too.
file=$0
while [ -L "$file" ]; do
  target=$(readlink "$file")
  case $target in
    /*) file=$target ;;
    *) file=$(dirname "$file")/$target ;;
  esac
done
home=$(cd "$(dirname "$file")/.." && pwd)
exec "$home/bin/java" -XX:+UseSerialGC -Xshare:auto \
  -XX:SharedArchiveFile="$home/app/lowfirst.jsa" -Xlog:disable -Xlog:all=off \
  -cp "$home/app/lowfirst.jar" lowfirst.cli.Main "$@"
