package eavesproof.survey;

import eavesproof.job.Said;
import java.util.Optional;

/**
 * Who says so, and how they know.
 *
 * @param how one of the record's words measured, seen, told, assumed; "recorded" for what the
 *     record states of a part without asking who says so; "not said" where it asks and nobody
 *     answered
 */
public record Provenance(String how, Optional<String> by, Optional<String> reference) {
    private static final String NOT_SAID = "not said";

    public static final Provenance MEASURED = plain("measured");
    public static final Provenance RECORDED = plain("recorded");

    static Provenance of(Said<?> said) {
        String how = said.how();
        return new Provenance(
                how == null ? NOT_SAID : how,
                Optional.ofNullable(said.by()),
                Optional.ofNullable(said.reference()));
    }

    public boolean isAssumed() {
        return how.equals("assumed");
    }

    /** Whether it was asked who says so, and nobody answered. */
    public boolean isUnsaid() {
        return how.equals(NOT_SAID);
    }

    /** This, or the other where nobody knows it and this is known. */
    Provenance orLess(Provenance other) {
        boolean less = other.isAssumed() || other.isUnsaid();
        return less && !isAssumed() && !isUnsaid() ? other : this;
    }

    /** As people read it: "told by J. Smith, letter of 3 May". */
    public String text() {
        String known = how.equals(NOT_SAID) ? "how it is known is not said" : how;
        String nobody = how.equals(RECORDED.how) ? "" : ", nobody is named";
        return known
                + by.map(name -> " by " + name).orElse(nobody)
                + reference.map(where -> ", " + where).orElse("");
    }

    private static Provenance plain(String how) {
        return new Provenance(how, Optional.empty(), Optional.empty());
    }
}
