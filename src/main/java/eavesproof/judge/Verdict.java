package eavesproof.judge;

/** What may be concluded of one requirement. There is no other conclusion. */
public enum Verdict {
    DOES_NOT_COMPLY("does-not-comply", "does not comply"),
    TOO_CLOSE("too-close", "too close to call"),
    NOT_RECORDED("not-recorded", "not recorded"),
    COMPLIES("complies", "complies"),
    NOT_APPLICABLE("not-applicable", "not applicable");

    private final String id;
    private final String words;

    Verdict(String id, String words) {
        this.id = id;
        this.words = words;
    }

    /** As results write it. */
    public String id() {
        return id;
    }

    /** As people read it. */
    public String words() {
        return words;
    }

    /** Whether somebody has to do something about it. */
    public boolean needsAction() {
        return this == DOES_NOT_COMPLY || this == TOO_CLOSE || this == NOT_RECORDED;
    }
}
