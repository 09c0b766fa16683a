package eavesproof.hydraulics;

/** An end over which the water falls freely: it leaves at critical depth, whatever that is. */
public record FreeOutfall() implements Outlet {
    @Override
    public double depthFor(double flow) {
        return 0;
    }
}
