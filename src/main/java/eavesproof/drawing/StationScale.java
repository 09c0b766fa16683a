package eavesproof.drawing;

import eavesproof.quantity.Decimals;
import java.util.List;
import java.util.stream.DoubleStream;

/** Stations of a straight to places on the paper. */
record StationScale(double leftMm, double rightMm, double firstStationMm, double lastStationMm) {
    private static final List<Double> STEPS_MM =
            List.of(100.0, 200.0, 250.0, 500.0, 1000.0, 2000.0, 5000.0, 10000.0, 20000.0, 50000.0);
    private static final double BETWEEN_FIGURES_MM = 11;

    double x(double stationMm) {
        return leftMm + (stationMm - firstStationMm) * paperMmPerMm();
    }

    double paperMmPerMm() {
        return (rightMm - leftMm) / (lastStationMm - firstStationMm);
    }

    /** How many times smaller than built: 63 for 1:63. */
    String ratio() {
        return Decimals.plain(1 / paperMmPerMm(), paperMmPerMm() > 0.5 ? 1 : 0);
    }

    /** Every whole step along the straight from its left end. */
    double[] ticks(double lengthMm) {
        double step =
                STEPS_MM.stream()
                        .filter(s -> s * paperMmPerMm() >= BETWEEN_FIGURES_MM)
                        .findFirst()
                        .orElse(lengthMm);
        return DoubleStream.iterate(0, s -> s <= lengthMm, s -> s + step).toArray();
    }
}
