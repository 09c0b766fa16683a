/**
 * Bytes to jobs, rule sets and tables, and findings to bytes.
 *
 * <p>A record is read once, by a reader that knows each key, its kind and its range, and that
 * answers with the value or with the list of everything wrong: where it stands, what was found,
 * what was expected.
 *
 * <p>Bytes and values come in. Jackson lives only here, and no value knows that it can be written
 * as JSON. A bad record is never half read.
 */
@NullMarked
package eavesproof.exchange;

import org.jspecify.annotations.NullMarked;
