package pegbed.bench.practice;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import pegbed.findings.Zones;

/** The deepest disc of an invented bottom, and the flat spots to find on it. */
final class MadeTasks {
    private static final double STEP = 0.25;
    private static final double NEAR_METRES = 7;

    /** Nodes of a flat spot of 0.75 m². */
    private static final int LEAST_NODES = 12;

    private final MadeBottom bottom;
    private final int columns;
    private final int rows;
    private final DiscMeans.Mean[] discs;
    private double deepest;

    MadeTasks(MadeBottom bottom) {
        this.bottom = bottom;
        int reach = bottom.reachMetres();
        columns = (int) (2 * reach / STEP) + 1;
        rows = (int) (reach / STEP) + 1;
        discs = new DiscMeans.Mean[columns * rows];
        for (int i = 0; i < discs.length; i++) {
            double angle = Math.toDegrees(Math.atan2(Math.abs(x(i)), y(i)));
            double r = Math.hypot(x(i), y(i));
            if (r <= reach - 0.4 && (r <= NEAR_METRES || angle <= Zones.WIDEST_DEGREES)) {
                DiscMeans.Mean disc = DiscMeans.of(bottom::depthAt, x(i), y(i));
                if (!Double.isNaN(disc.depth())) {
                    discs[i] = disc;
                    deepest = Math.max(deepest, disc.depth());
                }
            }
        }
    }

    private double x(int i) {
        return -bottom.reachMetres() + STEP * (i % columns);
    }

    private double y(int i) {
        int row = i / columns;
        return STEP * row;
    }

    double deepestMetres() {
        return deepest;
    }

    /** For every zone half the deepest, and where that has no flat spot the nearest depth that has one. */
    List<PracticePeg.Task> all() {
        List<PracticePeg.Task> tasks = new ArrayList<>();
        for (String zone : List.of("across", "left margin", "right margin")) {
            double half = Math.round(50 * deepest) / 100.0;
            tasks.add(new PracticePeg.Task(zone, half, isFlat(zone, half)));
            for (int off = 4;
                    off <= 40 && tasks.stream().noneMatch(t -> t.zone().equals(zone) && t.feasible());
                    off += 2) {
                for (double target : new double[] {half + off / 100.0, half - off / 100.0}) {
                    if (isFlat(zone, target) && !tasks.get(tasks.size() - 1).feasible()) {
                        tasks.add(new PracticePeg.Task(zone, Math.round(100 * target) / 100.0, true));
                    }
                }
            }
        }
        return tasks;
    }

    private boolean isFlat(String zone, double target) {
        boolean[] good = new boolean[discs.length];
        for (int i = 0; i < discs.length; i++) {
            good[i] = discs[i] != null
                    && isIn(zone, i)
                    && Math.abs(discs[i].depth() - target) <= 0.05
                    && discs[i].slope() <= 0.20;
        }
        for (int i = 0; i < good.length; i++) {
            if (good[i] && taken(good, i) >= LEAST_NODES) {
                return true;
            }
        }
        return false;
    }

    /** Size of the connected area about a node, which is cleared. */
    private int taken(boolean[] good, int start) {
        Deque<Integer> open = new ArrayDeque<>(List.of(start));
        good[start] = false;
        int count = 0;
        while (!open.isEmpty()) {
            int i = open.pop();
            count++;
            for (int next : new int[] {i - 1, i + 1, i - columns, i + columns}) {
                if (next >= 0 && next < good.length && good[next]) {
                    good[next] = false;
                    open.push(next);
                }
            }
        }
        return count;
    }

    private boolean isIn(String zone, int i) {
        double r = Math.hypot(x(i), y(i));
        boolean margin = r <= NEAR_METRES && y(i) - bottom.nearAt(x(i)) <= Zones.MARGIN_METRES;
        return switch (zone) {
            case "left margin" -> margin && x(i) < -1.3;
            case "right margin" -> margin && x(i) > 1.3;
            default ->
                Math.toDegrees(Math.atan2(Math.abs(x(i)), y(i))) <= Zones.WIDEST_DEGREES
                        && (bottom.isOpen() ? r > 5 : y(i) > deepestLine(i % columns));
        };
    }

    private double deepestLine(int column) {
        double line = 0;
        double most = 0;
        for (int row = 0; row < rows; row++) {
            DiscMeans.Mean disc = discs[row * columns + column];
            if (disc != null && disc.depth() > most) {
                most = disc.depth();
                line = STEP * row;
            }
        }
        return line;
    }
}
