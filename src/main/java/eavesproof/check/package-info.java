/**
 * Which requirement meets which fact, and for each that does not, why: a condition that does not
 * hold, a gap, or one too near to tell.
 *
 * <p>Every rule is laid against every subject and against every gap of its subject's kind, so that
 * silence can never look like a pass. The limit is evaluated here, which yields its value, its
 * table row, its workings and its uncertainty at once.
 *
 * <p>Facts, gaps and rules come in. Verdicts never do, and the rule engine is known only to the
 * package below this one.
 */
@NullMarked
package eavesproof.check;

import org.jspecify.annotations.NullMarked;
