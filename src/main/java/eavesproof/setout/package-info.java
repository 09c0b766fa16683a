/**
 * Where things should go, and what is the smallest thing to change.
 *
 * <p>A remedy is a change of the record or a piece of advice. A change is offered only after the
 * whole check was run on the changed job and found that it mends the failure and makes no new one;
 * the check comes in as a function.
 *
 * <p>Job, facts and verdicts come in. The engine and the reading of files stay out.
 */
@NullMarked
package eavesproof.setout;

import org.jspecify.annotations.NullMarked;
