package pegbed.surface;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
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
        int bank = 2;
        for (Polygon island : water.islands()) {
            for (Coordinate c : every(island.getExteriorRing())) {
                edges.add(new Edge(bank, c, 0.2, 0.2));
            }
            bank++;
        }
        edges.removeIf(edge -> given.stream()
                .anyMatch(s -> Math.hypot(s.xMetres() - edge.x(), s.yMetres() - edge.y()) < GIVEN_METRES));
        return edges;
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
