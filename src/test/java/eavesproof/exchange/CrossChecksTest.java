package eavesproof.exchange;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Each row is a record with one thing of two values that contradict each other, and where. */
class CrossChecksTest {
    private static final String RECORD =
            """
            {"id": "j",
             "instruments": {"tape": {"kind": "tape"}, "string": {"kind": "string"},
                             "laser": {"kind": "laser", "accuracy_mm_per_m": 0.3}},
             "set_ups": {"s1": {"instrument": "laser"}},
             "runs": [{"id": "a", "straights": [{"id": "a1", "length_mm": 5000, @straight@}]}],
             "way": [@way@],
             @job@}
            """;

    private static String record(String at, String json) {
        return RECORD.replace("@straight@", at.equals("straight") ? json : "\"joints\": []")
                .replace("@way@", at.equals("way") ? json : "")
                .replace("@job@", at.equals("job") ? json : "\"remarks\": []");
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
            straight | "readings": [{"station_mm": 5001}]                                  | /runs/0/straights/0/readings/0/station_mm
            straight | "brackets": [{"id": "b", "station_mm": 5001}]                       | /runs/0/straights/0/brackets/0/station_mm
            straight | "fittings": [{"id": "b", "station_mm": 5001}]                       | /runs/0/straights/0/fittings/0/station_mm
            straight | "joints": [{"id": "b", "station_mm": 5001}]                         | /runs/0/straights/0/joints/0/station_mm
            straight | "cross_tilt": [{"station_mm": 5001}]                                | /runs/0/straights/0/cross_tilt/0/station_mm
            straight | "brackets": [{"id": "b", "screws_fitted": 5, "holes_provided": 4}]  | /runs/0/straights/0/brackets/0/screws_fitted
            straight | "keep_clear": [{"id": "k", "from_mm": 900, "to_mm": 100}]           | /runs/0/straights/0/keep_clear/0/from_mm
            straight | "keep_clear": [{"id": "k", "from_mm": -900, "to_mm": -100}]         | /runs/0/straights/0/keep_clear/0
            straight | "keep_clear": [{"id": "k", "from_mm": 5001, "to_mm": 5900}]         | /runs/0/straights/0/keep_clear/0
            straight | "fascia": {"begins_mm": 4000, "ends_mm": 3999}                      | /runs/0/straights/0/fascia/begins_mm
            straight | "fascia": {"edge_readings": [{"station_mm": 70, "set_up": "none"}]} | /runs/0/straights/0/fascia/edge_readings/0/set_up
            straight | "measured_with": "string"                                           | /runs/0/straights/0/measured_with
            way      | {"id": "o", "kind": "outlet", "on": "a1", "station_mm": 5001}       | /way/0/station_mm
            way      | {"id": "o", "kind": "outlet", "on": "a2"}                           | /way/0/on
            way      | {"id": "d", "kind": "drain", "measured_with": "string"}             | /way/0/measured_with
            way      | {"id": "d", "kind": "downpipe", "clips": [{"id": "c"}, {"id": "c"}]} | /way/0/clips/1/id
            job      | "measured_with": "string"                                           | /measured_with
            job      | "catchments": [{"id": "c", "inflow": {"on": "a1", "station_mm": 5001}}] | /catchments/0/inflow/station_mm
            job      | "catchments": [{"id": "c", "run": "b"}]                             | /catchments/0/run
            job      | "tests": [{"id": "t", "stood": [{"on": "a1", "to_mm": 5001}]}]      | /tests/0/stood/0/to_mm
            job      | "tests": [{"id": "t", "stood": [{"from_mm": 2, "to_mm": 1}]}]       | /tests/0/stood/0/from_mm
            job      | "tests": [{"id": "t", "seen_at": "gully"}]                          | /tests/0/seen_at
            straight | "left_end": {"kind": "corner"}                                      | /runs/0/straights/0/left_end/kind
            straight | "right_end": {"kind": "corner"}                                     | /runs/0/straights/0/right_end/kind
            straight | "keep_clear": [{"id": "k", "from_mm": 2.55, "to_mm": 3.45}]         | /runs/0/straights/0/keep_clear/0
            straight | "readings": [{"station_mm": 0, "surface": "sole", "set_up": "s1", "below_mm": 4}, {"station_mm": 1000, "surface": "sole", "set_up": "s1", "below_mm": 412}] | /runs/0/straights/0/readings/1/below_mm
            way      | {"id": "d", "kind": "drain", "length_mm": 1000, "drop_mm": 1001}    | /way/0/drop_mm
            way      | {"id": "d", "kind": "branch", "length_mm": 100, "drop_mm": 301}     | /way/0/drop_mm
            way      | {"id": "o", "kind": "outlet", "to": "d", "below_datum_mm": 500}, {"id": "d", "kind": "downpipe", "below_datum_mm": 400} | /way/1/below_datum_mm
            way      | {"id": "b", "kind": "branch", "to": "d", "below_datum_mm": 500, "drop_mm": 60}, {"id": "d", "kind": "downpipe", "below_datum_mm": 700} | /way/1/below_datum_mm
            way      | {"id": "o", "kind": "outlet", "on": "a1", "station_mm": 0, "below_datum_mm": 500}, {"id": "p", "kind": "outlet", "on": "a1", "station_mm": 5000, "below_datum_mm": 1100} | /way/1/below_datum_mm
            straight | "brackets": [{"id": "b", "station_mm": 507}, {"id": "c", "station_mm": 500}]   | /runs/0/straights/0/brackets/0/station_mm
            straight | "brackets": [{"id": "b", "station_mm": 500}], "fittings": [{"id": "f", "station_mm": 500, "carries_gutter": "yes"}] | /runs/0/straights/0/fittings/0/station_mm
            straight | "brackets": [{"id": "b", "bite_mm": 500}]                           | /runs/0/straights/0/brackets/0/bite_mm
            straight | "joints": [{"id": "j", "station_mm": 900}, {"id": "k", "station_mm": 919}]     | /runs/0/straights/0/joints/1/station_mm
            straight | "joints": [{"id": "j", "gap_mm": 2000}]                             | /runs/0/straights/0/joints/0/gap_mm
            straight | "joints": [{"id": "j", "insertion_mm": 2000}]                       | /runs/0/straights/0/joints/0/insertion_mm
            way      | {"id": "o", "kind": "outlet", "body_mm": 120, "insertion_mm": 121}  | /way/0/insertion_mm
            way      | {"id": "o", "kind": "outlet", "gap_mm": 2000}                       | /way/0/gap_mm
            way      | {"id": "o", "kind": "outlet", "on": "a1", "station_mm": 500, "body_mm": 120}, {"id": "p", "kind": "outlet", "on": "a1", "station_mm": 600, "body_mm": 120} | /way/1/station_mm
            job      | "catchments": [{"id": "c", "run": "a", "plan_area_m2": 0.3}]        | /catchments/0/plan_area_m2
            job      | "dates": {"work_began": "2026-03-11", "work_ended": "2026-03-10"}   | /dates/work_began
            """)
    void whatContradictsItselfIsRefused(String at, String json, String pointer) {
        List<RecordProblem> problems = JobFileTest.problems(record(at, json));
        assertEquals(List.of(pointer), problems.stream().map(RecordProblem::pointer).toList());
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
            straight | "brackets": [{"id": "b", "station_mm": 5000}, {"id": "c", "station_mm": 0}]
            straight | "brackets": [{"id": "b", "screws_fitted": 4, "holes_provided": 4}]
            straight | "brackets": [{"id": "b", "screws_fitted": 4}]
            straight | "keep_clear": [{"id": "k", "from_mm": -300, "to_mm": 600}]
            straight | "keep_clear": [{"id": "k", "from_mm": 4700, "to_mm": 5600}]
            straight | "keep_clear": [{"id": "k", "from_mm": 4700}]
            straight | "fascia": {"begins_mm": -40, "ends_mm": 5040}
            straight | "measured_with": "laser"
            way      | {"id": "o", "kind": "outlet", "on": "a1", "station_mm": 5000}
            way      | {"id": "o", "kind": "outlet", "station_mm": 9000}
            straight | "brackets": [{"id": "b", "station_mm": 520}, {"id": "c", "station_mm": 500}]
            straight | "brackets": [{"id": "b", "station_mm": 500}], "fittings": [{"id": "f", "station_mm": 500, "carries_gutter": "no"}]
            straight | "joints": [{"id": "j", "station_mm": 900}, {"id": "k", "station_mm": 920}], "brackets": [{"id": "b", "station_mm": 900}]
            way      | {"id": "o", "kind": "outlet", "on": "a1", "station_mm": 500, "body_mm": 120}, {"id": "p", "kind": "outlet", "on": "a1", "station_mm": 610, "body_mm": 120}
            way      | {"id": "o", "kind": "outlet", "on": "a1", "station_mm": 500}, {"id": "p", "kind": "outlet", "on": "a1", "station_mm": 510, "body_mm": 120}
            way      | {"id": "d", "kind": "downpipe", "to": "e"}, {"id": "e", "kind": "drain"}
            straight | "left_end": {"kind": "open"}, "right_end": {"kind": "stop end"}
            straight | "readings": [{"station_mm": 0, "surface": "sole", "set_up": "s1", "below_mm": 404}, {"station_mm": 1000, "surface": "sole", "set_up": "s1", "below_mm": 412}]
            way      | {"id": "b", "kind": "branch", "to": "d", "below_datum_mm": 500, "drop_mm": 60}, {"id": "d", "kind": "downpipe", "below_datum_mm": 570}
            way      | {"id": "b", "kind": "branch", "to": "x", "below_datum_mm": 500, "drop_mm": 60}, {"id": "x", "kind": "discharge", "below_datum_mm": 400}
            job      | "catchments": [{"id": "c", "run": "a", "plan_area_m2": 0.6}]
            job      | "dates": {"work_began": "2026-03-10", "work_ended": "2026-03-10"}
            job      | "dates": {"work_began": "2026-03-10"}
            """)
    void whatMayBeTrueIsTaken(String at, String json) {
        assertDoesNotThrow(() -> JobFileTest.read(record(at, json)));
    }

