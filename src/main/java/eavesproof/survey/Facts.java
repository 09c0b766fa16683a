package eavesproof.survey;

/**
 * Every kind of fact that a rule may speak of. All components but the last are keys, ids of the
 * record; the last is the measure, its unit in its name. {@link Vocabulary} says what each means.
 */
public final class Facts {
    /** What the records below have in common. A fact never holds null or NaN. */
    public sealed interface Fact {}

    private Facts() {}

    // circumstances of a run

    public record GutterKind(String run, String named) implements Fact {}

    public record GutterMaterial(String run, String named) implements Fact {}

    public record MaterialFamily(String run, String named) implements Fact {}

    public record Jointing(String run, String named) implements Fact {}

    public record WornByCopper(String run, String said) implements Fact {}

    public record GutterShape(String run, String named) implements Fact {}

    public record GutterWidth(String run, double widthMm) implements Fact {}

    public record GutterHeld(String run, String named) implements Fact {}

    public record SnowArea(String run, String said) implements Fact {}

    public record HeavyRain(String run, String said) implements Fact {}

    public record PlaceRain(String run, double intensityMmH) implements Fact {}

    public record EavesWidth(String run, double widthMm) implements Fact {}

    public record EavesLined(String run, String said) implements Fact {}

    public record RoofMetal(String run, String catchment, String named) implements Fact {}

    public record RoofLead(String run, String catchment, String said) implements Fact {}

    public record CorrosionClass(String run, String named) implements Fact {}

    public record DrinkingWater(String run, String said) implements Fact {}

    public record OverflowMeasures(String run, double count) implements Fact {}

    public record OutletCount(String run, double count) implements Fact {}

    public record StraightLength(String run, String straight, double lengthMm) implements Fact {}

    // support

    public record SupportCount(String run, String straight, double count) implements Fact {}

    public record BracketSpacing(String run, String from, String to, double centresMm)
            implements Fact {}

    public record EndSupport(String run, String gutterEnd, double distanceMm) implements Fact {}

    public record TimberEndBracket(String run, String gutterEnd, double distanceMm)
            implements Fact {}

    public record JointSupport(String run, String joint, double distanceMm) implements Fact {}

    public record OutletClearance(String run, String outlet, String bracket, double clearanceMm)
            implements Fact {}

    public record BracketHoles(String run, String bracket, double count) implements Fact {}

    public record EmptyHoles(String run, String bracket, double count) implements Fact {}

    public record ScrewMetal(String run, String bracket, String named) implements Fact {}

    public record ScrewBite(String run, String bracket, double biteMm) implements Fact {}

    public record TimberSound(String run, String bracket, String said) implements Fact {}

    public record TimberTreatment(String run, String bracket, String named) implements Fact {}

    public record BracketShare(String run, String bracket, double lengthMm) implements Fact {}

    public record BracketCapacity(String run, String bracket, double forceN) implements Fact {}

    public record BracketLoad(String run, String bracket, double forceN) implements Fact {}

    public record BracketSnowLoad(String run, String bracket, double forceN) implements Fact {}

    public record OverhangingSnow(String run, double loadKnPerM) implements Fact {}

    public record SnowHeld(String run, String straight, String said) implements Fact {}

    // fall

    public record ReachLength(String run, String outlet, String side, double lengthMm)
            implements Fact {}

    public record ReachFall(String run, String outlet, String side, double fallMmPerM)
            implements Fact {}

    public record PondDepth(String run, String outlet, String side, double depthMm)
            implements Fact {}

    public record SoleSag(String run, String outlet, String side, double sagMm) implements Fact {}

    public record FasciaSag(String run, String straight, double sagMm) implements Fact {}

    public record ReachRoof(String run, String outlet, String side, double planM2)
            implements Fact {}

    public record GutterSection(String run, String outlet, String side, double areaMm2)
            implements Fact {}

    public record RoofPitch(String run, double pitchDeg) implements Fact {}

