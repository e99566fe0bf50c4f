#!/bin/sh
# Starts Easewright with the Java that lies beside it. The first time a window is closed, the classes it loaded are kept
# ready made in the user's cache, from which later starts take them; that archive holds good for this folder only.
self=$(readlink -f "$0")
home=${self%/bin/*}
app=$home/lib/app
java=$home/lib/runtime/bin/java
cache=${XDG_CACHE_HOME:-$HOME/.cache}/easewright
archive=$cache/$(stat -c %Y "$app/easewright.jar")$(printf %s "$home" | tr -c 'A-Za-z0-9' -).jsa

classpath=@CLASSPATH@
options="-Xshare:auto -Xlog:cds=off -Xlog:cds+dynamic=off"

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
"$java" $options -XX:ArchiveClassesAtExit="$archive.$$" -cp "$classpath" easewright.Main "$@"
code=$?
mv -f "$archive.$$" "$archive" 2>/dev/null
exit $code
