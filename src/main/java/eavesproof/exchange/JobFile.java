package eavesproof.exchange;

import eavesproof.job.Job;
import org.jspecify.annotations.Nullable;

/** The record of a job as a file: read into a {@link Job}, or written blank. */
public final class JobFile {
    private JobFile() {}

    /**
     * The job of a record.
     *
     * @throws BadRecord with everything that is wrong with it
     */
    public static Job read(byte[] bytes) throws BadRecord {
        Problems problems = new Problems();
        Names names = new Names();
        Found record = shaped(bytes, problems, names);
        if (record != null) {
            names.check(problems);
            CrossChecks.check(record, problems);
        }
        if (record == null || !problems.none()) {
            throw new BadRecord(problems.inFileOrder());
        }
        return (Job) Assembly.made(JobShape.JOB, record);
    }

    /** What stands in a file by the shape of a record alone; null if it is no JSON object. */
    static @Nullable Found shaped(byte[] bytes, Problems problems, Names names) {
        String text = FileText.of(bytes, problems);
        return text == null ? null : RecordReader.read(text, JobShape.JOB, problems, names);
    }

    /** A record to fill in: every key there and null, with one example in every list. */
    public static String blank(String ruleSet) {
        return BlankRecord.of(JobShape.JOB, ruleSet);
    }
}
