package pegbed.report.map;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.MultiLineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.linemerge.LineMerger;
import pegbed.geometry.Shapes;

/** Small work with lines. */
final class Lines {
    private Lines() {}

    /** The lines of a shape alone, joined where two meet end to end. */
    static MultiLineString of(Geometry shape) {
        LineMerger merger = new LineMerger();
        for (int i = 0; i < shape.getNumGeometries(); i++) {
            if (shape.getGeometryN(i) instanceof LineString line && line.getNumPoints() > 1) {
                merger.add(line);
            }
        }
        @SuppressWarnings("unchecked")
        List<LineString> merged = new ArrayList<>(merger.getMergedLineStrings());
        return Shapes.FACTORY.createMultiLineString(merged.toArray(LineString[]::new));
    }

    /**
     * Parallel lines over an area.
     *
     * @param area polygonal
     * @param spacing between lines, in the area's unit, above 0
     * @param phase by how much of the spacing they are moved: at 0.5 they lie between those at 0
     * @param rising whether they rise to the right, else they fall
     */
    static MultiLineString hatch(Geometry area, double spacing, double phase, boolean rising) {
        double slope = rising ? 1 : -1;
        double apart = spacing * Math.sqrt(2);
        // A line is y = slope·x + (k + phase)·apart; every edge of the area is cut with each line it crosses.
        List<double[]> cuts = new ArrayList<>();
        for (int i = 0; i < area.getNumGeometries(); i++) {
            Polygon polygon = (Polygon) area.getGeometryN(i);
            cut(polygon.getExteriorRing(), slope, apart, phase, cuts);
            for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
                cut(polygon.getInteriorRingN(hole), slope, apart, phase, cuts);
            }
        }
        cuts.sort((a, b) -> a[0] != b[0] ? Double.compare(a[0], b[0]) : Double.compare(a[1], b[1]));
        List<LineString> lines = new ArrayList<>();
        for (int i = 0; i + 1 < cuts.size(); i += 2) {
            double k = cuts.get(i)[0] + phase;
            double from = cuts.get(i)[1];
            double to = cuts.get(i + 1)[1];
            if (to > from) {
                lines.add(Shapes.FACTORY.createLineString(new Coordinate[] {
                    new Coordinate(from, slope * from + k * apart), new Coordinate(to, slope * to + k * apart)
                }));
            }
        }
        return Shapes.FACTORY.createMultiLineString(lines.toArray(LineString[]::new));
    }

    /** Adds k and x of every cut; a corner on a line belongs to the edge above it, so that cuts come in pairs. */
    private static void cut(LineString ring, double slope, double apart, double phase, List<double[]> cuts) {
        for (int i = 1; i < ring.getNumPoints(); i++) {
            Coordinate a = ring.getCoordinateN(i - 1);
            Coordinate b = ring.getCoordinateN(i);
            double ka = (a.y - slope * a.x) / apart - phase;
            double kb = (b.y - slope * b.x) / apart - phase;
            double last = Math.ceil(Math.max(ka, kb));
            for (double k = Math.ceil(Math.min(ka, kb)); k < last; k++) {
                cuts.add(new double[] {k, a.x + (k - ka) / (kb - ka) * (b.x - a.x)});
            }
        }
    }
}
