package eavesproof.exchange;

/**
 * One thing that is wrong with a record.
 *
 * @param pointer where it stands, as a JSON pointer (RFC 6901); empty for the record as a whole
 * @param line from 1
 * @param column in characters, from 1
 * @param found what stands there, shortened and fit to be printed
 * @param expected what could stand there instead
 */
public record RecordProblem(String pointer, int line, int column, String found, String expected) {

    /** The problem in one line: place, found, expected. */
    public String text() {
        String where = pointer.isEmpty() ? "" : " " + pointer;
        return line + ":" + column + where + ": found " + found + ", expected " + expected;
    }
}
