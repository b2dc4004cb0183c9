package pegbed.geodesy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.sis.referencing.CRS;
import org.apache.sis.referencing.CommonCRS;
import org.apache.sis.referencing.GeodeticCalculator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.opengis.referencing.crs.SingleCRS;
import org.opengis.referencing.operation.MathTransform;
import pegbed.model.InputException;
import pegbed.model.Place;
import pegbed.model.Position;

class LocalFrameTest {
    private static final String BESSEL = "GEOGCRS[\"Bessel\",DATUM[\"Bessel\",ELLIPSOID[\"Bessel 1841\",6377397.155,"
            + "299.1528128]],CS[ellipsoidal,2],AXIS[\"lat\",north],AXIS[\"lon\",east],UNIT[\"degree\","
            + "0.017453292519943295]]";

    /**
     * The Transverse Mercator example of IOGP Geomatics Guidance Note 7, part 2 (373-07-2, September 2019), section
     * 3.2.5: OSGB 1936 / British National Grid, 50°30'N 0°30'E is E 577274.99 m, N 69740.50 m. UTM is the same method
     * (EPSG 9807) with other constants.
     */
    @Test
    void theProjectionIsTheOneOfTheGuidanceNote() {
        double airyFlattening = 299.3249646; // Airy 1830 (EPSG:7001)
        MathTransform grid =
                Projections.transverseMercator(49, -2, 0.9996012717, 400000, -100000, 6377563.396, airyFlattening);
        double[] at = {0.5, 50.5};
        Projections.inPlace(grid, at);
        assertEquals(577274.99, at[0], 0.01);
        assertEquals(69740.50, at[1], 0.01);
    }

    /** By EPSG 9807 with UTM's constants: 0.9996, 500 km, 0 or 10,000 km, central meridian 6·zone - 183. */
    @ParameterizedTest
    @CsvSource({"52.5, -1.3, 30, 32630, 0", "-33.9, 18.4, 34, 32734, 10000000", "0.001, 179.999, 60, 32660, 0"})
    void aZoneIsTheProjectionWithUtmsConstants(double lat, double lon, int zone, int code, double falseNorthing)
            throws InputException {
        UtmZone utm = UtmZone.of(lat, lon);
        assertEquals(code, utm.epsgCode());
        MathTransform expected = Projections.transverseMercator(
                0, 6 * zone - 183, 0.9996, 500000, falseNorthing, 6378137, 298.257223563);
        double[] at = {lon, lat};
        double[] same = {lon, lat};
        utm.fromEarth(at);
        Projections.inPlace(expected, same);
        assertEquals(same[0], at[0], 1e-6);
        assertEquals(same[1], at[1], 1e-6);
        assertTrue(utm.wellKnownText().startsWith("PROJCS[\"WGS 84 / UTM zone " + zone), utm.wellKnownText());
    }

    /**
     * Lines (a) to (c) of table II of Vincenty, T. (1975), "Direct and inverse solutions of geodesics on the ellipsoid
     * with application of nested equations", Survey Review 23 (176), 88–93. They say that the library's calculator, by
     * which a test below measures, is right.
     */
    @ParameterizedTest
    @CsvSource({
        "bessel, 55, 45, 0, -33, 26, 0, 108, 13, 0, 96, 36, 8.79960, 14110526.170",
        "international, 37, 19, 54.95367, 26, 7, 42.83946, 41, 28, 35.50729, 95, 27, 59.63089, 4085966.703",
        "international, 35, 16, 11.24862, 67, 22, 14.77638, 137, 47, 28.31435, 15, 44, 23.74850, 8084823.839"
    })
    void distancesAreVincentys(
            String ellipsoid,
            int lat1,
            int lat1m,
            double lat1s,
            int lat2,
            int lat2m,
            double lat2s,
            int lon,
            int lonM,
            double lonS,
            int azimuth,
            int azimuthM,
            double azimuthS,
            double metres)
            throws Exception {
        Projections.ready();
        GeodeticCalculator calculator = GeodeticCalculator.create(
                ellipsoid.equals("bessel") ? (SingleCRS) CRS.fromWKT(BESSEL) : CommonCRS.ED50.geographic());
        calculator.setStartGeographicPoint(sexagesimal(lat1, lat1m, lat1s), 0);
        calculator.setEndGeographicPoint(sexagesimal(lat2, lat2m, lat2s), sexagesimal(lon, lonM, lonS));
        assertEquals(metres, calculator.getGeodesicDistance(), 0.001);
        assertEquals(sexagesimal(azimuth, azimuthM, azimuthS), calculator.getStartingAzimuth(), 1e-8);
    }

