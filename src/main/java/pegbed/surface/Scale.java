package pegbed.surface;

import java.util.Arrays;
import java.util.List;

/**
 * How much larger a water is than a peg; all lengths and depths of the priors are multiplied by it.
 *
 * @param vertical 1 for depths up to 3 m, else the 95th percentile of the depths over 3 m
 * @param horizontal 1 for readings within 32 m of each other, else their extent over 32 m
 */
public record Scale(double vertical, double horizontal) {
    /** A peg within reach of a pole. */
    public static final Scale PEG = new Scale(1, 1);

    private static final double PEG_DEPTH = 3;
    private static final double PEG_EXTENT = 32;

    /** The scale that soundings show. */
    static Scale of(List<Sounding> soundings) {
        if (soundings.isEmpty()) {
            return PEG;
        }
        double[] depths =
                soundings.stream().mapToDouble(Sounding::depthMetres).sorted().toArray();
        double deep = depths[(int) Math.min(depths.length - 1, Math.floor(0.95 * depths.length))];
        double[] x = soundings.stream().mapToDouble(Sounding::xMetres).toArray();
        double[] y = soundings.stream().mapToDouble(Sounding::yMetres).toArray();
        double extent = Math.max(range(x), range(y));
        return new Scale(Math.max(1, deep / PEG_DEPTH), Math.max(1, extent / PEG_EXTENT));
    }

    private static double range(double[] values) {
        return Arrays.stream(values).max().orElse(0)
                - Arrays.stream(values).min().orElse(0);
    }
}
