package eavesproof.report.pdf;

import eavesproof.report.SignedBy;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.security.GeneralSecurityException;
import java.security.Key;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.UnrecoverableKeyException;
import java.security.cert.Certificate;
import java.security.cert.X509Certificate;
import java.security.interfaces.ECKey;
import java.security.interfaces.RSAKey;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** A private key with its certificate, from a PKCS #12 file (RFC 7292). */
public final class SigningKey {
    /** NIST SP 800-131A, revision 2: shorter keys no longer protect a signature. */
    private static final int SHORTEST_RSA_BITS = 2048;

    private static final int SHORTEST_EC_BITS = 224;

    /** For signature and attributes beside the certificates. */
    private static final int BESIDE_BYTES = 4096;

    private final PrivateKey key;
    private final List<X509Certificate> chain;

    private SigningKey(PrivateKey key, List<X509Certificate> chain) {
        this.key = key;
        this.chain = List.copyOf(chain);
    }

    /**
     * The one key of the file.
     *
     * @param passphrase stays the caller's, who should forget it
     */
    public static SigningKey read(byte[] file, char[] passphrase) throws KeyTrouble {
        KeyStore store = open(file, passphrase);
        try {
            List<String> keys = new ArrayList<>();
            for (String alias : Collections.list(store.aliases())) {
                if (store.isKeyEntry(alias)) {
                    keys.add(alias);
                }
            }
            if (keys.size() != 1) {
                throw new KeyTrouble(
                        keys.isEmpty()
                                ? "there is no private key in the file, only certificates or nothing"
                                : "there are " + keys.size() + " keys in the file, expected one");
            }
            Key key = store.getKey(keys.get(0), passphrase);
            Certificate[] chain = store.getCertificateChain(keys.get(0));
            if (!(key instanceof PrivateKey privateKey) || chain == null || chain.length == 0) {
                throw new KeyTrouble("the key in the file has no certificate");
            }
            SigningKey read =
                    new SigningKey(
                            privateKey,
                            Arrays.stream(chain).map(X509Certificate.class::cast).toList());
            read.algorithm();
            return read;
        } catch (GeneralSecurityException e) {
            throw new KeyTrouble("the key in the file cannot be used");
        }
    }

    /** The causes are left behind: no trace is to lead to a passphrase. */
    private static KeyStore open(byte[] file, char[] passphrase) throws KeyTrouble {
        try {
            KeyStore store = KeyStore.getInstance("PKCS12");
            store.load(new ByteArrayInputStream(file), passphrase);
            return store;
        } catch (IOException e) {
            throw new KeyTrouble(
                    e.getCause() instanceof UnrecoverableKeyException
                            ? "the passphrase does not open the file"
                            : "the file is no PKCS #12 key file (.p12)");
        } catch (GeneralSecurityException | RuntimeException e) {
            throw new KeyTrouble("the file is protected in a way that cannot be read");
        }
    }

    /** As the paper names it. */
    public SignedBy signedBy() {
        return Certificates.signedBy(chain.get(0));
    }

    /**
     * Refuses a certificate that does not hold on that day.
     *
     * @param day on which it is signed
     */
    public void checkHolds(LocalDate day) throws KeyTrouble {
        X509Certificate certificate = chain.get(0);
        LocalDate from =
                certificate.getNotBefore().toInstant().atZone(ZoneOffset.UTC).toLocalDate();
        LocalDate to = certificate.getNotAfter().toInstant().atZone(ZoneOffset.UTC).toLocalDate();
        // A day more on either side: the day of signing is a local one.
        if (day.plusDays(1).isBefore(from) || day.minusDays(1).isAfter(to)) {
            throw new KeyTrouble(
                    "the certificate holds from " + from + " to " + to + ", and not on " + day);
        }
    }

    byte[] cms(byte[] content) throws IOException {
        return Cms.sign(content, key, algorithmKnown(), chain);
    }

    int reserved() {
        int bytes = BESIDE_BYTES;
        for (X509Certificate certificate : chain) {
            bytes += Certificates.encoded(certificate).length;
        }
        return bytes;
    }

    private String algorithmKnown() {
        try {
            return algorithm();
        } catch (KeyTrouble e) {
            throw new IllegalStateException("a key that was taken cannot be used any more", e);
        }
    }

    private String algorithm() throws KeyTrouble {
        if (key instanceof RSAKey rsa) {
            if (rsa.getModulus().bitLength() < SHORTEST_RSA_BITS) {
                throw new KeyTrouble(
                        "the key is RSA with "
                                + rsa.getModulus().bitLength()
                                + " bits, expected at least "
                                + SHORTEST_RSA_BITS);
            }
            return "SHA256withRSA";
        }
        if (key instanceof ECKey ec) {
            if (ec.getParams().getOrder().bitLength() < SHORTEST_EC_BITS) {
                throw new KeyTrouble("the key is on a curve that is too short");
            }
            return "SHA256withECDSA";
        }
        throw new KeyTrouble(
                "the key is of the kind " + key.getAlgorithm() + ", expected RSA or EC");
    }
}
