package pegbed.surface.plain;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.MultiPoint;
import pegbed.geometry.PegWater;
import pegbed.geometry.Shapes;
import pegbed.model.BankPoint;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.model.Visit;
import pegbed.surface.survey.Levels;

/**
 * The bottom of a peg as its readings and its banks alone give it: straight between neighbours of a Delaunay
 * triangulation, without a model and without a doubt. The edges of the water are those of {@link BankSites}; a depth
 * that the person gave at a bank stands in their place.
 *
 * <p>Readings of earlier visits are brought to the level of the latest by the measures from board to water, where both
 * visits have one; else they stay as read. Those before the bottom was dug out, and those within {@value #SPOT_METRES}
 * m of a later visit's reading, are left out.
 */
public final class JoinedUp implements Interpolator {
    /** A later reading so near takes an earlier one's place, metres. */
    static final double SPOT_METRES = 0.5;

    private final Levels levels;
    private final LinearInterpolator surface;

    private JoinedUp(Levels levels, LinearInterpolator surface) {
        this.levels = levels;
        this.surface = surface;
    }

    /** The bottom of a peg at the level of its latest visit. */
    public static JoinedUp of(Peg peg, PegWater water) {
        List<Visit> visits = peg.visits();
        Levels levels = Levels.of(visits, visits.size() - 1);
        List<Site> given = new ArrayList<>();
        boolean dugOut = false;
        for (int visit = visits.size() - 1; visit >= 0 && !dugOut; visit--) {
            List<Site> later = List.copyOf(given);
            for (Reading reading : visits.get(visit).readings()) {
                Place place = reading.place();
                boolean readAgain = later.stream()
                        .anyMatch(site -> Math.hypot(site.xMetres() - place.xMetres(), site.yMetres() - place.yMetres())
                                < SPOT_METRES);
                if (!readAgain) {
                    given.add(new Site(place.xMetres(), place.yMetres(), reading.depthMetres() - levels.mean(visit)));
                }
            }
            dugOut = visits.get(visit).afresh();
        }
        List<List<BankPoint>> banks =
                new ArrayList<>(List.of(peg.banks().near(), peg.banks().far()));
        banks.addAll(peg.banks().islands());
        for (List<BankPoint> bank : banks) {
            for (BankPoint point : bank) {
                point.depthMetres()
                        .ifPresent(depth -> given.add(
                                new Site(point.place().xMetres(), point.place().yMetres(), depth - levels.mean(0))));
            }
        }
        return new JoinedUp(levels, new LinearInterpolator(BankSites.of(given, water)));
    }

    /**
     * A depth of a visit as it would have been read at the level of the latest, metres.
     *
     * @param visit index of the visit, 0 for the first
     * @param depthMetres as read
     */
    public double atLatestLevel(int visit, double depthMetres) {
        return depthMetres - levels.mean(visit);
    }

    @Override
    public double depthAt(double xMetres, double yMetres) {
        return surface.depthAt(xMetres, yMetres);
    }

    /** The ground within which there are depths: a polygon, or a point or line where there are too few places. */
    public Geometry hull() {
        MultiPoint places = Shapes.FACTORY.createMultiPointFromCoords(surface.sites().stream()
                .map(site -> new Coordinate(site.xMetres(), site.yMetres()))
                .toArray(Coordinate[]::new));
        return places.convexHull();
    }
}
