package pegbed.surface.prior;

import pegbed.geometry.BankCoordinates;
import pegbed.surface.survey.Scale;

/**
 * The prior of one {@link Structure}: the mean depth of a place, the coordinates along and across in which the bottom
 * varies, and the features of the linear terms (Rasmussen & Williams 2006, section 2.7: explicit basis functions).
 *
 * <p>{@link Structure#TUB}: one side's share of the full depth at distance d from its bank is 0.32(1 − e^(−d/0.25)) +
 * 0.68/(1 + e^(−(d−w)/s)): the step down from the bank to the ledge, then the slope, whose middle lies at w and whose
 * run is s (near bank w 2.1 m, s 0.55 m; far bank 2.5 m, 0.7 m). Between two banks the share t is the product of both
 * sides', without a far bank 1 − e^(−d/3), and either is multiplied by 1 − e^(−d/1) of the nearest island. The depth is
 * 0.20 + 1.6 t between banks, else 0.20 + 2.0 t. {@link Structure#FALL}: t = 1 − e^(−d/2.5) with d the distance to the
 * nearest bank of any kind, and the depth 0.15 + 1.4 t. {@link Structure#OPEN}: 0.8 m everywhere.
 * {@link Structure#BASIN}: a constant. Distances are in metres, clipped at 0; the constants are empirical, from
 * simulated and real bottoms ({@code docs/quality.md}).
 *
 * @param structure which
 * @param banks distances from the banks
 * @param scale the water's scale beside a peg's
 * @param levelMetres how much higher the water stands than at the banks' own level, metres
 * @param shared mean and covariance of the cross-profile from neighbouring pegs of the water; none for a structure
 *     other than the tub
 */
