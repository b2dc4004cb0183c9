package pegbed.surface.posterior;

import java.util.List;

/**
 * What a rig and its feed feel: the mean depth D and mean gradient (gx, gy) over a disc of {@value #RADIUS_METRES} m,
 * with their joint posterior covariance. Over the 13 nodes of a 25 cm grid in the disc, D weighs each node 1/13, gx and
 * gy weigh it δx/0.875 and δy/0.875 (least squares).
 *
 * @param depthMetres D, metres
 * @param slopeX gx, rise over run
 * @param slopeY gy, rise over run
 * @param varD variance of D, square metres
 * @param covDX covariance of D and gx, metres
 * @param covDY covariance of D and gy, metres
 * @param varX variance of gx
 * @param covXY covariance of gx and gy
 * @param varY variance of gy
 * @param components of which it is a mixture: then the figures are the mixture's mean and covariance; empty for one
 *     Gaussian
 */
public record Disc(
        double depthMetres,
        double slopeX,
        double slopeY,
        double varD,
        double covDX,
        double covDY,
        double varX,
        double covXY,
        double varY,
        List<Component> components) {
    /**
     * One Gaussian of a mixture.
     *
     * @param weight 0 to 1; the weights add up to 1
     * @param disc without components of its own
     */
    public record Component(double weight, Disc disc) {}

    /** A Gaussian disc. */
    public Disc(
            double depthMetres,
            double slopeX,
            double slopeY,
            double varD,
            double covDX,
            double covDY,
            double varX,
            double covXY,
            double varY) {
        this(depthMetres, slopeX, slopeY, varD, covDX, covDY, varX, covXY, varY, List.of());
    }

    /** A mixture of Gaussian discs; of one it is that disc. */
    public static Disc mixture(List<Component> components) {
        if (components.size() == 1) {
            return components.get(0).disc();
        }
        double d = 0;
        double x = 0;
        double y = 0;
        double[] c = new double[6];
        for (Component component : components) {
            double w = component.weight();
            Disc one = component.disc();
            d += w * one.depthMetres;
            x += w * one.slopeX;
            y += w * one.slopeY;
            c[0] += w * (one.varD + one.depthMetres * one.depthMetres);
            c[1] += w * (one.covDX + one.depthMetres * one.slopeX);
            c[2] += w * (one.covDY + one.depthMetres * one.slopeY);
            c[3] += w * (one.varX + one.slopeX * one.slopeX);
            c[4] += w * (one.covXY + one.slopeX * one.slopeY);
            c[5] += w * (one.varY + one.slopeY * one.slopeY);
        }
        return new Disc(
                d,
                x,
                y,
                c[0] - d * d,
                c[1] - d * x,
                c[2] - d * y,
                c[3] - x * x,
                c[4] - x * y,
                c[5] - y * y,
                List.copyOf(components));
    }

    public static final double RADIUS_METRES = 0.5;

    /** Distance between nodes of the disc, metres. */
    public static final double CELL_METRES = 0.25;

    /** δx of the nodes, in cells. */
    public static final int[] DX = {0, -1, 1, -2, 2, 0, 0, 0, 0, -1, -1, 1, 1};

    /** δy of the nodes, in cells. */
    public static final int[] DY = {0, 0, 0, 0, 0, -1, 1, -2, 2, -1, 1, -1, 1};

    public static final int NODES = 13;

    /** Weight of node i in D, gx and gy. */
    public static double weight(int functional, int i) {
        return switch (functional) {
            case 0 -> 1.0 / NODES;
            case 1 -> DX[i] * CELL_METRES / 0.875;
            default -> DY[i] * CELL_METRES / 0.875;
        };
    }

    /**
     * The disc, as one Gaussian, as a reading would leave it that comes out so many standard deviations deeper than
     * expected.
     *
     * @param moveD move of D for one standard deviation, as {@code Lookahead} has it, metres
     * @param moveX move of gx
     * @param moveY move of gy
     * @param outcome standard deviations
     */
    public Disc after(double moveD, double moveX, double moveY, double outcome) {
        return new Disc(
                depthMetres + moveD * outcome,
                slopeX + moveX * outcome,
                slopeY + moveY * outcome,
                varD - moveD * moveD,
                covDX - moveD * moveX,
                covDY - moveD * moveY,
                varX - moveX * moveX,
                covXY - moveX * moveY,
                varY - moveY * moveY);
    }

    /** The disc before a reading that came out so: what {@link #after} makes of it is this one. */
    public Disc before(double moveD, double moveX, double moveY, double outcome) {
        return new Disc(
                depthMetres - moveD * outcome,
                slopeX - moveX * outcome,
                slopeY - moveY * outcome,
                varD + moveD * moveD,
                covDX + moveD * moveX,
                covDY + moveD * moveY,
                varX + moveX * moveX,
                covXY + moveX * moveY,
                varY + moveY * moveY);
    }

    /** Steepness of the mean gradient, rise over run. */
    public double slope() {
        return Math.sqrt(slopeX * slopeX + slopeY * slopeY);
    }

    /** Standard deviation of D, metres. */
    public double sdMetres() {
        return Math.sqrt(Math.max(varD, 0));
    }
}