    private static final String WITH_AN_OUTLET =
            """
            {"id": "j",
             "runs": [{"id": "a", "straights": [
               {"id": "a1", "joints": [{"id": "k", "station_mm": %s}]}]}],
             "way": [{"id": "o", "kind": "outlet", "on": "a1", "station_mm": 500, "body_mm": 160}]}
            """;

    /** The fitting goes from 420 to 580; 10 mm more or less may be the tape. */
    @ParameterizedTest
    @ValueSource(strings = {"431", "500", "569"})
    void aJointInsideAnOutletIsRefused(String station) {
        List<RecordProblem> problems = JobFileTest.problems(WITH_AN_OUTLET.formatted(station));
        assertEquals(
                List.of("/runs/0/straights/0/joints/0/station_mm"),
                problems.stream().map(RecordProblem::pointer).toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"430", "570", "2000"})
    void aJointBesideAnOutletIsTaken(String station) {
        assertDoesNotThrow(() -> JobFileTest.read(WITH_AN_OUTLET.formatted(station)));
    }

    private static final String TWO_STRAIGHTS =
            """
            {"id": "j", "gutters": {"g": {"jointing": "%s"}},
             "runs": [{"id": "a", "gutter": "g", "straights": [
               {"id": "a1", "right_end": {"kind": "%s"}, "joints": [{"id": "k", "kind": "%s"}]},
               {"id": "a2", "left_end": {"kind": "%s"}}]}]}
            """;

