package eavesproof.exchange;

import java.util.regex.Pattern;

/** The kinds of free text in a record. */
final class Texts {
    /**
     * What would break a line, turn the reading order of a page round, or be refused by XML:
     * controls, line separators, directional overrides, lone surrogates, non-characters.
     */
    private static final String UNFIT =
            "\\u0000-\\u001f\\u007f-\\u009f\\u2028-\\u202e\\u2066-\\u2069\\ud800-\\udfff\\ufffe\\uffff";

    static final Leaf.Text LINE =
            new Leaf.Text(
                    "text",
                    Pattern.compile(
                            "^[^" + UNFIT + "]*[^" + UNFIT + "\\u0020\\u00a0][^" + UNFIT + "]*$"),
                    1000,
                    "text in one line of at most 1000 characters (null where nobody knows)");

    static final Leaf.Text ID =
            new Leaf.Text(
                    "id",
                    Pattern.compile("^[A-Za-z0-9][A-Za-z0-9._-]*$"),
                    64,
                    "at most 64 letters a to z, digits, . _ - and a letter or digit first");

    /** A file lies beside the record or below it, so that a record cannot fetch another's files. */
    static final Leaf.Text FILE =
            new Leaf.Text(
                    "file",
                    Pattern.compile(
                            "^(?!/)(?!.*//)(?!(.*/)?\\.{1,2}(/|$))[^"
                                    + UNFIT
                                    + "\\\\:*?\"<>|]*[^"
                                    + UNFIT
                                    + "\\\\:*?\"<>|/ ]$"),
                    200,
                    "the name of a file beside this record or in a folder beside it");

    private Texts() {}
}
