/**
 * How much, in what unit, how sure, and how it is printed.
 *
 * <p>An uncertain number is its value together with the signed standard uncertainty that each error
 * source gives it, so that what two numbers share cancels or adds by itself. Units are a closed
 * list with exact factors; a limit and a measure of different dimensions never meet.
 *
 * <p>Nothing comes in but the JDK. No gutter, no rule and no file is known here, and no number is
 * rounded before it is printed.
 */
@NullMarked
package eavesproof.quantity;

import org.jspecify.annotations.NullMarked;
