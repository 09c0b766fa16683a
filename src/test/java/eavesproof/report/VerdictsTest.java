package eavesproof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.drawing.Numbered;
import eavesproof.findings.Digest;
import eavesproof.findings.Finding;
import eavesproof.findings.Findings;
import eavesproof.job.Job;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;

class VerdictsTest {
    private final Job job = Verandah.job("Verandah", 20, List.of());
    private final Findings findings = Verandah.findings(job);
    private final Verdicts verdicts = new Verdicts(findings, new Places(job));

    @Test
    void everyFindingThatNeedsActionHasANumberOfItsOwn() {
        Listed listed = Listed.of(Digest.of(findings));
        List<Finding> open =
                findings.findings().stream().filter(f -> f.verdict().needsAction()).toList();
        List<String> labels = new ArrayList<>(listed.labels().values());
        assertEquals(open.size(), labels.size());
        assertEquals(labels.size(), new HashSet<>(labels).size());
        open.forEach(finding -> assertTrue(listed.labels().containsKey(finding)));
    }

    @Test
    void theNumberInTheListIsTheNumberOnTheDrawing() {
        Listed listed = Listed.of(Digest.of(findings));
        List<Numbered> drawn = listed.on("a1");
        // All three are too wide by as much, and so share a row.
        assertEquals(
                List.of("1.1 to 1.3"),
                verdicts.open().get(0).actions().get(0).needs().get(0).places().stream()
                        .map(Report.Held::number)
                        .toList());
        assertEquals(
                List.of("1.1", "1.2", "1.3"),
                drawn.stream().filter(n -> n.block() == 1).map(Numbered::label).toList());
        // b3 to b4, at 50 + 2 · 490 mm and one spacing further.
        assertEquals(1030, drawn.get(0).fromMm());
        assertEquals(1520, drawn.get(0).toMm());
    }

    @Test
    void whatFailsComesBeforeWhatIsTooCloseAndWhatIsMissing() {
        assertEquals(
                List.of("does-not-comply", "too-close", "not-recorded"),
                verdicts.open().stream().map(Report.Open::mark).toList());
    }

    @Test
    void requirementsThatLackTheSameThingAreOneEntryWithOneReasonAndOneRemedy() {
        Report.Action missing = verdicts.open().get(2).actions().get(0);
        assertTrue(missing.shared());
        assertEquals(
                List.of("Whether discharge e1 is approved is not recorded."), missing.because());
        assertEquals(List.of("Ask the authority and record who said so."), missing.remedy());
        assertEquals(2, missing.needs().size());
        missing.needs().forEach(need -> assertEquals(List.of(), need.places().get(0).notes()));
    }

    @Test
    void aFailureSaysMeasuredLimitAndWhatIsLacking() {
        Report.Held held = verdicts.open().get(0).actions().get(0).needs().get(0).places().get(0);
        assertEquals("640.0", held.measured());
        assertEquals("± 1.1", held.sure());
        assertEquals("≤ 500.0 mm", held.limit());
        assertEquals("−140.0", held.spare());
    }

    @Test
    void whatCompliesIsCountedAndShownAtItsTightest() {
        Report.Met met = verdicts.complies().get(0).met().get(0);
        // 19 spacings, of which the 3rd, 10th and 17th are too wide.
        assertEquals("16", met.times());
        assertEquals("490.0", met.tightest().measured());
        assertEquals("common practice", met.source());
    }

    @Test
    void nothingThatIsOpenIsAmongWhatComplies() {
        verdicts.complies()
                .forEach(
                        topic ->
                                topic.met()
                                        .forEach(
                                                met ->
                                                        assertFalse(
                                                                met.rule().startsWith("discharge")
                                                                        || met.rule()
                                                                                .startsWith("fall"),
                                                                met.rule())));
    }

    @Test
    void whereThereIsOneRunAndOneStraightTheyAreUnderstood() {
        Report.Held held = verdicts.open().get(0).actions().get(0).needs().get(0).places().get(0);
        assertTrue(held.place().startsWith("From b3 to b4, 1030 to 1520 mm; from b10"));
    }

    @Test
    void anUncertaintyThatNobodyStatedIsNotPrintedAsNone() {
        Finding finding = findings.findings().get(0);
        Finding unstated =
                new Finding(
                        finding.rule(),
                        finding.topic(),
                        finding.says(),
                        finding.verdict(),
                        finding.kind(),
                        finding.measures(),
                        finding.place(),
                        finding.measured()
                                .map(
                                        m ->
                                                new Finding.MeasuredNumber(
                                                        490,
                                                        eavesproof.quantity.Unit.MM,
                                                        java.util.Optional.empty())),
                        finding.limit(),
                        finding.margin(),
                        java.util.Optional.empty(),
                        finding.decision(),
                        List.of(),
                        finding.source(),
                        finding.provenance(),
                        List.of(),
                        finding.remedy(),
                        List.of());
        assertEquals("not stated", Amounts.sure(unstated));
    }

    @Test
    void aProbabilityIsNeverPrintedAsMoreCertainThanItIs() {
        assertEquals("> 99.99 %", Amounts.probability(1));
        assertEquals("< 0.01 %", Amounts.probability(0));
        assertEquals("= 2.28 %", Amounts.probability(0.02275));
    }
}
