package eavesproof.report.pdf;

import java.io.IOException;
import java.security.PrivateKey;
import java.security.cert.CertificateEncodingException;
import java.security.cert.X509Certificate;
import java.util.List;
import java.util.Map;
import org.bouncycastle.asn1.ASN1Encoding;
import org.bouncycastle.asn1.DERSet;
import org.bouncycastle.asn1.cms.Attribute;
import org.bouncycastle.asn1.cms.AttributeTable;
import org.bouncycastle.asn1.cms.CMSAttributes;
import org.bouncycastle.asn1.ess.ESSCertIDv2;
import org.bouncycastle.asn1.ess.SigningCertificateV2;
import org.bouncycastle.asn1.pkcs.PKCSObjectIdentifiers;
import org.bouncycastle.cert.jcajce.JcaCertStore;
import org.bouncycastle.cms.CMSException;
import org.bouncycastle.cms.CMSProcessableByteArray;
import org.bouncycastle.cms.CMSSignedDataGenerator;
import org.bouncycastle.cms.DefaultSignedAttributeTableGenerator;
import org.bouncycastle.cms.jcajce.JcaSignerInfoGeneratorBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;
import org.bouncycastle.operator.jcajce.JcaDigestCalculatorProviderBuilder;

/**
 * The signature itself: CMS (RFC 5652), detached, as ETSI EN 319 142-1 asks of PAdES baseline B-B:
 * the certificate is named in a signed attribute (RFC 5035), and no attribute says when it was
 * signed, since the signature dictionary does.
 */
final class Cms {
    private Cms() {}

    static byte[] sign(
            byte[] content, PrivateKey key, String algorithm, List<X509Certificate> chain)
            throws IOException {
        try {
            CMSSignedDataGenerator generator = new CMSSignedDataGenerator();
            generator.addSignerInfoGenerator(
                    new JcaSignerInfoGeneratorBuilder(
                                    new JcaDigestCalculatorProviderBuilder().build())
                            .setSignedAttributeGenerator(new Baseline(chain.get(0)))
                            .build(
                                    new JcaContentSignerBuilder(algorithm).build(key),
                                    chain.get(0)));
            generator.addCertificates(new JcaCertStore(chain));
            return generator
                    .generate(new CMSProcessableByteArray(content), false)
                    .toASN1Structure()
                    .getEncoded(ASN1Encoding.DER);
        } catch (OperatorCreationException | CMSException | CertificateEncodingException e) {
            throw new IOException("the key cannot sign", e);
        }
    }

    private static final class Baseline extends DefaultSignedAttributeTableGenerator {
        Baseline(X509Certificate certificate) {
            super(new AttributeTable(named(certificate)));
        }

        private static Attribute named(X509Certificate certificate) {
            // SHA-256 is what RFC 5035 takes for granted.
            ESSCertIDv2 id =
                    new ESSCertIDv2(Certificates.sha256(Certificates.encoded(certificate)));
            return new Attribute(
                    PKCSObjectIdentifiers.id_aa_signingCertificateV2,
                    new DERSet(new SigningCertificateV2(id)));
        }

        @Override
        @SuppressWarnings("rawtypes") // as it is inherited
        public AttributeTable getAttributes(Map parameters) {
            return super.getAttributes(parameters)
                    .remove(CMSAttributes.signingTime)
                    .remove(CMSAttributes.cmsAlgorithmProtect);
        }
    }
}
