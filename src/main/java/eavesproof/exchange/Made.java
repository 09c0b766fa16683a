package eavesproof.exchange;

import java.util.List;
import java.util.Optional;

/**
 * How a report was made, so that it can be made again from what it carries.
 *
 * @param program name and version
 * @param template name of its folder; {@code templateSha256} over its files
 * @param issued the date on the paper, YYYY-MM-DD
 * @param paper its sheet
 * @param replaces the number of the report that it replaces; empty where it replaces none
 * @param signer whose digital signature the paper names, if any
 * @param signaturePictures the pictures of handwritten signatures on the paper
 */
public record Made(
        String program,
        String template,
        String templateSha256,
        String issued,
        String paper,
        String replaces,
        Optional<Signer> signer,
        List<Photograph> photographs,
        List<SignaturePicture> signaturePictures) {
    public Made {
        photographs = List.copyOf(photographs);
        signaturePictures = List.copyOf(signaturePictures);
    }

    /** The certificate that the paper names. */
    public record Signer(String name, String fingerprint, boolean selfMade) {}

    /**
     * What the paper shows of a photograph of the record.
     *
     * @param fileSha256 of the file beside the record, where it could be read
     * @param print the picture on the paper, if there is one
     * @param missing why there is none; empty where there is one
     * @param place where it was taken, if the paper is to say that
     */
    public record Photograph(
            String id,
            Optional<String> fileSha256,
            Optional<Print> print,
            String missing,
            Optional<String> place) {}

    /**
     * @param person who has it over the name, by the id in the record; empty where it is whoever
     *     signs first
     * @param fileSha256 of the file that somebody named
     */
    public record SignaturePicture(String person, String fileSha256, Print print) {}

    /**
     * @param sha256 of the picture as it stands in the file of the report
     */
    public record Print(String sha256, int widthPx, int heightPx) {}
}
