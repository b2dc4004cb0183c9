package pegbed.bench.methods;

import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;
import org.ejml.interfaces.decomposition.QRDecomposition;
import pegbed.surface.plain.Site;

/**
 * A thin plate through scattered depths: the surface f that minimises Σ(zᵢ − f(xᵢ))²/n + λ∫∫(f_xx² + 2f_xy² + f_yy²),
 * with λ the least of generalised cross-validation, V(λ) = n⁻¹|(I − A)z|² / (n⁻¹ tr(I − A))² (Wahba 1990, Spline Models
 * for Observational Data, SIAM, sections 2.4 and 4.3; Craven & Wahba 1979).
 *
 * <p>The standard deviation is that of Wahba's Bayesian posterior: variance σ̂²·A at the sites, σ̂² = |(I − A)z|²/tr(I
 * − A), and anywhere that of the intrinsic field of which the smoother is the prediction (Wahba 1990, sections 1.5 and
 * 5.1). The doubt of λ itself is not in it.
 */
public final class ThinPlateSmoother implements Surface {
    /** Bounds of nλ as shares of the largest eigenvalue of the penalty's matrix. */
    private static final double LEAST_SHARE = 1e-10;

    private static final double MOST_SHARE = 1e3;
    private static final int STEPS = 200;
    private static final int REFINEMENTS = 40;
    private static final int PLANE = 3;

    private final double[] x;
    private final double[] y;
    /** Weights of the sites' kernels, then of 1, x and y. */
    private final double[] coefficients;
    /** Inverse of [[K + nλI, T], [Tᵀ, 0]]. */
    private final DMatrixRMaj inverse;

    private final double smoothing;
    private final double noiseVariance;
    private final double freedom;

    /**
     * A smoother whose λ is found by generalised cross-validation.
     *
     * @param sites four or more, not all in one line
     * @throws IllegalArgumentException if there are fewer, or they lie in one line
     */
    public static ThinPlateSmoother of(List<Site> sites) {
        return new ThinPlateSmoother(sites, Double.NaN);
    }

    /**
     * A smoother of given smoothing.
     *
     * @param smoothing nλ, in the units of the kernel r² ln r / 8π, square metres; 0 interpolates, for which no two
     *     sites may share a place
     */
    public static ThinPlateSmoother of(List<Site> sites, double smoothing) {
        return new ThinPlateSmoother(sites, smoothing);
    }

    private ThinPlateSmoother(List<Site> sites, double given) {
        int n = sites.size();
        if (n <= PLANE) {
            throw new IllegalArgumentException("A thin plate needs more than three sites, not " + n + ".");
        }
        x = sites.stream().mapToDouble(Site::xMetres).toArray();
        y = sites.stream().mapToDouble(Site::yMetres).toArray();
        DMatrixRMaj z = new DMatrixRMaj(n, 1);
        DMatrixRMaj k = new DMatrixRMaj(n, n);
        DMatrixRMaj t = new DMatrixRMaj(n, PLANE);
        for (int i = 0; i < n; i++) {
            z.set(i, 0, sites.get(i).depthMetres());
            t.set(i, 0, 1);
            t.set(i, 1, x[i]);
            t.set(i, 2, y[i]);
            for (int j = 0; j < n; j++) {
                k.set(i, j, kernel(x[i] - x[j], y[i] - y[j]));
            }
        }
        Penalty penalty = Penalty.of(k, t, z);
        smoothing = Double.isNaN(given) ? penalty.crossValidated() : given;
        double left = penalty.left(smoothing);
        freedom = n - left;
        noiseVariance = left > 0 ? penalty.residual2(smoothing) / left : 0;
        DMatrixRMaj system = new DMatrixRMaj(n + PLANE, n + PLANE);
        CommonOps_DDRM.insert(k, system, 0, 0);
        for (int i = 0; i < n; i++) {
            system.add(i, i, smoothing);
            for (int j = 0; j < PLANE; j++) {
                system.set(i, n + j, t.get(i, j));
                system.set(n + j, i, t.get(i, j));
            }
        }
        inverse = new DMatrixRMaj(n + PLANE, n + PLANE);
        if (!CommonOps_DDRM.invert(system, inverse)) {
            throw new IllegalArgumentException("Two sites of a thin plate without smoothing share a place.");
        }
        DMatrixRMaj right = new DMatrixRMaj(n + PLANE, 1);
        CommonOps_DDRM.insert(z, right, 0, 0);
        DMatrixRMaj solution = new DMatrixRMaj(n + PLANE, 1);
        CommonOps_DDRM.mult(inverse, right, solution);
        coefficients = solution.data;
    }

    /** r² ln r / 8π. */
    private static double kernel(double dx, double dy) {
        double r2 = dx * dx + dy * dy;
        return r2 == 0 ? 0 : r2 * Math.log(r2) / (16 * Math.PI);
    }

    /** nλ. */
    public double smoothing() {
        return smoothing;
    }

    /** The trace of A: 3 for a plane, the number of sites without smoothing. */
    public double degreesOfFreedom() {
        return freedom;
    }

