package pegbed.surface.prior;

import pegbed.geometry.BankCoordinates;

/**
 * Places in all the coordinates that a covariance may look at, as parallel arrays: x, y, along (u), across (v), the share t of
 * the full tub depth there (0 at a bank, near 1 in the middle) and the {@link Roughness}. The arrays are not copied and not
 * changed.
 */
public final class PlaceCoordinates {
    public final int count;
    public final double[] x;
    public final double[] y;
    public final double[] u;
    public final double[] v;
    public final double[] t;
    public final double[] roughness;
    /** What other pegs of the water say, by place: the mean about the tub, then the features; null without any. */
    public final double[][] told;

    private PlaceCoordinates(int count, boolean told) {
        this.count = count;
        x = new double[count];
        y = new double[count];
        u = new double[count];
        v = new double[count];
        t = new double[count];
        roughness = new double[count];
        this.told = told ? new double[count][] : null;
    }

    /** The features that other pegs have told, feature by place; none without any. */
    public double[][] features() {
        double[][] features = new double[told == null || count == 0 ? 0 : told[0].length - 1][count];
        for (int r = 0; r < features.length; r++) {
            for (int i = 0; i < count; i++) {
                features[r][i] = told[i][1 + r];
            }
        }
        return features;
    }

    /** A copy of some of the places. */
    public PlaceCoordinates part(int from, int to) {
        PlaceCoordinates part = new PlaceCoordinates(to - from, told != null);
        System.arraycopy(x, from, part.x, 0, part.count);
        System.arraycopy(y, from, part.y, 0, part.count);
        System.arraycopy(u, from, part.u, 0, part.count);
        System.arraycopy(v, from, part.v, 0, part.count);
        System.arraycopy(t, from, part.t, 0, part.count);
        System.arraycopy(roughness, from, part.roughness, 0, part.count);
        if (told != null) {
            System.arraycopy(told, from, part.told, 0, part.count);
        }
        return part;
    }

    public static PlaceCoordinates of(double[] x, double[] y, BankCoordinates banks, PriorMean tub) {
        PlaceCoordinates places = new PlaceCoordinates(x.length, !tub.shared().isNone());
        for (int i = 0; i < x.length; i++) {
            places.x[i] = x[i];
            places.y[i] = y[i];
            places.u[i] = banks.along(x[i], y[i]);
            places.v[i] = banks.across(x[i], y[i]);
            PriorMean.Shape shape = tub.at(x[i], y[i]);
            places.t[i] = shape.share();
            places.roughness[i] = shape.roughness();
            if (places.told != null) {
                places.told[i] = tub.shared().at(places.v[i], places.t[i]);
            }
        }
        return places;
    }
}
