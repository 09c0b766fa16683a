package eavesproof.app;

import com.sun.management.OperatingSystemMXBean;
import eavesproof.report.Paper;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * What a report costs in a process that has made many: the processor time of each, and the memory
 * that stays in use while they are made. Arguments: the record, and how many reports.
 */
public final class ManyReports {
    private static final int BATCH = 100;
    private static final Path TEMPLATE = Path.of("report-templates/installer-record");

    private ManyReports() {}

    public static void main(String[] arguments) throws Exception {
        byte[] record = Files.readAllBytes(Path.of(arguments[0]));
        int reports = Integer.parseInt(arguments[1]);
        CheckedJob checked = CheckJob.check(record, Optional.empty(), Path.of("rules"));
        ReportJob job = new ReportJob(TEMPLATE, Paper.A4, LocalDate.of(2026, 1, 31));
        for (int done = 0; done < reports; done += BATCH) {
            double[] millis = new double[BATCH];
            for (int i = 0; i < BATCH; i++) {
                long began = processorNanos();
                job.pdf(checked, record, Photographs.NONE);
                millis[i] = (processorNanos() - began) / 1e6;
            }
            Arrays.sort(millis);
            System.out.printf(
                    Locale.ROOT,
                    "reports %d to %d: median %.1f ms of processor, %.1f MB in use after them%n",
                    done + 1,
                    done + BATCH,
                    millis[BATCH / 2],
                    inUse() / 1e6);
        }
    }

    private static long processorNanos() {
        return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class)
                .getProcessCpuTime();
    }

    private static long inUse() {
        System.gc();
        return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
    }
}
