package pegbed.exchange;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.WKBReader;
import pegbed.geodesy.LocalFrame;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Place;
import pegbed.model.Position;
import pegbed.model.Reading;
import pegbed.storage.table.ReadingsTable;
import pegbed.surface.grid.CubicUpsampling;
import pegbed.surface.grid.Field;
import pegbed.surface.grid.GridFrame;

class ExportTest {
    @TempDir
    private Path folder;

    private static JsonNode geoJson(byte[] bytes) throws Exception {
        return new ObjectMapper().readTree(bytes);
    }

    @Test
    void geoJsonIsWhatTheStandardAsks() throws Exception {
        byte[] bytes = ExportedPeg.bytes(ExportedPeg.PLAN, Export.Kind.GEOJSON, false);
        String schema = Files.readString(Path.of("src/test/resources/geojson.schema.json"));
        var faults = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(schema, InputFormat.JSON)
                .validate(new String(bytes, StandardCharsets.UTF_8), InputFormat.JSON);
        assertTrue(faults.isEmpty(), faults.toString());
        Set<String> layers = new HashSet<>();
        int rings = 0;
        for (JsonNode feature : geoJson(bytes).path("features")) {
            layers.add(feature.path("properties").path("layer").asText());
            if (!feature.path("geometry").path("type").asText().equals("MultiPolygon")) {
                continue;
            }
            for (JsonNode polygon : feature.path("geometry").path("coordinates")) {
                for (int i = 0; i < polygon.size(); i++) {
                    JsonNode ring = polygon.get(i);
                    assertEquals(ring.get(0), ring.get(ring.size() - 1), "a ring is closed");
                    assertEquals(i == 0, signedArea(ring) > 0, "the area lies to the left");
                    rings++;
                }
            }
        }
        assertTrue(rings > 5);
        assertEquals(
                Set.of("seat", "water", "contours", "guess", "banks", "readings", "flats", "lines", "marks"), layers);
    }

    private static double signedArea(JsonNode ring) {
        double twice = 0;
        double x0 = ring.get(0).get(0).asDouble();
        double y0 = ring.get(0).get(1).asDouble();
        for (int i = 0; i + 1 < ring.size(); i++) {
            double x1 = ring.get(i).get(0).asDouble() - x0;
            double y1 = ring.get(i).get(1).asDouble() - y0;
            double x2 = ring.get(i + 1).get(0).asDouble() - x0;
            double y2 = ring.get(i + 1).get(1).asDouble() - y0;
            twice += x1 * y2 - x2 * y1;
        }
        return twice;
    }

    /** Every reading is there where it was taken, as deep as it was read; every contour lies at its depth. */
    @Test
    void geoJsonSaysWhatThePegHolds() throws Exception {
        LocalFrame frame = LocalFrame.of(ExportedPeg.POSITION);
        List<Reading> readings = ExportedPeg.map().peg().readings();
        Field depth = CubicUpsampling.catmullRom(ExportedPeg.map().grid().depth(), 5);
        int seen = 0;
        int points = 0;
        for (JsonNode feature : geoJson(ExportedPeg.bytes(ExportedPeg.PLAN, Export.Kind.GEOJSON, false))
                .path("features")) {
            JsonNode properties = feature.path("properties");
            JsonNode at = feature.path("geometry").path("coordinates");
            if (properties.path("layer").asText().equals("readings")) {
                Reading reading = readings.get(properties.path("reading").asInt() - 1);
                Place place = frame.place(at.get(1).asDouble(), at.get(0).asDouble());
                assertEquals(0, place.distanceTo(reading.place()), 0.001);
                assertEquals(reading.depthMetres(), properties.path("depth_m").asDouble(), 0.0001);
                seen++;
            } else if (properties.path("layer").asText().equals("contours")) {
                JsonNode middle = at.get(at.size() / 2);
                Place place =
                        frame.place(middle.get(1).asDouble(), middle.get(0).asDouble());
                // On 5 cm, as the map draws it; a line may lie 6 mm off, on ground no steeper than 2 in 1.
                assertEquals(
                        properties.path("depth_m").asDouble(), depth.sample(place.xMetres(), place.yMetres()), 0.015);
                assertTrue(properties.path("sd_m").asDouble() > 0);
                points++;
            }
        }
        assertEquals(readings.size(), seen);
        assertTrue(points > 10);
    }

