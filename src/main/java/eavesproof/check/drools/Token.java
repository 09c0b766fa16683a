package eavesproof.check.drools;

/**
 * One word of a rule file.
 *
 * @param text as written, a string without its quotes
 */
record Token(Kind kind, String text, int line) {
    enum Kind {
        NAME,
        VARIABLE,
        NUMBER,
        STRING,
        SIGN
    }

    boolean is(String sign) {
        return kind == Kind.SIGN && text.equals(sign);
    }

    boolean isName(String name) {
        return kind == Kind.NAME && text.equals(name);
    }

    /** As a message quotes it. */
    String shown() {
        return kind == Kind.STRING ? "\"" + text + "\"" : text;
    }
}
