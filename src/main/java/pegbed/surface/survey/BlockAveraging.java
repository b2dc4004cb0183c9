package pegbed.surface.survey;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pegbed.model.Precision;

/**
 * A survey of many soundings, made small enough for the exact solver: soundings too far from the water that can be
 * reached are left out, and those of one visit that share a small cell become one, at their mean place and depth, with
 * what the mean of so many is worth. A sounding that stands out from its cell by more than {@value #STANDS_OUT} times
 * its own doubt stays as it is, so that no hole and no hump is averaged away. Of very many visits the latest count.
 *
 * <p>Within a cell much smaller than the length over which the bottom varies the mean loses next to nothing, which is
 * the argument of block kriging (Isaaks & Srivastava 1989, ch. 13).
 */
public final class BlockAveraging {
    /** More soundings than this are condensed (measured: above it exact solving takes seconds). */
    public static final int MOST = 250;

    /** Soundings further than this beyond the reach say nothing of the water within it, metres. */
    private static final double BEYOND_METRES = 4;

    private static final double FIRST_CELL_METRES = 0.2;
    private static final double CELL_GROWTH = 1.25;

    /** Larger cells average away what is sought. */
    private static final double LAST_CELL_METRES = 4;

    private static final double STANDS_OUT = 4;

    /** Slope within a cell that does not make a sounding stand out, rise over run. */
    private static final double STEEPEST = 0.5;

    /** The mean of many soundings is not better known than this, because their errors are not all their own. */
    public static final double LEAST_SD_METRES = 0.01;

    public static final double LEAST_PLACE_SD_METRES = 0.05;

    private BlockAveraging() {}

    /** The survey itself if it is small, else a condensed one of {@value #MOST} soundings or little more. */
    public static Survey of(Survey survey) {
        if (survey.soundings().size() <= MOST) {
            return survey;
        }
        List<Sounding> near = survey.water().isEmpty()
                ? survey.used()
                : survey.used().stream()
                        .filter(s -> Math.hypot(s.xMetres(), s.yMetres())
                                <= survey.water().get().reachMetres() + BEYOND_METRES)
                        .toList();
        double scale = survey.water().isEmpty() ? Scale.of(near).horizontal() : 1;
        List<Sounding> condensed = near;
        for (double cell = FIRST_CELL_METRES * scale;
                condensed.size() > MOST && cell < LAST_CELL_METRES * scale;
                cell *= CELL_GROWTH) {
            condensed = condensed(near, cell);
        }
        return survey.withSoundings(latest(condensed));
    }

    /** Those of the latest visits, where so many visits are left that no cell joins their soundings. */
    private static List<Sounding> latest(List<Sounding> condensed) {
        if (condensed.size() <= MOST) {
            return condensed;
        }
        int first = condensed.stream()
                .mapToInt(Sounding::visit)
                .sorted()
                .skip(condensed.size() - MOST)
                .findFirst()
                .orElseThrow();
        return condensed.stream().filter(s -> s.visit() >= first).toList();
    }

    private record Cell(long column, long row, int visit) {}

    private static List<Sounding> condensed(List<Sounding> soundings, double cell) {
        Map<Cell, List<Sounding>> cells = new LinkedHashMap<>();
        for (Sounding s : soundings) {
            // Cells symmetric about the seat, so that a mirrored survey gives a mirrored one.
            Cell key = new Cell(Math.round(s.xMetres() / cell), Math.round(s.yMetres() / cell), s.visit());
            cells.computeIfAbsent(key, k -> new ArrayList<>()).add(s);
        }
        // Where nearly every cell keeps soundings that stand out, larger cells would not help: then all are averaged.
        List<Sounding> result = new ArrayList<>();
        List<Sounding> outstanding = new ArrayList<>();
        for (List<Sounding> members : cells.values()) {
            double usual = median(members);
            List<Sounding> ordinary = new ArrayList<>();
            for (Sounding s : members) {
                double doubt = Math.hypot(s.sdDepthMetres(), STEEPEST * cell / 2);
                boolean out = members.size() > 2 && Math.abs(s.depthMetres() - usual) > STANDS_OUT * doubt;
                (out ? outstanding : ordinary).add(s);
            }
            if (!ordinary.isEmpty()) {
                result.add(mean(ordinary));
            }
        }
        if (outstanding.size() <= MOST / 10) {
            result.addAll(outstanding);
        }
        return result;
    }

    private static Sounding mean(List<Sounding> members) {
        int n = members.size();
        if (n == 1) {
            return members.get(0);
        }
        double x = 0;
        double y = 0;
        double depth = 0;
        double variance = 0;
        double distance2 = 0;
        double angle2 = 0;
        for (Sounding s : members) {
            x += s.xMetres() / n;
            y += s.yMetres() / n;
            depth += s.depthMetres() / n;
            variance += s.sdDepthMetres() * s.sdDepthMetres() / n;
            distance2 += square(s.precision().sdDistanceMetres()) / n;
            angle2 += square(s.precision().sdAngleDegrees()) / n;
        }
        double share = 1 / Math.sqrt(n);
        Precision precision =
                new Precision(Math.max(share * Math.sqrt(distance2), LEAST_PLACE_SD_METRES), share * Math.sqrt(angle2));
        return new Sounding(
                x,
                y,
                depth,
                Math.max(share * Math.sqrt(variance), LEAST_SD_METRES),
                precision,
                members.get(0).visit());
    }

    private static double median(List<Sounding> members) {
        double[] depths =
                members.stream().mapToDouble(Sounding::depthMetres).sorted().toArray();
        return depths[depths.length / 2];
    }

    private static double square(double value) {
        return value * value;
    }
}
