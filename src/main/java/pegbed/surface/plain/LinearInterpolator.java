package pegbed.surface.plain;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** Flat triangles between the sites of a Delaunay triangulation: continuous, with a crease along every edge. */
public final class LinearInterpolator implements Interpolator {
    private final List<Site> sites;
    private final double xOriginMetres;
    private final double yOriginMetres;
    private final Chain chain;
    private final Mesh mesh;

    /** @param given places with depths, in any order, any number */
    public LinearInterpolator(List<Site> given) {
        sites = Sites.merged(given);
        // Near their middle the places keep all their digits, however far off the origin lies.
        xOriginMetres = sites.isEmpty()
                ? 0
                : middle(sites.stream().mapToDouble(Site::xMetres).toArray());
        yOriginMetres = sites.isEmpty()
                ? 0
                : middle(sites.stream().mapToDouble(Site::yMetres).toArray());
        Coordinate[] places = sites.stream()
                .map(site -> new Coordinate(site.xMetres() - xOriginMetres, site.yMetres() - yOriginMetres))
                .toArray(Coordinate[]::new);
        chain = places.length == 0 ? null : Chain.of(places);
        mesh = places.length == 0 || chain != null ? null : new Mesh(places);
    }

    private static double middle(double[] values) {
        double min = Double.POSITIVE_INFINITY;
        double max = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            min = Math.min(min, value);
            max = Math.max(max, value);
        }
        return min + (max - min) / 2;
    }

    /**
     * The sites that are interpolated, sorted by place: those given, where sites at one place (nearer than 1e-9 of the
     * data's extent) have become one with their mean depth.
     */
    public List<Site> sites() {
        return sites;
    }

    /**
     * How much each site counts at a place. The weights are not negative and sum to 1; weighted with them the sites'
     * mean place is the place asked for.
     *
     * @param xMetres x, metres
     * @param yMetres y, metres
     * @return weights by the number of the site in {@link #sites()}; empty outside the convex hull
     */
    public Weights weightsAt(double xMetres, double yMetres) {
        double x = xMetres - xOriginMetres;
        double y = yMetres - yOriginMetres;
        if (chain != null) {
            return chain.weightsAt(x, y);
        }
        if (mesh == null) {
            return Weights.NONE;
        }
        int triangle = mesh.locate(x, y);
        if (triangle == Mesh.NONE) {
            return mesh.touchingHull(x, y);
        }
        int touched = mesh.siteTouched(triangle, x, y);
        if (touched != Mesh.NONE) {
            return Weights.one(touched);
        }
        for (int edge = 3 * triangle; edge < 3 * triangle + 3; edge++) {
            if (mesh.twin(edge) == Mesh.NONE && mesh.touches(edge, x, y)) {
                return mesh.along(mesh.from(edge), mesh.to(edge), x, y);
            }
        }
        return weightsInside(triangle, x, y);
    }

    @Override
    public double depthAt(double xMetres, double yMetres) {
        return weightsAt(xMetres, yMetres).depth(sites);
    }

    /** The barycentric coordinates in the triangle. */
    private Weights weightsInside(int triangle, double x, double y) {
        Coordinate a = mesh.corner(triangle, 0);
        Coordinate b = mesh.corner(triangle, 1);
        Coordinate c = mesh.corner(triangle, 2);
        int[] sites = {mesh.site(triangle, 0), mesh.site(triangle, 1), mesh.site(triangle, 2)};
        double[] areas = {
            Math.max(0, Mesh.cross(b, c, x, y)),
            Math.max(0, Mesh.cross(c, a, x, y)),
            Math.max(0, Mesh.cross(a, b, x, y))
        };
        return new Weights(sites, areas);
    }
}
