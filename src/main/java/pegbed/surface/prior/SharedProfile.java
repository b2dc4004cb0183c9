package pegbed.surface.prior;

import java.util.Optional;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;
import pegbed.surface.gaussian.GaussianProcess;

/**
 * What other pegs of a water say of this one before its readings are looked at: a mean about the tub, and a random
 * effect about that mean which all its readings have in common. The random effect is Σ ψ_r(a)ψ_r(b) over a few features
 * ψ, so that it stays a covariance (Rasmussen & Williams 2006, section 2.7: explicit basis functions with a Gaussian
 * prior).
 *
 * <p>Immutable.
 */
public final class SharedProfile {
    /** Nothing is known of any other peg. */
    public static final SharedProfile NONE = new SharedProfile();

    /** Directions of less variance than this are left out, square metres. */
    private static final double LEAST_VARIANCE = 1e-6;

    private final AcrossProfileBasis basis;
    private final double width;
    private final double[] mean;
    /** Feature by number of the basis. */
    private final double[][] features;

    private final double ownTrack;
    private final Optional<NeighbourInfluence> lesson;

    private SharedProfile() {
        basis = AcrossProfileBasis.open();
        width = 1;
        mean = new double[0];
        features = new double[0][];
        ownTrack = 1;
        lesson = Optional.empty();
    }

    /**
     * @param width of this peg's water, metres
     * @param mean of the basis' numbers, metres
     * @param covariance of the basis' numbers, square metres
     * @param ownTrack share of the track's variance that is this peg's own
     */
    public SharedProfile(
            AcrossProfileBasis basis,
            double width,
            double[] mean,
            double[][] covariance,
            double ownTrack,
            NeighbourInfluence lesson) {
        this.basis = basis;
        this.width = width;
        this.mean = mean.clone();
        this.ownTrack = ownTrack;
        this.lesson = Optional.of(lesson);
        this.features = features(covariance);
    }

    private static double[][] features(double[][] covariance) {
        int n = covariance.length;
        EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(n, true, true);
        if (!eigen.decompose(new DMatrixRMaj(covariance))) {
            throw new IllegalStateException("A covariance of " + n + " numbers has no eigenvalues.");
        }
        java.util.List<double[]> found = new java.util.ArrayList<>();
        for (int r = 0; r < n; r++) {
            double variance = eigen.getEigenvalue(r).getReal();
            if (variance > LEAST_VARIANCE) {
                double[] feature = eigen.getEigenVector(r).getData().clone();
                for (int i = 0; i < n; i++) {
                    feature[i] *= Math.sqrt(variance);
                }
                found.add(feature);
            }
        }
        return found.toArray(new double[0][]);
    }

    /** Whether there is nothing to know. */
    boolean isNone() {
        return lesson.isEmpty();
    }

    public Optional<NeighbourInfluence> lesson() {
        return lesson;
    }

    /** Share of the track's variance that is this peg's own, 1 where nothing is known. */
    public double ownTrack() {
        return ownTrack;
    }

    /** Number of features. */
    int rank() {
        return features.length;
    }

    /** Mean about the tub at a place, metres, and the features there after it. */
    double[] at(double acrossMetres, double share) {
        double[] weights = basis.weights(acrossMetres, width, share);
        double[] all = new double[1 + features.length];
        all[0] = GaussianProcess.dot(weights, mean);
        for (int r = 0; r < features.length; r++) {
            all[1 + r] = GaussianProcess.dot(weights, features[r]);
        }
        return all;
    }
}
