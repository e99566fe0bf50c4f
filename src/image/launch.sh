#!/bin/sh
# Starts Easewright with the Java that lies beside it. Classes are taken ready made from an archive, which lies packed
# beside the program and is unpacked into the user's cache when a window is first opened. Java takes classes from it only
# if all their files are named as they were when it was made: therefore the folder they lie in is opened here and named by
# its number, which is the same wherever it lies. Where the archive does not hold good any more, as when a copy has changed
# the times of the files, one is made anew when a window is closed.
self=$(readlink -f "$0")
home=${self%/bin/*}
app=$home/lib/app
java=$home/lib/runtime/bin/java
cache=${XDG_CACHE_HOME:-$HOME/.cache}/easewright
made=$(stat -c %Y "$app/easewright.jar")
packed=$home/lib/classes-$made.jsa.gz
archive=$cache/$made.jsa

exec 9<"$app"
classpath=@CLASSPATH@
options="@OPTIONS@"

if [ -r "$archive" ]; then
    exec "$java" $options -XX:SharedArchiveFile="$archive" -cp "$classpath" easewright.Main "$@"
fi
case "${1:-.svg}" in
    *.svg | *.svgz | *.SVG | *.SVGZ) ;;
    *) exec "$java" $options -cp "$classpath" easewright.Main "$@" ;;
esac
if ! mkdir -p "$cache" 2>/dev/null; then
    exec "$java" $options -cp "$classpath" easewright.Main "$@"
fi
rm -f "$cache"/*.jsa
if [ -r "$packed" ] && gzip -dc "$packed" >"$archive.$$" 2>/dev/null && mv -f "$archive.$$" "$archive"; then
    exec "$java" $options -XX:SharedArchiveFile="$archive" -cp "$classpath" easewright.Main "$@"
fi
"$java" $options -XX:ArchiveClassesAtExit="$archive.$$" -cp "$classpath" easewright.Main "$@"
code=$?
mv -f "$archive.$$" "$archive" 2>/dev/null
exit $code
