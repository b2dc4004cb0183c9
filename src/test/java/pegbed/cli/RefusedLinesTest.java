package pegbed.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What can't be meant is refused with what would be right, and what a file says commands no terminal. */
class RefusedLinesTest {
    @TempDir
    private Path folder;

    private Path peg;

    @BeforeEach
    void sample() throws IOException {
        peg = folder.resolve("peg.peg.json");
        Files.copy(Path.of("sample-pegs", "tansy-cut-14.peg.json"), peg);
    }

    private void assertRefused(List<Object> words, String sentence) throws IOException {
        byte[] before = Files.readAllBytes(peg);
        Ran ran = Ran.pegbed(words.toArray());
        assertEquals(2, ran.status(), ran.out());
        assertEquals(sentence, ran.err().strip());
        assertArrayEquals(before, Files.readAllBytes(peg));
    }

    @Test
    void aReadingBeyondThePole() throws IOException {
        assertRefused(
                List.of("add", peg, "5 0 4'6", "100 5 4'6"),
                "\"100 5 4'6\" is 100.0 m out, beyond the pole's 16.0 m; type a distance between 0 and 16.0 m, or give the"
                        + " peg a longer pole first.");
        assertEquals(0, Ran.pegbed("add", peg, "16 5 4'").status());
    }

    @Test
    void anEdgeAtTheSeat() throws IOException {
        assertRefused(
                List.of("add", peg, "edge 0 0"),
                "\"edge 0 0\" is an edge at the seat itself; type how far out the water's edge is and in which direction,"
                        + " such as edge 13 20L.");
    }

    @Test
    void aSnagAtTheSeat() throws IOException {
        assertRefused(
                List.of("add", peg, "snag 0 0"),
                "\"snag 0 0\" is a snag at the seat itself; type how far out it is and in which direction, such as snag 9"
                        + " 20R.");
    }

    @Test
    void aTargetOfNothing() throws IOException {
        assertRefused(
                List.of("lines", peg, "--target", "0"),
                "--target is 0; give the depth of water that you want to fish in, such as 0.84, 2'9 or 33in.");
    }

    @Test
    void aTargetWithABottom() throws IOException {
        assertRefused(
                List.of("lines", peg, "--target", "2'9 silt"),
                "--target: \"silt\" has no place behind a depth, which is like 2'9, 33in or 84cm.");
        assertRefused(
                List.of("lines", peg, "--target", ""),
                "--target is empty; give metres as 0.84, or a unit as 2'9, 33in or 84cm.");
    }

    @Test
    void aSnagThatCoversTheWater() throws IOException {
        assertRefused(
                List.of("add", peg, "snag 9 20R 100"),
                "\"snag 9 20R 100\" is a snag 200 m wide; type a radius of 10 m at most, such as snag 9 20R 0.5.");
    }

    @Test
    void aCheckBeyondThePole() throws IOException {
        assertRefused(
                List.of("level", peg, "--check", "100m 0 1m"),
                "\"100m 0 1m\" is 100.0 m out, beyond the pole's 16.0 m; type a distance between 0 and 16.0 m, or give the"
                        + " peg a longer pole first.");
    }

    @Test
    void aThousandThatMayBeADecimal() throws IOException {
        assertRefused(
                List.of("add", peg, "6 0 1,250mm"),
                "\"1,250mm\" could be a thousand and more or a decimal; type it without a comma, like 1250mm.");
        assertEquals(0, Ran.pegbed("add", peg, "6 0 1,25m").status());
    }

    @Test
    void countsNameTheirOption() throws IOException {
        assertRefused(List.of("lines", peg, "--track", "99"), "--track takes a whole number between 0 and 6; not 99.");
        assertRefused(
                List.of("lines", peg, "--most-rigs", "0"), "--most-rigs takes a whole number between 1 and 12; not 0.");
    }

