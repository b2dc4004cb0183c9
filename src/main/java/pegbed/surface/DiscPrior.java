package pegbed.surface;

/**
 * Covariance of the three disc functionals before any observation: Σ w_i w_j k(x_i, x_j) over the 13 nodes. On a grid
 * the local term and the factor along the water are the same everywhere and are computed once. For waters with a bank.
 */
final class DiscPrior {
    private final BottomCovariance k;
    /** Product of weights w_f(i)·w_g(j), pairs i ≥ j doubled off the diagonal, for the six pairs of functionals. */
    private final double[][] pairWeights = new double[6][Disc.NODES * (Disc.NODES + 1) / 2];

    private final double[] alongFactor = new double[Disc.NODES * (Disc.NODES + 1) / 2];
    private final double[] localPart = new double[6];

    DiscPrior(BottomCovariance k) {
        this.k = k;
        int at = 0;
        for (int i = 0; i < Disc.NODES; i++) {
            for (int j = 0; j <= i; j++, at++) {
                int pair = 0;
                double dx = (Disc.DX[i] - Disc.DX[j]) * Disc.CELL_METRES;
                double dy = (Disc.DY[i] - Disc.DY[j]) * Disc.CELL_METRES;
                alongFactor[at] = k.profile2 * Matern.fiveHalves(Math.abs(dx) / k.along);
                double local = k.local2 * Matern.threeHalves(Math.hypot(dx, dy) / k.local);
                for (int f = 0; f < 3; f++) {
                    for (int g = f; g < 3; g++, pair++) {
                        double w = Disc.weight(f, i) * Disc.weight(g, j);
                        if (i != j) {
                            w += Disc.weight(f, j) * Disc.weight(g, i);
                        }
                        pairWeights[pair][at] = w;
                        localPart[pair] += w * local;
                    }
                }
            }
        }
    }

    /** DD, Dx, Dy, xx, xy, yy for the disc whose nodes are the given members of the places. */
    double[] of(Places places, int[] members) {
        double[] c = localPart.clone();
        double tD = 0;
        double tX = 0;
        double tY = 0;
        int at = 0;
        for (int i = 0; i < Disc.NODES; i++) {
            int a = members[i];
            tD += Disc.weight(0, i) * places.t[a];
            tX += Disc.weight(1, i) * places.t[a];
            tY += Disc.weight(2, i) * places.t[a];
            for (int j = 0; j <= i; j++, at++) {
                double value =
                        alongFactor[at] * Matern.fiveHalves(Math.abs(places.v[a] - places.v[members[j]]) / k.across);
                for (int pair = 0; pair < 6; pair++) {
                    c[pair] += pairWeights[pair][at] * value;
                }
            }
        }
        c[0] += k.level2 + k.track2 * tD * tD;
        c[1] += k.track2 * tD * tX;
        c[2] += k.track2 * tD * tY;
        c[3] += k.track2 * tX * tX;
        c[4] += k.track2 * tX * tY;
        c[5] += k.track2 * tY * tY;
        return c;
    }
}
