package pegbed.bench.methods;

import java.util.List;
import org.tinfour.common.Vertex;
import org.tinfour.interpolation.NaturalNeighborInterpolator;
import org.tinfour.standard.IncrementalTin;
import pegbed.surface.plain.Site;

/**
 * Natural neighbours with the weights of Sibson (1981, A brief description of natural neighbour interpolation, in
 * Interpreting Multivariate Data, Wiley), by Tinfour.
 */
public final class NaturalNeighbours implements Surface {
    /** Usual distance between sites, from which Tinfour takes its tolerances, metres. */
    private static final double SPACING_METRES = 1;

    private final NaturalNeighborInterpolator interpolator;

    /** @param sites three or more, not in one line; with fewer there is no depth anywhere */
    public NaturalNeighbours(List<Site> sites) {
        IncrementalTin tin = new IncrementalTin(SPACING_METRES);
        for (Site site : sites) {
            tin.add(new Vertex(site.xMetres(), site.yMetres(), site.depthMetres()));
        }
        interpolator = tin.isBootstrapped() ? new NaturalNeighborInterpolator(tin) : null;
    }

    @Override
    public double depthAt(double xMetres, double yMetres) {
        return interpolator == null ? Double.NaN : interpolator.interpolate(xMetres, yMetres, null);
    }
}
