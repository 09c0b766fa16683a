/**
 * What of a photograph may go into a report.
 *
 * <p>Start at {@link eavesproof.report.photo.PhotoFolder}. A file name comes in from the record; a
 * picture comes out that the program encoded itself, upright and without anything that the file
 * said beside its pixels, or the reason why there is none. Nothing outside the folder of the record
 * is ever read.
 */
@NullMarked
package eavesproof.report.photo;

import org.jspecify.annotations.NullMarked;
