package pegbed.bench.visits;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.CholeskyDecomposition_F64;
import pegbed.bench.practice.PracticePeg;
import pegbed.findings.StandardNormal;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.surface.FittedBottom;
import pegbed.surface.SteepnessDoubt;
import pegbed.surface.posterior.Prediction;
import pegbed.surface.survey.Levels;
import pegbed.surface.survey.Sounding;

/**
 * How often the best test there is could tell a change that adds the same, up or down, to the last two readings of a
 * visit, with one false alarm in twenty: with the readings' errors known as they are simulated, the doubt of the first
 * visit's map as it is reported, and a level of N(0, 0.12²) m.
 *
 * <p>Where the place is known, that is the test of the two readings' mean weighed by the inverse covariance. Where it
 * is not, it is the likelihood ratio (Neyman & Pearson 1933) of a change of that size, up or down, in any two readings
 * or one by itself, those near each other as likely as the readings alone; its power is by simulation.
 */
final class ChangeCeiling {
    /** A normal deviate is beyond this one time in twenty. */
    private static final double BEYOND = 1.959964;

    private static final double FALSE_ALARMS = 0.05;
    private static final int DRAWS = 4;
    private static final double STEP_METRES = 0.25;

    private final PracticePeg peg;
    private final FittedBottom before;
    private final double amountMetres;
    private final double nearMetres;

    /**
     * @param before the bottom after the first visit
     * @param amountMetres the change, known but for whether it is up or down
     * @param nearMetres readings so near each other may lie in one change
     */
    ChangeCeiling(PracticePeg peg, FittedBottom before, double amountMetres, double nearMetres) {
        this.peg = peg;
        this.before = before;
        this.amountMetres = amountMetres;
        this.nearMetres = nearMetres;
    }

    /**
     * What some readings could tell.
     *
     * @param known probability that the change is reported where its place is known
     * @param with likelihood ratios with the change where its place is not known, drawn by chance
     * @param without the same without the change
     */
    record Reported(double known, List<Double> with, List<Double> without) {}

    /** Which of the likelihood ratios with a change exceed all but one in twenty of those without. */
    static List<Double> reported(List<Double> with, List<Double> without) {
        List<Double> sorted = new ArrayList<>(without);
        Collections.sort(sorted);
        double limit = sorted.get((int) Math.floor((1 - FALSE_ALARMS) * (sorted.size() - 1)));
        return with.stream().map(ratio -> ratio > limit ? 1.0 : 0.0).toList();
    }

    Reported of(List<Reading> readings, Random chance) {
        int n = readings.size();
        DMatrixRMaj covariance = covariance(readings);
        DMatrixRMaj inverse = new DMatrixRMaj(n, n);
        CommonOps_DDRM.invert(covariance, inverse);
        double[] change = share(n, n - 1, n - 2);
        double power = amountMetres * Math.sqrt(product(change, inverse, change));
        List<double[]> shares = shares(readings);
        DMatrixRMaj root = root(covariance);
        List<Double> with = new ArrayList<>();
        List<Double> without = new ArrayList<>();
        for (int draw = 0; draw < DRAWS; draw++) {
            without.add(ratio(errors(root, chance), inverse, shares));
            double[] read = errors(root, chance);
            for (int i = 0; i < n; i++) {
                read[i] += amountMetres * change[i];
            }
            with.add(ratio(read, inverse, shares));
        }
        return new Reported(
                StandardNormal.cumulative(power - BEYOND) + StandardNormal.cumulative(-power - BEYOND), with, without);
    }

    /** Mean likelihood ratio, ½ e^(Aa − A²b/2) + ½ e^(−Aa − A²b/2), over the places that a change may have. */
    private double ratio(double[] read, DMatrixRMaj inverse, List<double[]> shares) {
        double sum = 0;
        for (double[] share : shares) {
            double a = amountMetres * product(share, inverse, read);
            double b = amountMetres * amountMetres * product(share, inverse, share) / 2;
            sum += (Math.exp(a - b) + Math.exp(-a - b)) / 2;
        }
        return sum / shares.size();
    }

    private List<double[]> shares(List<Reading> readings) {
        int n = readings.size();
        List<double[]> shares = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            shares.add(share(n, i, i));
            for (int j = 0; j < i; j++) {
                if (readings.get(i).place().distanceTo(readings.get(j).place()) <= nearMetres) {
                    shares.add(share(n, i, j));
                }
            }
        }
        return shares;
    }

    private static double[] share(int n, int one, int other) {
        double[] share = new double[n];
        share[one] = 1;
        share[other] = 1;
        return share;
    }

    private static double product(double[] a, DMatrixRMaj inverse, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            for (int j = 0; j < b.length; j++) {
                sum += a[i] * inverse.get(i, j) * b[j];
            }
        }
        return sum;
    }

    private static DMatrixRMaj root(DMatrixRMaj covariance) {
        CholeskyDecomposition_F64<DMatrixRMaj> cholesky = DecompositionFactory_DDRM.chol(covariance.getNumRows(), true);
        if (!cholesky.decompose(covariance.copy())) {
            throw new IllegalStateException("The covariance of the readings is not positive definite.");
        }
        return cholesky.getT(null);
    }

    private static double[] errors(DMatrixRMaj root, Random chance) {
        DMatrixRMaj normals = new DMatrixRMaj(root.getNumRows(), 1);
        for (int i = 0; i < normals.getNumRows(); i++) {
            normals.set(i, chance.nextGaussian());
        }
        DMatrixRMaj errors = new DMatrixRMaj(root.getNumRows(), 1);
        CommonOps_DDRM.mult(root, normals, errors);
        return errors.data;
    }

    private DMatrixRMaj covariance(List<Reading> readings) {
        List<Sounding> places = readings.stream().map(r -> Sounding.of(r, 0)).toList();
        DMatrixRMaj covariance = new DMatrixRMaj(SteepnessDoubt.covariance(before, places));
        for (int i = 0; i < places.size(); i++) {
            for (int j = 0; j < places.size(); j++) {
                double more = Levels.SD_METRES * Levels.SD_METRES
                        + (i == j ? noise(readings.get(i).place()) : 0);
                covariance.add(i, j, more);
            }
        }
        return covariance;
    }

    /** Variance of a simulated reading about the depth at the place that is wanted, on the slope that is there. */
    private double noise(Place place) {
        PracticePeg.ReadingNoise noise = peg.noise();
        double outward = slope(place, Place.polar(STEP_METRES, place.angleDegrees()));
        double aside = slope(place, Place.polar(STEP_METRES, place.angleDegrees() + 90));
        double along = outward * noise.sdDistanceMetres();
        double across = aside * place.distanceMetres() * Math.toRadians(noise.sdDirectionDegrees());
        return noise.sdDepthMetres() * noise.sdDepthMetres() + along * along + across * across;
    }

    private double slope(Place at, Place step) {
        double far = peg.truth().depthAt(at.xMetres() + step.xMetres(), at.yMetres() + step.yMetres());
        double near = peg.truth().depthAt(at.xMetres() - step.xMetres(), at.yMetres() - step.yMetres());
        double slope = (far - near) / (2 * STEP_METRES);
        // Beside land, what is there in water.
        if (Double.isNaN(slope)) {
            Prediction reported = before.at(at.xMetres(), at.yMetres());
            return (reported.slopeX() * step.xMetres() + reported.slopeY() * step.yMetres()) / STEP_METRES;
        }
        return slope;
    }
}
