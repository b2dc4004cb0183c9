package pegbed.findings;

/**
 * Fixed pairs of standard normal numbers that fill the plane evenly: the first points of a two-dimensional Sobol'
 * sequence (Sobol' 1967; direction numbers of Joe & Kuo 2008), by the Box–Muller transform, each beside its mirror
 * image in the first coordinate, so that a mirrored peg gets mirrored answers.
 */
public final class SobolNormals {
    private static final int POINTS = 64;

    /** First coordinates, as long as {@link #SECOND}. */
    public static final double[] FIRST = new double[2 * POINTS];

    /** Second coordinates. */
    public static final double[] SECOND = new double[2 * POINTS];

    static {
        long second = 0;
        long[] directions = new long[16];
        long m = 1;
        for (int k = 0; k < directions.length; k++) {
            directions[k] = m << (31 - k);
            m = (m << 1) ^ m;
        }
        long first = 0;
        for (int i = 0; i < POINTS; i++) {
            double u = (first + 0.5 * (1L << 26)) / (1L << 32);
            double w = (second + 0.5 * (1L << 26)) / (1L << 32);
            double radius = Math.sqrt(-2 * Math.log(u));
            FIRST[2 * i] = radius * Math.sin(2 * Math.PI * w);
            FIRST[2 * i + 1] = -FIRST[2 * i];
            SECOND[2 * i] = radius * Math.cos(2 * Math.PI * w);
            SECOND[2 * i + 1] = SECOND[2 * i];
            int change = Long.numberOfTrailingZeros(~(long) i);
            first ^= 1L << (31 - change);
            second ^= directions[change];
        }
    }

    private SobolNormals() {}
}
