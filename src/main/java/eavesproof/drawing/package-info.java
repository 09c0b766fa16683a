/**
 * How a job looks: plan, straight, section and way of the water, as marks in millimetres.
 *
 * <p>A drawing is a list of marks; two pens put it on paper, one through Java2D and one as SVG
 * text, and both draw the same.
 *
 * <p>Finished results come in. Marks only show numbers that were found elsewhere, and never a new
 * one. A page, a font file or a PDF is not known here.
 */
@NullMarked
package eavesproof.drawing;

import org.jspecify.annotations.NullMarked;
