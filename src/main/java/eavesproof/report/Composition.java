package eavesproof.report;

import eavesproof.drawing.Drawing;
import eavesproof.drawing.Key;
import eavesproof.findings.Findings;
import eavesproof.findings.OutcomeSentence;
import eavesproof.job.Job;
import eavesproof.job.Run;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiFunction;

/**
 * Puts the report together: finished words for the template, and the drawings that go with them.
 */
final class Composition {
    private static final int ONE_LINE = 90;
    private static final int CUT = 85;

    private final Issue issue;
    private final String madeFrom;
    private final Job job;
    private final Findings findings;
    private final Verdicts verdicts;
    private final Figures figures;
    private final Pictures pictures;

    Composition(Issue issue, double widthMm, BiFunction<String, Drawing, Markup> placed) {
        this.issue = issue;
        madeFrom = issue.madeFromSha256();
        job = issue.job();
        findings = issue.findings();
        verdicts = new Verdicts(findings, new Places(job));
        figures = new Figures(widthMm, placed);
        pictures = new Pictures(issue, widthMm);
        key = figures.place(Key.of(widthMm));
        drawn = figures.of(job, issue.survey(), findings, verdicts.listed());
    }

    private final Markup key;
    private final List<Report.Figure> drawn;

    String number() {
        return issue.number(madeFrom);
    }

    Map<String, Photo.Print> photographs() {
        return pictures.prints();
    }

    /** Under which addresses the text places the pictures of signatures. */
    List<String> signatures() {
        return pictures.hands().values().stream().map(Pictures::address).toList();
    }

    Map<String, Drawing> drawings() {
        return figures.drawings();
    }

    /**
     * @param unprintable which characters could not be printed, in a sentence; empty where all can
     */
    Report report(String unprintable) {
        People people = new People(job);
        List<Report.Caution> cautions = Cautions.of(job, findings.rules().jurisdiction());
        Particulars particulars = new Particulars(job);
        Declarations declarations = new Declarations(issue, pictures.hands());
        String title =
                Objects.requireNonNullElse(job.title(), "Eaves gutter at an address not recorded");
        return new Report(
                number(),
                job.id(),
                title,
                title.length() <= ONE_LINE
                        ? title
                        : title.substring(0, title.offsetByCodePoints(0, CUT)).strip() + " …",
                issue.issued().toString(),
                issue.replaces(),
                issue.program(),
                "Installer's measurement record: " + findings.outcome().words(),
                particulars.entries(job.title(), issue, number()),
                declarations.signed(),
                OutcomeSentence.outcome(findings),
                rests(particulars),
                verdicts.front().urgent(),
                verdicts.front().alsoOpen(),
                RulesHeld.of(findings.rules(), issue.issued()),
                people.who(),
                people.where(),
                lookedAt(),
                leftOut(),
                key,
                drawn,
                verdicts.introduced(),
                verdicts.open(),
                verdicts.complies(),
                verdicts.notApplicable(),
                verdicts.silent(),
                verdicts.workings(),
                Tables.instruments(job),
                AsRecorded.of(job),
                WhoSaysSo.of(job),
                Tables.way(job),
                Tables.tests(job),
                Tables.photographs(job),
                pictures.pictures(),
                Objects.requireNonNullElse(job.remarks(), List.of()),
                declarations.signatures(),
                DigitalSignature.inWords(issue.signedBy()),
                Limits.of(issue),
                Limits.identity(issue, number(), madeFrom),
                cautions,
                CareOfGutter.of(job, cautions),
                unprintable);
    }

    private List<String> rests(Particulars particulars) {
        List<String> rests = new ArrayList<>(particulars.missing());
        rests.addAll(OutcomeSentence.restsOn(findings));
        findings.restsOnAssumed().forEach(what -> rests.add("Assumed: " + what + "."));
        rests.addAll(RulesHeld.superseded(findings.rules(), issue.issued()));
        return rests;
    }

    private List<String> lookedAt() {
        List<Run> runs = Objects.requireNonNullElse(job.runs(), List.<Run>of());
        if (runs.isEmpty()) {
            return List.of("No run of gutter is recorded.");
        }
        List<String> looked = new ArrayList<>();
        for (Run run : runs) {
            List<Run.Straight> straights =
                    Objects.requireNonNullElse(run.straights(), List.<Run.Straight>of());
            looked.add(
                    "Run "
                            + run.id()
                            + (run.title() == null ? "" : ", " + run.title())
                            + ": "
                            + (straights.isEmpty()
                                    ? "no straight recorded"
                                    : String.join(
                                            ", ",
                                            straights.stream().map(Composition::straight).toList()))
                            + ".");
        }
        return looked;
    }

    private static String straight(Run.Straight straight) {
        return "straight "
                + straight.id()
                + " ("
                + (straight.lengthMm() == null
                        ? "length not recorded"
                        : Amounts.with(straight.lengthMm(), eavesproof.quantity.Unit.MM))
                + ")";
    }

    private List<String> leftOut() {
        List<String> left = job.leftOut();
        if (left == null) {
            return List.of("Whether anything was left out on purpose is not recorded.");
        }
        return left.isEmpty()
                ? List.of("Nothing was left out on purpose, as the record says.")
                : left.stream().map(Verdicts::sentence).toList();
    }
}
