package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.exchange.BadRecord;
import eavesproof.exchange.JobFile;
import eavesproof.findings.Findings;
import eavesproof.findings.OutcomeSentence;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What of a good job nobody who worked on it has measured or seen. */
class OnWhoseWordTest {
    private static final ShippedRules RULES = ShippedRules.named("trade-practice");
    private static final String OFFICE = "what the building office says of ";

    /** The way ends at the discharge. */
    private static int discharge() throws BadRecord {
        return JobFile.read(EditedRecord.ofSample("verandah-pvc").bytes()).way().size() - 1;
    }

    private static Findings with(String key, String said) throws BadRecord {
        return RULES.check(
                EditedRecord.ofSample("verandah-pvc")
                        .with("/way/" + discharge() + "/" + key, said)
                        .bytes());
    }

    private static String rests(Findings findings) {
        return String.join("\n", findings.restsOnWord());
    }

    @Test
    void whatWasToldIsSaidToRestOnWhoeverToldIt() {
        Findings findings = RULES.check(EditedRecord.ofSample("verandah-pvc").bytes());
        assertTrue(
                findings.restsOnWord()
                        .contains(
                                "what Moana Ferreby (the client) says of snow area (no; in 31"
                                        + " winters)"),
                rests(findings));
        assertTrue(
                rests(findings)
                        .contains(
                                "discharge approved (yes; letter of 17 February 2026,"
                                        + " BC-2026-0417), discharge"),
                rests(findings));
        assertTrue(
                OutcomeSentence.restsOn(findings).stream()
                        .anyMatch(it -> it.startsWith("Rests on " + OFFICE)));
        assertFalse(rests(findings).contains("approval, and not"), rests(findings));
        assertFalse(rests(findings).contains("a plan"), rests(findings));
    }

    @Test
    void anApprovalThatTheInstallerSawIsTheInstallersWord() throws Exception {
        Findings findings =
                with(
                        "approved",
                        "{\"is\": \"yes\", \"how\": \"seen\", \"by\": \"Jory Tamblyn\","
                                + " \"reference\": \"letter of 3 May\"}");
        assertTrue(
                rests(findings)
                        .contains(
                                "the word of Jory Tamblyn (the installer) for an approval, and not"
                                        + " on that of whoever approves: discharge approved (yes;"
                                        + " letter of 3 May)"),
                rests(findings));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Jory  Tamblyn", "jory tamblyn ", "JORY-TAMBLYN", "The Installer"})
    void whoWritesHisNameOtherwiseIsStillHimself(String by) throws Exception {
        Findings findings =
                with("approved", "{\"is\": \"yes\", \"how\": \"seen\", \"by\": \"" + by + "\"}");
        assertTrue(rests(findings).contains("for an approval, and not"), rests(findings));
    }

    @Test
    void aDashIsNobodysName() throws Exception {
        Findings findings = with("approved", "{\"is\": \"yes\", \"how\": \"told\", \"by\": \"-\"}");
        assertTrue(rests(findings).contains("for an approval, and not"), rests(findings));
    }

    @Test
    void anApprovalByNobodyWhoIsNamedIsSaidToBeOne() throws Exception {
        Findings findings = with("approved", "{\"is\": \"yes\", \"how\": \"seen\"}");
        assertTrue(rests(findings).contains("the word of nobody who is named"), rests(findings));
    }

    @Test
    void anOutfallThatIsKnownFromAPlanIsSaidToBeTracedByNobody() throws Exception {
        Findings findings =
                with("traced", "{\"is\": \"plan\", \"how\": \"seen\", \"by\": \"Hana Tamblyn\"}");
        assertTrue(
                rests(findings)
                        .contains("a plan for where the water goes, which nobody has traced"),
                rests(findings));
    }

    @Test
    void anOutfallByHearsayIsSaidToRestOnWhoeverSaysSo() throws Exception {
        Findings findings =
                with("traced", "{\"is\": \"dye\", \"how\": \"told\", \"by\": \"a neighbour\"}");
        assertTrue(
                findings.restsOnWord().stream()
                        .anyMatch(
                                it ->
                                        it.startsWith(
                                                "what a neighbour says of outfall traced (dye)")),
                rests(findings));
    }

    @Test
    void aThingThatWasMeasuredOrSeenRestsOnNobodysWord() {
        Findings findings = RULES.check(EditedRecord.ofSample("verandah-pvc").bytes());
        assertFalse(rests(findings).contains("Hana"), rests(findings));
        assertEquals(
                List.of(),
                findings.restsOnWord().stream()
                        .filter(it -> it.contains("bracket"))
                        .toList()
                        .stream()
                        .filter(it -> !it.contains("sheet"))
                        .toList());
    }
}