public record StructurePrior(
        Structure structure, BankCoordinates banks, Scale scale, double levelMetres, SharedProfile shared) {
    private static final double LEDGE_SHARE = 0.32;
    private static final double STEP_METRES = 0.25;
    private static final double NEAR_SLOPE_METRES = 2.1;
    private static final double NEAR_RUN_METRES = 0.55;
    private static final double FAR_SLOPE_METRES = 2.5;
    private static final double FAR_RUN_METRES = 0.7;
    private static final double POND_RUN_METRES = 3;
    private static final double ISLAND_RUN_METRES = 1;
    private static final double EDGE_METRES = 0.20;
    private static final double FULL_METRES = 1.6;
    private static final double POND_FULL_METRES = 2.0;

    private static final double FALL_EDGE_METRES = 0.15;
    private static final double FALL_FULL_METRES = 1.4;
    private static final double FALL_RUN_METRES = 2.5;
    private static final double OPEN_METRES = 0.8;

    /** Standard deviation of the track's depth about the tub's, metres on a peg. */
    public static final double TRACK_SD_METRES = 0.45;

    /** Standard deviation of a steady fall away from the bank, rise over run. */
    private static final double FALL_SD = 0.2;

    /** Distance up to which the steady fall goes on, metres. */
    private static final double FALL_TO_METRES = 10;

    /** Standard deviation of a tilt of open ground, rise over run, to the right and straight out. */
    private static final double TILT_SD = 0.1;

    /** The prior of a structure at the level at which the banks were drawn. */
    public StructurePrior(Structure structure, BankCoordinates banks, Scale scale) {
        this(structure, banks, scale, 0, SharedProfile.NONE);
    }

    /** The same under so much more water. */
    public StructurePrior under(double metres) {
        return new StructurePrior(structure, banks, scale, metres, shared);
    }

    /** The same with the profile of neighbouring pegs of the water. */
    public StructurePrior with(SharedProfile other) {
        return new StructurePrior(structure, banks, scale, levelMetres, other);
    }

    /** Log-normal priors of the hyperparameters. */
    public Priors priors() {
        return Priors.of(structure, scale);
    }

    /** How many features a place has. */
    int features() {
        return switch (structure) {
            case TUB -> 1 + shared.rank();
            case FALL, OPEN -> 2;
            case BASIN -> 1;
        };
    }

    /** Fills the coordinates of one place. */
    void fill(PlaceCoordinates places, int i, BankDistances distances) {
        switch (structure) {
            case TUB -> tub(places, i, distances);
            case FALL -> fall(places, i, distances.nearest(i));
            case OPEN -> {
                places.u[i] = places.x[i];
                places.v[i] = places.y[i];
                places.mean[i] = scale.vertical() * OPEN_METRES;
                places.features[0][i] = TILT_SD * scale.vertical() * places.x[i];
                places.features[1][i] = TILT_SD * scale.vertical() * places.y[i];
            }
            case BASIN -> {
                places.u[i] = places.x[i];
                places.v[i] = places.y[i];
                places.t[i] = 1;
                places.mean[i] = scale.vertical() * (EDGE_METRES + POND_FULL_METRES);
                places.features[0][i] = TRACK_SD_METRES * scale.vertical();
            }
        }
    }

    private void tub(PlaceCoordinates places, int i, BankDistances distances) {
        double near = distances.near(i);
        double island = distances.island(i);
        places.u[i] = banks.along(places.x[i], places.y[i]);
        places.v[i] = distances.across(i);
        double full = banks.hasFarBank() ? FULL_METRES : POND_FULL_METRES;
        double share;
        double steepness;
        if (banks.hasFarBank()) {
            Side here = Side.at(near, NEAR_SLOPE_METRES, NEAR_RUN_METRES);
            Side there = Side.at(distances.far(i), FAR_SLOPE_METRES, FAR_RUN_METRES);
            share = here.share * there.share;
            // Away from one bank is towards the other.
            steepness = full * Math.abs(here.fall * there.share - here.share * there.fall);
        } else {
            double left = Math.exp(-near / POND_RUN_METRES);
            share = 1 - left;
            steepness = full / POND_RUN_METRES * left;
        }
        if (island < Double.POSITIVE_INFINITY) {
            double left = Math.exp(-island / ISLAND_RUN_METRES);
            share *= 1 - left;
            steepness = Math.max(steepness, full * share * left);
        }
        places.t[i] = share;
        places.roughness[i] = Roughness.at(steepness);
        places.mean[i] = scale.vertical() * (EDGE_METRES + full * share);
        places.features[0][i] = TRACK_SD_METRES * scale.vertical() * Math.sqrt(shared.ownTrack()) * share;
        if (!shared.isNone()) {
            double[] said = shared.at(places.v[i], share);
            places.mean[i] += said[0];
            for (int r = 1; r < said.length; r++) {
                places.features[r][i] = said[r];
            }
        }
    }

    private void fall(PlaceCoordinates places, int i, double nearest) {
        double share = 1 - Math.exp(-nearest / FALL_RUN_METRES);
        places.u[i] = places.x[i];
        places.v[i] = places.y[i];
        places.t[i] = share;
        places.mean[i] = scale.vertical() * (FALL_EDGE_METRES + FALL_FULL_METRES * share);
        places.features[0][i] = TRACK_SD_METRES * scale.vertical() * share;
        places.features[1][i] = FALL_SD * scale.vertical() * Math.min(nearest, FALL_TO_METRES);
    }

    /** One side's share of the full depth, and how fast it grows away from the bank, per metre. */
    private record Side(double share, double fall) {
        static Side at(double d, double slope, double run) {
            double step = Math.exp(-d / STEP_METRES);
            double rest = Math.exp(-(d - slope) / run);
            double below = 1 / (1 + rest);
            return new Side(
                    LEDGE_SHARE * (1 - step) + (1 - LEDGE_SHARE) * below,
                    LEDGE_SHARE / STEP_METRES * step + (1 - LEDGE_SHARE) / run * rest * below * below);
        }
    }

    /** Prior mean depth at a place, that of neighbouring pegs included, at the level of the water, metres. */
    public double depth(PlaceCoordinates places, int i) {
        return levelMetres + places.mean[i];
    }
}
