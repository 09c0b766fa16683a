/**
 * What a rule set says, as values: its layers, conditions, trees of limits, tables, sources and
 * identity.
 *
 * <p>A rule is here as it was admitted: names, numbers and plain words. Nothing in this package can
 * be run, and the identity printed on the paper covers everything that can move a verdict.
 *
 * <p>Quantities come in. The engine, the file format and the job stay out.
 */
@NullMarked
package eavesproof.rules;

import org.jspecify.annotations.NullMarked;
