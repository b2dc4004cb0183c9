package pegbed.surface.prior;

import pegbed.geometry.BankCoordinates;
import pegbed.surface.survey.Scale;

/**
 * The shape that a water is taken to have before its readings are looked at: a shelf under each bank, a slope, and a
 * track that is level along the middle.
 *
 * <p>One side's share of the full depth at distance d from its bank is 0.32(1 − e^(−d/0.25)) + 0.68/(1 + e^(−(d−w)/s)):
 * the step down from the bank to the shelf, then the slope, whose middle lies at w and whose run is s (near bank w 2.1 m,
 * s 0.55 m; far bank 2.5 m, 0.7 m). Between two banks the share t is the product of both sides' and the depth is 0.20 +
 * 1.6 t. Without a far bank t = 1 − e^(−d/3) and the depth is 0.20 + 2.0 t; without any bank t = 1. Distances are in
 * metres, clipped at 0. The constants are empirical, from simulated pegs; that a narrow water has such shelves is common
 * practice.
 *
 * @param banks distances from the banks
 * @param scale the water's scale beside a peg's
 * @param levelMetres how much higher the water stands than at the banks' own level, metres
 * @param shared what other pegs of the water say about it
 */
public record PriorMean(BankCoordinates banks, Scale scale, double levelMetres, SharedProfile shared) {
    private static final double SHELF_SHARE = 0.32;
    private static final double STEP_METRES = 0.25;
    private static final double NEAR_SLOPE_METRES = 2.1;
    private static final double NEAR_RUN_METRES = 0.55;
    private static final double FAR_SLOPE_METRES = 2.5;
    private static final double FAR_RUN_METRES = 0.7;
    private static final double POND_RUN_METRES = 3;
    private static final double EDGE_METRES = 0.20;
    private static final double FULL_METRES = 1.6;
    private static final double POND_FULL_METRES = 2.0;

    /** The tub at the level at which the banks were drawn. */
    public PriorMean(BankCoordinates banks, Scale scale) {
        this(banks, scale, 0, SharedProfile.NONE);
    }

    /** The same tub under so much more water. */
    public PriorMean under(double metres) {
        return new PriorMean(banks, scale, metres, shared);
    }

    /** The same tub with what other pegs of the water say about it. */
    public PriorMean told(SharedProfile other) {
        return new PriorMean(banks, scale, levelMetres, other);
    }

    /**
     * The tub at a place.
     *
     * @param share of the full depth, 0 at a bank and near 1 in the middle
     * @param roughness of the bottom there beside a usual place's, by how steep a peg's tub is there; 1 without any bank
     */
    record Shape(double share, double roughness) {}

    /** Its shape at a place. */
    Shape at(double x, double y) {
        double near = Math.max(banks.fromNear(x, y), 0) / scale.horizontal();
        if (!banks.hasFarBank()) {
            double left = Math.exp(-near / POND_RUN_METRES);
            boolean open = near == Double.POSITIVE_INFINITY;
            return new Shape(1 - left, open ? 1 : Roughness.at(POND_FULL_METRES / POND_RUN_METRES * left));
        }
        double far = Math.max(banks.fromFar(x, y), 0) / scale.horizontal();
        Side here = Side.at(near, NEAR_SLOPE_METRES, NEAR_RUN_METRES);
        Side there = Side.at(far, FAR_SLOPE_METRES, FAR_RUN_METRES);
        // Away from one bank is towards the other.
        double fall = here.fall * there.share - here.share * there.fall;
        return new Shape(here.share * there.share, Roughness.at(FULL_METRES * Math.abs(fall)));
    }

    /** One side's share of the full depth, and how fast it grows away from the bank, per metre. */
    private record Side(double share, double fall) {
        static Side at(double d, double slope, double run) {
            double step = Math.exp(-d / STEP_METRES);
            double rest = Math.exp(-(d - slope) / run);
            double below = 1 / (1 + rest);
            return new Side(
                    SHELF_SHARE * (1 - step) + (1 - SHELF_SHARE) * below,
                    SHELF_SHARE / STEP_METRES * step + (1 - SHELF_SHARE) / run * rest * below * below);
        }
    }

    /** Depth at a place before its readings are looked at, with what other pegs say of it, metres. */
    public double depth(PlaceCoordinates places, int i) {
        double depth = depth(places.t[i]);
        return places.told == null ? depth : depth + places.told[i][0];
    }

    /** Depth at a share of the full one, metres. */
    public double depth(double share) {
        return levelMetres
                + scale.vertical() * (EDGE_METRES + (banks.hasFarBank() ? FULL_METRES : POND_FULL_METRES) * share);
    }
}