    @ParameterizedTest(name = "{0}, {1}, {2}, {3}")
    @CsvSource({
        "cemented, stop end, cemented, corner, /runs/0/straights/0/right_end/kind",
        "cemented, corner, cemented, open, /runs/0/straights/1/left_end/kind",
        "cemented, corner, gasket, corner, /runs/0/straights/0/joints/0/kind",
        "gasket, corner, cemented, corner, /runs/0/straights/0/joints/0/kind",
        "soldered, corner, cemented, corner, /runs/0/straights/0/joints/0/kind",
        "cemented, corner, soldered, corner, /runs/0/straights/0/joints/0/kind"
    })
    void aRunThatDoesNotHangTogetherIsRefused(
            String jointing, String right, String joint, String left, String pointer) {
        List<RecordProblem> problems =
                JobFileTest.problems(TWO_STRAIGHTS.formatted(jointing, right, joint, left));
        assertEquals(List.of(pointer), problems.stream().map(RecordProblem::pointer).toList());
    }

    @ParameterizedTest(name = "{0}, {1}")
    @CsvSource({
        "cemented, cemented",
        "cemented, expansion",
        "soldered, sealed and riveted",
        "seamless, sealed and riveted"
    })
    void aRunThatHangsTogetherIsTaken(String jointing, String joint) {
        assertDoesNotThrow(
                () ->
                        JobFileTest.read(
                                TWO_STRAIGHTS.formatted(jointing, "corner", joint, "corner")));
    }

