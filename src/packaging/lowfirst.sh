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
# In the bare C locale Java loses the letters of names beyond ASCII.
case ${LC_ALL:-${LC_CTYPE:-${LANG:-C}}} in
  C | POSIX) export LC_ALL=C.UTF-8 ;;
esac
# New objects in little memory stay near the processor.
# The better compiler is worth its work only where a verb runs for long. The quick one does best for a second's work when
# it begins early and copies little code into its callers; any is worth its work only on what is run often.
quick="-XX:TieredStopAtLevel=1 -XX:C1MaxInlineSize=20"
case ${1-} in
  bench | swap) quick= ;;
  code) quick="$quick -XX:CompileThresholdScaling=4" ;;
  *) quick="$quick -XX:CompileThresholdScaling=0.6" ;;
esac
# Memory in large pages, where the kernel gives them to who asks: what a large kit scatters is found faster.
pages=/sys/kernel/mm/transparent_hugepage/enabled
if [ -r "$pages" ] && read -r offered <"$pages"; then
  case $offered in
    *"[never]"*) ;;
    *) quick="$quick -XX:+UseTransparentHugePages" ;;
  esac
fi
exec "$home/bin/java" -XX:+UseSerialGC -Xmn24m -XX:-UsePerfData $quick -Xlog:disable -Xlog:all=off \
  -Dorg.sqlite.lib.path="$home/lib" -m lowfirst/lowfirst.cli.Main "$@"