    @Test
    void withoutAPositionTheFilesSaySo() throws Exception {
        byte[] json = ExportedPeg.bytes(ExportedPeg.withoutPosition(), Export.Kind.GEOJSON, false);
        assertTrue(geoJson(json).path("coordinate_system").asText().startsWith("Local frame, no place on the earth"));
        JsonNode first = null;
        for (JsonNode feature : geoJson(json).path("features")) {
            if (feature.path("properties").path("reading").asInt() == 1) {
                first = feature.path("geometry").path("coordinates");
            }
        }
        Place place = ExportedPeg.map().peg().readings().get(0).place();
        assertEquals(place.xMetres(), first.get(0).asDouble(), 1e-4);
        assertEquals(place.yMetres(), first.get(1).asDouble(), 1e-4);
        String tiff = new String(
                ExportedPeg.bytes(ExportedPeg.withoutPosition(), Export.Kind.GEOTIFF, false),
                StandardCharsets.ISO_8859_1);
        assertTrue(tiff.contains("Local frame, no place on the earth"));
        Path file = ExportedPeg.file(folder, ExportedPeg.withoutPosition(), Export.Kind.GEOPACKAGE, false);
        try (Connection base = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            assertEquals("-1", one(base, "SELECT srs_id FROM gpkg_contents WHERE table_name = 'readings_local'"));
            assertTrue(one(base, "SELECT description FROM gpkg_contents WHERE table_name = 'readings_local'")
                    .startsWith("Local frame"));
        }
    }

    private static String one(Connection base, String sql) throws Exception {
        try (ResultSet answer = base.createStatement().executeQuery(sql)) {
            assertTrue(answer.next(), sql);
            return answer.getString(1);
        }
    }

    /** The requirements of OGC 12-128r17 by their numbers. */
    @Test
    void theGeoPackageKeepsTheRules() throws Exception {
        Path file = ExportedPeg.file(folder, ExportedPeg.PLAN, Export.Kind.GEOPACKAGE, false);
        ByteBuffer head = ByteBuffer.wrap(Files.readAllBytes(file));
        assertEquals("SQLite format 3", new String(head.array(), 0, 15, StandardCharsets.US_ASCII)); // 1
        assertEquals(0x47504B47, head.getInt(68)); // 2: application id GPKG
        assertEquals(10300, head.getInt(60)); // 2: user version
        try (Connection base = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            assertEquals("ok", one(base, "PRAGMA integrity_check")); // 6
            assertFalse(base.createStatement()
                    .executeQuery("PRAGMA foreign_key_check")
                    .next()); // 7
            assertEquals(
                    "3", one(base, "SELECT COUNT(*) FROM gpkg_spatial_ref_sys WHERE srs_id IN (-1, 0, 4326)")); // 11
            // 13, 14, 22, 23: contents name tables that are there, in reference systems that are there.
            List<String> tables = new ArrayList<>();
            try (ResultSet rows = base.createStatement()
                    .executeQuery("SELECT c.table_name, c.srs_id, g.geometry_type_name, g.srs_id, c.min_x, c.max_x,"
                            + " c.last_change FROM gpkg_contents c JOIN gpkg_geometry_columns g USING (table_name)"
                            + " JOIN gpkg_spatial_ref_sys s ON s.srs_id = c.srs_id WHERE c.data_type = 'features'")) {
                while (rows.next()) {
                    tables.add(rows.getString(1));
                    assertEquals(32630, rows.getInt(2));
                    assertEquals(rows.getInt(2), rows.getInt(4));
                    assertTrue(rows.getString(7).matches("\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d\\.\\d{3}Z")); // 15
                }
            }
            assertEquals(10, tables.size());
            for (String table : tables) {
                // 29: an integer primary key; 19, 30, 32: geometries of the column's kind and reference system.
                String type = one(
                        base,
                        "SELECT geometry_type_name FROM gpkg_geometry_columns WHERE table_name = '" + table + "'");
                assertEquals("1", one(base, "SELECT COUNT(*) FROM pragma_table_info('" + table + "') WHERE pk = 1"));
                try (ResultSet rows = base.createStatement().executeQuery("SELECT geom FROM " + table)) {
                    while (rows.next()) {
                        ByteBuffer blob = ByteBuffer.wrap(rows.getBytes(1)).order(ByteOrder.LITTLE_ENDIAN);
                        assertEquals('G', blob.get(0));
                        assertEquals('P', blob.get(1));
                        assertEquals(32630, blob.getInt(4));
                        byte[] wkb = new byte[blob.capacity() - 40];
                        blob.position(40);
                        blob.get(wkb);
                        Geometry geometry = new WKBReader().read(wkb);
                        assertEquals(type, geometry.getGeometryType().toUpperCase(java.util.Locale.ROOT));
                        assertTrue(geometry.isValid(), table);
                        assertEquals(geometry.getEnvelopeInternal().getMinX(), blob.getDouble(8), 0);
                        assertEquals(geometry.getEnvelopeInternal().getMaxY(), blob.getDouble(32), 0);
                    }
                }
                assertTrue(one(base, "SELECT styleSLD FROM layer_styles WHERE f_table_name = '" + table + "'")
                        .contains("Symbolizer"));
            }
        }
    }

