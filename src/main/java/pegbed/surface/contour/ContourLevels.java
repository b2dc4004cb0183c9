package pegbed.surface.contour;

import java.util.List;
import java.util.stream.LongStream;
import pegbed.model.Units;

/**
 * The depths worth a contour: whole multiples of a round step in the person's unit, at most twelve.
 *
 * <p>In feet the step is 3 in, 6 in or 1 ft, and in deep water 2, 5, 10, 20 or 50 ft; in centimetres and metres it is
 * 0.1, 0.2, 0.25 or 0.5 m, and in deep water 1, 2, 5, 10 or 20 m: the smallest that makes no more than twelve levels,
 * or the greatest of all. 1 in is 25.4 mm exactly (international agreement of 1959).
 *
 * @param stepMetres the step, metres
 * @param metres the levels, metres, rising; none where the range holds no multiple of the step
 */
public record ContourLevels(double stepMetres, List<Double> metres) {
    private static final int MOST = 12;
    private static final List<Integer> INCHES = List.of(3, 6, 12, 24, 60, 120, 240, 600);
    private static final List<Integer> CENTIMETRES = List.of(10, 20, 25, 50, 100, 200, 500, 1000, 2000);
    private static final double INCH_MILLIMETRES = 25.4;
    private static final double CENTIMETRE_MILLIMETRES = 10;

    public ContourLevels {
        metres = List.copyOf(metres);
    }

    /**
     * The levels strictly between two depths.
     *
     * @param shallowestMetres the least depth, metres, 0 or more
     * @param deepestMetres the greatest depth, metres, not less than the shallowest
     * @param unit the person's unit of depths
     */
    public static ContourLevels between(double shallowestMetres, double deepestMetres, Units.Depth unit) {
        if (!(shallowestMetres >= 0 && deepestMetres >= shallowestMetres && deepestMetres < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("Contours need two depths of 0 or more, the shallower first, not "
                    + shallowestMetres + " and " + deepestMetres + " m.");
        }
        boolean feet = unit == Units.Depth.FEET;
        double partMillimetres = feet ? INCH_MILLIMETRES : CENTIMETRE_MILLIMETRES;
        List<Integer> steps = feet ? INCHES : CENTIMETRES;
        int step = steps.stream()
                .filter(parts -> (deepestMetres - shallowestMetres) * 1000 / (parts * partMillimetres) <= MOST)
                .findFirst()
                .orElse(steps.get(steps.size() - 1));
        return multiples(shallowestMetres, deepestMetres, step, partMillimetres);
    }

    private static ContourLevels multiples(double shallowest, double deepest, int parts, double partMillimetres) {
        double step = parts * partMillimetres / 1000;
        List<Double> levels = LongStream.rangeClosed((long) (shallowest / step), (long) Math.ceil(deepest / step))
                .mapToObj(k -> k * parts * partMillimetres / 1000)
                .filter(level -> level > shallowest && level < deepest)
                .toList();
        return new ContourLevels(step, levels);
    }

    /** The levels as an array, metres, rising. */
    public double[] toArray() {
        return metres.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
