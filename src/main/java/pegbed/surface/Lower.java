package pegbed.surface;

/** Small lower triangular matrices, as rows. */
final class Lower {
    /** Added to the diagonal, as a share of it. */
    private static final double JITTER = 1e-9;

    private Lower() {}

    /** L with LLᵀ = A, of a positive definite A; only its lower half is looked at. */
    static double[][] of(double[][] a) {
        int n = a.length;
        double[][] l = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = a[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= l[i][k] * l[j][k];
                }
                if (i == j) {
                    l[i][i] = Math.sqrt(Math.max(sum, JITTER * a[i][i]));
                } else {
                    l[i][j] = sum / l[j][j];
                }
            }
        }
        return l;
    }

    /** I + LᵀAL. */
    static double[][] grown(double[][] l, double[][] a) {
        int n = l.length;
        double[][] al = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < n; k++) {
                for (int j = 0; j <= k; j++) {
                    al[i][j] += a[i][k] * l[k][j];
                }
            }
        }
        double[][] grown = new double[n][n];
        for (int k = 0; k < n; k++) {
            for (int i = 0; i <= k; i++) {
                for (int j = 0; j < n; j++) {
                    grown[i][j] += l[k][i] * al[k][j];
                }
            }
        }
        for (int i = 0; i < n; i++) {
            grown[i][i] += 1;
        }
        return grown;
    }

    /** x with Lx = b. */
    static double[] solve(double[][] l, double[] b) {
        double[] x = b.clone();
        for (int i = 0; i < x.length; i++) {
            for (int j = 0; j < i; j++) {
                x[i] -= l[i][j] * x[j];
            }
            x[i] /= l[i][i];
        }
        return x;
    }
}
