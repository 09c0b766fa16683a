package eavesproof.report;

import eavesproof.job.WayPart;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Unit;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The parts of the way of the water in words. */
final class WayWords {
    private WayWords() {}

    static String kind(WayPart part) {
        return part.getClass().getSimpleName().toLowerCase(java.util.Locale.ROOT);
    }

    static @Nullable String text(WayPart part) {
        String text = People.joined(about(part), with("below datum", part.belowDatumMm()));
        return text.isEmpty() ? null : text;
    }

    private static String about(WayPart part) {
        if (part instanceof WayPart.Outlet o) {
            return People.joined(
                    o.on() == null ? null : "on straight " + o.on(),
                    with("at", o.stationMm()),
                    with("size", o.sizeMm()),
                    with("length of its fitting", o.bodyMm()),
                    o.hold(),
                    with("gap", o.gapMm()),
                    with("inserted", o.insertionMm()),
                    o.edge() == null ? null : o.edge() + " edge",
                    with("sump", o.sumpDepthMm()),
                    o.strainer() == null ? null : "strainer: " + o.strainer(),
                    o.spout() == null ? null : "free spout: " + o.spout(),
                    o.screwedToFascia() == null
                            ? null
                            : "screwed to the fascia: " + o.screwedToFascia(),
                    Alongside.fixing(o.fixing()));
        }
        if (part instanceof WayPart.Branch b) {
            return People.joined(
                    with("length", b.lengthMm()),
                    with("drop", b.dropMm()),
                    with("size", b.sizeMm()),
                    angle("joins at", b.junctionAngleDeg()));
        }
        if (part instanceof WayPart.Downpipe d) {
            return downpipe(d);
        }
        if (part instanceof WayPart.Drain d) {
            return People.joined(
                    d.newOrExisting(),
                    with("size", d.sizeMm()),
                    with("length", d.lengthMm()),
                    with("drop", d.dropMm()),
                    angle("joins at", d.junctionAngleDeg()));
        }
        if (part instanceof WayPart.Tank t) {
            return People.joined(
                    with("inlet", t.inletSizeMm()),
                    t.screened() == null ? null : "screened: " + t.screened(),
                    t.firstFlushL() == null
                            ? null
                            : "first flush " + Decimals.with(t.firstFlushL(), Unit.LITRE),
                    with("overflow", t.overflowSizeMm()),
                    t.drinkingWater() == null ? null : "drinking water: " + t.drinkingWater());
        }
        WayPart.Discharge discharge = (WayPart.Discharge) part;
        return People.joined(
                discharge.place().is(),
                discharge.approved().is() == null
                        ? null
                        : "approved: " + discharge.approved().is());
    }

    private static String downpipe(WayPart.Downpipe d) {
        List<WayPart.OtherRoof> others = d.alsoCarries();
        List<WayPart.Clip> clips = Objects.requireNonNullElse(d.clips(), List.<WayPart.Clip>of());
        return People.joined(
                d.newOrExisting(),
                d.material(),
                with("size", d.sizeMm()),
                with("width", d.widthMm()),
                with("depth", d.depthMm()),
                others == null
                        ? null
                        : others.isEmpty()
                                ? "carries no other roof"
                                : "also carries "
                                        + others.stream()
                                                .map(o -> People.joined(o.id(), o.what()))
                                                .collect(Collectors.joining("; ")),
                clips.isEmpty()
                        ? null
                        : "clips below its top: "
                                + clips.stream()
                                        .map(
                                                c ->
                                                        c.id()
                                                                + " "
                                                                + People.or(
                                                                        Amounts.with(
                                                                                c.belowTopMm(),
                                                                                Unit.MM))
                                                                + (c.hold() == null
                                                                        ? ""
                                                                        : " " + c.hold()))
                                        .collect(Collectors.joining(", ")),
                with("gap in sockets", d.socketGapMm()),
                d.socketsWithFlow() == null
                        ? null
                        : "sockets with the flow: " + d.socketsWithFlow(),
                with("shoe above ground", d.shoeHeightMm()));
    }

    private static @Nullable String with(String what, @Nullable Double mm) {
        return mm == null ? null : what + " " + Amounts.with(mm, Unit.MM);
    }

    private static @Nullable String angle(String what, @Nullable Double deg) {
        return deg == null ? null : what + " " + Decimals.plain(deg, 1) + "°";
    }
}
