package eavesproof.report.pdf;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class SigningKeyTest {
    private static final char[] PASSPHRASE = TestKeys.PASSPHRASE.toCharArray();

    @Test
    void aCertificateOfOnesOwnSaysSo() throws Exception {
        SigningKey key = SigningKey.read(TestKeys.ec("Mere Tāmati"), PASSPHRASE);
        assertEquals("Mere Tāmati", key.signedBy().name());
        assertTrue(key.signedBy().selfMade());
    }

    @Test
    void aWrongPassphraseIsToldAndNeverRepeated() throws Exception {
        byte[] file = TestKeys.ec("Mere");
        KeyTrouble trouble =
                assertThrows(
                        KeyTrouble.class,
                        () -> SigningKey.read(file, "not the right words".toCharArray()));
        assertEquals("the passphrase does not open the file", trouble.getMessage());
        assertNull(trouble.getCause());
        StringWriter trace = new StringWriter();
        trouble.printStackTrace(new PrintWriter(trace));
        assertTrue(!trace.toString().contains("not the right words"), trace::toString);
    }

    @Test
    void anotherKindOfFileIsToldApartFromAWrongPassphrase() {
        assertEquals(
                "the file is no PKCS #12 key file (.p12)",
                refused("-----BEGIN KEY-----".getBytes(StandardCharsets.UTF_8)));
        assertEquals("the file is no PKCS #12 key file (.p12)", refused(new byte[0]));
    }

    @Test
    void aFileWithoutAKeyIsRefused() throws Exception {
        assertEquals(
                "there is no private key in the file, only certificates or nothing",
                refused(TestKeys.withoutKey()));
    }

    @Test
    void keysThatNoReaderChecksOrThatAreTooShortAreRefused() throws Exception {
        assertTrue(refused(TestKeys.edwards("Mere")).endsWith("expected RSA or EC"));
        assertEquals(
                "the key is RSA with 1024 bits, expected at least 2048",
                refused(TestKeys.rsa("Mere", 1024)));
    }

    @Test
    void aCertificateHoldsOnItsDaysOnly() throws Exception {
        SigningKey key =
                SigningKey.read(
                        TestKeys.ec(
                                "Mere",
                                Instant.parse("2026-03-01T10:00:00Z"),
                                Instant.parse("2026-05-01T10:00:00Z")),
                        PASSPHRASE);
        assertDoesNotThrow(() -> key.checkHolds(LocalDate.of(2026, 3, 1)));
        assertEquals(
                "the certificate holds from 2026-03-01 to 2026-05-01, and not on 2026-05-03",
                assertThrows(KeyTrouble.class, () -> key.checkHolds(LocalDate.of(2026, 5, 3)))
                        .getMessage());
        assertThrows(KeyTrouble.class, () -> key.checkHolds(LocalDate.of(2026, 2, 27)));
    }

    private static String refused(byte[] file) {
        return String.valueOf(
                assertThrows(KeyTrouble.class, () -> SigningKey.read(file, PASSPHRASE))
                        .getMessage());
    }
}
