package eavesproof.exchange;

import eavesproof.exchange.Shape.Field;
import eavesproof.exchange.Shape.ListOf;
import eavesproof.exchange.Shape.Thing;
import eavesproof.findings.Expectation;
import eavesproof.job.Job;
import eavesproof.judge.Verdict;
import eavesproof.survey.Vocabulary;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A worked example of a rule set: a job with the verdicts that somebody worked out by hand. The job
 * in it is read as any other.
 */
public final class ExampleFile {
    /**
     * @param title what the example shows
     */
    public record Example(String title, Job job, List<Expectation> expect) {
        public Example {
            expect = List.copyOf(expect);
        }
    }

    /** Key of the file to component of a fact: gutter_end to gutterEnd. */
    private static final Map<String, String> SUBJECT_KEYS = subjectKeys();

    private static final Thing SUBJECT =
            Thing.of(
                    "subject",
                    Record.class,
                    SUBJECT_KEYS.keySet().stream()
                            .map(key -> Field.of(key, Texts.ID))
                            .toArray(Field[]::new));

    private static final Thing EXPECTATION =
            Thing.of(
                    "expectation",
                    Expectation.class,
                    Field.of("rule", Texts.LINE).must(),
                    Field.of("subject", SUBJECT).must(),
                    Field.of("verdict", new Leaf.Word(verdicts())).must(),
                    Field.of("why", Texts.LINE).must());

    private static final Thing EXAMPLE =
            Thing.of(
                    "example",
                    Example.class,
                    Field.of("title", Texts.LINE).must(),
                    Field.of("job", JobShape.JOB).must(),
                    Field.of("expect", new ListOf(EXPECTATION)).must());

    private ExampleFile() {}

    /**
     * @throws BadRecord with everything that is wrong with it
     */
    public static Example read(byte[] bytes) throws BadRecord {
        Problems problems = new Problems();
        Names names = new Names();
        String text = FileText.of(bytes, problems);
        Found file = text == null ? null : RecordReader.read(text, EXAMPLE, problems, names);
        Found job = file == null ? null : file.at("job");
        if (job != null) {
            names.check(problems);
            CrossChecks.check(job, problems);
        }
        if (file == null || job == null || !problems.none()) {
            throw new BadRecord(problems.inFileOrder());
        }
        return new Example(
                text(file, "title"),
                (Job) Assembly.made(JobShape.JOB, job),
                file.items("expect").stream().map(ExampleFile::expectation).toList());
    }

    private static Expectation expectation(Found found) {
        Map<String, String> subject = new LinkedHashMap<>();
        Found keys = found.at("subject");
        SUBJECT_KEYS.forEach(
                (key, component) -> {
                    String id = keys == null ? null : keys.text(key);
                    if (id != null) {
                        subject.put(component, id);
                    }
                });
        return new Expectation(
                text(found, "rule"), subject, verdict(text(found, "verdict")), text(found, "why"));
    }

    private static String text(Found found, String key) {
        String text = found.text(key);
        if (text == null) {
            throw new IllegalStateException("a file without `" + key + "` was not refused");
        }
        return text;
    }

    private static Verdict verdict(String id) {
        return Arrays.stream(Verdict.values())
                .filter(verdict -> verdict.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> verdicts() {
        return Arrays.stream(Verdict.values()).map(Verdict::id).toList();
    }

    private static Map<String, String> subjectKeys() {
        Map<String, String> keys = new LinkedHashMap<>();
        Vocabulary.kinds().stream()
                .flatMap(kind -> kind.keys().stream())
                .forEach(key -> keys.put(snake(key), key));
        return keys;
    }

    private static String snake(String component) {
        return component.replaceAll("([A-Z])", "_$1").toLowerCase(java.util.Locale.ROOT);
    }
}
