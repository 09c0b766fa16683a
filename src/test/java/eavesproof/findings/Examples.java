package eavesproof.findings;

import eavesproof.check.Coverage;
import eavesproof.judge.Verdict;
import eavesproof.quantity.Unit;
import eavesproof.rules.RuleSet;
import eavesproof.survey.Facts;
import eavesproof.survey.Place;
import eavesproof.survey.Provenance;
import eavesproof.survey.Vocabulary;
import eavesproof.survey.Working;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Findings to try outputs on, written by hand and not come from any check. */
public final class Examples {
    public static final RuleSet.Document CUSTOM =
            new RuleSet.Document(
                    "custom",
                    "What a tidy job satisfies",
                    "2026",
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of("2026-05-01"),
                    RuleSet.Standing.COMMON_PRACTICE);
    public static final RuleSet.Document RECALLED =
            new RuleSet.Document(
                    "recalled",
                    "Eaves handbook",
                    "",
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    RuleSet.Standing.FROM_MEMORY);
    public static final String SHA_256 = "0123456789abcdef".repeat(4);

    private Examples() {}

    /** From one bracket to the next on straight a1, at most 500 mm. */
    public static Finding spacing(String from, String to, double fromMm, double centresMm) {
        double margin = 500 - centresMm;
        return new Finding(
                "bracket centres",
                "support",
                "Brackets stand no further apart than the gutter can bear.",
                margin >= 1.1
                        ? Verdict.COMPLIES
                        : margin < -1.1 ? Verdict.DOES_NOT_COMPLY : Verdict.TOO_CLOSE,
                "bracket-spacing",
                "from one support to the next, centre to centre",
                Place.of("run", "a", "from", from, "to", to).at("a1", fromMm, fromMm + centresMm),
                Optional.of(new Finding.MeasuredNumber(centresMm, Unit.MM, Optional.of(1.1))),
                Optional.of(new Finding.NumberLimit(true, 500, Unit.MM, "500 mm")),
                Optional.of(margin),
                Optional.of(margin >= 0 ? 1.0 : 0.0),
                "guarded r=1",
                margin >= 1.1 || margin < -1.1
                        ? List.of()
                        : List.of(
                                "the reading itself meets the limit, by less than its uncertainty"),
                source(CUSTOM, "2.1"),
                Optional.of(Provenance.MEASURED),
                List.of(),
                Optional.empty(),
                List.of(new Working("station of " + from, fromMm + " mm", "tape")));
    }

    /** A word that was found where one of others was wanted, or the wanted one. */
    public static Finding discharge(String found, String... wanted) {
        return new Finding(
                "where water may go",
                "discharge",
                "Roof water goes where the authority takes roof water.",
                List.of(wanted).contains(found) ? Verdict.COMPLIES : Verdict.DOES_NOT_COMPLY,
                "discharge-kind",
                "where the water finally goes",
                Place.of("run", "a", "discharge", "g1"),
                Optional.of(new Finding.MeasuredWord(found)),
                Optional.of(new Finding.WordLimit(List.of(wanted))),
                Optional.empty(),
                Optional.empty(),
                "simple",
                List.of(),
                source(RECALLED, ""),
                Optional.of(
                        new Provenance("told", Optional.of("the owner"), Optional.of("plan 7"))),
                List.of(),
                Optional.empty(),
                List.of());
    }

    /** Something that nobody recorded, or that a circumstance keeps away. */
    public static Finding open(Verdict verdict, String rule, Place place, String... because) {
        return new Finding(
                rule,
                "fall",
                "The gutter falls towards its outlet (" + rule + ").",
                verdict,
                "reach-fall",
                "the fall of a reach towards its outlet; negative where it falls away",
                place,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "guarded r=1",
                List.of(because),
                source(CUSTOM, "3"),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                List.of());
    }

    public static Coverage.Uncovered copper(int places) {
        return new Coverage.Uncovered(
                Vocabulary.kind(Facts.BracketSpacing.class),
                "b",
                places,
                List.of("gutter material is copper"));
    }

    public static Findings.RulesUsed rules(boolean asShipped, String... clausesNotChecked) {
        return new Findings.RulesUsed(
                "trade-practice",
                "Trade practice",
                "anywhere",
                SHA_256,
                SHA_256,
                asShipped,
                asShipped ? List.of() : List.of("bracket centres: at most 450 mm, was 500 mm"),
                Map.of(CUSTOM.key(), CUSTOM),
                List.of(clausesNotChecked));
    }

    public static Findings all(Outcome outcome, Finding... findings) {
        return all(outcome, rules(true), List.of(), List.of(), findings);
    }

    public static Findings all(
            Outcome outcome,
            Findings.RulesUsed rules,
            List<Coverage.Uncovered> uncovered,
            List<String> assumed,
            Finding... findings) {
        return new Findings(
                "lean-to",
                SHA_256,
                outcome,
                rules,
                "eavesproof 1.0",
                List.of(findings),
                uncovered,
                assumed,
                List.of(),
                List.of());
    }

    private static Finding.Source source(RuleSet.Document document, String clause) {
        return new Finding.Source(
                document.title(), document.edition(), clause, document.standing());
    }
}
