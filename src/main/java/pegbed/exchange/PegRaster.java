package pegbed.exchange;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import pegbed.findings.PegMap;
import pegbed.geodesy.UtmZone;
import pegbed.report.map.GroundShapes;
import pegbed.surface.grid.CubicUpsampling;
import pegbed.surface.grid.Field;
import pegbed.surface.grid.GridFrame;

/** A peg's depth, its doubt and the slope on a regular grid, where anything is known. */
final class PegRaster {
    static final String[] NAMES = {"depth", "sd", "slope"};
    static final String[] UNITS = {"metre", "metre", "rise over run"};

    private PegRaster() {}

    /**
     * The grid.
     *
     * @param fine nodes for each of the 25 cm grid, along each side: 5 for 5 cm, 1 for 25 cm
     * @return bands of {@link #NAMES}: depth in metres below today's water, its standard deviation in metres, and the
     *     slope by Horn's method over three by three nodes of 25 cm (Horn, B. K. P. (1981), "Hill shading and the
     *     reflectance map", Proceedings of the IEEE 69, 14–47), rise over run; row 0 farthest out, NaN where there is
     *     no water or nothing is known
     */
    static Raster of(PegMap map, int fine) {
        Field depth = CubicUpsampling.catmullRom(map.grid().depth(), fine);
        Field sd = CubicUpsampling.catmullRom(map.grid().sd(), fine);
        GridFrame frame = depth.frame();
        boolean[] water = inside(frame, map.water().water());
        int columns = frame.columns();
        int rows = frame.rows();
        float[][] bands = new float[NAMES.length][columns * rows];
        double across = 8 * map.grid().frame().cellMetres();
        for (int row = 0; row < rows; row++) {
            int target = (rows - 1 - row) * columns;
            for (int column = 0; column < columns; column++) {
                int at = frame.index(column, row);
                boolean known = water[at] && sd.at(at) <= GroundShapes.UNKNOWN_METRES && !Double.isNaN(depth.at(at));
                bands[0][target + column] = known ? (float) depth.at(at) : Float.NaN;
                bands[1][target + column] = known ? (float) sd.at(at) : Float.NaN;
                bands[2][target + column] = known ? (float) slope(depth, column, row, fine, across) : Float.NaN;
            }
        }
        return new Raster(columns, rows, bands, NAMES, UNITS);
    }

    /**
     * The slope by Horn's method over three by three nodes, rise over run; NaN where one of them has no depth.
     *
     * @param step how many nodes of the field apart they are
     * @param across eight times as many metres
     */
    static double slope(Field depth, int column, int row, int step, double across) {
        GridFrame frame = depth.frame();
        if (column < step || row < step || column + step >= frame.columns() || row + step >= frame.rows()) {
            return Double.NaN;
        }
        double a = depth.at(column - step, row + step);
        double b = depth.at(column, row + step);
        double c = depth.at(column + step, row + step);
        double d = depth.at(column - step, row);
        double f = depth.at(column + step, row);
        double g = depth.at(column - step, row - step);
        double h = depth.at(column, row - step);
        double i = depth.at(column + step, row - step);
        return Math.hypot((c + 2 * f + i - a - 2 * d - g) / across, (a + 2 * b + c - g - 2 * h - i) / across);
    }

