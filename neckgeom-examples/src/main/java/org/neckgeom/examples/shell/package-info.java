/**
 * The library in JShell: running a maker's script so that a mistake in it is a failure of the run.
 *
 * <p>{@link org.neckgeom.examples.shell.ScriptShell} evaluates scripts in this JVM; {@link
 * org.neckgeom.examples.shell.RunScript} is its command line, which {@code neckshell SCRIPT} starts. JShell's own
 * command always ends with status 0, and reads a script line by line, so that a statement that continues in the next
 * line with a dot fails; this runner does neither.
 */
package org.neckgeom.examples.shell;
