package pegbed.day;

/** The gamma function and its incomplete integral, to about 1e-13 relative. */
final class IncompleteGamma {
    private static final int MOST_TERMS = 100_000;
    private static final double SMALL = 1e-16;

    /** Below this the argument is raised by recurrence before Stirling's series. */
    private static final double STIRLING_FROM = 10;

    /** Coefficients of 1/z, 1/z³, … (DLMF 5.11.1 with the Bernoulli numbers of 24.2). */
    private static final double[] STIRLING = {
        1.0 / 12, -1.0 / 360, 1.0 / 1260, -1.0 / 1680, 1.0 / 1188, -691.0 / 360_360
    };

    private IncompleteGamma() {}

    /** ln Γ(x) for x > 0: Stirling's series (DLMF 5.11.1) at 10 or more, reached by Γ(x + 1) = xΓ(x) (DLMF 5.5.1). */
    static double logGamma(double x) {
        double z = x;
        double product = 1;
        while (z < STIRLING_FROM) {
            product *= z;
            z++;
        }
        double series = 0;
        for (int k = STIRLING.length - 1; k >= 0; k--) {
            series = series / (z * z) + STIRLING[k];
        }
        series /= z;
        return (z - 0.5) * Math.log(z) - z + 0.5 * Math.log(2 * Math.PI) + series - Math.log(product);
    }

    /**
     * P(a, x), the regularised lower incomplete gamma function, for a > 0 and x ≥ 0: the series of DLMF 8.11.4 below x
     * = a + 1, else 1 less the continued fraction of DLMF 8.9.2.
     */
    static double lower(double a, double x) {
        if (x <= 0) {
            return 0;
        }
        if (Double.isInfinite(x)) {
            return 1;
        }
        double front = Math.exp(a * Math.log(x) - x - logGamma(a));
        return x < a + 1 ? front * series(a, x) : 1 - front * fraction(a, x);
    }

    /** Σ xⁿ / (a(a + 1)…(a + n)). */
    private static double series(double a, double x) {
        double term = 1 / a;
        double sum = term;
        for (int n = 1; n < MOST_TERMS && term > sum * SMALL; n++) {
            term *= x / (a + n);
            sum += term;
        }
        return sum;
    }

    /**
     * 1/(x + 1 − a − 1(1 − a)/(x + 3 − a − 2(2 − a)/(x + 5 − a − …))), the even part of DLMF 8.9.2, from the front by
     * ratios of successive numerators and denominators (Lentz 1976, Applied Optics 15:668–671).
     */
    private static double fraction(double a, double x) {
        double b = x + 1 - a;
        double numerators = Double.MAX_VALUE * 1e-16;
        double denominators = 1 / b;
        double value = denominators;
        for (int n = 1; n < MOST_TERMS; n++) {
            double part = n * (a - n);
            b += 2;
            denominators = 1 / (part * denominators + b);
            numerators = b + part / numerators;
            double factor = numerators * denominators;
            value *= factor;
            if (Math.abs(factor - 1) < SMALL * 4) {
                break;
            }
        }
        return value;
    }
}
