package pegbed.bench.methods;

import java.util.List;
import pegbed.surface.gaussian.Bfgs;
import pegbed.surface.gaussian.GaussianProcess;
import pegbed.surface.gaussian.Matern;
import pegbed.surface.plain.Site;

/**
 * A stationary, isotropic Gaussian process through scattered depths: Matérn 5/2, an unknown constant mean, and the
 * standard deviation, length and noise that are likeliest (Rasmussen & Williams 2006, Gaussian Processes for Machine
 * Learning, ch. 5). The likelihood is the restricted one, the constant integrated out; its maximum is sought from
 * several starts, with the gradient ½(αᵀ∂Kα − tr(P∂K)).
 */
public final class PlainGaussianProcess implements Surface {
    private static final double[] LEAST = {Math.log(0.01), Math.log(0.3), Math.log(0.003)};
    private static final double[] MOST = {Math.log(10), Math.log(100), Math.log(1)};
    private static final double[] LENGTHS_METRES = {1.5, 4, 12};
    private static final double[] NOISES_METRES = {0.02, 0.1};
    private static final int ITERATIONS = 100;

    private final double[] x;
    private final double[] y;
    private final double[] depth;
    private final double[] distances;
    private final double sd;
    private final double length;
    private final double noise;
    private final GaussianProcess field;

    /** @param sites two or more */
    public PlainGaussianProcess(List<Site> sites) {
        x = sites.stream().mapToDouble(Site::xMetres).toArray();
        y = sites.stream().mapToDouble(Site::yMetres).toArray();
        depth = sites.stream().mapToDouble(Site::depthMetres).toArray();
        int n = x.length;
        if (n < 2) {
            throw new IllegalArgumentException("A Gaussian process is learned from two sites or more, not " + n + ".");
        }
        distances = new double[n * n];
        double mean = 0;
        double squares = 0;
        for (int i = 0; i < n; i++) {
            mean += depth[i] / n;
            for (int j = 0; j < n; j++) {
                distances[i * n + j] = Math.hypot(x[i] - x[j], y[i] - y[j]);
            }
        }
        for (double d : depth) {
            squares += (d - mean) * (d - mean) / n;
        }
        double spread = Math.max(0.05, Math.sqrt(squares));
        double[] best = null;
        double least = Double.POSITIVE_INFINITY;
        for (double startLength : LENGTHS_METRES) {
            for (double startNoise : NOISES_METRES) {
                double[] start = {Math.log(spread), Math.log(startLength), Math.log(startNoise)};
                double[] found =
                        Bfgs.minimise(this::cost, start, LEAST, MOST, new double[] {0.1, 0.1, 0.1}, ITERATIONS, 1e-7);
                double cost = cost(found, new double[found.length]);
                if (best == null || cost < least) {
                    best = found;
                    least = cost;
                }
            }
        }
        sd = Math.exp(best[0]);
        length = Math.exp(best[1]);
        noise = Math.exp(best[2]);
        field = new GaussianProcess(covariance(sd, length, noise, new double[n * n]), depth, true);
    }

    /** Minus the log restricted likelihood at the logarithms of standard deviation, length and noise. */
    double cost(double[] logs, double[] gradient) {
        int n = depth.length;
        double sd2 = Math.exp(2 * logs[0]);
        double noise2 = Math.exp(2 * logs[2]);
        double[] byLength = new double[n * n];
        GaussianProcess gp;
        try {
            gp = new GaussianProcess(
                    covariance(Math.exp(logs[0]), Math.exp(logs[1]), Math.exp(logs[2]), byLength), depth, true);
        } catch (GaussianProcess.NotPositiveDefinite e) {
            return Double.POSITIVE_INFINITY;
        }
        double[] p = gp.inverse();
        double[] alpha = gp.alpha();
        double bySd = 0;
        double byLogLength = 0;
        double byNoise = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double weight = (p[i * n + j] - alpha[i] * alpha[j]) / 2;
                bySd += weight * 2 * sd2 * Matern.fiveHalves(distances[i * n + j] / Math.exp(logs[1]));
                byLogLength += weight * sd2 * byLength[i * n + j];
            }
            byNoise += (p[i * n + i] - alpha[i] * alpha[i]) * noise2;
        }
        gradient[0] = bySd;
        gradient[1] = byLogLength;
        gradient[2] = byNoise;
        return -gp.logMarginalLikelihood();
    }

    private double[] covariance(double sdMetres, double lengthMetres, double noiseMetres, double[] byLogLength) {
        int n = depth.length;
        double[] k = new double[n * n];
        Matern.fiveHalves(distances, lengthMetres, k, byLogLength);
        for (int i = 0; i < k.length; i++) {
            k[i] *= sdMetres * sdMetres;
        }
        for (int i = 0; i < n; i++) {
            k[i * n + i] += noiseMetres * noiseMetres;
        }
        return k;
    }

    /** Standard deviation of the bottom about its mean, metres. */
    public double sdMetres() {
        return sd;
    }

    /** Length scale, metres. */
    public double lengthMetres() {
        return length;
    }

    /** Standard deviation of a reading about the bottom, metres. */
    public double noiseMetres() {
        return noise;
    }

    private double[] covariances(double xMetres, double yMetres) {
        double[] k = new double[depth.length];
        for (int i = 0; i < k.length; i++) {
            k[i] = sd * sd * Matern.fiveHalves(Math.hypot(xMetres - x[i], yMetres - y[i]) / length);
        }
        return k;
    }

    @Override
    public double depthAt(double xMetres, double yMetres) {
        return field.mean(covariances(xMetres, yMetres));
    }

    @Override
    public double sdAt(double xMetres, double yMetres) {
        double[] k = covariances(xMetres, yMetres);
        field.whiten(k);
        return Math.sqrt(Math.max(0, field.covariance(sd * sd, k, k, 1, 1)));
    }
}
