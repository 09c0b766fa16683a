package eavesproof.drawing;

/**
 * The fall of one reach, found elsewhere.
 *
 * @param towardsRight the direction in which the sole really falls
 * @param text the figure in words: 2.1 mm/m
 */
public record Slope(double fromMm, double toMm, boolean towardsRight, String text) {}
