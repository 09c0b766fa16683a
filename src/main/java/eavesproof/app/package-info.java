/**
 * Who asked for what, and what they get back.
 *
 * <p>Each use of the program is one short sequence in the trade's words: read the job, choose the
 * rules, survey, check, judge, report. Start here to see what happens in which order; faults of the
 * program are caught here once, and never mixed with findings.
 *
 * <p>Everything may be known here, and nothing is worked out here. The words of a command line stay
 * below.
 */
@NullMarked
package eavesproof.app;

import org.jspecify.annotations.NullMarked;