    /** No tape, rule or laser that a fitter has is as good as that. */
    @ParameterizedTest(name = "{0}, {1}")
    @CsvSource({
        "tape, accuracy_mm, 0.05, 0.1",
        "rule, resolution_mm, 0.01, 0.05",
        "laser, accuracy_mm_per_m, 0.01, 0.02",
        "string, accuracy_mm_per_m, 0.09, 0.1"
    })
    void anInstrumentThatIsBetterThanTheBestIsRefused(
            String kind, String key, String stated, String best) {
        String json = "{\"id\": \"j\", \"instruments\": {\"i\": {\"kind\": \"%s\", \"%s\": %s}}}";
        List<RecordProblem> problems = JobFileTest.problems(json.formatted(kind, key, stated));
        assertEquals(
                List.of("in millimetres no less than " + best + ", the best of a " + kind),
                problems.stream().map(RecordProblem::expected).toList());
        assertDoesNotThrow(() -> JobFileTest.read(json.formatted(kind, key, best)));
    }

    /** What a metre, a centimetre or a square centimetre looks like where millimetres stand. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
            "gutters": {"g": {"profile": {"width_mm": 0.2}}}      | the width of a gutter in millimetres, 30 to 1000
            "gutters": {"g": {"profile": {"depth_mm": 6.2}}}      | the depth of a gutter in millimetres, 10 to 1000
            "gutters": {"g": {"area_mm2": {"is": 59}}}            | the area of a section in square millimetres, 500 to 500000
            "runs": [{"id": "a", "straights": [{"id": "s", "length_mm": 7.2}]}] | the length of a straight in millimetres, 50 to 100000
            "way": [{"id": "d", "kind": "downpipe", "size_mm": 7.6}]            | the inside size of a pipe in millimetres, 20 to 1000
            "circumstances": {"rainfall": [{"intensity_mm_h": 0.086}]}          | the intensity of rain in millimetres an hour, 10 to 5000
            """)
    void aSlipOfTheUnitIsToldTheUnit(String json, String expected) {
        List<RecordProblem> problems = JobFileTest.problems("{\"id\": \"j\", " + json + "}");
        assertEquals(List.of(expected), problems.stream().map(RecordProblem::expected).toList());
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"tape", "staff", "rule"})
    void whatGivesNoLevelIsNoInstrumentOfASetUp(String kind) {
        List<RecordProblem> problems =
                JobFileTest.problems(
                        """
                        {"id": "j", "instruments": {"i": {"kind": "%s"}},
                         "set_ups": {"s": {"instrument": "i"}}}
                        """
                                .formatted(kind));
        assertEquals("an instrument that gives a level", problems.get(0).expected());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"laser, 1", "water level, 1", "tape, 0", "rule, 0"})
    void onlyATapeHasAClassOfErrors(String kind, int problems) {
        String json =
                "{\"id\": \"j\", \"instruments\": {\"i\": {\"kind\": \""
                        + kind
                        + "\", \"class\": \"II\"}}}";
        int found = 0;
        try {
            JobFileTest.read(json);
        } catch (BadRecord bad) {
            found = bad.problems().size();
        }
        assertEquals(problems, found);
    }
}
