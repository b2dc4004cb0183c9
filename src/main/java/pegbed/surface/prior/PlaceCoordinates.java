package pegbed.surface.prior;

/**
 * Places in the coordinates of one {@link StructurePrior}, as parallel arrays: x, y, along (u), across (v), the mean
 * depth at the banks' own level, the share t of the full depth (0 at a bank, near 1 in the middle), the
 * {@link Roughness}, and the features. The arrays are not copied and not changed.
 */
public final class PlaceCoordinates {
    public final int count;
    public final double[] x;
    public final double[] y;
    public final double[] u;
    public final double[] v;
    public final double[] t;
    public final double[] roughness;
    /** Mean depth before any reading, metres. */
    public final double[] mean;
    /** Feature by place: the covariance has the sum of their products, metres. */
    public final double[][] features;

    private PlaceCoordinates(double[] x, double[] y, int features) {
        this.x = x;
        this.y = y;
        count = x.length;
        u = new double[count];
        v = new double[count];
        t = new double[count];
        roughness = new double[count];
        java.util.Arrays.fill(roughness, 1);
        mean = new double[count];
        this.features = new double[features][count];
    }

    /** A copy of some of the places. */
    public PlaceCoordinates part(int from, int to) {
        PlaceCoordinates part = new PlaceCoordinates(cut(x, from, to), cut(y, from, to), features.length);
        System.arraycopy(u, from, part.u, 0, part.count);
        System.arraycopy(v, from, part.v, 0, part.count);
        System.arraycopy(t, from, part.t, 0, part.count);
        System.arraycopy(roughness, from, part.roughness, 0, part.count);
        System.arraycopy(mean, from, part.mean, 0, part.count);
        for (int f = 0; f < features.length; f++) {
            System.arraycopy(features[f], from, part.features[f], 0, part.count);
        }
        return part;
    }

    private static double[] cut(double[] values, int from, int to) {
        return java.util.Arrays.copyOfRange(values, from, to);
    }

    /** Places in the coordinates of a structure. */
    public static PlaceCoordinates of(double[] x, double[] y, StructurePrior prior) {
        return of(
                x, y, prior, BankDistances.of(x, y, prior.banks(), prior.scale().horizontal()));
    }

    /** Places whose distances from the banks are known, in the coordinates of a structure. */
    public static PlaceCoordinates of(double[] x, double[] y, StructurePrior prior, BankDistances distances) {
        PlaceCoordinates places = new PlaceCoordinates(x, y, prior.features());
        for (int i = 0; i < x.length; i++) {
            prior.fill(places, i, distances);
        }
        return places;
    }

    /** Σ of the products of the features of two places, square metres. */
    public static double common(PlaceCoordinates a, int i, PlaceCoordinates b, int j) {
        double sum = 0;
        for (int f = 0; f < a.features.length; f++) {
            sum += a.features[f][i] * b.features[f][j];
        }
        return sum;
    }
}
