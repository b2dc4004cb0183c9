package pegbed.geodesy;

import org.apache.sis.referencing.CRS;
import org.apache.sis.referencing.CommonCRS;
import org.apache.sis.referencing.crs.AbstractCRS;
import org.apache.sis.referencing.cs.AxesConvention;
import org.opengis.referencing.crs.CoordinateReferenceSystem;
import org.opengis.referencing.operation.MathTransform;
import org.opengis.referencing.operation.TransformException;
import org.opengis.util.FactoryException;
import pegbed.model.InputException;

/** Coordinates of another reference system, given by its definition, as WGS 84. */
public final class OtherReference {
    private final String name;
    private final MathTransform toEarth;

    private OtherReference(String name, MathTransform toEarth) {
        this.name = name;
        this.toEarth = toEarth;
    }

    /**
     * A system by its well-known text.
     *
     * @param name what to call it in sentences
     * @throws InputException if it is not understood, or has no way to WGS 84
     */
    public static OtherReference of(String name, String wellKnownText) throws InputException {
        Projections.ready();
        try {
            CoordinateReferenceSystem crs =
                    AbstractCRS.castOrCopy(CRS.fromWKT(wellKnownText)).forConvention(AxesConvention.DISPLAY_ORIENTED);
            MathTransform transform = CRS.findOperation(crs, CommonCRS.WGS84.normalizedGeographic(), null)
                    .getMathTransform();
            if (transform.getSourceDimensions() != 2 || transform.getTargetDimensions() != 2) {
                throw refused(name, null);
            }
            return new OtherReference(name, transform);
        } catch (FactoryException | RuntimeException e) {
            throw refused(name, e);
        }
    }

    private static InputException refused(String name, Exception cause) {
        return new InputException(
                "The coordinates are in \"" + name
                        + "\", which can't be turned into WGS 84 here; reproject the layer to"
                        + " WGS 84 (EPSG:4326) or UTM first.",
                cause);
    }

    /** Longitude and latitude of a place, degrees. */
    public double[] toEarth(double x, double y) throws InputException {
        double[] at = {x, y};
        try {
            toEarth.transform(at, 0, at, 0, 1);
        } catch (TransformException e) {
            throw refused(name, e);
        }
        return at;
    }
}
