package pegbed.model;

import java.util.OptionalDouble;

/**
 * What a day was like. The water's level is not here: it hangs on the visit's board measure and readings.
 *
 * @param airCelsius temperature of the air, °C, -40 to 60; empty if not taken
 * @param waterCelsius temperature of the water, °C, -5 to 45; empty if not taken
 * @param wind the person's own words, may be empty
 * @param colour colour of the water, the person's own words, may be empty
 * @param extras fields of a later version
 */
public record Conditions(
        OptionalDouble airCelsius, OptionalDouble waterCelsius, String wind, String colour, Extras extras) {
    /** Nothing was noted. */
    public static final Conditions NONE =
            new Conditions(OptionalDouble.empty(), OptionalDouble.empty(), "", "", Extras.NONE);

    /** Bounds of the air's temperature, °C. */
    public static final double COLDEST_AIR = -40;

    public static final double WARMEST_AIR = 60;

    /** Bounds of the water's temperature, °C. */
    public static final double COLDEST_WATER = -5;

    public static final double WARMEST_WATER = 45;

    public Conditions {
        if (airCelsius.isPresent()) {
            Check.within(
                    airCelsius.getAsDouble(),
                    COLDEST_AIR,
                    WARMEST_AIR,
                    "The temperature of the air in degrees Celsius");
        }
        if (waterCelsius.isPresent()) {
            Check.within(
                    waterCelsius.getAsDouble(),
                    COLDEST_WATER,
                    WARMEST_WATER,
                    "The temperature of the water in degrees Celsius");
        }
    }
}
