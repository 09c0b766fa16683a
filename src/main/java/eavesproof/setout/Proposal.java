package eavesproof.setout;

import eavesproof.job.Job;

/** A change that may serve; the check has not been run on it yet. */
record Proposal(String words, Job edited) {
    /** This one and another on top of it. */
    Proposal and(Proposal next) {
        return new Proposal(words + "; and " + next.words, next.edited);
    }
}
