package pegbed.wording;

import pegbed.model.Decimals;
import pegbed.model.Units;
import pegbed.notation.FeetAndInches;

/** Depths as the short figures that stand in the water of a map. */
public final class DepthFigures {
    private DepthFigures() {}

    /** {@code 4'6} or {@code 9"} to the inch, {@code 137} centimetres, or {@code 1.37} metres. */
    public static String depth(double metres, Units.Depth unit) {
        return switch (unit) {
            case FEET -> FeetAndInches.figure(metres);
            case CENTIMETRES -> Long.toString(Math.round(metres * 100));
            case METRES -> Decimals.text(metres, 2);
        };
    }

    /** What the figures are. */
    public static String unit(Units.Depth unit) {
        return switch (unit) {
            case FEET -> "feet'inches";
            case CENTIMETRES -> "centimetres";
            case METRES -> "metres";
        };
    }
}
