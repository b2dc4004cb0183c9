package pegbed.surface;

import pegbed.geometry.BankCoordinates;

/**
 * Places in all the coordinates that a covariance may look at, as parallel arrays: x, y, along (u), across (v), and the
 * share t of the full tub depth there (0 at a bank, near 1 in the middle). The arrays are not copied and not changed.
 */
final class Places {
    final int count;
    final double[] x;
    final double[] y;
    final double[] u;
    final double[] v;
    final double[] t;

    private Places(int count) {
        this.count = count;
        x = new double[count];
        y = new double[count];
        u = new double[count];
        v = new double[count];
        t = new double[count];
    }

    static Places of(double[] x, double[] y, BankCoordinates banks, Tub tub) {
        Places places = new Places(x.length);
        for (int i = 0; i < x.length; i++) {
            places.x[i] = x[i];
            places.y[i] = y[i];
            places.u[i] = banks.along(x[i], y[i]);
            places.v[i] = banks.across(x[i], y[i]);
            places.t[i] = tub.share(x[i], y[i]);
        }
        return places;
    }
}
