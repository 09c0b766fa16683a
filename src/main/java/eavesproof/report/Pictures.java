package eavesproof.report;

import eavesproof.job.Job;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * The pictures of a report: signatures, and the photographs of a job with their captions, and of
 * each that cannot be shown the reason.
 */
final class Pictures {
    /** Two side by side, and three rows on a page. */
    private static final double WIDTH_SHARE = 0.48;

    private static final double HIGHEST_MM = 62;

    private final List<Report.Picture> pictures = new ArrayList<>();
    private final Map<String, Photo.Print> prints = new LinkedHashMap<>();
    private final Map<String, Integer> hands = new LinkedHashMap<>();

    Pictures(Issue issue, double widthMm) {
        List<Job.Photograph> recorded =
                Objects.requireNonNullElse(issue.job().photographs(), List.<Job.Photograph>of());
        for (int i = 0; i < recorded.size(); i++) {
            Job.Photograph photograph = recorded.get(i);
            Photo photo = issue.photographs().get(photograph.id());
            if (photo instanceof Photo.Print print) {
                prints.put(address(i + 1), print);
                pictures.add(shown(photograph, i + 1, print, widthMm * WIDTH_SHARE));
            } else if (photo instanceof Photo.Missing missing) {
                pictures.add(notShown(photograph, missing));
            }
        }
        int number = recorded.size();
        for (Map.Entry<String, Photo.Print> hand : issue.signaturePictures().entrySet()) {
            number++;
            prints.put(address(number), hand.getValue());
            hands.put(hand.getKey(), number);
        }
    }

    List<Report.Picture> pictures() {
        return pictures;
    }

    /** By the address under which the text places each. */
    Map<String, Photo.Print> prints() {
        return prints;
    }

    /** The number of the picture of each signature, by person. */
    Map<String, Integer> hands() {
        return hands;
    }

    private static Report.Picture shown(
            Job.Photograph photograph, int number, Photo.Print print, double widestMm) {
        return new Report.Picture(
                List.of(placed(number, caption(photograph), print, widestMm, HIGHEST_MM)),
                caption(photograph),
                details(photograph, "File", print.fileSha256())
                        + print.place().map(Pictures::place).orElse(""));
    }

    private static String place(String where) {
        return where.isEmpty()
                ? " The file does not say where it was taken."
                : " Taken at " + where + ", as the file says.";
    }

    /** As large as fits. */
    static Markup placed(
            int number, String alt, Photo.Print print, double widestMm, double highestMm) {
        double scale = Math.min(widestMm / print.widthPx(), highestMm / print.heightPx());
        // A long and narrow picture still has a side that can be printed.
        double widthMm = Math.max(0.1, print.widthPx() * scale);
        double heightMm = Math.max(0.1, print.heightPx() * scale);
        return Markup.photograph(number, alt, widthMm, heightMm);
    }

    static String address(int number) {
        return Markup.PHOTOGRAPH + number;
    }

    private static Report.Picture notShown(Job.Photograph photograph, Photo.Missing missing) {
        String file = photograph.file() == null ? "its file" : "the file " + photograph.file();
        return new Report.Picture(
                List.of(),
                caption(photograph),
                "Not shown: "
                        + file
                        + " "
                        + missing.why()
                        + ". "
                        + details(photograph, "File", missing.fileSha256().orElse("")));
    }

    private static String caption(Job.Photograph photograph) {
        String shows = photograph.shows();
        return "Photograph "
                + photograph.id()
                + ": "
                + (shows == null ? "what it shows is not recorded" : shows);
    }

    private static String details(Job.Photograph photograph, String file, String sha256) {
        String run = photograph.run() == null ? "Run not recorded" : "Run " + photograph.run();
        String taken =
                photograph.taken() == null
                        ? "time of taking not recorded"
                        : "taken " + photograph.taken() + " as recorded";
        String named = photograph.file() == null ? "" : " " + file + " " + photograph.file();
        return run
                + ", "
                + taken
                + "."
                + (sha256.isEmpty() ? "" : named + ", SHA-256 " + sha256 + ".");
    }
}
