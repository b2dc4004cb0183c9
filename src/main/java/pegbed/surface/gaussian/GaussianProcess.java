package pegbed.surface.gaussian;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.decomposition.TriangularSolver_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.CholeskyDecomposition_F64;

/**
 * A Gaussian field conditioned on observations: the linear part of the model, and the only solver.
 *
 * <p>Rasmussen & Williams (2006), Algorithm 2.1: K = LLᵀ, α = K⁻¹y, mean k*ᵀα, variance k** − |L⁻¹k*|². With an unknown
 * constant mean (ordinary kriging: Isaaks & Srivastava 1989, ch. 12) the constant is estimated by generalised least
 * squares, β = 1ᵀK⁻¹y / 1ᵀK⁻¹1, and the variance grows by (1 − 1ᵀK⁻¹k*)² / 1ᵀK⁻¹1.
 *
 * <p>Immutable and thread-safe.
 */
public final class GaussianProcess {
    private final int n;
    /** L, row by row, n × n. */
    private final double[] factor;
    /** α = K⁻¹(y − β1), n. */
    private final double[] alpha;
    /** L⁻¹1 where the constant is unknown, else null. */
    private final double[] whitenedOnes;

    private final double onesNorm2;
    private final double constant;
    private final double[] values;
    private final double logDeterminant;
    /** Worked out when first asked for; whoever is first, it is the same. */
    private volatile double[] diagonal;

    /**
     * Conditions a field.
     *
     * @param k covariance of the observations, noise included, row by row, n × n; not changed
     * @param values observations less the known mean, n
     * @param unknownConstant whether an unknown constant is part of the mean
     * @throws NotPositiveDefinite if K can't be factored even with the last step of jitter
     */
    public GaussianProcess(double[] k, double[] values, boolean unknownConstant) {
        n = values.length;
        this.values = values.clone();
        factor = n == 0 ? new double[0] : factored(k, n);
        double log = 0;
        for (int i = 0; i < n; i++) {
            log += 2 * Math.log(factor[i * n + i]);
        }
        logDeterminant = log;
        if (unknownConstant && n > 0) {
            whitenedOnes = new double[n];
            java.util.Arrays.fill(whitenedOnes, 1);
            TriangularSolver_DDRM.solveL(factor, whitenedOnes, n);
            double[] whitened = this.values.clone();
            TriangularSolver_DDRM.solveL(factor, whitened, n);
            onesNorm2 = dot(whitenedOnes, whitenedOnes);
            constant = dot(whitenedOnes, whitened) / onesNorm2;
        } else {
            whitenedOnes = null;
            onesNorm2 = 0;
            constant = 0;
        }
        alpha = this.values.clone();
        for (int i = 0; i < n; i++) {
            alpha[i] -= constant;
        }
        if (n > 0) {
            TriangularSolver_DDRM.solveL(factor, alpha, n);
            TriangularSolver_DDRM.solveTranL(factor, alpha, n);
        }
    }

    /** Steps of jitter, as a share of the mean variance, tried in turn when K is not positive definite. */
    private static final double[] JITTER = {0, 1e-9, 1e-7, 1e-5, 1e-3};

    /**
     * L with LLᵀ = K, row by row, with as much jitter as it takes.
     *
     * @param k covariance, row by row, n × n; not changed
     * @throws NotPositiveDefinite if K can't be factored even with the last step of jitter
     */
    public static double[] factored(double[] k, int n) {
        double trace = 0;
        for (int i = 0; i < n; i++) {
            trace += k[i * n + i];
        }
        for (double value : k) {
            if (!Double.isFinite(value)) {
                throw new NotPositiveDefinite();
            }
        }
        for (double jitter : JITTER) {
            DMatrixRMaj matrix = new DMatrixRMaj(n, n, true, k.clone());
            for (int i = 0; i < n; i++) {
                matrix.data[i * n + i] += jitter * trace / n;
            }
            CholeskyDecomposition_F64<DMatrixRMaj> cholesky = DecompositionFactory_DDRM.chol(n, true);
            if (cholesky.decompose(matrix)) {
                return cholesky.getT(null).data;
            }
        }
        throw new NotPositiveDefinite();
    }

    /** The covariance of the observations is not a covariance; a value that is not finite is the usual cause. */
    public static final class NotPositiveDefinite extends RuntimeException {
        private static final long serialVersionUID = 1L;

        NotPositiveDefinite() {
            super("The covariance of the observations is not positive definite.");
        }
    }

    public int size() {
        return n;
    }

    /** The estimated constant, 0 where it is not unknown. */
    public double constant() {
        return constant;
    }

    /** α: what each observation pulls. Shared, not to be changed. */
    public double[] alpha() {
        return alpha;
    }

    /** L⁻¹k, in place. */
    public void whiten(double[] k) {
        if (n > 0) {
            TriangularSolver_DDRM.solveL(factor, k, n);
        }
    }