    @Test
    void aTableOfReadingsIsTakenInAgain() throws Exception {
        String csv = new String(ExportedPeg.bytes(ExportedPeg.PLAN, Export.Kind.CSV, false), StandardCharsets.UTF_8);
        List<Reading> read = ReadingsTable.read(new StringReader(csv), "csv").readings();
        List<Reading> own = ExportedPeg.map().peg().readings();
        assertEquals(own.size(), read.size());
        for (int i = 0; i < own.size(); i++) {
            assertEquals(0, own.get(i).place().distanceTo(read.get(i).place()), 0.001);
            assertEquals(own.get(i).depthMetres(), read.get(i).depthMetres(), 1e-4);
            assertEquals(own.get(i).bottom(), read.get(i).bottom());
        }
        assertTrue(csv.lines().findFirst().orElse("").endsWith("latitude_deg,longitude_deg"));
    }

    @Test
    void theGridIsWhereTheMapKnowsSomething() throws Exception {
        String csv = new String(ExportedPeg.bytes(ExportedPeg.PLAN, Export.Kind.CSV, true), StandardCharsets.UTF_8);
        List<String> rows = csv.lines().skip(1).toList();
        int known = 0;
        var grid = ExportedPeg.map().grid();
        for (int i = 0; i < grid.frame().size(); i++) {
            known += grid.isWater(i) && grid.sd().at(i) <= 0.35 ? 1 : 0;
        }
        assertEquals(known, rows.size(), 2);
        String[] cells = rows.get(rows.size() / 2).split(",");
        double depth = ExportedPeg.map()
                .bottom()
                .at(Double.parseDouble(cells[0]), Double.parseDouble(cells[1]))
                .depthMetres();
        assertEquals(depth, Double.parseDouble(cells[2]), 1e-4);
    }

    /** The nodes in an area by the scan of rows are those by the locator that the map uses. */
    @Test
    void theScanOfRowsFindsTheWater() {
        GridFrame frame = PegRaster.frame(ExportedPeg.map(), 2);
        boolean[] inside = PegRaster.inside(frame, ExportedPeg.map().water().water());
        int differ = 0;
        int within = 0;
        for (int row = 0; row < frame.rows(); row++) {
            for (int column = 0; column < frame.columns(); column++) {
                boolean water = ExportedPeg.map().water().isWater(frame.x(column), frame.y(row));
                differ += water == inside[frame.index(column, row)] ? 0 : 1;
                within += water ? 1 : 0;
            }
        }
        assertTrue(within > 1000);
        // Only nodes exactly on the outline may go either way.
        assertTrue(differ <= within / 200, differ + " of " + within);
    }

