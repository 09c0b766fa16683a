/**
 * How a result is said and laid out on paper.
 *
 * <p>The words and numbers of the report are finished before a template sees them; a template
 * arranges and cannot compute, fetch or run anything. What a person typed is made harmless here.
 *
 * <p>Findings and drawings come in. FreeMarker lives only here, and the libraries for PDF and
 * signatures only here and below. The clock and the locale stay out: the date is an argument.
 */
@NullMarked
package eavesproof.report;

import org.jspecify.annotations.NullMarked;
