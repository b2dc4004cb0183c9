package pegbed.surface.prior;

import pegbed.geometry.BankCoordinates;

/**
 * Distances of places from the near bank, the far bank and the nearest island: metres on a peg's scale, clipped at 0,
 * infinite where there is no such bank; and how far across they lie.
 */
public final class BankDistances {
    private final double[] near;
    private final double[] far;
    private final double[] island;
    private final double[] across;

    private BankDistances(int count) {
        near = new double[count];
        far = new double[count];
        island = new double[count];
        across = new double[count];
    }

    /**
     * The distances of places.
     *
     * @param horizontal the water's horizontal scale beside a peg's
     */
    public static BankDistances of(double[] x, double[] y, BankCoordinates banks, double horizontal) {
        BankDistances distances = new BankDistances(x.length);
        for (int i = 0; i < x.length; i++) {
            double near = banks.fromNear(x[i], y[i]);
            double far = banks.fromFar(x[i], y[i]);
            distances.near[i] = Math.max(near, 0) / horizontal;
            distances.far[i] = Math.max(far, 0) / horizontal;
            distances.across[i] = banks.acrossAt(near, far);
            distances.island[i] = banks.fromIsland(x[i], y[i]) / horizontal;
        }
        return distances;
    }

    /** Distance of place i from the near bank. */
    public double near(int i) {
        return near[i];
    }

    /** Distance of place i from the far bank. */
    public double far(int i) {
        return far[i];
    }

    /** Distance of place i from the nearest island. */
    public double island(int i) {
        return island[i];
    }

    /** How far across the water place i lies, in metres of the water, not of a peg. */
    double across(int i) {
        return across[i];
    }

    /** Distance to the nearest bank of any kind. */
    double nearest(int i) {
        return Math.min(near[i], Math.min(far[i], island[i]));
    }
}
