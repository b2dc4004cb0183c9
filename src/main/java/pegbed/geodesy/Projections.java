package pegbed.geodesy;

import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.sis.referencing.operation.transform.DefaultMathTransformFactory;
import org.opengis.parameter.ParameterValueGroup;
import org.opengis.referencing.operation.MathTransform;
import org.opengis.referencing.operation.TransformException;
import org.opengis.util.FactoryException;

/** What Apache SIS is asked for. */
final class Projections {
    /** WGS 84: semi-major axis in metres and inverse flattening (EPSG:7030). */
    static final double WGS84_SEMI_MAJOR_METRES = 6378137;

    static final double WGS84_INVERSE_FLATTENING = 298.257223563;

    /** Held, as a level that is set on a logger that nobody holds is lost. */
    private static final Logger LIBRARY = Logger.getLogger("org.apache.sis");

    static {
        // It tells that it has no folder of data, which nothing here needs.
        LIBRARY.setLevel(Level.OFF);
    }

    private Projections() {}

    /** Makes this class, and with it the logger's level, ready. */
    static void ready() {}

    /**
     * The Transverse Mercator projection (EPSG method 9807) from longitude and latitude in degrees, in this order, to
     * easting and northing in metres, with its natural origin at 0, 0 and a scale of 1 there.
     *
     * @param semiMajorMetres of the ellipsoid
     * @param inverseFlattening of the ellipsoid
     */
    static MathTransform transverseMercator(
            double latitudeDegrees, double longitudeDegrees, double semiMajorMetres, double inverseFlattening) {
        return transverseMercator(latitudeDegrees, longitudeDegrees, 1, 0, 0, semiMajorMetres, inverseFlattening);
    }

    /** As the other, with the scale at the natural origin and what is added to easting and northing. */
    static MathTransform transverseMercator(
            double latitudeDegrees,
            double longitudeDegrees,
            double scale,
            double falseEastingMetres,
            double falseNorthingMetres,
            double semiMajorMetres,
            double inverseFlattening) {
        try {
            var builder = DefaultMathTransformFactory.provider().builder("Transverse Mercator");
            ParameterValueGroup parameters = builder.parameters();
            parameters.parameter("semi_major").setValue(semiMajorMetres);
            parameters.parameter("semi_minor").setValue(semiMajorMetres * (1 - 1 / inverseFlattening));
            parameters.parameter("Latitude of natural origin").setValue(latitudeDegrees);
            parameters.parameter("Longitude of natural origin").setValue(longitudeDegrees);
            parameters.parameter("Scale factor at natural origin").setValue(scale);
            parameters.parameter("False easting").setValue(falseEastingMetres);
            parameters.parameter("False northing").setValue(falseNorthingMetres);
            return builder.create();
        } catch (FactoryException e) {
            throw new IllegalStateException("Apache SIS has no Transverse Mercator projection.", e);
        }
    }

    /** Transforms pairs in place. */
    static void inPlace(MathTransform transform, double[] pairs) {
        try {
            transform.transform(pairs, 0, pairs, 0, pairs.length / 2);
        } catch (TransformException e) {
            throw new IllegalStateException("A place near the peg could not be projected.", e);
        }
    }

    /** The transform back. */
    static MathTransform inverse(MathTransform transform) {
        try {
            return transform.inverse();
        } catch (TransformException e) {
            throw new IllegalStateException("A projection has an inverse.", e);
        }
    }
}
