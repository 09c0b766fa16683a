/**
 * How water runs: down a roof, along a gutter, through an outlet, down a pipe.
 *
 * <p>Each nominal method is one class that cites its source and its range of validity beside the
 * line that uses it, and says so when it is asked outside that range.
 *
 * <p>Numbers with units come in. The job, its places and the rules of any country stay out: whoever
 * wants a method names it.
 */
@NullMarked
package eavesproof.hydraulics;

import org.jspecify.annotations.NullMarked;