    /**
     * L⁻¹k of many places at once, in place: forward substitution with the places innermost.
     *
     * @param rows covariances with each observation, observation by place
     * @param from the first place
     * @param to the place after the last
     */
    public void whiten(double[][] rows, int from, int to) {
        for (int i = 0; i < n; i++) {
            double[] row = rows[i];
            int k = 0;
            for (; k + 4 <= i; k += 4) {
                int at = i * n + k;
                double[] w = factor;
                subtract(row, w[at], w[at + 1], w[at + 2], w[at + 3], rows, k, from, to);
            }
            for (; k < i; k++) {
                subtract(row, factor[i * n + k], rows[k], from, to);
            }
            double diagonal = 1 / factor[i * n + i];
            for (int place = from; place < to; place++) {
                row[place] *= diagonal;
            }
        }
    }

    /**
     * The row of L⁻¹k that one more observation adds, in place.
     *
     * @param row covariances of places with it, by place
     * @param l its own row of L without the diagonal
     * @param diagonal its diagonal of L
     * @param whitened L⁻¹k of each place, one after the other
     */
    public void nextRow(double[] row, double[] l, double diagonal, double[] whitened) {
        for (int place = 0; place < row.length; place++) {
            int at = place * n;
            double even = 0;
            double odd = 0;
            int k = 0;
            for (; k + 2 <= n; k += 2) {
                even += l[k] * whitened[at + k];
                odd += l[k + 1] * whitened[at + k + 1];
            }
            if (k < n) {
                even += l[k] * whitened[at + k];
            }
            row[place] = (row[place] - even - odd) / diagonal;
        }
    }

    private static void subtract(double[] row, double weight, double[] other, int from, int to) {
        for (int place = from; place < to; place++) {
            row[place] -= weight * other[place];
        }
    }

    /** Four weighted rows at a time, from row k on: the row is read and written once for them. */
    private static void subtract(
            double[] row, double wa, double wb, double wc, double wd, double[][] rows, int k, int from, int to) {
        double[] a = rows[k];
        double[] b = rows[k + 1];
        double[] c = rows[k + 2];
        double[] d = rows[k + 3];
        for (int place = from; place < to; place++) {
            row[place] -= wa * a[place] + wb * b[place] + wc * c[place] + wd * d[place];
        }
    }

    /**
     * From variances before the observations to those after, in place.
     *
     * @param variances one a place
     * @param whitened L⁻¹k of the places' values or gradients, observation by place
     * @param ones what they make of the constant 1: 1 for values, 0 for gradients
     */
    public void takeKnown(double[] variances, double[][] whitened, double ones) {
        for (double[] row : whitened) {
            for (int place = 0; place < variances.length; place++) {
                variances[place] -= row[place] * row[place];
            }
        }
        if (whitenedOnes != null) {
            double[] left = left(whitened, variances.length, ones);
            for (int place = 0; place < variances.length; place++) {
                variances[place] += left[place] * left[place] / onesNorm2;
            }
        }
    }

    /**
     * From covariances between two sets of places before the observations to those after, in place.
     *
     * @param covariances of the values at a place of the one with those at each of the other
     * @param whitenedA L⁻¹k of the one, observation by place
     * @param whitenedB L⁻¹k of the other, observation by place
     */
    public void takeKnown(double[][] covariances, double[][] whitenedA, double[][] whitenedB) {
        int others = covariances.length == 0 ? 0 : covariances[0].length;
        for (int a = 0; a < covariances.length; a++) {
            int j = 0;
            for (; j + 4 <= n; j += 4) {
                double wa = whitenedA[j][a];
                double wb = whitenedA[j + 1][a];
                double wc = whitenedA[j + 2][a];
                double wd = whitenedA[j + 3][a];
                subtract(covariances[a], wa, wb, wc, wd, whitenedB, j, 0, others);
            }
            for (; j < n; j++) {
                subtract(covariances[a], whitenedA[j][a], whitenedB[j], 0, others);
            }
        }
        if (whitenedOnes != null) {
            double[] leftA = left(whitenedA, covariances.length, 1);
            double[] leftB = left(whitenedB, others, 1);
            for (int a = 0; a < covariances.length; a++) {
                subtract(covariances[a], -leftA[a] / onesNorm2, leftB, 0, others);
            }
        }
    }

    /**
     * L⁻¹e of one observation. Its product with L⁻¹k* is by how much the mean moves at k* for a metre of what the
     * observation reads; its square is one over the variance that the others leave open about it (Rasmussen & Williams
     * 2006, eq. 5.12).
     *
     * @throws IllegalStateException with an unknown constant, for which this does not hold
     */
    public double[] whitenedUnit(int observation) {
        if (whitenedOnes != null) {
            throw new IllegalStateException("What one observation tells is reckoned for a known mean only.");
        }
        double[] unit = new double[n];
        unit[observation] = 1;
        whiten(unit);
        return unit;
    }

