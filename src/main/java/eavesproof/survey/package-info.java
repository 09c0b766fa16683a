/**
 * What the measurements mean: for every kind of fact at every place a fact, a gap with its reason,
 * or none because the record says so.
 *
 * <p>This is where the engineering is: spacings, clearances, falls, ponds, movement, catchments,
 * flows and depth of water, each with its workings. It owns the vocabulary that rules are written
 * in, and the type of the Basis, by which a rule set states what the engineering needs from a
 * country.
 *
 * <p>Start at the surveyor, which asks one topic after another; a trough is a run as it lies, and
 * marks are things along a straight together with how far they are known.
 *
 * <p>A job and a basis come in. A requirement or a verdict never does: the survey says what is so,
 * and not whether that will do. No fact ever holds null or NaN.
 */
@NullMarked
package eavesproof.survey;

import org.jspecify.annotations.NullMarked;
