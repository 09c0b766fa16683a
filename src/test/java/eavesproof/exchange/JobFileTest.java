package eavesproof.exchange;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.job.Said;
import eavesproof.job.WayPart;
import java.util.List;
import org.junit.jupiter.api.Test;

class JobFileTest {

    static Job read(String json) throws BadRecord {
        return JobFile.read(json.getBytes(UTF_8));
    }

    /** The problems of a record that must have some. */
    static List<RecordProblem> problems(String json) {
        return assertThrows(BadRecord.class, () -> read(json)).problems();
    }

    private static RecordProblem onlyProblem(String json) {
        List<RecordProblem> problems = problems(json);
        assertEquals(1, problems.size(), problems::toString);
        return problems.get(0);
    }

    private static String straight(String keys) {
        return """
        {"id": "j", "runs": [{"id": "a", "straights": [{"id": "a1", %s}]}]}
        """
                .formatted(keys);
    }

    @Test
    void fiveMistakesInFivePlacesAreFiveProblemsInTheFilesOrder() {
        List<RecordProblem> problems =
                problems(
                        """
                        {
                          "id": "j",
                          "titel": "misspelt",
                          "gutters": {"g": {"thickness_mm": "two"}},
                          "runs": [{"id": "a", "gutter": "g", "straights": [
                            {"id": "a1", "length_mm": 5000, "brackets": [
                              {"id": "b1", "station_mm": 5200}
                            ]},
                            {"id": "a2", "length_mm": -5000}
                          ]}],
                          "remarks": ["one"],
                          "remarks": ["again"]
                        }
                        """);
        assertEquals(
                List.of(
                        "3:3 /titel: found the unknown key \"titel\", expected `title`",
                        "4:37 /gutters/g/thickness_mm: found \"two\", expected a thickness in"
                                + " millimetres, 0.1 to 100",
                        "7:34 /runs/0/straights/0/brackets/0/station_mm: found 5200, expected a station"
                                + " on its straight, 0 to 5000",
                        "9:31 /runs/0/straights/1/length_mm: found -5000, expected the length of a"
                                + " straight in millimetres, 50 to 100000",
                        "12:3 /remarks: found the key \"remarks\" again, expected each key only once"),
                problems.stream().map(RecordProblem::text).toList());
    }

    @Test
    void whatIsAbsentOrNullStaysUnknown() throws BadRecord {
        Job absent = read("{\"id\": \"j\"}");
        assertNull(absent.runs());
        assertNull(absent.site());
        assertEquals(absent, read("{\"id\": \"j\", \"runs\": null, \"site\": null}"));
    }

    @Test
    void anEmptyListSaysThatThereAreNone() throws BadRecord {
        assertEquals(List.of(), read("{\"id\": \"j\", \"runs\": []}").runs());
        Run.Straight straight = firstStraight(read(straight("\"brackets\": []")));
        assertEquals(List.of(), straight.brackets());
        assertNull(straight.fittings());
    }

    @Test
    void aCircumstanceThatNobodySpokeOfIsNothing() throws BadRecord {
        Job job = read("{\"id\": \"j\", \"circumstances\": {\"heavy_rain\": {\"is\": null}}}");
        assertEquals(Said.nothing(), job.circumstances().heavyRain());
        assertEquals(Said.nothing(), job.circumstances().snowLies());
    }

    @Test
    void aCircumstanceKeepsWhoSaysSo() throws BadRecord {
        Job job =
                read(
                        """
                        {"id": "j", "circumstances": {"ground_snow_kn_m2":
                          {"is": 0.9, "how": "told", "by": "the council", "reference": "map 3"}}}
                        """);
        assertEquals(
                new Said<>(0.9, "told", "the council", "map 3"),
                job.circumstances().groundSnowKnM2());
    }

    @Test
    void instrumentsKeepTheirIdAndTheirOrder() throws BadRecord {
        Job job =
                read(
                        """
                        {"id": "j", "instruments": {
                          "z": {"kind": "tape", "class": "II", "from_hook": "no"},
                          "a": {"kind": "laser", "accuracy_mm_per_m": 0.3}}}
                        """);
        assertEquals(List.of("z", "a"), List.copyOf(job.instruments().keySet()));
        assertEquals("z", job.instruments().get("z").id());
        assertEquals("II", job.instruments().get("z").tapeClass());
        assertEquals(0.3, job.instruments().get("a").accuracyMmPerM());
    }

    @Test
    void eachPartOfTheWayIsOfItsKind() throws BadRecord {
        Job job =
                read(
                        """
                        {"id": "j", "way": [
                          {"kind": "outlet", "to": "d", "id": "o"},
                          {"id": "d", "kind": "downpipe", "to": "x", "also_carries": []},
                          {"id": "x", "kind": "discharge", "place": {"is": "soakaway"}}]}
                        """);
        WayPart.Downpipe downpipe = (WayPart.Downpipe) job.way().get(1);
        assertEquals(List.of(), downpipe.alsoCarries());
        assertNull(downpipe.clips());
        assertEquals("soakaway", ((WayPart.Discharge) job.way().get(2)).place().is());
    }

