# Read by neckshell and neckservice: where the compiled classes are, and an archive of them that a JVM maps into its memory
# instead of reading and checking each class (application class-data sharing).
#
# Needs here, root and bin; sets classpath. After `share NAME COMMAND ...`, which makes the archive of that name by running the
# command where there is none yet, `java_shared ...` runs a JVM with it.
list=$here/target/jshell-classpath.txt
packed=$here/target/shared

# Whether the compiled classes and their list are there and newer than every source.
is_current() {
  [ -f "$list" ] && [ -d "$here/target/classes" ] || return 1
  [ -z "$(find "$root"/pom.xml "$root"/*/pom.xml "$root"/*/src/main -newer "$list" -print | head -n 1)" ] || return 1
  (
    IFS=:
    for entry in $(cat "$list"); do
      [ -e "$entry" ] || exit 1
    done
  )
}

# An archive takes classes out of jars alone, so our folders are packed into one.
pack() {
  fresh=$packed.$$
  mkdir -p "$fresh/classes"
  rest=
  saved=$IFS
  IFS=:
  for entry in $classpath; do
    if [ -d "$entry" ]; then
      cp -R "$entry/." "$fresh/classes"
    else
      rest=$rest:$entry
    fi
  done
  IFS=$saved
  rm -f "$fresh/classes/module-info.class"
  "${bin}jar" --create --no-compress --no-manifest --file "$fresh/neckgeom.jar" -C "$fresh/classes" . || return 1
  rm -rf "$fresh/classes"
  printf '%s' "$packed/neckgeom.jar$rest" > "$fresh/classpath.txt"
  rm -rf "$packed"
  mv "$fresh" "$packed"
}

if ! is_current; then
  (cd "$root" && mvn -q compile dependency:build-classpath@jshell-classpath) >&2
  touch "$list"
fi
classpath=$here/target/classes:$(cat "$list")

# Of the JDK that is used, from the file that every JDK has.
java_version() {
  sed -n 's/^JAVA_VERSION="\([^"]*\)".*/\1/p' "$(dirname "$(dirname "$(readlink -f "$(command -v "${bin}java")")")")/release"
}

archive=
share() {
  [ -f "$packed/classpath.txt" ] && [ "$packed/classpath.txt" -nt "$list" ] || pack || return 0
  classpath=$(cat "$packed/classpath.txt")
  name=$1
  shift
  # Another JDK or another command needs another archive.
  wanted=$packed/$name-$(printf '%s ' "$(readlink -f "$(command -v "${bin}java")")" "$@" | cksum | cut -d ' ' -f 1).jsa
  if [ ! -f "$wanted" ]; then
    part=$wanted.$$
    "${bin}java" -XX:ArchiveClassesAtExit="$part" -Xlog:disable -cp "$classpath" "$@" > /dev/null 2>&1 < /dev/null || :
    [ -f "$part" ] && mv "$part" "$wanted" || return 0
  fi
  archive=$wanted
}

java_shared() {
  if [ -n "$archive" ]; then
    exec "${bin}java" "-XX:SharedArchiveFile=$archive" -Xshare:auto -Xlog:disable -Xlog:all=error:stderr -cp "$classpath" "$@"
  fi
  exec "${bin}java" -cp "$classpath" "$@"
}
