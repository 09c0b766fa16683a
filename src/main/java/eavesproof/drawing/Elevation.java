package eavesproof.drawing;

import eavesproof.job.Run;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One straight seen from outside: to scale along its length, its fall exaggerated and saying so,
 * every finding that needs action at its place.
 *
 * @param drawing absent where nothing can be drawn
 * @param notes what is missing from the drawing, and what it cannot show, in sentences
 */
public record Elevation(Optional<Drawing> drawing, List<String> notes) {
    /** A finding along nearly all of a straight is about the straight, and not about a place. */
    private static final double NEARLY_ALL = 0.98;

    public Elevation {
        notes = List.copyOf(notes);
    }

    /**
     * @param widthMm of the paper that it may take
     */
    public static Elevation of(Built built, double widthMm) {
        List<String> notes = ElevationWords.notes(built);
        Double length = built.straight().lengthMm();
        if (length == null || !(length > 0)) {
            return new Elevation(Optional.empty(), notes);
        }
        ElevationSheet sheet = new ElevationSheet(built, length, widthMm);
        return new Elevation(
                Optional.of(
                        new Drawing(
                                widthMm,
                                sheet.heightMm(),
                                ElevationWords.alt(built, length),
                                sheet.marks())),
                notes);
    }

    /** Findings that are about a place of the straight and not about all of it. */
    static List<Numbered> marked(Built built) {
        double length = Objects.requireNonNullElse(built.straight().lengthMm(), 0.0);
        return built.findings().stream()
                .filter(found -> found.toMm() - found.fromMm() < NEARLY_ALL * length)
                .toList();
    }

    static List<Numbered> aboutAll(Built built) {
        List<Numbered> marked = marked(built);
        return built.findings().stream().filter(found -> !marked.contains(found)).toList();
    }

    /** From the first to the last station that has to be shown; the timber may begin outside. */
    static StationScale scale(Run.Straight straight, double lengthMm, double left, double right) {
        double first = 0;
        double last = lengthMm;
        Run.Fascia fascia = straight.fascia();
        if (fascia != null && fascia.beginsMm() != null && fascia.endsMm() != null) {
            first = Math.max(-0.1 * lengthMm, Math.min(0, fascia.beginsMm()));
            last = Math.min(1.1 * lengthMm, Math.max(lengthMm, fascia.endsMm()));
        }
        return new StationScale(left, right, first, last);
    }
}
