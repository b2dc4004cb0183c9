package pegbed.ui.profile;

import java.util.ArrayList;
import java.util.List;
import pegbed.model.Units;
import pegbed.notation.FeetAndInches;

/** The depths that a profile's axis names: round ones, as close to each other as their letters allow. */
final class DepthTicks {
    /** From one text of the axis to the next at least, in points. */
    static final double CLOSEST_POINTS = 16;

    private static final double[] FEET = {1, 2, 5, 10, 20, 50, 100};
    private static final double[] METRES = {0.2, 0.5, 1, 2, 5, 10, 20};

    private DepthTicks() {}

    /**
     * The depths named, metres, from 0 on.
     *
     * @param deepestMetres where the axis ends, 0 or more
     * @param pointsPerMetre how the depth is drawn, more than 0
     * @param unit of the person's depths
     */
    static List<Double> metres(double deepestMetres, double pointsPerMetre, Units.Depth unit) {
        boolean feet = unit == Units.Depth.FEET;
        double unitMetres = feet ? FeetAndInches.FOOT_METRES : 1;
        double[] steps = feet ? FEET : METRES;
        int i = 0;
        while (i < steps.length - 1 && steps[i] * unitMetres * pointsPerMetre < CLOSEST_POINTS) {
            i++;
        }
        List<Double> depths = new ArrayList<>();
        for (int n = 0; n * steps[i] * unitMetres <= deepestMetres; n++) {
            depths.add(n * steps[i] * unitMetres);
        }
        return depths;
    }
}
