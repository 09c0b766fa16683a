/**
 * What may be concluded: complies, does not comply, too close to call, not recorded, not
 * applicable.
 *
 * <p>The one place that decides a verdict, on unrounded values, by the decision rule that the rule
 * carries.
 *
 * <p>Requirements on facts come in, each with its coverage. Neither rule texts nor how a verdict is
 * worded or drawn belongs here, and no missing thing ever becomes a pass.
 */
@NullMarked
package eavesproof.judge;

import org.jspecify.annotations.NullMarked;
