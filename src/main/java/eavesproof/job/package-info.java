/**
 * What was measured at one address, by whom, and with what.
 *
 * <p>Start at the job and go down: its runs, their straights, what lies on them, and the way that
 * the water takes from there. A job is exactly what its record says: what was left out is left out
 * here too, and nothing is filled in or worked out.
 *
 * <p>Quantities come in. A rule, a country's custom, a file format or a computed value never does.
 */
@NullMarked
package eavesproof.job;

import org.jspecify.annotations.NullMarked;
