package eavesproof.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a file of findings says, read back to compare it with another.
 *
 * @param engine the program that came to them
 * @param asShipped whether the file says that the rules are as shipped
 * @param verdicts by requirement and place
 */
public record WrittenFindings(
        String engine,
        String rules,
        String rulesSha256,
        boolean asShipped,
        String outcome,
        Map<String, String> verdicts) {
    public WrittenFindings {
        verdicts = Collections.unmodifiableMap(new LinkedHashMap<>(verdicts));
    }

    /** Empty where the file holds no findings. */
    public static Optional<WrittenFindings> read(byte[] file) {
        return OwnJson.read(file)
                .filter(all -> all.path("findings").isArray())
                .map(WrittenFindings::of);
    }

    private static WrittenFindings of(JsonNode all) {
        Map<String, String> verdicts = new LinkedHashMap<>();
        for (JsonNode finding : all.path("findings")) {
            String place = place(finding);
            String key = place;
            for (int n = 2; verdicts.containsKey(key); n++) {
                key = place + " (" + n + ")";
            }
            verdicts.put(key, finding.path("verdict").asText());
        }
        JsonNode rules = all.path("rules");
        return new WrittenFindings(
                all.path("engine").asText(),
                rules.path("name").asText(),
                rules.path("sha256").asText(),
                rules.path("as_shipped").asBoolean(),
                all.path("outcome").asText(),
                verdicts);
    }

    private static String place(JsonNode finding) {
        List<String> words = new ArrayList<>();
        finding.path("subject").forEach(part -> words.add(part.asText()));
        return finding.path("rule").asText() + ", " + String.join(" ", words);
    }

    /** Where the verdicts of the other differ, in sentences that call this one the paper. */
    public List<String> differences(WrittenFindings other) {
        List<String> differences = new ArrayList<>();
        if (!outcome.equals(other.outcome)) {
            differences.add(
                    "The paper's outcome is "
                            + outcome
                            + ", and the data give "
                            + other.outcome
                            + ".");
        }
        Map<String, String> left = new LinkedHashMap<>(other.verdicts);
        verdicts.forEach(
                (place, verdict) -> {
                    String given = left.remove(place);
                    if (!verdict.equals(given)) {
                        differences.add(
                                place
                                        + ": the paper says "
                                        + verdict
                                        + ", and the data give "
                                        + (given == null ? "nothing" : given)
                                        + ".");
                    }
                });
        left.forEach(
                (place, verdict) ->
                        differences.add(
                                place
                                        + ": the paper says nothing, and the data give "
                                        + verdict
                                        + "."));
        return differences;
    }
}
