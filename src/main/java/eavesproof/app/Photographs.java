package eavesproof.app;

import eavesproof.exchange.Made;
import eavesproof.job.Job;
import eavesproof.report.Photo;
import eavesproof.report.pdf.ReportFile;
import eavesproof.report.photo.PhotoFolder;
import eavesproof.rules.Sha256;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What came of the photographs that a record names, and the pictures of signatures.
 *
 * @param byId in the order of the record
 * @param signatures of somebody's hand, by the person in the record; that of whoever signs first
 *     may stand under no name
 */
public record Photographs(Map<String, Photo> byId, Map<String, Photo.Print> signatures) {
    public static final Photographs NONE = new Photographs(Map.of(), Map.of());

    public Photographs {
        byId = Collections.unmodifiableMap(new LinkedHashMap<>(byId));
        signatures = Collections.unmodifiableMap(new LinkedHashMap<>(signatures));
    }

    /**
     * Read from the folder where the record lies.
     *
     * @param withPlaces whether the paper is to say where each was taken
     */
    public static Photographs beside(Path folder, Job job, boolean withPlaces) throws IOException {
        PhotoFolder files = new PhotoFolder(folder, withPlaces);
        Map<String, Photo> byId = new LinkedHashMap<>();
        for (Job.Photograph photograph : recorded(job)) {
            byId.put(photograph.id(), files.read(photograph.file()));
        }
        return new Photographs(byId, Map.of());
    }

    /** The picture of a signature in a file that somebody named, or why there is none. */
    public static Photo signatureIn(Path file) throws IOException {
        return PhotoFolder.readFile(file);
    }

    /**
     * @param person in the record; empty for whoever signs first
     */
    public Photographs withSignature(String person, Photo.Print picture) {
        Map<String, Photo.Print> all = new LinkedHashMap<>(signatures);
        all.put(person, picture);
        return new Photographs(byId, all);
    }

    /** Taken out of a report again. */
    static Photographs from(ReportFile report, Made made) {
        Map<String, Photo> byId = new LinkedHashMap<>();
        for (Made.Photograph photograph : made.photographs()) {
            byId.put(photograph.id(), again(report, photograph));
        }
        Map<String, Photo.Print> signatures = new LinkedHashMap<>();
        made.signaturePictures()
                .forEach(
                        one ->
                                again(report, one)
                                        .ifPresent(print -> signatures.put(one.person(), print)));
        return new Photographs(byId, signatures);
    }

    /** Those that were printed and are not in the file as they were, in sentences. */
    static List<String> lost(ReportFile report, Made made) {
        List<String> lost = new ArrayList<>();
        made.photographs().stream()
                .filter(
                        one ->
                                one.print()
                                        .filter(p -> report.picture(p.sha256()).isEmpty())
                                        .isPresent())
                .map(one -> "Photograph " + one.id() + " is not in the file as it was printed.")
                .forEach(lost::add);
        made.signaturePictures().stream()
                .filter(one -> report.picture(one.print().sha256()).isEmpty())
                .forEach(
                        one ->
                                lost.add(
                                        "The picture of a signature is not in the file as it was"
                                                + " printed."));
        return lost;
    }

    private static Optional<Photo.Print> again(ReportFile report, Made.SignaturePicture picture) {
        return report.picture(picture.print().sha256())
                .map(
                        jpeg ->
                                new Photo.Print(
                                        picture.fileSha256(),
                                        jpeg,
                                        picture.print().widthPx(),
                                        picture.print().heightPx()));
    }

    private static Photo again(ReportFile report, Made.Photograph photograph) {
        Optional<byte[]> picture =
                photograph.print().flatMap(print -> report.picture(print.sha256()));
        if (photograph.print().isPresent() && picture.isPresent()) {
            return new Photo.Print(
                    photograph.fileSha256().orElse(""),
                    picture.get(),
                    photograph.print().get().widthPx(),
                    photograph.print().get().heightPx(),
                    photograph.place());
        }
        return new Photo.Missing(
                photograph.print().isPresent() ? "is not in the report" : photograph.missing(),
                photograph.fileSha256());
    }

    /** For those who made the report: each that cannot be shown, in a sentence. */
    public List<String> troubles(Job job) {
        List<String> troubles = new ArrayList<>();
        for (Job.Photograph photograph : recorded(job)) {
            if (byId.get(photograph.id()) instanceof Photo.Missing missing) {
                troubles.add(
                        "photograph "
                                + photograph.id()
                                + " is not shown: "
                                + Objects.requireNonNullElse(photograph.file(), "its file")
                                + " "
                                + missing.why());
            }
        }
        return troubles;
    }

    List<Made.Photograph> made() {
        List<Made.Photograph> made = new ArrayList<>();
        byId.forEach((id, photo) -> made.add(made(id, photo)));
        return made;
    }

    private static Made.Photograph made(String id, Photo photo) {
        if (photo instanceof Photo.Print print) {
            return new Made.Photograph(
                    id,
                    Optional.of(print.fileSha256()),
                    Optional.of(made(print)),
                    "",
                    print.place());
        }
        Photo.Missing missing = (Photo.Missing) photo;
        return new Made.Photograph(
                id, missing.fileSha256(), Optional.empty(), missing.why(), Optional.empty());
    }

    List<Made.SignaturePicture> madeSignatures() {
        List<Made.SignaturePicture> made = new ArrayList<>();
        signatures.forEach(
                (person, print) ->
                        made.add(
                                new Made.SignaturePicture(
                                        person, print.fileSha256(), made(print))));
        return made;
    }

    private static Made.Print made(Photo.Print print) {
        return new Made.Print(Sha256.of(print.jpeg()), print.widthPx(), print.heightPx());
    }

    private static List<Job.Photograph> recorded(Job job) {
        return Objects.requireNonNullElse(job.photographs(), List.of());
    }
}
