package pegbed.report.map;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.util.GeometryFixer;
import pegbed.geometry.Overlay;
import pegbed.geometry.PegWater;
import pegbed.geometry.Shapes;
import pegbed.model.Place;
import pegbed.model.Pole;

/**
 * Land and the lines where it meets the water, and the rings on the water, in metres, as far as anybody would look:
 * what does not depend on the readings.
 *
 * @param land all dry ground: behind the near bank, beyond the far bank, islands
 * @param banks the lines of both banks and the islands' outlines
 * @param rings the part on the water of the ring at each joint of the pole, the last one the rim
 */
record Shore(Geometry land, Geometry banks, List<Geometry> rings) {
    private static final double FAR_METRES = 300;
    private static final double RIM_ROOM_METRES = 0.02;

    static Shore of(PegWater water, Pole pole) {
        List<Geometry> land = new ArrayList<>();
        List<Geometry> banks = new ArrayList<>();
        List<Coordinate> near = water.near().endless();
        land.add(
                water.near().isFunctionOfX()
                        ? side(near, -FAR_METRES)
                        : Overlay.difference(
                                Shapes.FACTORY.toGeometry(
                                        new Envelope(-FAR_METRES, FAR_METRES, -FAR_METRES, FAR_METRES)),
                                water.near().areaBeyond()));
        banks.add(Shapes.FACTORY.createLineString(near.toArray(Coordinate[]::new)));
        water.far().ifPresent(line -> {
            List<Coordinate> far = line.endless();
            land.add(line.isFunctionOfX() ? side(far, FAR_METRES) : line.areaBeyond());
            banks.add(Shapes.FACTORY.createLineString(far.toArray(Coordinate[]::new)));
        });
        water.islands().forEach(island -> {
            land.add(island);
            banks.add(island.getExteriorRing());
        });
        return new Shore(
                Shapes.FACTORY.buildGeometry(land).buffer(0),
                Shapes.FACTORY.buildGeometry(banks),
                rings(water, pole.jointMetres()));
    }

    private static List<Geometry> rings(PegWater water, List<Double> joints) {
        List<Geometry> rings = new ArrayList<>();
        for (int i = 0; i < joints.size(); i++) {
            // The rim is the water's own edge; without some room it would be lost in rounding.
            Geometry within = i == joints.size() - 1 ? water.water().buffer(RIM_ROOM_METRES) : water.water();
            rings.add(Overlay.intersection(circle(joints.get(i)), within));
        }
        return List.copyOf(rings);
    }

    private static LineString circle(double radiusMetres) {
        List<Coordinate> places = new ArrayList<>();
        for (int degrees = -180; degrees <= 180; degrees += 1) {
            places.add(Shapes.coordinate(Place.polar(radiusMetres, degrees)));
        }
        return Shapes.FACTORY.createLineString(places.toArray(Coordinate[]::new));
    }

    private static Geometry side(List<Coordinate> line, double y) {
        List<Coordinate> ring = new ArrayList<>(line);
        ring.add(new Coordinate(FAR_METRES, y));
        ring.add(new Coordinate(-FAR_METRES, y));
        Collections.reverse(ring);
        return GeometryFixer.fix(Shapes.polygon(ring));
    }
}
