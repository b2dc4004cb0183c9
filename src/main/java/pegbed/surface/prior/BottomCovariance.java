package pegbed.surface.prior;

import pegbed.surface.gaussian.Exponential;
import pegbed.surface.gaussian.Matern;
import pegbed.surface.survey.Scale;

/**
 * Covariance of the depths at two places under one structure: a cross-profile that holds along the water, an isotropic
 * term, a local term, the level, and linear terms, one a feature.
 *
 * <p>k = h·h'·σp²·M52(|Δu|/Lu)·M52(|Δv|/ℓv) + σm²·M52(r/ℓm) + σr²·M32(r/ℓr) + σl² + Σ f·f' with r = √(Δx²+Δy²), h the
 * {@link Roughness} of a place, and M the Matérn correlations (Rasmussen & Williams 2006, eq. 4.17). A term whose
 * standard deviation is 0 costs nothing.
 */
public final class BottomCovariance implements Covariance {
    /** Standard deviation of the whole bottom's level about the mean, metres on a peg. */
    private static final double LEVEL_SD = 0.10;

    private static final double THIRD = 1.0 / 3;

    public final double profile2;
    public final double across;
    public final double along;
    public final double isotropic2;
    public final double isotropic;
    public final double local2;
    public final double local;
    /** Variance of the whole bottom's level, and of the water's where depths are at a later visit's. */
    public final double level2;

    /** The covariance at the level at which the banks were drawn. */
    public BottomCovariance(Hyperparameters hyper, Scale scale) {
        this(hyper, scale, 0);
    }

    /**
     * The covariance at a level that is itself uncertain.
     *
     * @param levelVariance of the water's level at the visit that is shown, square metres
     */
    public BottomCovariance(Hyperparameters hyper, Scale scale, double levelVariance) {
        profile2 = hyper.profileSdMetres() * hyper.profileSdMetres();
        across = hyper.acrossMetres();
        along = hyper.alongMetres();
        isotropic2 = hyper.isotropicSdMetres() * hyper.isotropicSdMetres();
        isotropic = hyper.isotropicMetres();
        local2 = hyper.localSdMetres() * hyper.localSdMetres();
        local = hyper.localMetres();
        level2 = LEVEL_SD * LEVEL_SD * scale.vertical() * scale.vertical() + levelVariance;
    }

    @Override
    public double between(PlaceCoordinates a, int i, PlaceCoordinates b, int j) {
        double sum = level2 + PlaceCoordinates.common(a, i, b, j);
        if (profile2 > 0) {
            sum += a.roughness[i]
                    * b.roughness[j]
                    * profile2
                    * Matern.fiveHalvesProduct(Math.abs(a.u[i] - b.u[j]) / along, Math.abs(a.v[i] - b.v[j]) / across);
        }
        if (isotropic2 > 0 || local2 > 0) {
            double dx = a.x[i] - b.x[j];
            double dy = a.y[i] - b.y[j];
            double distance = Math.sqrt(dx * dx + dy * dy);
            sum += isotropic2 > 0 ? isotropic2 * Matern.fiveHalves(distance / isotropic) : 0;
            sum += local2 > 0 ? local2 * Matern.threeHalves(distance / local) : 0;
        }
        return sum;
    }

    /**
     * Covariances of all places of one set with one other, as {@link #between(PlaceCoordinates, int, PlaceCoordinates,
     * int)} gives them, many at once: every loop counts from 0 in all its arrays and does little, else the compiler
     * takes one number at a time.
     *
     * @param row filled as far as there are places
     */
    public void between(PlaceCoordinates a, PlaceCoordinates b, int j, double[] row) {
        between(a, b, j, row, new double[a.count], new double[a.count]);
    }

    /**
     * Covariances of all places of one set with all of another.
     *
     * @param rows filled, one for each place of the other set, as far as there are places of the first
     */
    public void between(PlaceCoordinates a, PlaceCoordinates b, double[][] rows) {
        double[] distance = new double[a.count];
        double[] exponential = new double[a.count];
        for (int j = 0; j < b.count; j++) {
            between(a, b, j, rows[j], distance, exponential);
        }
    }

    private void between(
            PlaceCoordinates a, PlaceCoordinates b, int j, double[] row, double[] distance, double[] exponential) {
        int count = a.count;
        for (int i = 0; i < count; i++) {
            row[i] = level2;
        }
        if (isotropic2 > 0 || local2 > 0) {
            distances(a, b, j, distance);
        }
        if (isotropic2 > 0) {
            addIsotropic(distance, exponential, row);
        }
        if (local2 > 0) {
            addLocal(distance, exponential, row);
        }
        if (profile2 > 0) {
            addProfile(a, b, j, distance, exponential, row);
        }
        for (int f = 0; f < a.features.length; f++) {
            addProduct(a.features[f], b.features[f][j], row);
        }
    }

    private static void addProduct(double[] feature, double weight, double[] row) {
        for (int i = 0; i < feature.length; i++) {
            row[i] += weight * feature[i];
        }
    }

    private static void distances(PlaceCoordinates a, PlaceCoordinates b, int j, double[] distance) {
        double x = b.x[j];
        double y = b.y[j];
        double[] xs = a.x;
        double[] ys = a.y;
        for (int i = 0; i < distance.length; i++) {
            double dx = xs[i] - x;
            double dy = ys[i] - y;
            distance[i] = Math.sqrt(dx * dx + dy * dy);
        }
    }

    private void addIsotropic(double[] distance, double[] exponential, double[] row) {
        double scaled = Matern.ROOT5 / isotropic;
        for (int i = 0; i < exponential.length; i++) {
            exponential[i] = distance[i] * scaled;
        }
        Exponential.ofNegative(exponential, 0, exponential.length);
        for (int i = 0; i < exponential.length; i++) {
            double s = distance[i] * scaled;
            row[i] += isotropic2 * (1 + s + s * s * THIRD) * exponential[i];
        }
    }

    private void addLocal(double[] distance, double[] exponential, double[] row) {
        double scaled = Matern.ROOT3 / local;
        for (int i = 0; i < exponential.length; i++) {
            exponential[i] = distance[i] * scaled;
        }
        Exponential.ofNegative(exponential, 0, exponential.length);
        for (int i = 0; i < exponential.length; i++) {
            row[i] += local2 * (1 + distance[i] * scaled) * exponential[i];
        }
    }

    /** The profile's part; the polynomial is kept where the distances were. */
    private void addProfile(
            PlaceCoordinates a, PlaceCoordinates b, int j, double[] polynomial, double[] exponential, double[] row) {
        double perAlong = Matern.ROOT5 / along;
        double perAcross = Matern.ROOT5 / across;
        double u = b.u[j];
        double v = b.v[j];
        double variance = profile2 * b.roughness[j];
        double[] us = a.u;
        double[] vs = a.v;
        double[] roughness = a.roughness;
        for (int i = 0; i < exponential.length; i++) {
            double s = Math.abs(us[i] - u) * perAlong;
            exponential[i] = s;
            polynomial[i] = variance * roughness[i] * (1 + s + s * s * THIRD);
        }
        for (int i = 0; i < exponential.length; i++) {
            double s = Math.abs(vs[i] - v) * perAcross;
            exponential[i] += s;
            polynomial[i] *= 1 + s + s * s * THIRD;
        }
        Exponential.ofNegative(exponential, 0, exponential.length);
        for (int i = 0; i < exponential.length; i++) {
            row[i] += polynomial[i] * exponential[i];
        }
    }
}
