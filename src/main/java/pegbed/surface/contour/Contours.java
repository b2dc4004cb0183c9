package pegbed.surface.contour;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygonal;
import pegbed.surface.grid.Field;

/**
 * Contours by marching squares. Along the sides of a cell the depth runs straight; where a cell is a saddle, two
 * opposite corners above the level and two below, the asymptotic decider says which of them hang together: those on the
 * side of the level on which the saddle point of the bilinear surface lies (Nielson, G. M. & Hamann, B. (1991), "The
 * asymptotic decider: resolving the ambiguity in marching cubes", Proceedings of Visualization '91, 83–91).
 *
 * <p>A node whose value is exactly the level, and a saddle point exactly there, counts as above, that is as deep
 * enough. Contours keep a hundred-thousandth of a cell off the nodes, and rings smaller than a hundredth of a cell are
 * left out.
 */
public final class Contours {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Contours() {}

    /**
     * The lines of one level. Cells with a corner without a value have none.
     *
     * @param field depths, metres; not changed
     * @param levelMetres the level, metres
     */
    public static Contour of(Field field, double levelMetres) {
        return of(field, new double[] {levelMetres}).get(0);
    }

    /**
     * The lines of several levels, in the order of the levels.
     *
     * @param field depths, metres; not changed
     * @param levelsMetres the levels, metres
     */
    public static List<Contour> of(Field field, double[] levelsMetres) {
        Tracer tracer = new Tracer(field, false);
        double sliver = Tolerance.sliverSquareMetres(field.frame().cellMetres());
        List<Contour> contours = new ArrayList<>();
        for (double level : levelsMetres) {
            List<LineString> lines = new ArrayList<>();
            for (Coordinate[] line : tracer.trace(level)) {
                if (!Rings.isClosed(line) || Math.abs(Rings.area(line)) >= sliver) {
                    lines.add(FACTORY.createLineString(line));
                }
            }
            contours.add(new Contour(level, FACTORY.createMultiLineString(lines.toArray(LineString[]::new))));
        }
        return List.copyOf(contours);
    }

    /**
     * The areas at least as deep as each level, within an outline, in the order of the levels. A deeper area lies
     * within every shallower one, but for rounding where they meet the outline.
     *
     * @param field depths, metres, with a value at every node of every cell that the outline touches; where one is
     *     missing all the same, the area ends at the nodes that have one. Not changed
     * @param levelsMetres the levels, metres
     * @param outline a valid polygon or several, within the frame of the field; not changed
     */
    public static List<DepthArea> polygons(Field field, double[] levelsMetres, Geometry outline) {
        if (!(outline instanceof Polygonal)) {
            throw new IllegalArgumentException("An outline is an area, not a " + outline.getGeometryType() + ".");
        }
        Tracer tracer = new Tracer(field, true);
        Rings rings = new Rings(FACTORY, field.frame().cellMetres());
        return Arrays.stream(levelsMetres)
                .mapToObj(level -> new DepthArea(level, rings.within(rings.area(tracer.trace(level)), outline)))
                .toList();
    }
}
