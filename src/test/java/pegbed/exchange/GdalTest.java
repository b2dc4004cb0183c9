package pegbed.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.findings.PegMap;
import pegbed.lake.LakeBottom;
import pegbed.lake.LakeGrid;
import pegbed.lake.LakeModel;
import pegbed.model.Monitor;
import pegbed.model.Position;
import pegbed.model.Reading;
import pegbed.storage.table.LogTable;
import pegbed.surface.grid.GridFrame;

/**
 * What GDAL, OGR and libtiff read in the files is what the peg holds. Their programs come with Debian's gdal-bin and
 * libtiff-tools, which {@code .ci/run} installs: without them these tests are left out, but fail where CI is true.
 */
@Tag("slow")
class GdalTest {
    @TempDir
    private Path folder;

    @BeforeAll
    static void programs() {
        boolean there =
                Files.isExecutable(Path.of("/usr/bin/gdalinfo")) && Files.isExecutable(Path.of("/usr/bin/tiffinfo"));
        if ("true".equals(System.getenv("CI"))) {
            assertTrue(there, "gdal-bin and libtiff-tools are missing; .ci/run installs them");
        }
        assumeTrue(there, "gdal-bin and libtiff-tools are not installed");
    }

    private String said(String input, String... words) throws IOException, InterruptedException {
        Path in = Files.writeString(folder.resolve("in"), input);
        Path out = folder.resolve("out");
        ProcessBuilder builder = new ProcessBuilder(words)
                .redirectInput(in.toFile())
                .redirectOutput(out.toFile())
                .redirectError(folder.resolve("err").toFile());
        assertEquals(0, builder.start().waitFor(), () -> String.join(" ", words));
        return Files.readString(out, StandardCharsets.UTF_8);
    }

    /**
     * A hundred nodes of the 25 cm grid: the depth is that of the model itself, the doubt the map's, to a tenth of a
     * millimetre.
     */
    @Test
    void depthsOfTheGeoTiffAreTheModels() throws Exception {
        Path tiff = ExportedPeg.file(folder, ExportedPeg.PLAN, Export.Kind.GEOTIFF, false);
        PegMap map = ExportedPeg.map();
        GridFrame frame = map.grid().frame();
        Georeference reference = Georeference.of(map.peg().position());
        Random random = new Random(20);
        StringBuilder places = new StringBuilder();
        List<Double> expected = new ArrayList<>();
        while (expected.size() < 300) {
            int i = random.nextInt(frame.size());
            if (map.grid().isWater(i) && map.grid().sd().at(i) < 0.3) {
                double x = frame.x(i % frame.columns());
                double y = frame.y(i / frame.columns());
                double[] at = {x, y};
                reference.toZone(at, reference.zone());
                places.append(String.format(Locale.ROOT, "%.4f %.4f%n", at[0], at[1]));
                expected.add(map.bottom().at(x, y).depthMetres());
                expected.add(map.grid().sd().at(i));
                expected.add(slope(map, x, y));
            }
        }
        List<String> found = said(places.toString(), "gdallocationinfo", "-valonly", "-geoloc", tiff.toString())
                .lines()
                .toList();
        assertEquals(expected.size(), found.size());
        double[] largest = new double[3];
        for (int i = 0; i < found.size(); i++) {
            double off = Math.abs(expected.get(i) - Double.parseDouble(found.get(i)));
            largest[i % 3] = Math.max(largest[i % 3], off);
        }
        assertTrue(largest[0] < 0.0001, "depth " + largest[0]);
        assertTrue(largest[1] < 0.0001, "sd " + largest[1]);
        assertTrue(largest[2] < 0.001, "slope " + largest[2]);
    }

