/**
 * How a job looks: plan, straight, section and way of the water, as marks in millimetres.
 *
 * <p>A drawing is a list of marks; two pens put it on paper, one through Java2D and one as SVG
 * text, and both draw the same. Start at {@link eavesproof.drawing.Drawing}; how wide words come
 * out is asked of {@link eavesproof.drawing.Lettering}, which reads the fonts that travel with the
 * program, never the machine's.
 *
 * <p>Finished results come in. Marks only show numbers that were found elsewhere, and never a new
 * one. A page or a PDF is not known here.
 */
@NullMarked
package eavesproof.drawing;

import org.jspecify.annotations.NullMarked;
