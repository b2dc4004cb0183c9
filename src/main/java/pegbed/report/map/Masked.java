package pegbed.report.map;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateXY;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.MultiLineString;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.index.strtree.STRtree;
import pegbed.geometry.Shapes;
import pegbed.report.drawing.View;

/** Lines of the map with gaps where texts lie, so that nothing is written through. */
final class Masked {
    private final View view;
    private final STRtree boxes = new STRtree();

    /** @param texts the boxes of what lines are left out under, points */
    Masked(View view, List<LabelBox> texts) {
        this.view = view;
        texts.forEach(text -> boxes.insert(text.envelope(), text));
        boxes.build();
    }

    /** What is left of lines in metres. */
    MultiLineString of(Geometry lines) {
        List<LineString> left = new ArrayList<>();
        for (int i = 0; i < lines.getNumGeometries(); i++) {
            if (lines.getGeometryN(i) instanceof LineString line && line.getNumPoints() > 1) {
                List<LabelBox> near = near(line);
                if (near.isEmpty()) {
                    left.add(line);
                } else {
                    cut(line, near, left);
                }
            }
        }
        return Shapes.FACTORY.createMultiLineString(left.toArray(LineString[]::new));
    }

    /** What is left of lines in points about a place on the water. */
    Geometry about(double xMetres, double yMetres, Geometry lines) {
        double scale = view.pointsPerMetre();
        AffineTransformation toWater = new AffineTransformation(1 / scale, 0, xMetres, 0, -1 / scale, yMetres);
        AffineTransformation back = new AffineTransformation(scale, 0, -xMetres * scale, 0, -scale, yMetres * scale);
        return back.transform(of(toWater.transform(lines)));
    }

    @SuppressWarnings("unchecked")
    private List<LabelBox> near(LineString line) {
        Envelope water = line.getEnvelopeInternal();
        return boxes.query(new Envelope(
                view.x(water.getMinX()), view.x(water.getMaxX()), view.y(water.getMinY()), view.y(water.getMaxY())));
    }

    private void cut(LineString line, List<LabelBox> near, List<LineString> left) {
        Coordinate[] places = line.getCoordinates();
        List<Coordinate> run = new ArrayList<>();
        run.add(places[0]);
        for (int i = 1; i < places.length; i++) {
            double free = 0;
            for (double[] gap : gaps(places[i - 1], places[i], near)) {
                if (gap[0] > free) {
                    run.add(between(places[i - 1], places[i], gap[0]));
                    free = gap[0];
                }
                if (gap[1] > free || gap[0] == 0) {
                    end(run, left);
                    free = Math.max(free, gap[1]);
                    run.add(between(places[i - 1], places[i], free));
                }
            }
            if (free < 1) {
                run.add(places[i]);
            } else {
                run.clear();
                run.add(places[i]);
            }
        }
        end(run, left);
    }

    /** The parts of a straight line that lie under texts, by where they begin. */
    private List<double[]> gaps(Coordinate from, Coordinate to, List<LabelBox> near) {
        List<double[]> gaps = new ArrayList<>();
        for (LabelBox box : near) {
            box.inside(view.x(from.x), view.y(from.y), view.x(to.x), view.y(to.y))
                    .ifPresent(gaps::add);
        }
        gaps.sort(Comparator.comparingDouble(gap -> gap[0]));
        return gaps;
    }

    private static Coordinate between(Coordinate from, Coordinate to, double share) {
        return new CoordinateXY(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y));
    }

    private static void end(List<Coordinate> run, List<LineString> left) {
        if (run.size() > 1) {
            left.add(Shapes.FACTORY.createLineString(run.toArray(Coordinate[]::new)));
        }
        run.clear();
    }
}
