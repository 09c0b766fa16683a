package eavesproof.setout;

import eavesproof.job.Job;
import eavesproof.job.Run.Reading;
import eavesproof.job.Run.Straight;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** The sole of a stretch, made to run straight from its first reading to its last. */
final class Hollow {
    private record Read(Straight straight, Reading reading, double along, double below) {}

    private Hollow() {}

    /** Empty where the readings are not all of one set-up, or none lies too low. */
    static Optional<Proposal> filled(Job job, Along along, double fromMm, double toMm) {
        List<Read> read = read(along, fromMm, toMm);
        Set<String> setUps = new HashSet<>();
        read.forEach(it -> setUps.add(String.valueOf(it.reading().setUp())));
        if (read.size() < 3 || setUps.size() != 1) {
            return Optional.empty();
        }
        Read first = read.get(0);
        Read last = read.get(read.size() - 1);
        Job edited = job;
        List<String> words = new ArrayList<>();
        for (Read it : read) {
            double part = (it.along() - first.along()) / (last.along() - first.along());
            double line = first.below() + part * (last.below() - first.below());
            // A raised sole is never left a little too low for being rounded.
            double raise = StrictMath.ceil(it.below() - line);
            if (it.below() - line > 0.5
                    && it.along() > first.along()
                    && it.along() < last.along()) {
                words.add(
                        Grid.mm(raise)
                                + " at "
                                + Grid.mm(it.along() - along.of(it.straight().id(), 0.0).orElse(0))
                                + " on straight "
                                + it.straight().id());
                edited = raised(edited, it, line);
            }
        }
        return words.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Proposal(
                                "take out the hollow, so that the sole runs straight: raise it there by "
                                        + Grid.listed(words),
                                edited));
    }

    private static List<Read> read(Along along, double fromMm, double toMm) {
        List<Read> read = new ArrayList<>();
        for (Straight straight : along.straights()) {
            for (Reading reading : Parts.of(straight.readings())) {
                OptionalDouble at = along.of(straight.id(), reading.stationMm());
                Double below = reading.belowMm();
                boolean here =
                        at.isPresent() && at.getAsDouble() >= fromMm && at.getAsDouble() <= toMm;
                if (here && below != null && "sole".equals(reading.surface())) {
                    read.add(new Read(straight, reading, at.getAsDouble(), below));
                }
            }
        }
        read.sort(Comparator.comparingDouble(Read::along).thenComparingDouble(Read::below));
        return read;
    }

    private static Job raised(Job job, Read read, double belowMm) {
        return Edits.straight(
                job,
                read.straight().id(),
                straight ->
                        Edits.with(
                                straight,
                                "readings",
                                Parts.of(straight.readings()).stream()
                                        .map(
                                                it ->
                                                        it.equals(read.reading())
                                                                ? Edits.with(it, "belowMm", belowMm)
                                                                : it)
                                        .toList()));
    }
}
