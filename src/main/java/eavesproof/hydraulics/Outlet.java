package eavesproof.hydraulics;

/** How deep the water must stand where it leaves a gutter. SI units: m, m³/s. */
public sealed interface Outlet permits RoundOutlet, FreeOutfall {

    /** Depth above the sole of the gutter at which this much leaves. */
    double depthFor(double flow);
}
