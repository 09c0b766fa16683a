/**
 * How a laid-out report becomes a PDF that lasts, can be signed, and gives its data back.
 *
 * <p>The file conforms to PDF/A and PDF/UA, comes out the same byte for byte on any machine,
 * carries the record and the findings as attachments, and is signed last.
 *
 * <p>A laid-out document and bytes to attach come in. Nothing is ever fetched, neither from the
 * network nor from a disk.
 */
@NullMarked
package eavesproof.report.pdf;

import org.jspecify.annotations.NullMarked;
