package pegbed.geodesy;

import org.apache.sis.io.wkt.Convention;
import org.apache.sis.io.wkt.WKTFormat;
import org.apache.sis.metadata.iso.citation.Citations;
import org.apache.sis.referencing.CommonCRS;
import org.apache.sis.referencing.IdentifiedObjects;
import org.opengis.referencing.crs.ProjectedCRS;
import org.opengis.referencing.operation.MathTransform;
import pegbed.model.InputException;

/** A zone of the Universal Transverse Mercator system on WGS 84. Immutable and thread-safe. */
public final class UtmZone {
    private final ProjectedCRS crs;
    private final MathTransform fromEarth;

    private UtmZone(ProjectedCRS crs) {
        this.crs = crs;
        fromEarth = crs.getConversionFromBase().getMathTransform();
    }

    /**
     * The zone of a place.
     *
     * @throws InputException if it is nearer to a pole than UTM goes
     */
    public static UtmZone of(double latitudeDegrees, double longitudeDegrees) throws InputException {
        LocalFrame.refuseNearPole(latitudeDegrees);
        Projections.ready();
        return new UtmZone(CommonCRS.WGS84.universal(latitudeDegrees, longitudeDegrees));
    }

    /** Its code among the EPSG's coordinate reference systems: 32601 to 32660 north, 32701 to 32760 south. */
    public int epsgCode() {
        return Integer.parseInt(
                IdentifiedObjects.getIdentifier(crs, Citations.EPSG).getCode());
    }

    /** Its name, such as {@code WGS 84 / UTM zone 30N}. */
    public String name() {
        return crs.getName().getCode();
    }

    /** Its definition as well-known text (OGC 01-009, "WKT 1"). */
    public String wellKnownText() {
        WKTFormat format = new WKTFormat();
        format.setConvention(Convention.WKT1);
        format.setIndentation(WKTFormat.SINGLE_LINE);
        return format.format(crs);
    }

    /** Longitudes and latitudes by turns, degrees; changed into eastings and northings by turns, metres. */
    public void fromEarth(double[] lonLat) {
        for (int i = 0; i < lonLat.length; i += 2) {
            double longitude = lonLat[i];
            lonLat[i] = lonLat[i + 1];
            lonLat[i + 1] = longitude;
        }
        Projections.inPlace(fromEarth, lonLat);
    }
}