    @Test
    void numbersThatAreNoneTellTheirBounds() throws IOException {
        for (String typed : List.of("99999999999", "51", "-1", "1.5", "five")) {
            assertRefused(
                    List.of("next", peg, "--count", typed),
                    "--count takes a whole number between 1 and 50; not " + typed + ".");
        }
        assertRefused(
                List.of("next", peg, "--count", ""),
                "--count takes a whole number between 1 and 50; not an empty word.");
        assertRefused(
                List.of("lines", peg, "--most-lines", "99999999999"),
                "--most-lines takes a whole number between 1 and 12; not 99999999999.");
        assertRefused(
                List.of("compare", peg, "--from", "99999999999"),
                "--from takes a whole number between 1 and 1; not 99999999999.");
        assertRefused(
                List.of("bench", "waters", "--waters", "99999999999"),
                "--waters takes a whole number between 2 and 1000; not 99999999999.");
    }

    @Test
    void aBadCellGivesAnExampleInItsColumnsUnit() throws IOException {
        for (List<String> right : List.of(
                List.of("m", "1.37"),
                List.of("cm", "137"),
                List.of("mm", "1370"),
                List.of("ft", "4.49"),
                List.of("in", "53.94"))) {
            assertRefused(
                    made("distance_m,angle_deg,depth_" + right.get(0) + "\n5,0,deep\n", BANKS),
                    "r.csv, line 2, column depth_" + right.get(0)
                            + ": \"deep\" is not a number; right is, for example, " + right.get(1) + ".");
        }
        assertRefused(
                made("distance_cm,angle_deg,depth_m\n,0,1\n", BANKS),
                "r.csv, line 2, column distance_cm: a number is missing; right is, for example, 1150.");
    }

    @Test
    void namesThatAreEmpty() throws IOException {
        assertRefused(
                List.of("map", peg, "--out", ""), "--out is empty; give the name of a file that ends in .png or .svg.");
        assertRefused(
                List.of("card", peg, "--out", ""),
                "--out is empty; give the name of a file that ends in .pdf, .png, .svg or .html.");
        assertRefused(List.of("check", ""), "The name of the peg file is empty; give one, such as peg9.peg.json.");
    }

    private List<Object> made(String readings, String banks) throws IOException {
        Path r = Files.writeString(folder.resolve("r.csv"), readings);
        Path b = Files.writeString(folder.resolve("b.csv"), banks);
        return List.of("new", folder.resolve("new.peg.json"), "--readings", r, "--banks", b);
    }

    private static final String BANKS = "bank,x_m,y_m\nnear,-8,0.5\nnear,8,0.5\nfar,-8,12\nfar,8,12\n";

    @Test
    void tablesOfWhatCannotBeMeant() throws IOException {
        assertRefused(
                made("distance_m,angle_deg,depth_m\n5,0,1.2\n100,0,1.2\n", BANKS),
                "r.csv: reading 2 is 100.0 m out, beyond the pole's 16.0 m; give a distance between 0 and 16.0 m, or the"
                        + " length of your longest pole with --reach.");
        assertRefused(
                made("distance_m,angle_deg,depth_mm\n5,0,\"1,250\"\n", BANKS),
                "r.csv, line 2, column depth_mm: \"1,250\" could be a thousand and more or a decimal; right is, for"
                        + " example, 1250.");
        assertRefused(
                made(
                        "distance_m,angle_deg,depth_m\n5,180,1\n",
                        "bank,x_m,y_m\nnear,-8,-4\nnear,8,-4\nfar,-8,-2\nfar,8,-2\n"),
                "All the water between these banks lies behind the seat; y counts from the seat straight out, so that the"
                        + " far bank has y above 0, such as 13.");
        assertFalse(Files.exists(folder.resolve("new.peg.json")));
    }

    @Test
    void aPegFileOrTheLogItselfAsTheFileToWrite() throws IOException {
        Path log = Files.writeString(folder.resolve("log.csv"), "x_m,y_m,depth_m\n0,0,1\n3,0,1.1\n0,3,1.2\n");
        assertRefused(
                List.of("depths", "--soundings", log, "--grid", "5", "--out", log),
                "--out is the log itself, which it would write over; give another file.");
        assertRefused(
                List.of("depths", "--soundings", log, "--grid", "5", "--out", peg),
                "peg.peg.json is the name of a peg file and is not written over; give another.");
    }

