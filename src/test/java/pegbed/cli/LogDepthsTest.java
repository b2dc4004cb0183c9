package pegbed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbed.cli.output.Progress;

/** The depths of a whole water from its log. */
class LogDepthsTest {
    @TempDir
    private Path folder;

    private Path log;

    /** A bowl of 100 by 60 m, 4 m deep. */
    private static double depth(double x, double y) {
        return 4 - x * x / 2500 - y * y / 900;
    }

    @BeforeEach
    void log() throws IOException {
        log = write("log.csv", "x_m,y_m,depth_m\n" + rows());
    }

    private static String rows() {
        StringBuilder rows = new StringBuilder();
        for (int i = 0; i < 400; i++) {
            double x = -50 + 100 * ((i * 0.618034) % 1);
            double y = -30 + 60 * (i / 400.0);
            rows.append(String.format(Locale.ROOT, "%.2f,%.2f,%.3f%n", x, y, depth(x, y)));
        }
        return rows.toString();
    }

    private Path write(String name, String text) throws IOException {
        Path path = folder.resolve(name);
        Files.writeString(path, text);
        return path;
    }

    @Test
    void answersPlacesWithoutAPeg() throws IOException {
        Path points = write("points.csv", "x_m,y_m\n0,0\n-20,10\n5000,0\n");
        Ran ran = Ran.pegbed("depths", "--soundings", log, "--place-sd", "0.1", "--points", points);
        assertEquals(0, ran.status(), ran.err());
        List<String> rows = ran.out().lines().toList();
        assertEquals("x_m,y_m,depth_m,sd_m", rows.get(0));
        assertEquals(4, Double.parseDouble(rows.get(1).split(",")[2]), 0.05);
        assertEquals(depth(-20, 10), Double.parseDouble(rows.get(2).split(",")[2]), 0.05);
        assertTrue(Double.parseDouble(rows.get(2).split(",")[3]) < 0.1);
        assertEquals("5000,0,,", rows.get(3), "nothing is known so far away");
        JsonNode json = new ObjectMapper()
                .readTree(Ran.pegbed("depths", "--soundings", log, "--points", points, "--json")
                        .out());
        assertEquals(3, json.size());
        assertEquals(4, json.get(0).path("depth_m").asDouble(), 0.1);
        assertFalse(json.get(2).has("depth_m"));
    }

    @Test
    void writesAGridOverAllThatWasSounded() throws IOException {
        Path grid = folder.resolve("grid.csv");
        Ran ran = Ran.pegbed("depths", "--soundings", log, "--place-sd", "0.1", "--grid", "2.5", "--out", grid);
        assertEquals(0, ran.status(), ran.err());
        List<String> rows = Files.readAllLines(grid);
        assertEquals("x_m,y_m,depth_m,sd_m", rows.get(0));
        assertTrue(ran.out().contains((rows.size() - 1) + " nodes from 400 soundings"), ran.out());
        assertTrue(rows.size() > 900 && rows.size() < 1100, rows.size() + " rows");
        for (String row : rows.subList(1, rows.size())) {
            String[] cells = row.split(",");
            double x = Double.parseDouble(cells[0]);
            double y = Double.parseDouble(cells[1]);
            assertEquals(0, Math.IEEEremainder(x, 2.5), 1e-9);
            assertEquals(depth(x, y), Double.parseDouble(cells[2]), 0.15, row);
        }
        try (var files = Files.list(folder)) {
            assertEquals(2, files.count(), "nothing else is left behind");
        }
        String printed = Ran.pegbed("depths", "--soundings", log, "--place-sd", "0.1", "--grid", "2.5")
                .out();
        assertEquals(rows, printed.lines().toList());
    }

