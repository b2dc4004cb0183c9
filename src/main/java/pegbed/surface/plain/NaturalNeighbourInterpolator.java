package pegbed.surface.plain;

import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Triangle;

/**
 * Natural neighbours with Sibson's weights: a place takes from each neighbour the share of its own Voronoi cell that was
 * that neighbour's before. Exact, smooth except at the sites, local, and without a setting. On the hull the weights go
 * over into those along the hull's edge.
 *
 * <p>The place is put into the triangulation in thought (Bowyer 1981; Watson 1981): the triangles whose circle holds it
 * make up a cavity with the natural neighbours round its rim; the areas are summed edge by edge of the Voronoi cells.
 *
 * <p>Sibson, R. (1981), "A brief description of natural neighbour interpolation", in V. Barnett (ed.), Interpreting
 * Multivariate Data, Wiley, 21–36.
 */
public final class NaturalNeighbourInterpolator extends TriangulatedInterpolator {
    private final double[] centresX;
    private final double[] centresY;

    /** @param sites places with depths, in any order, any number */
    public NaturalNeighbourInterpolator(List<Site> sites) {
        super(sites);
        int triangles = mesh() == null ? 0 : mesh().triangles();
        centresX = new double[triangles];
        centresY = new double[triangles];
        for (int t = 0; t < triangles; t++) {
            Coordinate centre = Triangle.circumcentreDD(mesh().corner(t, 0), mesh().corner(t, 1), mesh().corner(t, 2));
            centresX[t] = centre.x;
            centresY[t] = centre.y;
        }
    }

    @Override
    Weights weightsInside(int triangle, double x, double y) {
        Cavity cavity = new Cavity(mesh(), triangle, x, y);
        StolenAreas areas = new StolenAreas(cavity.rimSites());
        // Everything is seen from the place itself, so that near sites keep their digits.
        for (int k = 0; k < cavity.crossedCount(); k++) {
            int edge = cavity.crossed(k);
            int inner = edge / 3;
            int outer = mesh().twin(edge) / 3;
            areas.addVoronoiEdge(
                    mesh().from(edge),
                    mesh().to(edge),
                    centresX[outer] - x,
                    centresY[outer] - y,
                    centresX[inner] - x,
                    centresY[inner] - y);
        }
        int last = cavity.rimCount() - 1;
        double beforeX = cavity.newCentreX(last);
        double beforeY = cavity.newCentreY(last);
        for (int k = 0; k <= last; k++) {
            int edge = cavity.rim(k);
            double newX = cavity.newCentreX(k);
            double newY = cavity.newCentreY(k);
            areas.addVoronoiEdge(
                    mesh().from(edge), mesh().to(edge), newX, newY, centresX[edge / 3] - x, centresY[edge / 3] - y);
            areas.addRimEdge(k, beforeX, beforeY, newX, newY);
            beforeX = newX;
            beforeY = newY;
        }
        return areas.weights();
    }

    /** Twice the area that each neighbour loses, gathered by the trapezium of each edge of its lost polygon. */
    private static final class StolenAreas {
        private final int[] neighbours;
        private final double[] areas;

        StolenAreas(int[] neighbours) {
            this.neighbours = neighbours;
            areas = new double[neighbours.length];
        }

        /** An edge between the cells of two neighbours, run from p to q counter-clockwise round the first. */
        void addVoronoiEdge(int first, int second, double px, double py, double qx, double qy) {
            double cross = px * qy - py * qx;
            areas[slot(first)] += cross;
            areas[slot(second)] -= cross;
        }

        /** An edge between the new cell and the neighbour in a slot, run from p to q. */
        void addRimEdge(int slot, double px, double py, double qx, double qy) {
            areas[slot] += px * qy - py * qx;
        }

        private int slot(int neighbour) {
            int slot = 0;
            while (neighbours[slot] != neighbour) {
                slot++;
            }
            return slot;
        }

        Weights weights() {
            return new Weights(
                    neighbours,
                    Arrays.stream(areas).map(area -> Math.max(0, area)).toArray());
        }
    }
}
