package eavesproof.report;

import eavesproof.findings.InWords;
import eavesproof.job.Job;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Who signs, and what each of them declares: nobody answers for what somebody else did. */
public final class Declarations {
    private static final String FITTED =
            "About my own work I declare that the gutter described here was fitted by me or under"
                    + " my eyes.";
    private static final String READ =
            "I declare that the readings and circumstances in this record are those that I took and"
                    + " saw.";

    /** Of a picture: what fits into the line for a signature. */
    private static final double WIDEST_MM = 48;

    private static final double HIGHEST_MM = 15;

    private final List<Job.Person> installers;
    private final List<Job.Person> measurers;
    private final Issue issue;
    private final Map<String, Integer> pictures;

    /** A place to sign; the person has no id where nobody is recorded. */
    private record Place(String person, String name, Report.Signature signature) {}

    /**
     * @param pictures of signatures: the number of each, by person
     */
    Declarations(Issue issue, Map<String, Integer> pictures) {
        this.issue = issue;
        this.pictures = pictures;
        installers = having("installer", issue.job());
        measurers = having("measured", issue.job());
    }

    private static List<Job.Person> having(String role, Job job) {
        return Objects.requireNonNullElse(job.people(), List.<Job.Person>of()).stream()
                .filter(person -> role.equals(person.role()))
                .toList();
    }

    /** The ids of those who have a place to sign, the first of them first. */
    public static List<String> signers(Job job) {
        List<Job.Person> installers = having("installer", job);
        List<String> ids = new ArrayList<>();
        installers.forEach(person -> ids.add(person.id()));
        others(installers, having("measured", job)).forEach(person -> ids.add(person.id()));
        return ids;
    }

    /** A place to sign for each installer, and for whoever measured if that was another. */
    List<Report.Signature> signatures() {
        return places().stream().map(Place::signature).toList();
    }

    /** Who signed, for the first page. */
    String signed() {
        List<Place> places = places();
        List<String> ways = new ArrayList<>();
        issue.signedBy()
                .ifPresent(
                        by ->
                                ways.add(
                                        "Digitally, with the certificate of "
                                                + by.name()
                                                + ", SHA-256 fingerprint "
                                                + by.fingerprint()
                                                + (by.selfMade()
                                                        ? ", which is self-made and does not show"
                                                                + " who signed."
                                                        : ", whose issuer nobody has looked at.")));
        List<String> pictured = names(places, true);
        if (!pictured.isEmpty()) {
            ways.add(
                    "By a picture of a signature over the name of "
                            + InWords.list(pictured)
                            + ", which proves nothing about who put it there.");
        }
        if (ways.isEmpty()) {
            ways.add("By nobody in this file.");
        }
        List<String> open = names(places, false);
        if (!open.isEmpty() && issue.signedBy().isEmpty()) {
            ways.add("Left open, to be signed by hand: " + InWords.list(open) + ".");
        }
        return String.join(" ", ways);
    }

    private static List<String> names(List<Place> places, boolean pictured) {
        return places.stream()
                .filter(place -> place.signature().pictures().isEmpty() != pictured)
                .map(Place::name)
                .toList();
    }

    private List<Place> places() {
        List<Place> places = new ArrayList<>();
        installers.forEach(p -> places.add(place("Installer", installer(p), p, places.isEmpty())));
        others(installers, measurers)
                .forEach(
                        p ->
                                places.add(
                                        place(
                                                "Measured by",
                                                READ + " Others fitted it.",
                                                p,
                                                places.isEmpty())));
        if (installers.isEmpty()) {
            places.add(
                    place(
                            "Installer",
                            "Who fitted the gutter is not recorded; whoever signs here says: "
                                    + Verdicts.small(FITTED),
                            new Job.Person("", null, null, null, null, null, null),
                            places.isEmpty()));
        }
        return places;
    }

    private static List<Job.Person> others(
            List<Job.Person> installers, List<Job.Person> measurers) {
        return measurers.stream()
                .filter(p -> installers.stream().noneMatch(q -> isSame(p, q)))
                .toList();
    }

    private String installer(Job.Person person) {
        if (measurers.isEmpty()) {
            return FITTED
                    + " Who took the readings is not recorded; by signing I say that I took them.";
        }
        return measurers.stream().anyMatch(p -> isSame(p, person))
                ? FITTED + " " + READ
                : FITTED + " The readings are another's, and I do not answer for them.";
    }

    /** Somebody without a name is nobody else's double. */
    private static boolean isSame(Job.Person a, Job.Person b) {
        return a.id().equals(b.id()) || (a.name() != null && a.name().equals(b.name()));
    }

    /**
     * @param first whether a digital signature would lie here, and a picture under nobody's name
     */
    private Place place(String heading, String declares, Job.Person person, boolean first) {
        String name = person.name() == null ? "somebody whose name is not recorded" : person.name();
        return new Place(
                person.id(),
                name,
                new Report.Signature(
                        heading,
                        declares,
                        List.of(
                                new Report.Entry(
                                        "Name", People.joined(person.name(), person.company())),
                                new Report.Entry(
                                        "Licence",
                                        People.joined(person.licence(), person.licenceCovers())),
                                new Report.Entry("Place and date", ""),
                                new Report.Entry("Signature", "")),
                        first && issue.signedBy().isPresent() ? Markup.SIGNATURE_PLACE : "",
                        pictures(person.id(), name, first)));
    }

    private List<Report.SignaturePicture> pictures(String person, String name, boolean first) {
        String key = pictures.containsKey(person) || !first ? person : "";
        Integer number = pictures.get(key);
        if (number == null || (key.isEmpty() && !first)) {
            return List.of();
        }
        Photo.Print print = Objects.requireNonNull(issue.signaturePictures().get(key));
        return List.of(
                new Report.SignaturePicture(
                        Pictures.placed(
                                number,
                                "Signature of " + name + ", as a picture",
                                print,
                                WIDEST_MM,
                                HIGHEST_MM),
                        "A picture of a signature; it proves nothing about who put it there. Its"
                                + " file has SHA-256 "
                                + print.fileSha256()
                                + "."));
    }
}