    @Test
    void readsDistancesAndDirectionsFromASeatAndOtherUnits() throws IOException {
        StringBuilder polar = new StringBuilder("note;distance_ft;angle_deg;depth_cm\n");
        for (int i = 0; i < 60; i++) {
            polar.append(String.format(Locale.ROOT, "n;%d;%d;%d%n", 10 + i % 10 * 3, -50 + i / 10 * 20, 150));
        }
        Path points = write("points.csv", "x_m,y_m\n0,6\n");
        Ran ran = Ran.pegbed("depths", "--soundings", write("polar.csv", polar.toString()), "--points", points);
        assertEquals(0, ran.status(), ran.err());
        assertEquals(1.5, Double.parseDouble(ran.out().lines().toList().get(1).split(",")[2]), 0.03);
        assertTrue(ran.err().contains("not used: note"), ran.err());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1,2,NaN | line 402, column depth_m: \"NaN\" is not a number",
                "1,,2 | line 402, column y_m: a number is missing",
                "1,2 | line 402, column depth_m: a number is missing",
                "1,2,-0.5 | line 402, column depth_m: -0.5 is out of range",
                "1,2,1e9 | line 402, column depth_m: 1e9 is out of range",
                "1,2,3,4 | line 402 has 4 values under 3",
                "1,\"2,3 | a quote",
            })
    void refusesABadRowWithItsLine(String row, String said) throws IOException {
        Path bad = write("bad.csv", "x_m,y_m,depth_m\n" + rows() + row + "\n\n5,5,2\n");
        Path grid = folder.resolve("grid.csv");
        Ran ran = Ran.pegbed("depths", "--soundings", bad, "--grid", "5", "--out", grid);
        assertEquals(2, ran.status());
        assertTrue(ran.err().contains("bad.csv") && ran.err().contains(said), ran.err());
        assertEquals(1, ran.err().lines().count(), ran.err());
        assertFalse(Files.exists(grid));
    }

    @Test
    void refusesFilesThatAreNoLog() throws IOException {
        Path points = write("points.csv", "x_m,y_m\n0,0\n");
        for (String text : List.of("", "\n\n", "x_m,y_m\n1,2\n", "x_m,y_m,depth_m\n", "1,2,3\n")) {
            Ran ran = Ran.pegbed("depths", "--soundings", write("bad.csv", text), "--points", points);
            assertEquals(2, ran.status(), text);
            assertTrue(ran.err().startsWith("bad.csv") && ran.err().lines().count() == 1, ran.err());
        }
        Path latin = folder.resolve("latin.csv");
        Files.write(latin, new byte[] {'x', (byte) 0xE4, '\n'});
        assertTrue(Ran.pegbed("depths", "--soundings", latin, "--points", points)
                .err()
                .contains("UTF-8"));
        assertEquals(
                2,
                Ran.pegbed("depths", "--soundings", folder.resolve("none.csv"), "--points", points)
                        .status());
    }

    @Test
    void saysWhatAnOptionNeeds() throws IOException {
        Path points = write("points.csv", "x_m,y_m\n0,0\n");
        for (Object[] words : new Object[][] {
            {"depths"},
            {"depths", "--points", points},
            {"depths", "--soundings", log},
            {"depths", "--soundings", log, "--grid", "5", "--points", points},
            {"depths", "--soundings", log, "--grid", "0"},
            {"depths", "--soundings", log, "--grid", "5", "--json"},
            {"depths", "--soundings", log, "--points", points, "--out", "x.csv"},
            {"depths", "--soundings", log, "--points", points, "--place-sd", "-1"},
            {"depths", "a.peg.json", "--soundings", log, "--points", points},
            {"depths", "a.peg.json"},
        }) {
            Ran ran = Ran.pegbed(words);
            assertEquals(2, ran.status(), java.util.Arrays.toString(words));
            assertEquals(1, ran.err().lines().count(), ran.err());
        }
    }

    @Test
    void progressIsToldOnATerminalOnly() {
        StringWriter told = new StringWriter();
        new Progress(new PrintWriter(told), false, 0).of("Work").progress(0.5);
        assertEquals("", told.toString());
        Progress progress = new Progress(new PrintWriter(told), true, 0);
        progress.of("Work").progress(0.5);
        progress.end();
        assertTrue(told.toString().contains("Work: 50 %"), told.toString());
    }

    @Test
    void workThatTellsNothingIsNamedAfterAWhile() throws InterruptedException {
        CountDownLatch flushed = new CountDownLatch(1);
        StringWriter told = new StringWriter() {
            @Override
            public void flush() {
                flushed.countDown();
            }
        };
        new Progress(new PrintWriter(told), true, 1).of("Work");
        assertTrue(flushed.await(20, TimeUnit.SECONDS), "nothing was shown");
        assertTrue(told.toString().contains("Work: 0 %"), told.toString());
    }
}
