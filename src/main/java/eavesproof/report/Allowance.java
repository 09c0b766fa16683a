package eavesproof.report;

import java.time.Duration;

/**
 * What a template may use up before it is stopped; a stranger's template may never end by itself.
 */
public record Allowance(Duration time, int characters) {
    /** A long report takes a tenth of a second and half a million characters. */
    public static final Allowance USUAL = new Allowance(Duration.ofSeconds(20), 8_000_000);

    public Allowance {
        if (time.isNegative() || time.isZero() || characters <= 0) {
            throw new IllegalArgumentException(
                    "a template needs some time and some room, not " + time + " and " + characters);
        }
    }
}
