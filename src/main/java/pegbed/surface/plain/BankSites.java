package pegbed.surface.plain;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.linearref.LengthIndexedLine;
import pegbed.geometry.PegWater;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;

/**
 * What a general method is given of a peg: the readings, and the edges of the water as the angler knows them, so that
 * it does not have to guess what is no secret. An edge is a site every {@value #SPACING_METRES} m along the bank's
 * line, as the model has it, {@value #NEAR_METRES} m deep at the near bank, {@value #FAR_METRES} m at the far one and
 * {@value #ISLAND_METRES} m at islands: the depths at which anglers see a bank (common practice). None where a reading
 * lies within {@value #GIVEN_METRES} m, which knows better.
 */
public final class BankSites {
    private static final double SPACING_METRES = 1.5;
    private static final double NEAR_METRES = 0.20;
    private static final double FAR_METRES = 0.30;
    private static final double ISLAND_METRES = 0.25;
    private static final double GIVEN_METRES = 1.0;
    private static final double BEYOND_METRES = 2;

    private BankSites() {}

    /** All readings as they were read, then the edges. */
    public static List<Site> of(Peg peg, PegWater water) {
        List<Site> readings = new ArrayList<>();
        for (Reading reading : peg.readings()) {
            Place place = reading.place();
            readings.add(new Site(place.xMetres(), place.yMetres(), reading.depthMetres()));
        }
        return of(readings, water);
    }

    /** Readings, then the edges of the water. */
    static List<Site> of(List<Site> readings, PegWater water) {
        List<Site> edges = new ArrayList<>();
        add(edges, water.near().toGeometry(), NEAR_METRES);
        water.far().ifPresent(far -> add(edges, far.toGeometry(), FAR_METRES));
        for (Polygon island : water.islands()) {
            add(edges, island.getExteriorRing(), ISLAND_METRES);
        }
        double most = water.reachMetres() + BEYOND_METRES;
        edges.removeIf(edge -> Math.hypot(edge.xMetres(), edge.yMetres()) > most
                || readings.stream()
                        .anyMatch(r ->
                                Math.hypot(r.xMetres() - edge.xMetres(), r.yMetres() - edge.yMetres()) < GIVEN_METRES));
        List<Site> sites = new ArrayList<>(readings);
        sites.addAll(edges);
        return List.copyOf(sites);
    }

    private static void add(List<Site> sites, LineString line, double depthMetres) {
        LengthIndexedLine indexed = new LengthIndexedLine(line);
        int count = Math.max(3, (int) Math.round(line.getLength() / SPACING_METRES));
        for (int i = 0; i < count; i++) {
            Coordinate at = indexed.extractPoint(line.getLength() * (i + 0.5) / count);
            sites.add(new Site(at.x, at.y, depthMetres));
        }
    }
}