    /** Which nodes lie in an area: between an odd and an even crossing of its outline along each row. */
    static boolean[] inside(GridFrame frame, Geometry area) {
        double[][] crossings = new double[frame.rows()][8];
        int[] count = new int[frame.rows()];
        for (int p = 0; p < area.getNumGeometries(); p++) {
            if (area.getGeometryN(p) instanceof Polygon polygon) {
                cross(frame, polygon.getExteriorRing(), crossings, count);
                for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
                    cross(frame, polygon.getInteriorRingN(hole), crossings, count);
                }
            }
        }
        boolean[] inside = new boolean[frame.size()];
        for (int row = 0; row < frame.rows(); row++) {
            double[] at = crossings[row];
            Arrays.sort(at, 0, count[row]);
            for (int k = 0; k + 1 < count[row]; k += 2) {
                int first = (int) Math.ceil((at[k] - frame.xMinMetres()) / frame.cellMetres());
                int last = (int) Math.floor((at[k + 1] - frame.xMinMetres()) / frame.cellMetres());
                for (int column = Math.max(0, first); column <= Math.min(last, frame.columns() - 1); column++) {
                    inside[frame.index(column, row)] = true;
                }
            }
        }
        return inside;
    }

    private static void cross(GridFrame frame, LineString ring, double[][] crossings, int[] count) {
        Coordinate[] points = ring.getCoordinates();
        for (int i = 0; i + 1 < points.length; i++) {
            Coordinate low = points[i].y <= points[i + 1].y ? points[i] : points[i + 1];
            Coordinate high = low == points[i] ? points[i + 1] : points[i];
            // Half-open, so that a corner on a row counts once.
            int first = Math.max(0, (int) Math.ceil((low.y - frame.yMinMetres()) / frame.cellMetres()));
            for (int row = first; row < frame.rows() && frame.y(row) < high.y; row++) {
                if (count[row] == crossings[row].length) {
                    crossings[row] = Arrays.copyOf(crossings[row], 2 * count[row]);
                }
                crossings[row][count[row]++] = low.x + (frame.y(row) - low.y) / (high.y - low.y) * (high.x - low.x);
            }
        }
    }

    /** The frame of a grid so much finer than the peg's. */
    static GridFrame frame(PegMap map, int fine) {
        GridFrame from = map.grid().frame();
        return new GridFrame(
                from.xMinMetres(),
                from.yMinMetres(),
                from.cellMetres() / fine,
                (from.columns() - 1) * fine + 1,
                (from.rows() - 1) * fine + 1);
    }

    /**
     * Where a grid lies on the earth: its rows and columns stay as they are, turned with the peg, so that no value is
     * worked out anew. Within a peg UTM is an affine map of the plane to a tenth of a millimetre.
     *
     * @param zone empty without a position
     */
    static RasterPlace place(GridFrame frame, Georeference reference, Optional<UtmZone> zone) {
        double xMid = frame.x(frame.columns() / 2);
        double yMid = frame.y(frame.rows() / 2);
        double span = frame.cellMetres() * Math.max(frame.columns(), frame.rows()) / 2;
        double[] at = {xMid - span, yMid, xMid + span, yMid, xMid, yMid - span, xMid, yMid + span};
        reference.toZone(at, zone);
        double xx = (at[2] - at[0]) / (2 * span);
        double xy = (at[3] - at[1]) / (2 * span);
        double yx = (at[6] - at[4]) / (2 * span);
        double yy = (at[7] - at[5]) / (2 * span);
        double east = (at[0] + at[2] + at[4] + at[6]) / 4;
        double north = (at[1] + at[3] + at[5] + at[7]) / 4;
        // The corner of the first pixel, half a cell beyond the node that is farthest out to the left.
        double cell = frame.cellMetres();
        double dx = frame.xMinMetres() - cell / 2 - xMid;
        double dy = frame.y(frame.rows() - 1) + cell / 2 - yMid;
        double[] affine = {
            xx * cell, -yx * cell, east + xx * dx + yx * dy, xy * cell, -yy * cell, north + xy * dx + yy * dy
        };
        return zone.map(utm -> new RasterPlace(affine, utm.epsgCode(), utm.name()))
                .orElseGet(() -> new RasterPlace(affine, 0, Georeference.LOCAL));
    }

    /** What a file of depths says of itself. */
    static String description(String title, String reference) {
        return String.format(
                Locale.ROOT,
                "%s: depth, its standard deviation and slope of the bottom. %s"
                        + " For choosing where to fish. Not for navigation, swimming, diving, wading or building.",
                title.isBlank() ? "A peg" : title,
                reference.endsWith(".") ? reference : reference + ".");
    }
}
