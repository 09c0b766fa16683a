package eavesproof.exchange;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What is wrong with a text that is no JSON. */
final class BrokenText {
    /** Where Jackson repeats where an object began, which says nothing of this place. */
    private static final Pattern START_MARKER = Pattern.compile(" \\(start marker.*");

    private static final Pattern UNEXPECTED = Pattern.compile("^Unexpected character \\('(.)'");

    private static final Pattern COMMA = Pattern.compile("(-?[0-9]+),([0-9]+)");

    private static final int LONGEST_NUMBER = 40;

    private BrokenText() {}

    /**
     * @param reached how far the reading had come
     */
    static RecordProblem problem(
            String text, JsonProcessingException broken, JsonLocation reached) {
        JsonLocation place = broken.getLocation() == null ? reached : broken.getLocation();
        if (broken instanceof StreamConstraintsException) {
            return at(place, "a text nested too deep", "a record");
        }
        Optional<RecordProblem> comma = comma(text, place);
        if (comma.isPresent()) {
            return comma.get();
        }
        String said = START_MARKER.matcher(broken.getOriginalMessage()).replaceAll("");
        Matcher named = UNEXPECTED.matcher(said);
        String found = named.find() ? Shown.quoted(named.group(1)) : letter(text, place);
        return at(place, found, "well-formed JSON: " + Shown.plain(said));
    }

    /** In many countries a number is written so; to the parser its second half is a key. */
    private static Optional<RecordProblem> comma(String text, JsonLocation place) {
        int at = (int) place.getCharOffset();
        int from = Math.max(0, Math.min(at, text.length()) - LONGEST_NUMBER);
        int to = Math.min(text.length(), Math.max(0, at) + LONGEST_NUMBER);
        Matcher comma = COMMA.matcher(text.substring(from, to));
        while (comma.find()) {
            if (from + comma.start(2) <= at && at <= from + comma.end(2)) {
                int column = place.getColumnNr() - (at - (from + comma.start()));
                return Optional.of(
                        new RecordProblem(
                                "",
                                place.getLineNr(),
                                column,
                                comma.group() + ", a number with a comma",
                                "a point in a number: " + comma.group().replace(',', '.')));
            }
        }
        return Optional.empty();
    }

    private static RecordProblem at(JsonLocation place, String found, String expected) {
        return new RecordProblem("", place.getLineNr(), place.getColumnNr(), found, expected);
    }

    private static String letter(String text, JsonLocation place) {
        int at = (int) place.getCharOffset();
        return at < 0 || at >= text.length()
                ? "the end of the file"
                : Shown.quoted(text.substring(at, at + 1));
    }
}