    /** 1 − 1ᵀK⁻¹k* of each place (0 − for gradients): how little of the constant the observations tell there. */
    private double[] left(double[][] whitened, int places, double ones) {
        double[] left = new double[places];
        java.util.Arrays.fill(left, ones);
        for (int j = 0; j < n; j++) {
            subtract(left, whitenedOnes[j], whitened[j], 0, places);
        }
        return left;
    }

    /** Mean above the known mean, from the covariances k* with the observations. */
    public double mean(double[] k) {
        return constant + dot(k, alpha);
    }

    /**
     * Covariance between two linear functionals of the field.
     *
     * @param prior their covariance before the observations
     * @param whitenedA L⁻¹k of the one
     * @param whitenedB L⁻¹k of the other
     * @param onesA what the one makes of the constant 1 (1 for a value or mean, 0 for a gradient)
     * @param onesB what the other makes of it
     */
    public double covariance(double prior, double[] whitenedA, double[] whitenedB, double onesA, double onesB) {
        double result = prior - dot(whitenedA, whitenedB);
        if (whitenedOnes != null) {
            result += (onesA - dot(whitenedOnes, whitenedA)) * (onesB - dot(whitenedOnes, whitenedB)) / onesNorm2;
        }
        return result;
    }

    /** Weights on the observations of the prediction at covariances k*: K⁻¹k*, with the constant's share. */
    public double[] weights(double[] k) {
        double[] weights = k.clone();
        whiten(weights);
        double share = whitenedOnes == null ? 0 : (1 - dot(whitenedOnes, weights)) / onesNorm2;
        for (int i = 0; i < n && whitenedOnes != null; i++) {
            weights[i] += share * whitenedOnes[i];
        }
        TriangularSolver_DDRM.solveTranL(factor, weights, n);
        return weights;
    }

    /**
     * K⁻¹ = L⁻ᵀL⁻¹, row by row; with an unknown constant, the matrix K⁻¹ − K⁻¹11ᵀK⁻¹ / 1ᵀK⁻¹1 of generalised least
     * squares.
     */
    public double[] inverse() {
        double[][] lower = inverseFactor();
        double[][] sum = new double[n][n];
        double[] share = new double[n];
        for (int i = 0; i < n; i += 4) {
            int last = Math.min(i + 4, n);
            for (int a = 0; a < last; a++) {
                if (last == i + 4) {
                    double wa = -lower[i][a];
                    double wb = -lower[i + 1][a];
                    double wc = -lower[i + 2][a];
                    double wd = -lower[i + 3][a];
                    subtract(sum[a], wa, wb, wc, wd, lower, i, 0, a + 1);
                } else {
                    for (int k = i; k < last; k++) {
                        subtract(sum[a], -lower[k][a], lower[k], 0, a + 1);
                    }
                }
            }
            for (int k = i; k < last && whitenedOnes != null; k++) {
                subtract(share, -whitenedOnes[k], lower[k], 0, n);
            }
        }
        double[] inverse = new double[n * n];
        for (int a = 0; a < n; a++) {
            for (int b = 0; b <= a; b++) {
                double value = sum[a][b] - (whitenedOnes == null ? 0 : share[a] * share[b] / onesNorm2);
                inverse[a * n + b] = value;
                inverse[b * n + a] = value;
            }
        }
        return inverse;
    }

    /**
     * The diagonal of K⁻¹: one over what is unknown of each observation given the others. Shared, not to be changed.
     */
    public double[] inverseDiagonal() {
        double[] known = diagonal;
        if (known == null) {
            double[] inverse = inverse();
            known = new double[n];
            for (int i = 0; i < n; i++) {
                known[i] = inverse[i * n + i];
            }
            diagonal = known;
        }
        return known;
    }

    /** L⁻¹, row by row. */
    private double[][] inverseFactor() {
        double[][] lower = new double[n][n];
        for (int i = 0; i < n; i++) {
            double[] row = lower[i];
            row[i] = 1;
            int k = 0;
            for (; k + 4 <= i; k += 4) {
                int at = i * n + k;
                double[] w = factor;
                subtract(row, w[at], w[at + 1], w[at + 2], w[at + 3], lower, k, 0, k + 4);
            }
            for (; k < i; k++) {
                subtract(row, factor[i * n + k], lower[k], 0, k + 1);
            }
            double diagonal = 1 / factor[i * n + i];
            for (int column = 0; column <= i; column++) {
                row[column] *= diagonal;
            }
        }
        return lower;
    }

    /** log p(y), the marginal likelihood; restricted (REML) with an unknown constant, but for its constant term. */
    public double logMarginalLikelihood() {
        double fit = 0;
        for (int i = 0; i < n; i++) {
            fit += (values[i] - constant) * alpha[i];
        }
        double restricted = whitenedOnes == null ? 0 : Math.log(onesNorm2);
        return -(fit + logDeterminant + restricted + n * Math.log(2 * Math.PI)) / 2;
    }

    public static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
