package eavesproof.report.pdf;

import java.io.ByteArrayOutputStream;
import java.math.BigInteger;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.KeyStore;
import java.security.cert.Certificate;
import java.security.cert.X509Certificate;
import java.time.Instant;
import java.util.Date;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/** Keys with self-made certificates, made when a test asks for them. */
public final class TestKeys {
    public static final String PASSPHRASE = "a gutter in the rain";

    private static final Instant FROM = Instant.parse("2026-01-01T00:00:00Z");
    private static final Instant TO = Instant.parse("2030-01-01T00:00:00Z");

    private TestKeys() {}

    public static byte[] ec(String name) throws Exception {
        return store(name, "EC", 256, "SHA256withECDSA", FROM, TO);
    }

    static byte[] rsa(String name, int bits) throws Exception {
        return store(name, "RSA", bits, "SHA256withRSA", FROM, TO);
    }

    static byte[] edwards(String name) throws Exception {
        return store(name, "Ed25519", 255, "Ed25519", FROM, TO);
    }

    static byte[] ec(String name, Instant from, Instant to) throws Exception {
        return store(name, "EC", 256, "SHA256withECDSA", from, to);
    }

    static byte[] withoutKey() throws Exception {
        KeyStore store = KeyStore.getInstance("PKCS12");
        store.load(null, null);
        store.setCertificateEntry(
                "someone", certificate("Someone", pair("EC", 256), "SHA256withECDSA", FROM, TO));
        return written(store);
    }

    private static byte[] store(
            String name, String kind, int size, String algorithm, Instant from, Instant to)
            throws Exception {
        KeyPair pair = pair(kind, size);
        KeyStore store = KeyStore.getInstance("PKCS12");
        store.load(null, null);
        store.setKeyEntry(
                "key",
                pair.getPrivate(),
                PASSPHRASE.toCharArray(),
                new Certificate[] {certificate(name, pair, algorithm, from, to)});
        return written(store);
    }

    private static KeyPair pair(String kind, int size) throws Exception {
        KeyPairGenerator generator = KeyPairGenerator.getInstance(kind);
        generator.initialize(size);
        return generator.generateKeyPair();
    }

    private static X509Certificate certificate(
            String name, KeyPair pair, String algorithm, Instant from, Instant to)
            throws Exception {
        X500Name holder = new X500Name("CN=" + name);
        return new JcaX509CertificateConverter()
                .getCertificate(
                        new JcaX509v3CertificateBuilder(
                                        holder,
                                        BigInteger.valueOf(17),
                                        Date.from(from),
                                        Date.from(to),
                                        holder,
                                        pair.getPublic())
                                .build(
                                        new JcaContentSignerBuilder(algorithm)
                                                .build(pair.getPrivate())));
    }

    private static byte[] written(KeyStore store) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        store.store(out, PASSPHRASE.toCharArray());
        return out.toByteArray();
    }
}
