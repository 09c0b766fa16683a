package eavesproof.exchange;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What is wrong with a text that is no JSON. */
final class BrokenText {
    /** Where Jackson repeats where an object began, which says nothing of this place. */
    private static final Pattern START_MARKER = Pattern.compile(" \\(start marker.*");

    private static final Pattern UNEXPECTED = Pattern.compile("^Unexpected character \\('(.)'");

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
        String said = START_MARKER.matcher(broken.getOriginalMessage()).replaceAll("");
        Matcher named = UNEXPECTED.matcher(said);
        String found = named.find() ? Shown.quoted(named.group(1)) : letter(text, place);
        return at(place, found, "well-formed JSON: " + Shown.plain(said));
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
