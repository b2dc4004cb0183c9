package pegbed.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbed.model.Bottom;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.storage.table.SpreadsheetReadings;

class ReadingsImportTest {
    @TempDir
    private Path folder;

    private ReadingsImport read(String name, String text, Peg peg) throws IOException, InputException {
        return ReadingsImport.of(Files.writeString(folder.resolve(name), text), peg, Optional.empty());
    }

    private static Peg placed() {
        return Peg.EMPTY.withPosition(Optional.of(ExportedPeg.POSITION));
    }

    @ParameterizedTest
    @CsvSource({
        "Depth (ft), depth_ft",
        "DEPTH in feet, depth_ft",
        "Water depth [m], depth_m",
        "depth_metres, depth_m",
        "Sounding (inches), depth_in",
        "Dist. (cm), distance_cm",
        "Direction, angle_deg",
        "Angle (degrees), angle_deg",
        "Lat, latitude_deg",
        "Long, longitude_deg",
        "Remarks, note",
        "Bed, bottom",
        "depth, depth",
        "Depth (deg), depth_deg",
        "Bites, bites",
        "Notes (m), notes_m"
    })
    void columnsAreKnownByTheirNames(String title, String known) {
        assertEquals(known, SpreadsheetReadings.known(title));
    }

    @Test
    void aSpreadsheetWithDecimalCommasAndFeetIsUnderstood() throws Exception {
        ReadingsImport read = read(
                "s.csv",
                "\uFEFFDist (m);Direction;Water depth (ft);Bed;Bites\n11,5;-20;4,5;silt;2\n4;60;2;;\n",
                Peg.EMPTY);
        assertEquals(
                List.of(
                        "Dist (m): distance in metres",
                        "Direction: angle in degrees",
                        "Water depth (ft): depth in feet",
                        "Bed: bottom"),
                read.recognised());
        assertEquals(List.of("Bites"), read.ignored());
        Reading first = read.readings().get(0);
        assertEquals(0, first.place().distanceTo(Place.polar(11.5, -20)), 1e-9);
        assertEquals(4.5 * 0.3048, first.depthMetres(), 1e-9);
        assertEquals(Bottom.SILT, first.bottom());
    }

    @Test
    void aWrongCellIsNamedByTheFilesOwnNameOfItsColumn() {
        InputException refusal = assertThrows(
                InputException.class,
                () -> read("s.csv", "Dist (m),Direction,Water depth (ft)\n11,-20,4.5\nabc,60,2\n", Peg.EMPTY));
        assertEquals(
                "s.csv, line 3, column Dist (m): \"abc\" is not a number; right is, for example, 11.5.",
                refusal.getMessage());
    }

    @Test
    void placesMayBeXAndYOrOnTheEarth() throws Exception {
        ReadingsImport plane = read("s.csv", "x_ft,y (m),depth_cm\n-10,9.5,168\n", Peg.EMPTY);
        assertEquals(0, plane.readings().get(0).place().distanceTo(new Place(-3.048, 9.5)), 1e-9);
        double[] at = {-3.048, 9.5};
        Georeference.of(Optional.of(ExportedPeg.POSITION)).toEarth(at);
        ReadingsImport earth = read("s.csv", "lat,lon,depth_m\n" + at[1] + "," + at[0] + ",1.68\n", placed());
        assertEquals(0, earth.readings().get(0).place().distanceTo(new Place(-3.048, 9.5)), 0.001);
    }

    /** What was exported comes back: places to a millimetre, depths to a tenth of one. */
    @ParameterizedTest
    @CsvSource({"GEOJSON, true", "GEOPACKAGE, true", "CSV, true", "GEOJSON, false", "GEOPACKAGE, false", "CSV, false"})
    void whatWasExportedComesBack(Export.Kind kind, boolean positioned) throws Exception {
        var plan = positioned ? ExportedPeg.PLAN : ExportedPeg.withoutPosition();
        Path file = ExportedPeg.file(folder, plan, kind, false);
        Peg own = plan.findings().map().peg();
        ReadingsImport read = ReadingsImport.of(file, own, Optional.empty());
        assertEquals(own.readings().size(), read.readings().size());
        for (int i = 0; i < own.readings().size(); i++) {
            Reading expected = own.readings().get(i);
            Reading found = read.readings().get(i);
            assertEquals(0, expected.place().distanceTo(found.place()), 0.001);
            assertEquals(expected.depthMetres(), found.depthMetres(), 1e-4);
            assertEquals(expected.bottom(), found.bottom());
            assertEquals(expected.note(), found.note());
        }
    }

