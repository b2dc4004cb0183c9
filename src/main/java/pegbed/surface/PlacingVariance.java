package pegbed.surface;

import pegbed.surface.prior.BankDistances;

/**
 * Variance of a depth by errors of position on sloping ground: (σ_l² + max σ_b² e^(−2d/1.5 m)) times the square of the
 * slope. σ_l = 0.14 m is the error of laying a rig (common practice); σ_b is the error of the bank as it was drawn,
 * which moves the ground at distance d from it along: 0.27 m at the near bank, 0.40 m at the far bank, 0.36 m at an
 * island (empirical).
 */
final class PlacingVariance {
    private static final double LAYING_SD = 0.14;
    private static final double NEAR_SD = 0.27;
    private static final double FAR_SD = 0.40;
    private static final double ISLAND_SD = 0.36;
    private static final double RUN_METRES = 1.5;

    private PlacingVariance() {}

    /** Away from any bank, square metres. */
    static double open(double slopeX, double slopeY) {
        return LAYING_SD * LAYING_SD * (slopeX * slopeX + slopeY * slopeY);
    }

    /** At place i of some whose distances from the banks are known, square metres. */
    static double at(BankDistances distances, int i, double slopeX, double slopeY) {
        double bank = Math.max(
                of(NEAR_SD, distances.near(i)),
                Math.max(of(FAR_SD, distances.far(i)), of(ISLAND_SD, distances.island(i))));
        return (LAYING_SD * LAYING_SD + bank) * (slopeX * slopeX + slopeY * slopeY);
    }

    private static double of(double sd, double distance) {
        return sd * sd * Math.exp(-2 * distance / RUN_METRES);
    }
}
