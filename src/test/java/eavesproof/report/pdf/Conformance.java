package eavesproof.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

/** What the validator says of a file. */
public final class Conformance {
    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private Conformance() {}

    public static void assertArchivalAndAccessible(byte[] pdf) throws Exception {
        assertConforms(pdf, PDFAFlavour.PDFA_3_A);
        assertConforms(pdf, PDFAFlavour.PDFUA_1);
    }

    static void assertConforms(byte[] pdf, PDFAFlavour flavour) throws Exception {
        try (PDFAParser parser =
                        Foundries.defaultInstance()
                                .createParser(new ByteArrayInputStream(pdf), flavour);
                PDFAValidator validator =
                        Foundries.defaultInstance().createValidator(flavour, false)) {
            ValidationResult result = validator.validate(parser);
            List<String> failed = new ArrayList<>();
            result.getTestAssertions()
                    .forEach(
                            a ->
                                    failed.add(
                                            a.getRuleId()
                                                    + " "
                                                    + a.getMessage()
                                                    + " "
                                                    + a.getLocation()));
            assertEquals(List.of(), failed);
            assertTrue(result.isCompliant());
            assertTrue(result.getTotalAssertions() > 1000, "the validator looked at the document");
        }
    }
}
