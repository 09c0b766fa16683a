package eavesproof.report;

import java.util.List;
import java.util.Optional;

/** What a digital signature shows, and what it does not. */
final class DigitalSignature {
    private DigitalSignature() {}

    static List<String> inWords(Optional<SignedBy> signedBy) {
        return signedBy.map(DigitalSignature::inWords).orElse(List.of());
    }

    private static List<String> inWords(SignedBy by) {
        String shows =
                by.selfMade()
                        ? "The certificate is self-made. It shows that this file has not changed "
                                + "since it was signed, and no more: anybody can make a certificate "
                                + "in any name, so it does not show who signed."
                        : "The certificate was issued by somebody other than its holder. The "
                                + "signature shows that this file has not changed since it was "
                                + "signed; whether that issuer can be trusted about the name, "
                                + "nobody has looked.";
        return List.of(
                "This file is signed digitally with the certificate of "
                        + by.name()
                        + ", SHA-256 fingerprint "
                        + by.fingerprint()
                        + ".",
                shows
                        + " Whoever wants to know compares the fingerprint with one that the signer "
                        + "has given them in another way, and checks the file with: eavesproof prove "
                        + "REPORT.pdf --signed-by FINGERPRINT.");
    }
}
