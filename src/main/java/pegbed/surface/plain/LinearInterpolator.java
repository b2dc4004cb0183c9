package pegbed.surface.plain;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** Flat triangles between the sites of a Delaunay triangulation: continuous, with a crease along every edge. */
public final class LinearInterpolator extends TriangulatedInterpolator {
    /** @param sites places with depths, in any order, any number */
    public LinearInterpolator(List<Site> sites) {
        super(sites);
    }

    /** The barycentric coordinates in the triangle. */
    @Override
    Weights weightsInside(int triangle, double x, double y) {
        Coordinate a = mesh().corner(triangle, 0);
        Coordinate b = mesh().corner(triangle, 1);
        Coordinate c = mesh().corner(triangle, 2);
        int[] sites = {mesh().site(triangle, 0), mesh().site(triangle, 1), mesh().site(triangle, 2)};
        double[] areas = {
            Math.max(0, Mesh.cross(b, c, x, y)),
            Math.max(0, Mesh.cross(c, a, x, y)),
            Math.max(0, Mesh.cross(a, b, x, y))
        };
        return new Weights(sites, areas);
    }
}
