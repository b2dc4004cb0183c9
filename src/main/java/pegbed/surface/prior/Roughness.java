package pegbed.surface.prior;

/**
 * How much the bottom of a place varies beside that of a usual place: less on what is level before the readings are
 * looked at, more on the slopes under the banks.
 *
 * <p>h = 0.7 + 0.8 s²/(s² + 0.2²) at steepness s of the tub, a factor on the standard deviations of the cross-profile
 * and of what is local. A covariance times h(p)·h(p′) is a covariance whatever h is (Rasmussen & Williams 2006, section
 * 4.2.4: vertical rescaling). The constants are nearly those under which invented bottoms were likeliest, on the
 * careful side; over a usual profile h² is 1.2 in the mean ({@code docs/decisions/0013-slopes-are-rougher.md}, with
 * what was measured).
 */
final class Roughness {
    private static final double LEVEL = 0.7;
    private static final double MORE_ON_SLOPES = 0.8;
    private static final double HALF_WAY_STEEPNESS = 0.2;

    private Roughness() {}

    /**
     * The factor, no unit.
     *
     * @param steepness of the tub, rise over run, 0 or more
     */
    static double at(double steepness) {
        double s2 = steepness * steepness;
        return LEVEL + MORE_ON_SLOPES * s2 / (s2 + HALF_WAY_STEEPNESS * HALF_WAY_STEEPNESS);
    }
}