    @Test
    void aNewPegOverItsOwnTables() throws IOException {
        List<Object> tables =
                made("distance_m,angle_deg,depth_m\n5,0,1.2\n", BANKS).subList(2, 6);
        Path link = Files.createSymbolicLink(folder.resolve("link.csv"), Path.of("r.csv"));
        for (String name : List.of("r.csv", "link.csv", "b.csv")) {
            Path table = folder.resolve(name);
            byte[] before = Files.readAllBytes(table);
            for (String last : List.of("--replace", "--usual-rigs")) {
                List<Object> words = new ArrayList<>(List.of("new", table));
                words.addAll(tables);
                words.add(last);
                assertRefused(
                        words,
                        table + " is the table of " + (name.equals("b.csv") ? "--banks" : "--readings")
                                + " itself, which the peg would be written over; give the peg file another name.");
                assertArrayEquals(before, Files.readAllBytes(table));
            }
        }
        assertTrue(Files.isSymbolicLink(link));
    }

    @Test
    void aNewPegOfANameThatIsNone() throws IOException {
        List<Object> tables =
                made("distance_m,angle_deg,depth_m\n5,0,1.2\n", BANKS).subList(2, 6);
        Path none = Files.createSymbolicLink(folder.resolve("none.peg.json"), Path.of("gone"));
        Path round = Files.createSymbolicLink(folder.resolve("round.peg.json"), Path.of("back"));
        Files.createSymbolicLink(folder.resolve("back"), Path.of("round.peg.json"));
        Path inside = Files.createDirectory(folder.resolve("inside"));
        Map<Object, String> refused = Map.of(
                "",
                "The name of the peg file is empty; give one, such as peg9.peg.json.",
                "/",
                "/ is a folder; give the name of a file in it, such as peg9.peg.json.",
                inside,
                "inside is a folder; give the name of a file in it, such as peg9.peg.json.",
                none,
                "none.peg.json could not be saved: it is a link to a file that is not there; remove it, or give another"
                        + " name.",
                round,
                "round.peg.json could not be saved: its links go round in a circle and lead to no file; remove one of"
                        + " them, or give another name.");
        for (Map.Entry<Object, String> each : refused.entrySet()) {
            for (String last : List.of("--replace", "--usual-rigs")) {
                List<Object> words = new ArrayList<>(List.of("new", each.getKey()));
                words.addAll(tables);
                words.add(last);
                assertRefused(words, each.getValue());
            }
        }
        assertTrue(Files.isSymbolicLink(none));
        assertRefused(
                List.of("check", round),
                "round.peg.json could not be read: its links go round in a circle and lead to no file; remove one of"
                        + " them, or give another name.");
    }

    @Test
    void aCheckTellsTheDamageThatLostTheBanks() throws IOException {
        Files.writeString(peg, Files.readString(peg).replaceFirst("\"near_bank\": \\[", "\"near_bank\": [[[["));
        Ran ran = Ran.pegbed("check", peg);
        assertEquals(1, ran.status(), ran.err());
        assertTrue(ran.out().contains("The file is damaged at line "), ran.out());
        assertTrue(ran.out().contains("The near bank has no points"), ran.out());
    }

    @Test
    void escapesOfAFileAreShown() throws IOException {
        Files.writeString(
                peg,
                Files.readString(peg).replaceFirst("\"water\": \"", "\"water\": \"\\\\u001b[31mred\\\\u202e\\\\u009b"));
        for (List<Object> words : List.<List<Object>>of(
                List.of("lines", peg), List.of("lines", peg, "--json"), List.of("shelf", folder))) {
            Ran ran = Ran.pegbed(words.toArray());
            assertEquals(0, ran.status(), ran.err());
            for (char sign : new char[] {'\u001b', '\u202e', '\u009b'}) {
                assertFalse(ran.out().indexOf(sign) >= 0, ran.out());
            }
        }
        assertTrue(Ran.pegbed("lines", peg).out().contains("\\u001b[31mred\\u202e\\u009b"));
    }
}
