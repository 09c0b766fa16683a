package eavesproof.setout;

import eavesproof.job.Job;

/** What to do about a requirement that is not met, or not shown to be. */
public sealed interface Remedy {
    /** In the trade's words, with numbers and places; as a clause without a full stop. */
    String words();

    /**
     * A change that mends it.
     *
     * @param edited the record with the proposed values, on which the whole check was run: it mends
     *     every finding that it is offered for, and puts nothing else wrong
     */
    record Change(String words, Job edited) implements Remedy {}

    /** What to measure, ask or find out, or why no single change serves. */
    record Advice(String words) implements Remedy {}
}