    /** A GeoPackage in another reference system is by Apache SIS. */
    @Test
    void anotherReferenceSystemIsReprojected() throws Exception {
        Path file = ExportedPeg.file(folder, ExportedPeg.PLAN, Export.Kind.GEOPACKAGE, false);
        // The same metres, but said to be those of the next zone: the places move 6 degrees to the east.
        try (var base = java.sql.DriverManager.getConnection("jdbc:sqlite:" + file)) {
            base.createStatement()
                    .execute(
                            "UPDATE gpkg_spatial_ref_sys SET definition = replace(definition, '\"central_meridian\", -3',"
                                    + " '\"central_meridian\", 3') WHERE srs_id = 32630");
        }
        Peg east = ExportedPeg.map()
                .peg()
                .withPosition(Optional.of(new pegbed.model.Position(
                        ExportedPeg.POSITION.latitudeDegrees(),
                        ExportedPeg.POSITION.longitudeDegrees() + 6,
                        ExportedPeg.POSITION.bearingDegrees())));
        ReadingsImport read = ReadingsImport.of(file, east, Optional.of("readings"));
        for (int i = 0; i < read.readings().size(); i++) {
            assertEquals(
                    0,
                    read.readings()
                            .get(i)
                            .place()
                            .distanceTo(east.readings().get(i).place()),
                    0.001);
        }
        assertRefused("has no points with a depth", () -> ReadingsImport.of(file, placed(), Optional.of("marks")));
        try (var base = java.sql.DriverManager.getConnection("jdbc:sqlite:" + file)) {
            base.createStatement()
                    .execute("UPDATE gpkg_spatial_ref_sys SET srs_name = 'Old town grid', definition ="
                            + " 'LOCAL_CS[\"Old town grid\"]' WHERE srs_id = 32630");
        }
        assertRefused(
                "The coordinates are in \"Old town grid\", which can't be turned into WGS 84",
                () -> ReadingsImport.of(file, east, Optional.of("readings")));
        assertRefused(
                "has no layer of points 'depths'; it has", () -> ReadingsImport.of(file, east, Optional.of("depths")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '!',
            value = {
                "a.csv | distance_m,angle_deg,depth;5,0,1 | has depths without a unit",
                "a.csv | distance_m,angle_deg;5,0 | has no depths",
                "a.csv | depth_m,note;1,x | does not say where its depths were read",
                "a.csv | dist_m,range_ft,angle,depth_m;5,5,0,1 | has two columns for distance",
                "a.csv | lat,lon,depth_m;52,-1,1 | the peg has no position",
                "a.csv | x_m,y_m,depth_m;1,1,-2 | line 2, column depth_m: -2 is out of range",
                "a.geojson | {\"type\":\"FeatureCollection\",\"features\":[ | breaks off or is damaged at line",
                "a.geojson | {\"type\":\"Topology\"} | its type must be FeatureCollection",
                "a.geojson | {\"type\":\"FeatureCollection\",\"features\":[]} | has no points with a depth",
                "a.geojson | {\"type\":\"FeatureCollection\",\"features\":[{\"type\":\"Feature\",\"geometry\":{\"type\":\"Point\",\"coordinates\":[1,2]},\"properties\":{\"name\":\"x\"}}]} | has no points with a depth",
                "a.geojson | {\"type\":\"FeatureCollection\",\"crs\":{\"type\":\"name\",\"properties\":{\"name\":\"EPSG:27700\"}},\"features\":[]} | has coordinates in \"EPSG:27700\"",
                "a.gpkg | nothing | is no GeoPackage that can be read"
            })
    void badInputGetsOneSentence(String name, String text, String sentence) throws Exception {
        assertRefused(sentence, () -> read(name, text.replace(';', '\n'), Peg.EMPTY));
    }

    @Test
    void aMissingFileIsNamed() {
        assertRefused(
                "There is no file", () -> ReadingsImport.of(folder.resolve("no.gpkg"), Peg.EMPTY, Optional.empty()));
        assertRefused(
                "Only a GeoPackage (.gpkg) has layers",
                () -> ReadingsImport.of(folder.resolve("a.csv"), Peg.EMPTY, Optional.of("x")));
    }

    private static void assertRefused(String words, org.junit.jupiter.api.function.Executable work) {
        InputException refused = assertThrows(InputException.class, work);
        assertTrue(refused.getMessage().contains(words), refused.getMessage());
        assertTrue(refused.getMessage().endsWith("."), refused.getMessage());
    }
}
