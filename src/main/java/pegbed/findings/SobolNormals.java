package pegbed.findings;

/**
 * Fixed pairs of standard normal numbers that fill the plane evenly: the first points of a two-dimensional Sobol'
 * sequence (Sobol' 1967; direction numbers of Joe & Kuo 2008), by the Box–Muller transform, each beside its mirror
 * image in the first coordinate, so that a mirrored peg gets mirrored answers. Every pair comes with each of the
 * {@link #FACTORS}; the pairs of one point stand side by side.
 */
public final class SobolNormals {
    private static final int POINTS = 32;

    /** Equally probable factors on the standard deviations that the numbers are multiplied by. */
    public static final double[] FACTORS = {0.5, 1, 2};

    private static final int COUNT = 2 * FACTORS.length * POINTS;

    /** First coordinates, as long as {@link #SECOND}. */
    public static final double[] FIRST = new double[COUNT];

    /** Second coordinates. */
    public static final double[] SECOND = new double[COUNT];

    /** The factor of each pair. */
    public static final double[] FACTOR = new double[COUNT];

    static {
        long second = 0;
        long[] directions = new long[16];
        long m = 1;
        for (int k = 0; k < directions.length; k++) {
            directions[k] = m << (31 - k);
            m = (m << 1) ^ m;
        }
        long first = 0;
        double middle = 0.5 / POINTS;
        int at = 0;
        for (int i = 0; i < POINTS; i++) {
            double u = (double) first / (1L << 32) + middle;
            double w = (double) second / (1L << 32) + middle;
            double radius = Math.sqrt(-2 * Math.log(u));
            double x = radius * Math.sin(2 * Math.PI * w);
            double y = radius * Math.cos(2 * Math.PI * w);
            for (double factor : FACTORS) {
                for (double mirrored : new double[] {x, -x}) {
                    FIRST[at] = mirrored;
                    SECOND[at] = y;
                    FACTOR[at] = factor;
                    at++;
                }
            }
            int change = Long.numberOfTrailingZeros(~(long) i);
            first ^= 1L << (31 - change);
            second ^= directions[change];
        }
    }

    private SobolNormals() {}
}
