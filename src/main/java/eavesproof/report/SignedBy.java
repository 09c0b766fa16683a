package eavesproof.report;

import java.util.regex.Pattern;

/**
 * The certificate that a report is signed with, as the paper names it.
 *
 * @param name whom the certificate names; nobody has looked whether that is true
 * @param fingerprint SHA-256 of the certificate
 * @param selfMade whether nobody but its holder stands behind it
 */
public record SignedBy(String name, String fingerprint, boolean selfMade) {
    private static final Pattern SHA_256 = Pattern.compile("[0-9a-f]{64}");
    private static final int LONGEST_NAME = 100;

    public SignedBy {
        name = PlainText.line(name).strip();
        if (name.codePointCount(0, name.length()) > LONGEST_NAME) {
            name = name.substring(0, name.offsetByCodePoints(0, LONGEST_NAME)) + "…";
        }
        if (!SHA_256.matcher(fingerprint).matches()) {
            throw new IllegalArgumentException(
                    "not the SHA-256 of a certificate: " + PlainText.line(fingerprint));
        }
    }
}
