package eavesproof.survey;

/**
 * One step on the way to a number, as it was really taken.
 *
 * @param name what it is: "station of b2"
 * @param value with its unit, as people read it
 * @param from the formula, and its source where it has one
 */
public record Working(String name, String value, String from) {}
