package eavesproof.report.pdf;

import eavesproof.report.SignedBy;
import java.security.cert.CertificateException;
import java.security.cert.X509Certificate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bouncycastle.asn1.ASN1ObjectIdentifier;
import org.bouncycastle.asn1.cms.Attribute;
import org.bouncycastle.asn1.cms.AttributeTable;
import org.bouncycastle.asn1.ess.ESSCertIDv2;
import org.bouncycastle.asn1.ess.SigningCertificateV2;
import org.bouncycastle.asn1.nist.NISTObjectIdentifiers;
import org.bouncycastle.asn1.pkcs.PKCSObjectIdentifiers;
import org.bouncycastle.cert.X509CertificateHolder;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cms.CMSException;
import org.bouncycastle.cms.CMSProcessableByteArray;
import org.bouncycastle.cms.CMSSignedData;
import org.bouncycastle.cms.CMSSignerDigestMismatchException;
import org.bouncycastle.cms.SignerInformation;
import org.bouncycastle.cms.jcajce.JcaSimpleSignerInfoVerifierBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.util.Selector;

/**
 * Whether the value of a signature belongs to what it covers and to the certificate inside it.
 * Nobody looks whether the certificate itself is to be trusted.
 */
record Verification(Optional<SignedBy> by, List<String> problems) {
    private static final Set<ASN1ObjectIdentifier> DIGESTS =
            Set.of(
                    NISTObjectIdentifiers.id_sha256,
                    NISTObjectIdentifiers.id_sha384,
                    NISTObjectIdentifiers.id_sha512);

    static Verification of(byte[] covered, byte[] cms) {
        List<String> problems = new ArrayList<>();
        Optional<SignedBy> by = Optional.empty();
        try {
            CMSSignedData data = new CMSSignedData(new CMSProcessableByteArray(covered), cms);
            Collection<SignerInformation> signers = data.getSignerInfos().getSigners();
            if (signers.size() != 1) {
                problems.add("it has " + signers.size() + " signers, expected one");
                return new Verification(by, problems);
            }
            SignerInformation signer = signers.iterator().next();
            X509Certificate certificate = certificate(data, signer);
            by = Optional.of(Certificates.signedBy(certificate));
            if (!DIGESTS.contains(signer.getDigestAlgorithmID().getAlgorithm())) {
                problems.add("it rests on a digest that is no longer safe");
            }
            if (!names(signer, certificate)) {
                problems.add("its certificate is not bound to it");
            }
            if (!signer.verify(new JcaSimpleSignerInfoVerifierBuilder().build(certificate))) {
                problems.add("it was not made with the key of its certificate");
            }
        } catch (CMSSignerDigestMismatchException e) {
            problems.add("the file has changed since it was signed");
        } catch (CMSException
                | CertificateException
                | OperatorCreationException
                | RuntimeException e) {
            // A library that meets hostile bytes fails with whatever comes first.
            problems.add("its value cannot be checked");
        }
        return new Verification(by, problems);
    }

    @SuppressWarnings("unchecked") // the id of a signer selects certificates and nothing else
    private static X509Certificate certificate(CMSSignedData data, SignerInformation signer)
            throws CertificateException {
        Collection<X509CertificateHolder> found =
                data.getCertificates()
                        .getMatches((Selector<X509CertificateHolder>) signer.getSID());
        if (found.isEmpty()) {
            throw new CertificateException("the certificate is not in the signature");
        }
        return new JcaX509CertificateConverter().getCertificate(found.iterator().next());
    }

    /** RFC 5035: the signed attribute that holds the digest of the certificate. */
    private static boolean names(SignerInformation signer, X509Certificate certificate) {
        AttributeTable attributes = signer.getSignedAttributes();
        Attribute attribute =
                attributes == null
                        ? null
                        : attributes.get(PKCSObjectIdentifiers.id_aa_signingCertificateV2);
        if (attribute == null) {
            return false;
        }
        ESSCertIDv2 id =
                SigningCertificateV2.getInstance(attribute.getAttrValues().getObjectAt(0))
                        .getCerts()[0];
        return id.getHashAlgorithm().getAlgorithm().equals(NISTObjectIdentifiers.id_sha256)
                && Arrays.equals(
                        id.getCertHash(), Certificates.sha256(Certificates.encoded(certificate)));
    }
}