    // movement

    public record FreeLength(String run, String from, String to, double lengthMm) implements Fact {}

    public record ExpansionBreaks(String run, String straight, double count) implements Fact {}

    public record JointGapLeft(String run, String joint, double leftMm) implements Fact {}

    public record JointInsertionLeft(String run, String joint, double leftMm) implements Fact {}

    public record OutletGapLeft(String run, String outlet, double leftMm) implements Fact {}

    public record OutletInsertionLeft(String run, String outlet, double leftMm) implements Fact {}

    public record EndGapLeft(String run, String gutterEnd, double leftMm) implements Fact {}

    public record OutletHold(String run, String outlet, String named) implements Fact {}

    public record OutletSet(String run, String outlet, String said) implements Fact {}

    public record OutletCemented(String run, String outlet, String said) implements Fact {}

    // joints

    public record TestDrips(String run, String test, String said) implements Fact {}

    public record JointsInZone(String run, String zone, double count) implements Fact {}

    // rain

    public record DesignRain(String run, double intensityMmH) implements Fact {}

    public record RunDemand(String run, double flowLs) implements Fact {}

    public record GutterFreeboard(String run, double freeboardMm) implements Fact {}

    public record BlockedFreeboard(String run, String outlet, double freeboardMm) implements Fact {}

    public record BlockedRain(String run, double intensityMmH) implements Fact {}

    public record GutterRatio(String run, double ratio) implements Fact {}

    public record ReachRatio(String run, String outlet, String side, double ratio)
            implements Fact {}

    public record OutletRoof(String run, String outlet, double planM2) implements Fact {}

    public record OutletDemand(String run, String outlet, double flowLs) implements Fact {}

    public record OutletRatio(String run, String outlet, double ratio) implements Fact {}

    public record OverflowRain(String run, double intensityMmH) implements Fact {}

    public record RunRoof(String run, double planM2) implements Fact {}

    public record RoofWidth(String run, double widthM) implements Fact {}

    public record OverflowCapacity(String run, double flowLs) implements Fact {}

    public record OverflowEachMetre(String run, double flowLs) implements Fact {}

    public record SpillSide(String run, String named) implements Fact {}

    // the way of the water

    public record BranchFall(String run, String branch, double fallMmPerM) implements Fact {}

    public record ClipSpacing(String run, String downpipe, String from, String to, double centresMm)
            implements Fact {}

    public record BranchRatio(String run, String branch, double ratio) implements Fact {}

    public record DownpipeRatio(String run, String downpipe, double ratio) implements Fact {}

    public record DrainRatio(String run, String drain, double ratio) implements Fact {}

    public record TankInletRatio(String run, String tank, double ratio) implements Fact {}

    public record TankOverflowLoad(String run, String tank, double ratio) implements Fact {}

    public record TankOverflowRatio(String run, String tank, double ratio) implements Fact {}

    public record LowestOpening(String run, String drain, String opening, double belowOutletMm)
            implements Fact {}

    public record DownpipeSize(String run, String downpipe, double sizeMm) implements Fact {}

    public record DownpipeWidth(String run, String downpipe, double widthMm) implements Fact {}

    public record DownpipeDepth(String run, String downpipe, double depthMm) implements Fact {}

    public record DownpipeRoof(String run, String downpipe, double planM2) implements Fact {}

    public record DownpipeGutter(String run, String downpipe, double lengthMm) implements Fact {}

    public record DrainSize(String run, String drain, double sizeMm) implements Fact {}

    public record DrainRoof(String run, String drain, double planM2) implements Fact {}

    public record DrainFall(String run, String drain, double fallMmPerM) implements Fact {}

    public record DischargeKind(String run, String discharge, String named) implements Fact {}

    public record DischargeApproved(String run, String discharge, String said) implements Fact {}

    public record ApprovalReference(String run, String discharge, String said) implements Fact {}

    public record OutfallTraced(String run, String discharge, String named) implements Fact {}
}