    /** Directories first, then the tiles of the smallest overview, those of the full size last (OGC 21-026). */
    @Test
    void theGeoTiffHasTheCloudOptimizedLayout() throws Exception {
        byte[] bytes = ExportedPeg.bytes(ExportedPeg.PLAN, Export.Kind.GEOTIFF, false);
        ByteBuffer tiff = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
        assertEquals(42, tiff.getShort(2));
        List<Integer> firstTile = new ArrayList<>();
        List<Integer> widths = new ArrayList<>();
        int lastDirectory = 0;
        for (int at = tiff.getInt(4); at != 0; ) {
            assertTrue(at > lastDirectory && at % 2 == 0);
            lastDirectory = at;
            Map<Integer, Integer> values = new HashMap<>();
            int count = tiff.getShort(at);
            int before = -1;
            for (int i = 0; i < count; i++) {
                int field = at + 2 + 12 * i;
                int tag = tiff.getShort(field) & 0xFFFF;
                assertTrue(tag > before, "fields rise");
                before = tag;
                boolean within = tiff.getInt(field + 4) == 1;
                values.put(tag, within || tag != 324 ? tiff.getInt(field + 8) : tiff.getInt(tiff.getInt(field + 8)));
            }
            widths.add(values.get(256));
            firstTile.add(values.get(324));
            at = tiff.getInt(at + 2 + 12 * count);
        }
        assertEquals(List.of(691, 346, 173), widths);
        assertTrue(lastDirectory < firstTile.get(2));
        assertTrue(firstTile.get(2) < firstTile.get(1) && firstTile.get(1) < firstTile.get(0));
    }

    @Test
    void theSamePegGivesTheSameBytes() throws Exception {
        for (Export.Kind kind : Export.Kind.values()) {
            byte[] first = ExportedPeg.bytes(ExportedPeg.PLAN, kind, false);
            Thread.sleep(2); // A clock of milliseconds goes on.
            assertArrayEquals(first, ExportedPeg.bytes(ExportedPeg.PLAN, kind, false), kind.name());
        }
    }

    @Test
    void overviewsAreMeansOfWhatIsKnown() {
        float n = Float.NaN;
        Raster raster = new Raster(3, 2, new float[][] {{1, 2, 5, 3, n, n}}, new String[] {"a"}, new String[] {"m"});
        assertArrayEquals(new float[] {2, 5}, raster.halved().bands()[0]);
    }

    @Test
    void aPegAtAPoleIsRefused() {
        var peg = ExportedPeg.map().peg().withPosition(Optional.of(new Position(89.9, 0, 0)));
        for (Export.Kind kind : Export.Kind.values()) {
            InputException refused = assertThrows(
                    InputException.class, () -> Export.of(peg, kind, false).bytes(ExportedPeg.PLAN, Monitor.NONE));
            assertTrue(refused.getMessage().contains("too near a pole"), refused.getMessage());
        }
    }

    /** UTM is an affine map of the plane to a tenth of a millimetre within a peg. */
    @Test
    void theGridLiesWhereItsNodesAre() throws Exception {
        Georeference reference = Georeference.of(Optional.of(ExportedPeg.POSITION));
        GridFrame frame = PegRaster.frame(ExportedPeg.map(), 5);
        RasterPlace place = PegRaster.place(frame, reference, reference.zone());
        for (int column : new int[] {0, 300, frame.columns() - 1}) {
            for (int row : new int[] {0, 100, frame.rows() - 1}) {
                double[] at = {frame.x(column), frame.y(row)};
                reference.toZone(at, reference.zone());
                double c = column + 0.5;
                double r = frame.rows() - 1 - row + 0.5;
                double[] a = place.affine();
                Coordinate pixel = new Coordinate(a[0] * c + a[1] * r + a[2], a[3] * c + a[4] * r + a[5]);
                assertEquals(0, pixel.distance(new Coordinate(at[0], at[1])), 1e-4);
            }
        }
    }
}
