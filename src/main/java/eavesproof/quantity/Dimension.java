package eavesproof.quantity;

/** What kind of thing a {@link Unit} measures; two numbers may only be compared within one. */
public enum Dimension {
    LENGTH,
    SLOPE,
    ANGLE,
    AREA,
    PLAN_AREA,
    FLOW,
    RAINFALL,
    TEMPERATURE,
    COUNT,
    VOLUME,
    PRESSURE,
    LINE_LOAD,
    FORCE,
    RATIO
}
