package eavesproof.app;

import eavesproof.exchange.Made;
import eavesproof.report.SignedBy;
import eavesproof.report.pdf.FoundSignature;
import java.util.List;
import java.util.Optional;

/** What the signature of a report shows, and whether it is the one that the paper names. */
final class SignatureProof {
    private SignatureProof() {}

    /**
     * @param named whom the paper names
     * @param asked the fingerprint that the certificate must have, if somebody asks for one
     */
    static void add(
            Proof proof,
            List<FoundSignature> found,
            Optional<Made.Signer> named,
            Optional<String> asked) {
        if (found.isEmpty()) {
            none(proof, named, asked);
            return;
        }
        if (found.size() > 1) {
            proof.add(
                    Proof.Stands.NOT_WELL,
                    "There are " + found.size() + " signatures, and a report has one at most.");
        }
        for (FoundSignature signature : found) {
            one(proof, signature, named, asked);
        }
    }

    private static void none(Proof proof, Optional<Made.Signer> named, Optional<String> asked) {
        if (named.isPresent()) {
            proof.add(
                    Proof.Stands.NOT_WELL,
                    "The paper names the digital signature of "
                            + named.get().name()
                            + ", and there is none.");
        } else if (asked.isPresent()) {
            proof.add(Proof.Stands.NOT_WELL, "The report is not signed digitally.");
        } else {
            proof.add(
                    Proof.Stands.NOTE,
                    "The report is not signed digitally: nothing here shows that it is the one that"
                            + " was handed over, and not one made anew from other data.");
        }
    }

    private static void one(
            Proof proof,
            FoundSignature signature,
            Optional<Made.Signer> named,
            Optional<String> asked) {
        signature
                .problems()
                .forEach(
                        problem ->
                                proof.add(
                                        Proof.Stands.NOT_WELL,
                                        "The signature does not hold: " + problem + "."));
        if (signature.by().isEmpty()) {
            return;
        }
        SignedBy by = signature.by().get();
        if (signature.problems().isEmpty()) {
            proof.add(
                    Proof.Stands.WELL,
                    "The signature holds and covers the whole file. Certificate of "
                            + by.name()
                            + (by.selfMade() ? ", self-made" : ", issued by somebody else")
                            + "; signed, as the file says, at "
                            + signature.when()
                            + ". SHA-256 fingerprint:");
            proof.add(Proof.Stands.WELL, by.fingerprint());
        }
        if (named.isEmpty() || !named.get().fingerprint().equals(by.fingerprint())) {
            proof.add(
                    Proof.Stands.NOT_WELL,
                    "The file is signed with the certificate "
                            + by.fingerprint()
                            + ", and the paper names "
                            + named.map(Made.Signer::fingerprint).orElse("none")
                            + ".");
        }
        compare(proof, by, asked);
    }

    private static void compare(Proof proof, SignedBy by, Optional<String> asked) {
        if (asked.isEmpty()) {
            proof.add(
                    Proof.Stands.NOTE,
                    "Whose the certificate is, nothing here shows: compare its fingerprint with one"
                            + " that the signer gave you in another way.");
        } else if (asked.get().equals(by.fingerprint())) {
            proof.add(Proof.Stands.WELL, "It is the certificate that was asked for.");
        } else {
            proof.add(
                    Proof.Stands.NOT_WELL,
                    "It is not the certificate that was asked for, " + asked.get() + ".");
        }
    }
}
