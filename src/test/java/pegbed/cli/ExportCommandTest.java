package pegbed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExportCommandTest {
    @TempDir
    private Path folder;

    private Path peg;

    @BeforeEach
    void sample() throws IOException {
        peg = folder.resolve("14.peg.json");
        Files.copy(Path.of("sample-pegs/tansy-cut-14.peg.json"), peg);
    }

    @Test
    void aPegWithoutAPositionIsExportedAndThatIsSaid() throws IOException {
        Path out = folder.resolve("peg.geojson");
        Ran ran = Ran.pegbed("export", peg, "--out", out);
        assertEquals(0, ran.status(), ran.err());
        assertTrue(ran.err().startsWith("The peg has no position"), ran.err());
        assertTrue(Files.readString(out).contains("Local frame"));
    }

    @Test
    void withAPositionTheMachineIsToldTheReferenceSystem() throws IOException {
        Ran.pegbed("position", peg, "--at", "-33.9,18.4", "--bearing", "90");
        Path out = folder.resolve("peg.tif");
        Ran ran = Ran.pegbed("export", peg, "--by-itself", "--out", out, "--json");
        assertEquals(0, ran.status(), ran.err());
        assertEquals(32734, new ObjectMapper().readTree(ran.out()).path("epsg").asInt());
        assertEquals("II", Files.readString(out, StandardCharsets.ISO_8859_1).substring(0, 2));
    }

    @Test
    @Tag("slow")
    void aFolderGoesIntoOneGeoPackage() throws Exception {
        Files.copy(Path.of("sample-pegs/tansy-cut-9.peg.json"), folder.resolve("9.peg.json"));
        Files.copy(Path.of("sample-pegs/hobbrel-pond-3.peg.json"), folder.resolve("3.peg.json"));
        Files.writeString(folder.resolve("bad.peg.json"), "nothing");
        Ran.pegbed("position", peg, "--at", "52.1234,-1.2345", "--bearing", "90");
        Ran.pegbed("position", folder.resolve("9.peg.json"), "--at", "52.1236,-1.2341", "--bearing", "95");
        Path out = folder.resolve("water.gpkg");
        Ran ran = Ran.pegbed("export", folder, "--out", out);
        assertEquals(0, ran.status(), ran.err());
        assertEquals("Wrote 3 pegs to " + out + ".", ran.out().strip());
        assertTrue(ran.err().contains("left out: bad.peg.json"), ran.err());
        assertTrue(ran.err().contains("1 peg has no position"), ran.err());
        try (Connection base = DriverManager.getConnection("jdbc:sqlite:" + out)) {
            assertEquals("14 9", list(base, "SELECT DISTINCT peg FROM readings ORDER BY peg"));
            assertEquals("3", list(base, "SELECT DISTINCT peg FROM readings_local"));
            assertEquals(
                    "32630 32630",
                    list(base, "SELECT srs_id FROM gpkg_contents WHERE table_name IN" + " ('readings', 'contours')"));
            assertEquals("ok", list(base, "PRAGMA integrity_check"));
        }
        Ran some = Ran.pegbed("export", folder, "--out", out, "--find", "tansy 9", "--json");
        assertEquals(1, new ObjectMapper().readTree(some.out()).path("pegs").asInt(), some.err());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--points p.csv --at 52,-1 | --at and --bearing say where a GeoTIFF lies",
                "--grid 5 --out x.csv --at 52,-1 | --at and --bearing say where a GeoTIFF lies",
                "--grid 5 --out x.tif --bearing 20 | --bearing is a true bearing between 0 and 360 degrees, beside",
                "--grid 5 --out x.tif --at 90,0 | The latitude 90 is too near a pole"
            })
    void aLogsPositionIsLookedAtBeforeTheWork(String words, String sentence) {
        Object[] all = ("depths --soundings log.csv " + words).split(" ");
        Ran ran = Ran.pegbed(all);
        assertEquals(2, ran.status());
        assertTrue(ran.err().startsWith(sentence), ran.err());
    }

    private static String list(Connection base, String sql) throws Exception {
        StringBuilder all = new StringBuilder();
        try (ResultSet rows = base.createStatement().executeQuery(sql)) {
            while (rows.next()) {
                all.append(all.length() == 0 ? "" : " ").append(rows.getString(1));
            }
        }
        return all.toString();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "PEG | x.dxf | | must end in .geojson, .gpkg, .tif or .csv.",
                "PEG | x.csv | --table depths | --table: 'depths' is neither readings nor grid.",
                "PEG | x.tif | --table grid | --table says what a .csv file has",
                "PEG | x.tif | --find 9 | --find chooses among the pegs of a folder",
                "FOLDER | x.tif | | All pegs of a folder go into a GeoPackage",
                "FOLDER | x.gpkg | --find nowhere | There is no peg in",
                "NONE | x.gpkg | | There is no file"
            })
    void badInputGetsOneSentence(String what, String name, String more, String sentence) {
        Path path = what.equals("PEG") ? peg : what.equals("FOLDER") ? folder : folder.resolve("none.peg.json");
        Path out = folder.resolve(name);
        String[] words = more == null ? new String[0] : more.split(" ");
        Object[] all = new Object[4 + words.length];
        all[0] = "export";
        all[1] = path;
        all[2] = "--out";
        all[3] = out;
        System.arraycopy(words, 0, all, 4, words.length);
        Ran ran = Ran.pegbed(all);
        assertEquals(2, ran.status());
        assertTrue(ran.err().contains(sentence), ran.err());
        assertEquals(1, ran.err().strip().lines().count());
        assertFalse(Files.exists(out));
    }

    @Test
    void aPegAtAPoleIsRefused() throws IOException {
        String text = Files.readString(peg);
        Files.writeString(
                peg,
                text.replaceFirst(
                        "\"depth_unit\"",
                        "\"latitude_deg\": 90, \"longitude_deg\": 0, \"bearing_deg\": 0,\n  \"depth_unit\""));
        Ran ran = Ran.pegbed("export", peg, "--out", folder.resolve("x.tif"));
        assertEquals(2, ran.status());
        assertTrue(ran.err().contains("too near a pole"), ran.err());
    }
}
