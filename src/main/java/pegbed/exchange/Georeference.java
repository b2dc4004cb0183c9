package pegbed.exchange;

import java.util.Optional;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.CoordinateSequenceFilter;
import org.locationtech.jts.geom.Geometry;
import pegbed.geodesy.LocalFrame;
import pegbed.geodesy.UtmZone;
import pegbed.model.InputException;
import pegbed.model.Position;

/**
 * How places of a peg's plane become coordinates: those of WGS 84, of UTM, or of the plane itself where the peg has no
 * position.
 */
final class Georeference {
    /** What a file says that has the coordinates of the peg's plane. */
    static final String LOCAL =
            "Local frame, no place on the earth: metres from the seat, x to the right along the bank,"
                    + " y straight out across the water. This peg has no position.";

    private final Optional<LocalFrame> frame;

    private Georeference(Optional<LocalFrame> frame) {
        this.frame = frame;
    }

    /**
     * That of a peg.
     *
     * @throws InputException if the position lies at a pole
     */
    static Georeference of(Optional<Position> position) throws InputException {
        return new Georeference(position.isPresent() ? Optional.of(LocalFrame.of(position.get())) : Optional.empty());
    }

    /** Whether there is no position, and coordinates are those of the plane. */
    boolean isLocal() {
        return frame.isEmpty();
    }

    /** The UTM zone of the seat; empty without a position. */
    Optional<UtmZone> zone() throws InputException {
        if (frame.isEmpty()) {
            return Optional.empty();
        }
        Position at = frame.get().position();
        return Optional.of(UtmZone.of(at.latitudeDegrees(), at.longitudeDegrees()));
    }

    /** x and y by turns become longitude and latitude by turns; without a position they stay. */
    void toEarth(double[] xy) {
        frame.ifPresent(known -> known.toEarth(xy));
    }

    /** x and y by turns become easting and northing by turns; without a position they stay. */
    void toZone(double[] xy, Optional<UtmZone> zone) {
        toEarth(xy);
        if (!isLocal()) {
            zone.ifPresent(utm -> utm.fromEarth(xy));
        }
    }

    /** A copy of a geometry of the plane in UTM, in WGS 84 where no zone is given, or unchanged without a position. */
    Geometry moved(Geometry geometry, Optional<UtmZone> zone) {
        if (isLocal()) {
            return geometry;
        }
        Geometry copy = geometry.copy();
        copy.apply(new CoordinateSequenceFilter() {
            @Override
            public void filter(CoordinateSequence points, int index) {
                if (index > 0) {
                    return;
                }
                double[] xy = new double[2 * points.size()];
                for (int i = 0; i < points.size(); i++) {
                    xy[2 * i] = points.getX(i);
                    xy[2 * i + 1] = points.getY(i);
                }
                toZone(xy, zone);
                for (int i = 0; i < points.size(); i++) {
                    points.setOrdinate(i, 0, xy[2 * i]);
                    points.setOrdinate(i, 1, xy[2 * i + 1]);
                }
            }

            @Override
            public boolean isDone() {
                return false;
            }

            @Override
            public boolean isGeometryChanged() {
                return true;
            }
        });
        return copy;
    }
}