    @Test
    void aPartOfTheWayHasOnlyTheKeysOfItsKind() {
        RecordProblem problem =
                onlyProblem(
                        """
                        {"id": "j", "way": [{"id": "x", "to": "x", "kind": "discharge"}]}
                        """);
        assertEquals("/way/0/to", problem.pointer());
        assertEquals(33, problem.column());
    }

    @Test
    void aPartOfTheWayMustSayItsKind() {
        assertEquals(
                "no `kind`", onlyProblem("{\"id\": \"j\", \"way\": [{\"id\": \"o\"}]}").found());
    }

    @Test
    void aLocalWordIsAnsweredWithTheRecordsOwn() {
        assertTrue(
                onlyProblem("{\"id\": \"j\", \"dropper\": {}}")
                        .expected()
                        .startsWith("`downpipe`; one of the keys id, title, "));
        assertEquals("`gutters`", onlyProblem("{\"id\": \"j\", \"spoutings\": {}}").expected());
        assertEquals("`brackets`", onlyProblem(straight("\"hangers\": []")).expected());
        assertEquals(
                "`downpipe`",
                onlyProblem("{\"id\": \"j\", \"way\": [{\"id\": \"d\", \"kind\": \"downspout\"}]}")
                        .expected());
        assertEquals(
                "`corner`",
                onlyProblem(straight("\"left_end\": {\"kind\": \"mitre\"}")).expected());
    }

    @Test
    void aMisspeltListOfGuttersDoesNotMakeProblemsOfItsReferences() {
        onlyProblem(
                "{\"id\": \"j\", \"guters\": {\"g\": {}}, \"runs\": [{\"id\": \"a\", \"gutter\": \"g\"}]}");
    }

    @Test
    void brokenTextIsOneProblemAfterThoseFoundBeforeIt() {
        List<RecordProblem> problems =
                problems(
                        "{\"id\": \"j\",\n \"titel\": 1,\n \"runs\": [{\"id\": \"a\", \"gutter\": \"g\"},]}");
        assertEquals(2, problems.size(), problems::toString);
        assertEquals("/titel", problems.get(0).pointer());
        assertEquals("\"]\"", problems.get(1).found());
        assertEquals(3, problems.get(1).line());
        assertEquals(38, problems.get(1).column());
    }

    @Test
    void trailingWordsAreRefused() {
        assertEquals("more after the end of the record", onlyProblem("{\"id\": \"j\"} {}").found());
        onlyProblem("{\"id\": \"j\"} and so on");
    }

    @Test
    void aNumberMustBeOneAndWithinItsRange() {
        for (String length :
                List.of(
                        "0", "-0.0", "-1", "1e400", "1000001", "1e-400", "\"5\"", "true", "{}",
                        "[]")) {
            RecordProblem problem = onlyProblem(straight("\"length_mm\": " + length));
            assertEquals("/runs/0/straights/0/length_mm", problem.pointer());
        }
    }

    @Test
    void aCountMustBeWhole() throws BadRecord {
        onlyProblem(straight("\"brackets\": [{\"id\": \"b\", \"screws_fitted\": 3.5}]"));
        Job job = read(straight("\"brackets\": [{\"id\": \"b\", \"screws_fitted\": 4.0}]"));
        assertEquals(4, firstStraight(job).brackets().get(0).screwsFitted());
    }

    @Test
    void aDateMustBeADayOfTheCalendar() throws BadRecord {
        onlyProblem("{\"id\": \"j\", \"dates\": {\"measured\": \"2026-02-30\"}}");
        onlyProblem("{\"id\": \"j\", \"dates\": {\"measured\": \"3.2.2026\"}}");
        Job job = read("{\"id\": \"j\", \"dates\": {\"measured\": \"2028-02-29\"}}");
        assertEquals("2028-02-29", job.dates().measured());
    }

    @Test
    void aPhotographLiesBesideTheRecord() throws BadRecord {
        for (String file :
                List.of("/etc/x", "../x.jpg", "a/../../x", "c:x", "a\\\\b", "a//b", "a/")) {
            onlyProblem(
                    "{\"id\": \"j\", \"photographs\": [{\"id\": \"p\", \"file\": \""
                            + file
                            + "\"}]}");
        }
        Job job =
                read(
                        "{\"id\": \"j\", \"photographs\": [{\"id\": \"p\", \"file\": \"photos/a..b 1.jpg\"}]}");
        assertEquals("photos/a..b 1.jpg", job.photographs().get(0).file());
    }

    @Test
    void textThatCouldDisfigureAPageIsRefused() {
        for (String text : List.of("", "  ", "\\u0007", "a\\nb", "\\u202e", "\\ud800", "\\ufffe")) {
            onlyProblem("{\"id\": \"j\", \"title\": \"" + text + "\"}");
        }
        onlyProblem("{\"id\": \"j\", \"title\": \"" + "x".repeat(1001) + "\"}");
    }

    @Test
    void whatIsShownOfTheFileIsShortAndVisible() {
        RecordProblem problem =
                onlyProblem("{\"id\": \"j\", \"\\u001b[31m" + "x".repeat(5000) + "\": 1}");
        assertTrue(problem.text().length() < 600, problem::text);
        assertTrue(problem.text().contains("\\u001b"), problem::text);
    }

    private static Run.Straight firstStraight(Job job) {
        return job.runs().get(0).straights().get(0);
    }
}
