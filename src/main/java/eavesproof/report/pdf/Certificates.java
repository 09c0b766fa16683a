package eavesproof.report.pdf;

import eavesproof.report.SignedBy;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.cert.CertificateEncodingException;
import java.security.cert.X509Certificate;
import java.util.HexFormat;
import org.bouncycastle.asn1.x500.RDN;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.asn1.x500.style.BCStyle;
import org.bouncycastle.asn1.x500.style.IETFUtils;

/** What a certificate (RFC 5280) says of its holder. */
final class Certificates {
    private Certificates() {}

    static SignedBy signedBy(X509Certificate certificate) {
        return new SignedBy(
                name(certificate),
                HexFormat.of().formatHex(sha256(encoded(certificate))),
                certificate.getSubjectX500Principal().equals(certificate.getIssuerX500Principal()));
    }

    /** The common name; all of the name where there is none. */
    private static String name(X509Certificate certificate) {
        X500Name subject = X500Name.getInstance(certificate.getSubjectX500Principal().getEncoded());
        RDN[] common = subject.getRDNs(BCStyle.CN);
        String name =
                common.length == 0
                        ? subject.toString()
                        : IETFUtils.valueToString(common[0].getFirst().getValue());
        return name.isBlank() ? "somebody whom the certificate does not name" : name;
    }

    static byte[] encoded(X509Certificate certificate) {
        try {
            return certificate.getEncoded();
        } catch (CertificateEncodingException e) {
            throw new IllegalStateException("a certificate that was read cannot be written", e);
        }
    }

    static byte[] sha256(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
