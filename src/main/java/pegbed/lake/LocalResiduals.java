package pegbed.lake;

import java.util.Arrays;
import java.util.stream.IntStream;
import pegbed.model.Monitor;
import pegbed.model.Parallel;
import pegbed.surface.InputNoise;

/**
 * Looks at soundings one by one beside their neighbours: how the bottom falls there, which tells what an unsure place
 * adds to the variance ({@link InputNoise}), and whether the sounding stands out (leave one out: Rasmussen & Williams
 * 2006, eq. 5.12).
 */
final class LocalResiduals {
    /** Neighbours that a sounding is looked at with. */
    private static final int NEIGHBOURS = 24;

    /** As many at a first look. */
    private static final int FEW = 12;

    /** So many standard deviations of what the others expect make a sounding stand out. */
    private static final double STANDS_OUT = 5;

    /** The next soundings, whose usual distance tells how far a hole or hump reaches. */
    private static final int NEXT = 2;

    /** How far a hole or hump reaches, of the usual distance to those. */
    private static final double REACH = 0.8;

    private final LakeField field;
    private final int neighbours;
    private final double[] placing;
    private final double[] residual;
    /** Residual in standard deviations; 0 where it was not looked at. */
    private final double[] standardised;

    private LocalResiduals(LakeField field, int neighbours) {
        this.field = field;
        this.neighbours = neighbours;
        placing = field.placing().clone();
        residual = new double[placing.length];
        standardised = new double[placing.length];
    }

    /** The field with the placing that the slopes give at a first look at every sounding. */
    static LakeField first(LakeField field, Monitor monitor) {
        LocalResiduals looks = new LocalResiduals(field, FEW);
        looks.at(IntStream.range(0, field.soundings().count).toArray(), monitor);
        return field.with(looks.placing, Outliers.NONE);
    }

    /** The field with the placing that the slopes give at every sounding, and with those that stand out. */
    static LakeField looked(LakeField field, Monitor monitor) {
        LocalResiduals looks = new LocalResiduals(field.with(field.placing(), Outliers.NONE), NEIGHBOURS);
        int[] all = IntStream.range(0, field.soundings().count).toArray();
        looks.at(all, monitor);
        int[] out = Arrays.stream(all).filter(looks::standsOut).toArray();
        // A hole makes those around it look like humps: first those that differ most around, then those that still do.
        int[] most = Arrays.stream(out).filter(looks::differsMost).toArray();
        Outliers surest = looks.outstanding(most);
        LocalResiduals again = new LocalResiduals(looks.field.with(looks.placing, surest), NEIGHBOURS);
        int[] others = Arrays.stream(out).filter(i -> !surest.contains(i)).toArray();
        again.at(others, monitor);
        IntStream still = Arrays.stream(others).filter(again::standsOut);
        for (int i : others) {
            looks.residual[i] = again.residual[i];
        }
        return field.with(
                again.placing,
                looks.outstanding(IntStream.concat(Arrays.stream(most), still).toArray()));
    }

    private void at(int[] which, Monitor monitor) {
        Parallel.each(which.length, w -> {
            if (w % 64 == 0) {
                monitor.check();
            }
            look(which[w]);
        });
    }

    private void look(int i) {
        LakeSoundings s = field.soundings();
        LocalConditioning local = new LocalConditioning(field, field.near().around(s.x[i], s.y[i], neighbours));
        placing[i] = InputNoise.at(local.gradient(s.x[i], s.y[i]), s.varX[i], s.varY[i], s.covXY[i], s.scale);
        int position = local.position(i);
        if (position >= 0 && s.count > NEXT) {
            LocalConditioning.Left left = local.left(position);
            double variance = left.variance() + Math.max(0, placing[i] - field.placing()[i]);
            residual[i] = left.residual();
            standardised[i] = left.residual() / Math.sqrt(variance);
        }
    }

    private boolean standsOut(int i) {
        return Math.abs(standardised[i]) > STANDS_OUT;
    }

    private boolean differsMost(int i) {
        LakeSoundings s = field.soundings();
        return Arrays.stream(field.near().nearest(s.x[i], s.y[i], NEIGHBOURS))
                .allMatch(j -> Math.abs(standardised[j]) <= Math.abs(standardised[i]));
    }

    private Outliers outstanding(int[] which) {
        double[] height = new double[residual.length];
        double[] radius = new double[residual.length];
        for (int i : which) {
            height[i] = residual[i];
            radius[i] = REACH * way(i);
        }
        return new Outliers(height, radius);
    }

    /** Mean distance to the next soundings. */
    private double way(int i) {
        LakeSoundings s = field.soundings();
        double sum = 0;
        for (int j : field.near().nearest(s.x[i], s.y[i], NEXT + 1)) {
            sum += Math.hypot(s.x[i] - s.x[j], s.y[i] - s.y[j]);
        }
        return Math.max(sum / NEXT, 1e-3 * s.spacing);
    }
}
