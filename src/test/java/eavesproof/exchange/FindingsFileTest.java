package eavesproof.exchange;

import static eavesproof.findings.Examples.all;
import static eavesproof.findings.Examples.copper;
import static eavesproof.findings.Examples.discharge;
import static eavesproof.findings.Examples.open;
import static eavesproof.findings.Examples.rules;
import static eavesproof.findings.Examples.spacing;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import eavesproof.findings.Findings;
import eavesproof.findings.Outcome;
import eavesproof.judge.Verdict;
import eavesproof.survey.Place;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class FindingsFileTest {
    private static final Findings EVERYTHING =
            all(
                    Outcome.DOES_NOT_COMPLY,
                    rules(false, "4.2 leaf guards"),
                    List.of(copper(3)),
                    List.of("snow area: no (run a)"),
                    discharge("kerb", "kerb", "soakaway"),
                    open(
                            Verdict.NOT_RECORDED,
                            "least fall",
                            Place.of("run", "a", "outlet", "o1", "side", "left"),
                            "no readings",
                            "no tie"),
                    spacing("b1", "b2", 50, 540),
                    spacing("b2", "b3", 590, 500));

    @Test
    void theKeysStandInTheirOrder() throws IOException {
        JsonNode json = read(EVERYTHING);

        assertEquals(
                List.of(
                        "job",
                        "job_sha256",
                        "outcome",
                        "rules",
                        "engine",
                        "clauses_not_checked",
                        "uncovered",
                        "rests_on_assumed",
                        "rests_on_word",
                        "notices",
                        "findings"),
                names(json));
        assertEquals(
                List.of(
                        "rule",
                        "topic",
                        "says",
                        "verdict",
                        "subject",
                        "measured",
                        "provenance",
                        "limit",
                        "margin",
                        "probability",
                        "decision",
                        "because",
                        "assumed",
                        "source",
                        "remedy",
                        "workings"),
                names(json.at("/findings/0")));
    }

    @Test
    void aMeasuredFindingIsWrittenWhole() {
        String json = new String(FindingsFile.write(EVERYTHING), UTF_8);

        assertTrue(
                json.contains(
                        """
                              "verdict": "does-not-comply",
                              "subject": {
                                "kind": "bracket-spacing",
                                "run": "a",
                                "from": "b1",
                                "to": "b2",
                                "straight": "a1",
                                "from_mm": 50,
                                "to_mm": 590
                              },
                              "measured": {
                                "value": 540,
                                "unit": "mm",
                                "expanded_uncertainty": 1.1
                              },
                              "provenance": {
                                "how": "measured",
                                "by": null,
                                "reference": null
                              },
                              "limit": {
                                "is": "at-most",
                                "value": 500,
                                "unit": "mm",
                                "as_written": "500 mm"
                              },
                              "margin": -40,
                              "probability": 0,
                              "decision": "guarded r=1",
                              "because": null,
                        """),
                json);
    }

    @Test
    void aWordHasNoNumberBesideIt() throws IOException {
        JsonNode finding = read(EVERYTHING).at("/findings/0");

        assertEquals("{\"word\":\"kerb\"}", finding.get("measured").toString());
        assertEquals(
                "{\"is\":\"one-of\",\"words\":[\"kerb\",\"soakaway\"]}",
                finding.get("limit").toString());
        assertTrue(finding.get("margin").isNull());
        assertTrue(finding.get("probability").isNull());
        assertEquals("told", finding.at("/provenance/how").asText());
    }

    @Test
    void whatIsMissingIsNullWithItsReasonsJoined() throws IOException {
        JsonNode finding = read(EVERYTHING).at("/findings/1");

        assertTrue(finding.get("measured").isNull());
        assertTrue(finding.get("limit").isNull());
        assertEquals("no readings; no tie", finding.get("because").asText());
    }

    @Test
    void whatNoRuleSpeaksOfIsThere() throws IOException {
        assertEquals(
                "[{\"kind\":\"bracket-spacing\",\"place\":\"run b, at 3 places\","
                        + "\"why\":\"gutter material is copper\"}]",
                read(EVERYTHING).get("uncovered").toString());
    }

    @Test
    void numbersAreRoundedAndNeverInPowersOfTen() {
        String json =
                new String(
                        FindingsFile.write(
                                all(
                                        Outcome.DOES_NOT_COMPLY,
                                        spacing("b1", "b2", 0, 12345678.949),
                                        spacing("b2", "b3", 0, 0.00000123))),
                        UTF_8);

        assertTrue(json.contains("\"value\": 12345678.9,"), json);
        assertTrue(json.contains("\"value\": 0,"), json);
    }

    @Test
    void theSchemaTakesWhatIsWritten() throws IOException {
        assertEquals(List.of(), problems(FindingsFile.write(EVERYTHING)));
        assertEquals(List.of(), problems(FindingsFile.write(all(Outcome.NOT_SHOWN))));
    }

    @Test
    void theSchemaRefusesWhatIsNeverWritten() throws IOException {
        ObjectNode noVerdict = (ObjectNode) read(EVERYTHING);
        ((ObjectNode) noVerdict.at("/findings/0")).remove("verdict");
        assertFalse(problems(bytes(noVerdict)).isEmpty());

        ObjectNode otherWord = (ObjectNode) read(EVERYTHING);
        otherWord.put("outcome", "approved");
        assertFalse(problems(bytes(otherWord)).isEmpty());

        ObjectNode oneMore = (ObjectNode) read(EVERYTHING);
        oneMore.put("score", 10);
        assertFalse(problems(bytes(oneMore)).isEmpty());
    }

    @Test
    void theBytesAreTheSameInEveryLocale() {
        byte[] usual = FindingsFile.write(EVERYTHING);
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            assertArrayEquals(usual, FindingsFile.write(EVERYTHING));
        } finally {
            Locale.setDefault(before);
        }
    }

    private static JsonNode read(Findings findings) throws IOException {
        return new ObjectMapper().readTree(FindingsFile.write(findings));
    }

    private static byte[] bytes(JsonNode json) throws IOException {
        return new ObjectMapper().writeValueAsBytes(json);
    }

    private static List<String> names(JsonNode object) {
        List<String> names = new ArrayList<>();
        object.fieldNames().forEachRemaining(names::add);
        return names;
    }

    private static List<String> problems(byte[] json) throws IOException {
        try (InputStream schema =
                FindingsFile.class.getResourceAsStream("/eavesproof/findings.schema.json")) {
            Schema published =
                    SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                            .getSchema(schema);
            return published.validate(new String(json, UTF_8), InputFormat.JSON).stream()
                    .map(Object::toString)
                    .toList();
        }
    }
}
