package pegbed.surface.gaussian;

/**
 * Minimises a smooth function of a few variables within bounds: quasi-Newton steps with the BFGS inverse Hessian,
 * bounds by projection, backtracking by Armijo's rule (Nocedal & Wright 2006, Numerical Optimization, ch. 3 and 6).
 */
public final class Bfgs {
    private static final double ARMIJO = 1e-4;

    private Bfgs() {}

    /** A function with its gradient. */
    public interface Objective {
        /** The value at a point; fills the gradient there. Positive infinity where it can't be computed. */
        double value(double[] point, double[] gradient);
    }

    /**
     * The best point found.
     *
     * @param start where to begin, within the bounds; not changed
     * @param inverseHessian diagonal of the first guess of the inverse Hessian
     * @param iterations how many steps at most
     * @param tolerance stop when a step gains less than this
     */
    public static double[] minimise(
            Objective f,
            double[] start,
            double[] least,
            double[] most,
            double[] inverseHessian,
            int iterations,
            double tolerance) {
        int n = start.length;
        double[] x = start.clone();
        double[] g = new double[n];
        double value = f.value(x, g);
        double[][] h = diagonal(inverseHessian);
        boolean fresh = true;
        for (int iteration = 0; iteration < iterations; iteration++) {
            double[] step = descent(h, g, x, least, most);
            double slope = GaussianProcess.dot(step, g);
            if (slope >= 0) {
                h = diagonal(inverseHessian);
                fresh = true;
                step = descent(h, g, x, least, most);
                slope = GaussianProcess.dot(step, g);
            }
            if (slope > -tolerance) {
                return x;
            }
            double[] next = new double[n];
            double[] nextG = new double[n];
            double nextValue = value;
            boolean better = false;
            for (double share = 1; share > 1e-3 && !better; share /= 2) {
                for (int i = 0; i < n; i++) {
                    next[i] = Math.max(least[i], Math.min(most[i], x[i] + share * step[i]));
                }
                nextValue = f.value(next, nextG);
                // The slope along the way that the bounds leave open.
                double ahead = 0;
                for (int i = 0; i < n; i++) {
                    ahead += g[i] * (next[i] - x[i]);
                }
                better = nextValue <= value + ARMIJO * Math.min(ahead, 0);
            }
            if (!better && fresh) {
                return x;
            }
            if (!better) {
                // What was learned of the curvature misleads here, as it can at a bound: begin again.
                h = diagonal(inverseHessian);
                fresh = true;
                continue;
            }
            fresh = false;
            update(h, x, next, g, nextG);
            double gain = value - nextValue;
            x = next;
            g = nextG;
            value = nextValue;
            if (gain < tolerance) {
                return x;
            }
        }
        return x;
    }

    /** −Hg, with the variables held at a bound left out. */
    private static double[] descent(double[][] h, double[] g, double[] x, double[] least, double[] most) {
        int n = x.length;
        boolean[] held = new boolean[n];
        for (int i = 0; i < n; i++) {
            held[i] = (x[i] <= least[i] && g[i] > 0) || (x[i] >= most[i] && g[i] < 0);
        }
        double[] step = new double[n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n && !held[i]; j++) {
                step[i] -= held[j] ? 0 : h[i][j] * g[j];
            }
        }
        return step;
    }

    private static void update(double[][] h, double[] x, double[] next, double[] g, double[] nextG) {
        int n = x.length;
        double[] s = new double[n];
        double[] y = new double[n];
        for (int i = 0; i < n; i++) {
            s[i] = next[i] - x[i];
            // A variable that a bound holds tells nothing of the curvature in the others.
            y[i] = s[i] == 0 ? 0 : nextG[i] - g[i];
        }
        double sy = GaussianProcess.dot(s, y);
        if (sy <= 1e-12) {
            return;
        }
        double[] hy = new double[n];
        for (int i = 0; i < n; i++) {
            hy[i] = GaussianProcess.dot(h[i], y);
        }
        double yhy = GaussianProcess.dot(y, hy);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                h[i][j] += (1 + yhy / sy) * s[i] * s[j] / sy - (hy[i] * s[j] + s[i] * hy[j]) / sy;
            }
        }
    }

    private static double[][] diagonal(double[] values) {
        double[][] h = new double[values.length][values.length];
        for (int i = 0; i < values.length; i++) {
            h[i][i] = values[i];
        }
        return h;
    }
}
