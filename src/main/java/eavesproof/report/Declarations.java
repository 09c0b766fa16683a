package eavesproof.report;

import eavesproof.job.Job;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Who signs, and what each of them declares: nobody answers for what somebody else did. */
final class Declarations {
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

    private Declarations(Job job) {
        List<Job.Person> people = Objects.requireNonNullElse(job.people(), List.of());
        installers = people.stream().filter(p -> "installer".equals(p.role())).toList();
        measurers = people.stream().filter(p -> "measured".equals(p.role())).toList();
    }

    /**
     * A place to sign for each installer, and for whoever measured if that was another.
     *
     * @param digitally whether a digital signature is to lie in the first place
     * @param picture of a signature, for the first place too
     */
    static List<Report.Signature> of(Job job, boolean digitally, Optional<Photo.Print> picture) {
        Declarations declarations = new Declarations(job);
        List<Report.Signature> signatures = declarations.signatures();
        Report.Signature first = signatures.get(0);
        signatures.set(
                0,
                new Report.Signature(
                        first.heading(),
                        first.declares(),
                        first.lines(),
                        digitally ? Markup.SIGNATURE_PLACE : "",
                        picture.map(declarations::shown).stream().toList()));
        return signatures;
    }

    private Report.SignaturePicture shown(Photo.Print print) {
        String alt = "Signature of " + first() + ", as a picture";
        return new Report.SignaturePicture(
                Pictures.placed(Markup.SIGNATURE_PICTURE, alt, print, WIDEST_MM, HIGHEST_MM),
                "A picture of a signature; it proves nothing about who put it there. Its file has"
                        + " SHA-256 "
                        + print.fileSha256()
                        + ".");
    }

    /** Whose place is the first. */
    private String first() {
        List<Job.Person> all = installers.isEmpty() ? measurers : installers;
        String name = all.isEmpty() ? null : all.get(0).name();
        return name == null ? "somebody whose name is not recorded" : name;
    }

    private List<Report.Signature> signatures() {
        List<Report.Signature> signatures = new ArrayList<>();
        installers.forEach(p -> signatures.add(signature("Installer", installer(p), p)));
        measurers.stream()
                .filter(p -> installers.stream().noneMatch(q -> isSame(p, q)))
                .forEach(
                        p ->
                                signatures.add(
                                        signature("Measured by", READ + " Others fitted it.", p)));
        if (installers.isEmpty()) {
            signatures.add(
                    signature(
                            "Installer",
                            "Who fitted the gutter is not recorded; whoever signs here says: "
                                    + Verdicts.small(FITTED),
                            "",
                            ""));
        }
        return signatures;
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

    private static Report.Signature signature(String heading, String declares, Job.Person person) {
        return signature(
                heading,
                declares,
                People.joined(person.name(), person.company()),
                People.joined(person.licence(), person.licenceCovers()));
    }

    private static Report.Signature signature(
            String heading, String declares, String name, String licence) {
        return new Report.Signature(
                heading,
                declares,
                List.of(
                        new Report.Entry("Name", name),
                        new Report.Entry("Licence", licence),
                        new Report.Entry("Place and date", ""),
                        new Report.Entry("Signature", "")),
                "",
                List.of());
    }
}
