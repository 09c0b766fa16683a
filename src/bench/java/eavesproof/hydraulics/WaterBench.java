package eavesproof.hydraulics;

import eavesproof.hydraulics.GutterRun.OutletAt;
import eavesproof.hydraulics.Trough.Sole;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long the water surface takes, in a half-round of 112 mm with a fall of 2 mm/m: of a reach of
 * 100 steps (to take less than 1 ms), and the greatest rain that it carries (less than 20 ms).
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 10, time = 1)
public class WaterBench {
    private static final int STEPS = 100;
    private static final double PER_METRE = 0.0001;

    private final Channel channel = new Channel(Profile.halfRound(0.112).section(), 0.010);
    private final List<Sole> oneWay = List.of(new Sole(0, 0.016), new Sole(8, 0));
    private final Trough reach = new Trough(channel, oneWay, PER_METRE, List.of());
    private final OutletAt atEnd = new OutletAt(8, new RoundOutlet(0.08, 0, false));
    private final GutterRun oneOutlet = run(oneWay, atEnd);
    private final GutterRun twoOutlets =
            run(
                    List.of(
                            new Sole(0, 0.004),
                            new Sole(2, 0),
                            new Sole(5, 0.006),
                            new Sole(8, 0)),
                    new OutletAt(2, new RoundOutlet(0.063, 0, false)),
                    atEnd);

    private GutterRun run(List<Sole> soles, OutletAt... outlets) {
        return new GutterRun(channel, soles, PER_METRE, List.of(), List.of(), List.of(outlets));
    }

    @Benchmark
    public WaterSurface reachWithFreeOutfall() {
        return SteadyFlow.solve(reach, 0, STEPS);
    }

    @Benchmark
    public WaterSurface reachThatIsHeldDeep() {
        return SteadyFlow.solve(reach, 0.03, STEPS);
    }

    @Benchmark
    public RunSurface runWithTwoOutlets() {
        return RunFlow.solve(twoOutlets, STEPS);
    }

    @Benchmark
    public double greatestRainOfARunWithOneOutlet() {
        return GreatestRain.factor(oneOutlet, 0, STEPS);
    }

    @Benchmark
    public double greatestRainOfARunWithTwoOutlets() {
        return GreatestRain.factor(twoOutlets, 0, STEPS);
    }
}
