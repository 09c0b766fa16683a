/**
 * What was typed, and how the answer is shown on a terminal.
 *
 * <p>Results go to standard output and everything else to standard error; the exit code is one of a
 * fixed few. Start at Main.
 *
 * <p>Arguments come in. The option parser lives only here; no decision about a gutter is ever made
 * here.
 */
@NullMarked
package eavesproof.app.cli;

import org.jspecify.annotations.NullMarked;