    /** Horn's slope over the model's own depths at three by three places 25 cm apart. */
    private static double slope(PegMap map, double x, double y) {
        double[][] d = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                d[i][j] =
                        map.bottom().at(x + 0.25 * (i - 1), y + 0.25 * (j - 1)).depthMetres();
            }
        }
        double gx = (d[2][0] + 2 * d[2][1] + d[2][2] - d[0][0] - 2 * d[0][1] - d[0][2]) / 2;
        double gy = (d[0][2] + 2 * d[1][2] + d[2][2] - d[0][0] - 2 * d[1][0] - d[2][0]) / 2;
        return Math.hypot(gx, gy);
    }

    @Test
    void theGeoTiffIsCloudOptimizedAndInUtm() throws Exception {
        Path tiff = ExportedPeg.file(folder, ExportedPeg.PLAN, Export.Kind.GEOTIFF, false);
        String info = said("", "gdalinfo", "-stats", tiff.toString());
        for (String words : new String[] {
            "LAYOUT=COG",
            "ID[\"EPSG\",32630]",
            "NoData Value=-9999",
            "Overviews: 346x161, 173x81",
            "Description = depth",
            "Description = sd",
            "Description = slope"
        }) {
            assertTrue(info.contains(words), words + " in " + info);
        }
        String tags = said("", "tiffinfo", "-D", tiff.toString());
        assertTrue(tags.contains("Tile Width: 256 Tile Length: 256"), tags);
        assertTrue(tags.contains("Sample Format: IEEE floating point"), tags);
        assertEquals(3, tags.split("Compression Scheme: AdobeDeflate", -1).length - 1, tags);
        assertTrue(tags.contains("1,1,1,5,1024,0,1,1,1025,0,1,1,1026,34737,22,0,3072,0,1,32630,3076,0,1,9001"), tags);
    }

    @Test
    void readingsOfGeoPackageAndGeoJsonAreThePegs() throws Exception {
        Path gpkg = ExportedPeg.file(folder, ExportedPeg.PLAN, Export.Kind.GEOPACKAGE, false);
        Path json = ExportedPeg.file(folder, ExportedPeg.PLAN, Export.Kind.GEOJSON, false);
        List<Reading> readings = ExportedPeg.map().peg().readings();
        Georeference reference = Georeference.of(ExportedPeg.map().peg().position());
        String zone = said(
                "",
                "ogr2ogr",
                "-f",
                "CSV",
                "/vsistdout/",
                gpkg.toString(),
                "-sql",
                "SELECT geom, reading, depth_m FROM readings ORDER BY reading",
                "-lco",
                "GEOMETRY=AS_XY");
        String earth = said(
                "",
                "ogr2ogr",
                "-f",
                "CSV",
                "/vsistdout/",
                json.toString(),
                "-sql",
                "SELECT reading, depth_m FROM peg WHERE layer = 'readings' ORDER BY reading",
                "-lco",
                "GEOMETRY=AS_XY");
        assertEquals(readings.size(), zone.lines().count() - 1);
        assertEquals(readings.size(), earth.lines().count() - 1);
        for (int i = 0; i < readings.size(); i++) {
            double[] inZone = {
                readings.get(i).place().xMetres(), readings.get(i).place().yMetres()
            };
            double[] onEarth = inZone.clone();
            reference.toZone(inZone, reference.zone());
            reference.toEarth(onEarth);
            String[] utm = zone.lines().toList().get(i + 1).split(",");
            String[] lonLat = earth.lines().toList().get(i + 1).split(",");
            assertEquals(inZone[0], Double.parseDouble(utm[0]), 0.001);
            assertEquals(inZone[1], Double.parseDouble(utm[1]), 0.001);
            assertEquals(onEarth[0], Double.parseDouble(lonLat[0]), 1e-8);
            assertEquals(onEarth[1], Double.parseDouble(lonLat[1]), 1e-8);
            assertEquals(readings.get(i).depthMetres(), Double.parseDouble(utm[3]), 1e-9);
            assertEquals(readings.get(i).depthMetres(), Double.parseDouble(lonLat[3]), 1e-4);
        }
        // UTM by PROJ from the longitudes in the GeoJSON file.
        String first = earth.lines().skip(1).findFirst().orElseThrow();
        String proj = said(
                first.split(",")[0] + " " + first.split(",")[1],
                "gdaltransform",
                "-s_srs",
                "OGC:CRS84",
                "-t_srs",
                "EPSG:32630",
                "-output_xy");
        String[] utm = zone.lines().toList().get(1).split(",");
        assertEquals(Double.parseDouble(utm[0]), Double.parseDouble(proj.split(" ")[0]), 0.001);
        assertEquals(Double.parseDouble(utm[1]), Double.parseDouble(proj.split(" ")[1].strip()), 0.001);
    }

    @Test
    void allLayersOfTheGeoPackageAreRead() throws Exception {
        Path gpkg = ExportedPeg.file(folder, ExportedPeg.PLAN, Export.Kind.GEOPACKAGE, false);
        String info = said("", "ogrinfo", "-so", "-al", gpkg.toString());
        for (Layer layer : PegLayers.of(ExportedPeg.PLAN)) {
            assertTrue(
                    info.matches("(?s).*Layer name: " + layer.name() + "\\R.*?Feature Count: "
                            + layer.features().size() + "\\R.*"),
                    layer.name());
        }
        assertTrue(info.contains("ID[\"EPSG\",32630]"), info);
        assertEquals("", Files.readString(folder.resolve("err")));
    }

    /**
     * A water of 60 by 60 m, 4 m deep and falling 1 in 20 to the north-east, from its log with an origin on the earth.
     */
    @Test
    void aLogsGridIsReadWhereItLies() throws Exception {
        StringBuilder log = new StringBuilder("x_m,y_m,depth_m\n");
        for (int x = -30; x <= 30; x += 3) {
            for (int y = -30; y <= 30; y += 3) {
                log.append(x)
                        .append(',')
                        .append(y)
                        .append(',')
                        .append(depth(x, y))
                        .append('\n');
            }
        }
        Path soundings = Files.writeString(folder.resolve("log.csv"), log.toString());
        LakeBottom bottom = LakeModel.fit(LogTable.read(soundings, 0.1).log(), Monitor.NONE);
        Optional<Position> position = Optional.of(new Position(52.1234, -1.2345, 30));
        LakeTiff made = LakeTiff.of(bottom, LakeGrid.over(bottom, 2.5), position, Monitor.NONE);
        assertTrue(made.known() > 500);
        Path tiff = Files.write(folder.resolve("lake.tif"), made.file());
        Georeference reference = Georeference.of(position);
        double[] at = {10, -5};
        reference.toZone(at, reference.zone());
        List<String> found = said(at[0] + " " + at[1], "gdallocationinfo", "-valonly", "-geoloc", tiff.toString())
                .lines()
                .toList();
        assertEquals(
                bottom.depths(new double[] {10}, new double[] {-5}, Monitor.NONE)
                        .depthMetres()[0],
                Double.parseDouble(found.get(0)),
                0.001);
        assertEquals(0.05 * Math.sqrt(2), Double.parseDouble(found.get(2)), 0.01);
    }

    private static double depth(double x, double y) {
        return 4 + 0.05 * (x + y);
    }

    @Test
    void theLocalFrameIsReadWithoutAPlaceOnTheEarth() throws Exception {
        Path tiff = ExportedPeg.file(folder, ExportedPeg.withoutPosition(), Export.Kind.GEOTIFF, false);
        PegMap map = ExportedPeg.map();
        double x = map.grid().frame().x(map.grid().frame().columns() / 2);
        double y = map.grid().frame().y(map.grid().frame().rows() / 2);
        String found = said(x + " " + y, "gdallocationinfo", "-valonly", "-geoloc", tiff.toString());
        assertEquals(
                map.bottom().at(x, y).depthMetres(),
                Double.parseDouble(found.lines().findFirst().orElseThrow()),
                0.0001);
        assertTrue(said("", "gdalinfo", tiff.toString()).contains("Local frame"));
    }
}