    private static double sexagesimal(int degrees, int minutes, double seconds) {
        return Math.signum(degrees) * (Math.abs(degrees) + minutes / 60.0 + seconds / 3600);
    }

    /**
     * Distance and bearing from the seat are those of the straight way through the earth, which is a micrometre shorter
     * than the ground at 1 km.
     */
    @ParameterizedTest
    @CsvSource({"52.5, -1.3, 312.5", "-41.2, 174.8, 10", "0, 0, 90", "78.2, 15.6, 200", "52.5, 179.9995, 45"})
    void placesLieWhereDistanceAndBearingSay(double lat, double lon, double bearing) throws InputException {
        LocalFrame frame = LocalFrame.of(new Position(lat, lon, bearing));
        double[] seat = geocentric(lat, lon);
        for (int angle = -170; angle <= 180; angle += 35) {
            for (double distance : new double[] {0.5, 11, 100, 1000}) {
                Place place = Place.polar(distance, angle);
                double[] at = {place.xMetres(), place.yMetres()};
                frame.toEarth(at);
                assertTrue(Math.abs(at[0]) <= 180);
                double[] there = geocentric(at[1], at[0]);
                double dx = there[0] - seat[0];
                double dy = there[1] - seat[1];
                double dz = there[2] - seat[2];
                assertEquals(distance, Math.sqrt(dx * dx + dy * dy + dz * dz), 2e-5);
                double sinLon = Math.sin(Math.toRadians(lon));
                double cosLon = Math.cos(Math.toRadians(lon));
                double east = dy * cosLon - dx * sinLon;
                double north = dz * Math.cos(Math.toRadians(lat))
                        - (dx * cosLon + dy * sinLon) * Math.sin(Math.toRadians(lat));
                double off = Math.IEEEremainder(Math.toDegrees(Math.atan2(east, north)) - bearing - angle, 360);
                assertEquals(0, Math.toRadians(off) * distance, 1e-4);
                assertEquals(0, frame.place(at[1], at[0]).distanceTo(place), 2e-5);
            }
        }
    }

    /** Geocentric coordinates on the ellipsoid, metres (IOGP Guidance Note 7-2, EPSG method 9602). */
    private static double[] geocentric(double latitude, double longitude) {
        double f = 1 / 298.257223563;
        double squared = f * (2 - f);
        double sine = Math.sin(Math.toRadians(latitude));
        double cosine = Math.cos(Math.toRadians(latitude));
        double nu = 6378137 / Math.sqrt(1 - squared * sine * sine);
        return new double[] {
            nu * cosine * Math.cos(Math.toRadians(longitude)),
            nu * cosine * Math.sin(Math.toRadians(longitude)),
            (1 - squared) * nu * sine
        };
    }

    /** A kilometre of the plane is one by the calculator that the test above compares with Vincenty's lines. */
    @Test
    void aKilometreIsAKilometreOfTheGeodesic() throws InputException {
        double[] at = {600, 800};
        LocalFrame.of(new Position(52.5, -1.3, 312.5)).toEarth(at);
        GeodeticCalculator calculator = GeodeticCalculator.create(CommonCRS.WGS84.geographic());
        calculator.setStartGeographicPoint(52.5, -1.3);
        calculator.setEndGeographicPoint(at[1], at[0]);
        assertEquals(1000, calculator.getGeodesicDistance(), 1e-3);
    }

    @ParameterizedTest
    @CsvSource({"90", "-90", "84.1", "-80.5"})
    void thereIsNoPegAtAPole(double latitude) {
        InputException refused = assertThrows(InputException.class, () -> LocalFrame.of(new Position(latitude, 0, 0)));
        assertTrue(refused.getMessage().contains("too near a pole"), refused.getMessage());
        assertThrows(InputException.class, () -> UtmZone.of(latitude, 0));
    }
}
