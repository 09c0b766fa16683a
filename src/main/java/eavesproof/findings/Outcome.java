package eavesproof.findings;

/** What may be said of the whole job. */
public enum Outcome {
    COMPLIES("complies", "complies", 0),
    DOES_NOT_COMPLY("does-not-comply", "does not comply", 1),
    NOT_SHOWN("not-shown", "not shown to comply", 2);

    private final String id;
    private final String words;
    private final int exitCode;

    Outcome(String id, String words, int exitCode) {
        this.id = id;
        this.words = words;
        this.exitCode = exitCode;
    }

    /** As results write it. */
    public String id() {
        return id;
    }

    /** As people read it. */
    public String words() {
        return words;
    }

    /** How the process ends. */
    public int exitCode() {
        return exitCode;
    }
}