    /** σ̂², square metres. */
    public double noiseVariance() {
        return noiseVariance;
    }

    @Override
    public double depthAt(double xMetres, double yMetres) {
        double[] features = features(xMetres, yMetres);
        double sum = 0;
        for (int i = 0; i < features.length; i++) {
            sum += coefficients[i] * features[i];
        }
        return sum;
    }

    @Override
    public double sdAt(double xMetres, double yMetres) {
        if (smoothing == 0) {
            return Double.NaN;
        }
        double[] features = features(xMetres, yMetres);
        double form = 0;
        for (int i = 0; i < features.length; i++) {
            double row = 0;
            for (int j = 0; j < features.length; j++) {
                row += inverse.get(i, j) * features[j];
            }
            form += features[i] * row;
        }
        return Math.sqrt(Math.max(0, -noiseVariance / smoothing * form));
    }

    private double[] features(double xMetres, double yMetres) {
        double[] features = new double[coefficients.length];
        int n = x.length;
        for (int i = 0; i < n; i++) {
            features[i] = kernel(xMetres - x[i], yMetres - y[i]);
        }
        features[n] = 1;
        features[n + 1] = xMetres;
        features[n + 2] = yMetres;
        return features;
    }

    /**
     * The penalty seen away from planes: eigenvalues γ of Q₂ᵀKQ₂ and the depths w in its eigenvectors, so that I − A
     * has the eigenvalues nλ/(γ + nλ) (Wahba 1990, section 4.3).
     */
    private record Penalty(double[] gamma, double[] w) {
        static Penalty of(DMatrixRMaj k, DMatrixRMaj t, DMatrixRMaj z) {
            int n = t.getNumRows();
            QRDecomposition<DMatrixRMaj> qr = DecompositionFactory_DDRM.qr(n, PLANE);
            if (!qr.decompose(t.copy())) {
                throw new IllegalArgumentException("The sites of a thin plate must be finite.");
            }
            DMatrixRMaj r = qr.getR(null, true);
            for (int i = 0; i < PLANE; i++) {
                if (Math.abs(r.get(i, i)) < 1e-9 * Math.sqrt(n)) {
                    throw new IllegalArgumentException("The sites of a thin plate must not lie in one line.");
                }
            }
            DMatrixRMaj q2 = CommonOps_DDRM.extract(qr.getQ(null, false), 0, n, PLANE, n);
            int m = n - PLANE;
            DMatrixRMaj kq = new DMatrixRMaj(n, m);
            DMatrixRMaj inner = new DMatrixRMaj(m, m);
            CommonOps_DDRM.mult(k, q2, kq);
            CommonOps_DDRM.multTransA(q2, kq, inner);
            DMatrixRMaj symmetric = new DMatrixRMaj(m, m);
            CommonOps_DDRM.transpose(inner, symmetric);
            CommonOps_DDRM.add(0.5, inner, 0.5, symmetric, symmetric);
            DMatrixRMaj depths = new DMatrixRMaj(m, 1);
            CommonOps_DDRM.multTransA(q2, z, depths);
            EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(m, true, true);
            if (!eigen.decompose(symmetric)) {
                throw new IllegalArgumentException("The sites of a thin plate must be finite.");
            }
            double[] gamma = new double[m];
            double[] w = new double[m];
            for (int i = 0; i < m; i++) {
                gamma[i] = Math.max(0, eigen.getEigenvalue(i).getReal());
                w[i] = CommonOps_DDRM.dot(eigen.getEigenVector(i), depths);
            }
            return new Penalty(gamma, w);
        }

        private double share(int i, double smoothing) {
            return smoothing == 0 ? 0 : smoothing / (gamma[i] + smoothing);
        }

        /** |(I − A)z|². */
        double residual2(double smoothing) {
            double sum = 0;
            for (int i = 0; i < w.length; i++) {
                double e = share(i, smoothing) * w[i];
                sum += e * e;
            }
            return sum;
        }

        /** tr(I − A). */
        double left(double smoothing) {
            double sum = 0;
            for (int i = 0; i < w.length; i++) {
                sum += share(i, smoothing);
            }
            return sum;
        }

        /** n·V(λ). */
        private double score(double logSmoothing) {
            double smoothing = Math.exp(logSmoothing);
            double left = left(smoothing);
            return residual2(smoothing) / (left * left);
        }

        double crossValidated() {
            double largest = 0;
            for (double g : gamma) {
                largest = Math.max(largest, g);
            }
            double least = Math.log(LEAST_SHARE * largest);
            double step = (Math.log(MOST_SHARE * largest) - least) / STEPS;
            int best = 0;
            for (int i = 1; i <= STEPS; i++) {
                if (score(least + i * step) < score(least + best * step)) {
                    best = i;
                }
            }
            double low = least + Math.max(0, best - 1) * step;
            double high = least + Math.min(STEPS, best + 1) * step;
            for (int i = 0; i < REFINEMENTS; i++) {
                double third = (high - low) / 3;
                if (score(low + third) < score(high - third)) {
                    high -= third;
                } else {
                    low += third;
                }
            }
            return Math.exp((low + high) / 2);
        }
    }
}
