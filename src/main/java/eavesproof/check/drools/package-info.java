/**
 * How rule files become something that Drools can run, and what it then says of a job.
 *
 * <p>Four parts: the reader, which admits a rule file in the plain form or refuses it with file and
 * line; the compiler, which is handed only what was printed again from what the reader admitted;
 * the cache of compiled layers; and the session, which reports which rule met which subject.
 *
 * <p>This is the only home of Drools, and none of its types leave. The bytes of a stranger's file
 * never reach the compiler.
 */
@NullMarked
package eavesproof.check.drools;

import org.jspecify.annotations.NullMarked;
