/**
 * The finished result: every finding, the outcome of the whole job, and what was not checked.
 *
 * <p>What every output is made from, be it terminal, paper or file, in one order that depends on
 * nothing but the job and the rules.
 *
 * <p>Verdicts, rules, facts and remedies come in. Nothing is computed here that could change a
 * verdict, and nothing is worded for one output alone.
 */
@NullMarked
package eavesproof.findings;

import org.jspecify.annotations.NullMarked;
