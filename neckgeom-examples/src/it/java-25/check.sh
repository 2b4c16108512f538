#!/bin/sh
# Runs a compact source file of Java 25: check.sh MODULES
# The JDK is JAVA_25_HOME, or the one that runs Maven, or one where Linux keeps them.
set -eu
cd "$(dirname "$0")"
for home in "${JAVA_25_HOME:-}" "${JAVA_HOME:-}" /usr/lib/jvm/*-25-* /usr/lib/jvm/*-25; do
  if [ -x "$home/bin/java" ] && "$home/bin/java" -version 2>&1 | grep -q 'version "25'; then
    exec "$home/bin/java" --module-path "$1" --add-modules org.neckgeom.core src/Check.java
  fi
done
echo "the Java 25 consumer was NOT tried: no JDK 25 here; name one by JAVA_25_HOME" >&2
