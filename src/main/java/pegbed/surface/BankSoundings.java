package pegbed.surface;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.linearref.LengthIndexedLine;
import pegbed.geometry.BankLine;
import pegbed.geometry.PegWater;
import pegbed.surface.survey.Sounding;

/**
 * Pseudo-soundings on the bank lines: a small depth at the edge, every {@value #SPACING_METRES} m along it. Its error
 * has a part that a whole bank shares and an independent part a point; each structure has its own figures
 * ({@link pegbed.surface.prior.EdgeDepth}).
 */
final class BankSoundings {
    private static final double SPACING_METRES = 2.5;

    /** A bank's sounding is dropped where the person read a depth this near, metres: the reading knows better. */
    private static final double GIVEN_METRES = 1.0;

    /** How far beyond the reach the banks still matter, metres. */
    private static final double BEYOND_METRES = 2;

    /** Of more points than this on islands some are left out, so that the exact solver stays quick. */
    private static final int MOST_ON_ISLANDS = 100;

    private static final double ISLANDS_GROWTH = 1.25;

    private BankSoundings() {}

    /**
     * A sounding at the edge.
     *
     * @param bank 0 for the near bank, 1 for the far one, from 2 on islands
     * @param x metres
     * @param y metres
     * @param varX variance of x, square metres
     * @param varY variance of y, square metres
     */
    record Edge(int bank, double x, double y, double varX, double varY) {
        Edge(int bank, Coordinate place, double sdX, double sdY) {
            this(bank, place.x, place.y, sdX * sdX, sdY * sdY);
        }
    }

    static List<Edge> of(PegWater water, List<Sounding> given) {
        List<Edge> edges = new ArrayList<>();
        for (Coordinate c : along(water.near(), water.reachMetres())) {
            edges.add(new Edge(0, c, 0.1, 0.15));
        }
        water.far().ifPresent(far -> {
            for (Coordinate c : along(far, water.reachMetres())) {
                edges.add(new Edge(1, c, 0.1, 0.22));
            }
        });
        edges.addAll(onIslands(water));
        edges.removeIf(edge -> given.stream()
                .anyMatch(s -> Math.hypot(s.xMetres() - edge.x(), s.yMetres() - edge.y()) < GIVEN_METRES));
        return edges;
    }

    /**
     * Points on islands; of very many the first and those further from each other than a distance that leaves enough.
     */
    private static List<Edge> onIslands(PegWater water) {
        List<Edge> all = new ArrayList<>();
        for (int i = 0; i < water.islands().size(); i++) {
            for (Coordinate c : every(water.islands().get(i).getExteriorRing())) {
                all.add(new Edge(2 + i, c, 0.2, 0.2));
            }
        }
        List<Edge> kept = all;
        for (double apart = SPACING_METRES / 10; kept.size() > MOST_ON_ISLANDS; apart *= ISLANDS_GROWTH) {
            kept = thinned(all, apart);
        }
        return kept;
    }

    private static List<Edge> thinned(List<Edge> edges, double apartMetres) {
        List<Edge> kept = new ArrayList<>();
        for (Edge edge : edges) {
            if (kept.stream().noneMatch(k -> Math.hypot(k.x() - edge.x(), k.y() - edge.y()) < apartMetres)) {
                kept.add(edge);
            }
        }
        return kept;
    }

    /** Points on a bank within reach: at multiples of the spacing for a function of x, so that mirrored is mirrored. */
    private static List<Coordinate> along(BankLine bank, double reach) {
        List<Coordinate> points = new ArrayList<>();
        if (bank.isFunctionOfX()) {
            int half = (int) Math.floor((reach + BEYOND_METRES) / SPACING_METRES);
            for (int i = -half; i <= half; i++) {
                double x = i * SPACING_METRES;
                points.add(new Coordinate(x, bank.heightAt(x)));
            }
        } else {
            points.addAll(every(bank.toGeometry()));
        }
        points.removeIf(c -> Math.hypot(c.x, c.y) > reach + BEYOND_METRES);
        return points;
    }

    private static List<Coordinate> every(LineString line) {
        LengthIndexedLine indexed = new LengthIndexedLine(line);
        int count = Math.max(3, (int) Math.round(line.getLength() / SPACING_METRES));
        List<Coordinate> points = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            points.add(indexed.extractPoint(line.getLength() * (i + 0.5) / count));
        }
        return points;
    }
}
