package eavesproof.survey;

import eavesproof.job.Gutter;
import eavesproof.job.Instrument;
import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.job.Said;
import eavesproof.job.WayPart;
import eavesproof.job.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Supplier;

/** Any job at all, of which anything but the ids may be missing. The same seed, the same job. */
final class SparseJob {
    private final Random random;
    private final double missing;

    /** How many straights the first run has. */
    private final int ofFirst;

    SparseJob(long seed) {
        random = new Random(seed);
        // From nearly whole records to nearly empty ones.
        ofFirst = 1 + random.nextInt(3);
        missing = random.nextInt(3) > 0 ? 0.03 : random.nextDouble();
    }

    Job build() {
        Map<String, Instrument> instruments = new LinkedHashMap<>();
        for (String id : List.of("i1", "i2")) {
            instruments.put(id, instrument(id));
        }
        Map<String, Instrument.SetUp> setUps = new LinkedHashMap<>();
        for (String id : List.of("s1", "s2", "s3")) {
            setUps.put(
                    id,
                    new Instrument.SetUp(
                            id, some("i", 3), someStraight(), station(), yesNo(), null));
        }
        List<Run> runs = new ArrayList<>();
        for (int r = 0; r <= random.nextInt(3); r++) {
            runs.add(run("run" + r, r));
        }
        return new Job(
                "j",
                null,
                null,
                null,
                null,
                null,
                null,
                maybe(this::circumstances),
                maybe(() -> instruments),
                some("i", 3),
                maybe(() -> setUps),
                maybe(() -> Map.of("g", gutter())),
                runs,
                null,
                maybe(this::way),
                list(2, i -> waterTest("t" + i)),
                null,
                null,
                null);
    }

    private Job.WaterTest waterTest(String id) {
        return new Job.WaterTest(
                id,
                word(Words.TEST_KINDS),
                maybe(() -> "run0"),
                null,
                null,
                null,
                yesNo(),
                null,
                list(2, i -> new Job.Stood(someStraight(), station(), station(), station())));
    }

    private Instrument instrument(String id) {
        return new Instrument(
                id,
                null,
                word(Words.TAPE_CLASSES),
                yesNo(),
                maybe(random::nextDouble),
                maybe(random::nextDouble),
                maybe(random::nextDouble),
                null);
    }

    private Job.Circumstances circumstances() {
        return AJob.circumstances(
                said(List.of(Words.YES, Words.YES, Words.NO, Words.UNKNOWN)),
                said(List.of(Words.YES, Words.YES, Words.NO, Words.UNKNOWN)));
    }

    private Gutter gutter() {
        return AJob.gutter(
                word(Words.GUTTER_KINDS), word(Words.MATERIALS), word(Words.JOINTINGS), station());
    }

    private Run run(String id, int r) {
        List<Run.Straight> straights = new ArrayList<>();
        for (int s = 0; s < (r == 0 ? ofFirst : random.nextInt(3)); s++) {
            straights.add(straight("r" + r + "s" + s));
        }
        return new Run(id, null, maybe(() -> "g"), maybe(() -> straights), null, null, null);
    }

    private Run.Straight straight(String id) {
        return new Run.Straight(
                id,
                maybe(() -> 10_000.0),
                some("i", 3),
                maybe(this::end),
                maybe(this::end),
                list(30, i -> reading()),
                list(
                        6,
                        i ->
                                new Run.Bracket(
                                        id + "b" + i,
                                        station(),
                                        maybe(() -> random.nextInt(5)),
                                        maybe(() -> random.nextInt(5)),
                                        word(Words.SCREW_METALS),
                                        null,
                                        null)),
                list(
                        3,
                        i ->
                                new Run.Fitting(
                                        id + "f" + i,
                                        null,
                                        station(),
                                        yesNo(),
                                        null,
                                        yesNo(),
                                        null)),
                list(
                        3,
                        i ->
                                new Run.Joint(
                                        id + "j" + i,
                                        word(Words.JOINT_KINDS),
                                        station(),
                                        null,
                                        null,
                                        null,
                                        null,
                                        yesNo(),
                                        null)),
                list(2, i -> new Run.KeepClear(id + "z" + i, null, station(), station())),
                null,
                maybe(
                        () ->
                                new Run.Fascia(
                                        station(),
                                        station(),
                                        null,
                                        null,
                                        Said.nothing(),
                                        Said.nothing(),
                                        null)),
                null);
    }

    private Run.End end() {
        return new Run.End(word(Words.END_KINDS), null);
    }

    private Run.Reading reading() {
        return new Run.Reading(
                station(),
                word(Words.SURFACES),
                maybe(() -> 500 * random.nextDouble()),
                some("s", 2),
                some("i", 3),
                random.nextInt(3) > 0 ? null : some("tie", 2));
    }

    private List<WayPart> way() {
        List<WayPart> way = new ArrayList<>();
        for (int i = 1; i <= random.nextInt(5); i++) {
            way.add(outlet("o" + i));
        }
        way.add(
                new WayPart.Branch(
                        "p1", some("p", 4), null, station(), station(), null, null, some("i", 3)));
        way.add(
                new WayPart.Downpipe(
                        "p2",
                        some("p", 4),
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        list(4, i -> new WayPart.Clip("c" + i, station(), null)),
                        null,
                        null,
                        null,
                        null,
                        some("i", 3)));
        way.add(new WayPart.Tank("p3", some("p", 4), null, null, null, null, null, null));
        way.add(
                new WayPart.Discharge(
                        "p4",
                        null,
                        said(Words.DISCHARGE_KINDS),
                        said(List.of(Words.YES, Words.YES, Words.NO, Words.UNKNOWN)),
                        said(Words.TRACINGS)));
        return way;
    }

    private WayPart outlet(String id) {
        return new WayPart.Outlet(
                id,
                some("p", 4),
                null,
                someStraight(),
                station(),
                maybe(() -> 100.0),
                word(Words.OUTLET_HOLDS),
                said(List.of(Words.YES, Words.YES, Words.NO, Words.UNKNOWN)),
                said(List.of(Words.YES, Words.YES, Words.NO, Words.UNKNOWN)),
                maybe(() -> 5.0 + random.nextInt(4) * 10.0),
                null,
                yesNo(),
                null,
                null,
                null,
                maybe(() -> random.nextInt(2) * 40.0),
                null,
                null);
    }

    private Said<String> said(List<String> words) {
        return new Said<>(word(words), word(Words.HOW), some("person", 2), some("letter", 2));
    }

    /** Sometimes beyond the end, and often the same as another. */
    private Double station() {
        return maybe(() -> random.nextInt(22) * 500.0);
    }

    private String yesNo() {
        return random.nextInt(20) == 0 ? Words.UNKNOWN : word(List.of(Words.YES, Words.NO));
    }

    private String word(List<String> words) {
        return maybe(() -> words.get(random.nextInt(words.size())));
    }

    private String someStraight() {
        return maybe(() -> "r0s" + random.nextInt(ofFirst));
    }

    private String some(String prefix, int upTo) {
        return maybe(() -> prefix + (1 + random.nextInt(upTo)));
    }

    private <T> List<T> list(int atMost, java.util.function.IntFunction<T> item) {
        List<T> list = new ArrayList<>();
        for (int i = random.nextInt(atMost + 1); i > 0; i--) {
            list.add(item.apply(i));
        }
        return maybe(() -> list);
    }

    private <T> T maybe(Supplier<T> value) {
        return random.nextDouble() < missing ? null : value.get();
    }
}
