package eavesproof.exchange;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What carries an id, and within what its id is the only one. */
enum IdKind {
    JOB("the job", false),
    PERSON("a person", false),
    INSTRUMENT("an instrument", false),
    SET_UP("a set-up", false),
    GUTTER("a gutter", false),
    RUN("a run", false),
    STRAIGHT("a straight", false),
    /** Bracket, fitting, joint or keep-clear zone; a rule names two of them by run and ids. */
    ON_RUN("a bracket, fitting, joint or keep-clear zone of this run", true),
    CATCHMENT("a catchment", false),
    WAY_PART("a part of the way", false),
    OTHER_ROOF("another roof on this downpipe", true),
    CLIP("a clip of this downpipe", true),
    WATER_TEST("a test", false),
    PHOTOGRAPH("a photograph", false);

    private static final Pattern OUTERMOST_ELEMENT = Pattern.compile(".*?/[0-9]+(?=/|$)");

    private final String words;
    private final boolean withinPart;

    IdKind(String words, boolean withinPart) {
        this.words = words;
        this.withinPart = withinPart;
    }

    String words() {
        return words;
    }

    /**
     * The part of the record within which an id at this pointer is the only one of its kind: the
     * element of the outermost list ("/runs/0"), or everything ("").
     */
    String boundary(String pointer) {
        Matcher element = OUTERMOST_ELEMENT.matcher(pointer);
        return withinPart && element.lookingAt() ? element.group() : "";
    }
}
