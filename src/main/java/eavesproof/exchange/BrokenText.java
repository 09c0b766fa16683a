package eavesproof.exchange;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;

/** What is wrong with a text that is no JSON. */
final class BrokenText {
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
        String said = broken.getOriginalMessage();
        int remark = said.indexOf(" (start marker");
        String short_ = remark < 0 ? said : said.substring(0, remark);
        return at(place, letter(text, place), "well-formed JSON: " + Shown.plain(short_));
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
