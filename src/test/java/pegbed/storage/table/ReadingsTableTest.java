package pegbed.storage.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pegbed.model.Bottom;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Reading;
import pegbed.storage.peg.RandomPegs;

/** Tables of readings in and out. */
class ReadingsTableTest {
    private static final List<Reading> TWO = List.of(Reading.of(11, -20, 1.37), Reading.of(2.5, 0, 0.9));

    private static ReadingsTable table(String text) throws InputException {
        return ReadingsTable.read(new StringReader(text), "r.csv");
    }

    private static String refusal(String text) {
        String sentence = assertThrows(InputException.class, () -> table(text)).getMessage();
        assertTrue(sentence.startsWith("r.csv"), sentence);
        assertTrue(sentence.endsWith("."), sentence);
        assertTrue(sentence.indexOf('\n') < 0, sentence);
        return sentence;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "distance_m,angle_deg,depth_m\n11,-20,1.37\n2.5,0,.9\n",
                "distance_m,angle_deg,depth_m\r\n11,-20,1.37\r\n2.5,0,0.90",
                "\uFEFFdistance_m,angle_deg,depth_m\n11.0,-20.,1.370\n+2.5,0,9e-1\n",
                "depth_m,distance_m,angle_deg\n1.37,11,-20\n0.9,2.5,0\n",
                "distance_m;angle_deg;depth_m\n11;-20;1,37\n2,5;0;,9\n",
                "distance_m\tangle_deg\tdepth_m\r\n11\t-20\t1,37\r\n2,5\t0\t0,9\r\n",
                "\"distance_m\",\"angle_deg\",\"depth_m\"\n\"11\",\"\u221220\",\"1,37\"\n\"2,5\",\"0\",\"0,9\"\n",
                "\n\nDistance (m) , Angle deg ,DEPTH_M\n\n 11 ,\u00A0-20, 1.37 \n,,\n2.5,0,0.9\n\n\n",
                "distance_m,angle_deg,depth_cm\n11,-20,137\n2.5,0,90\n",
                "distance_cm,angle_deg,depth_mm\n1100,-20,1370\n250,0,900\n",
                "distance_m,angle_deg,depth_m,\n11,-20,1.37,\n2.5,0,0.9\n"
            })
    void manyWaysOfWritingTheSameTable(String text) throws InputException {
        assertEquals(new ReadingsTable(TWO, List.of()), table(text));
    }

    @Test
    void feetAndInchesAreExact() throws InputException {
        // 1 ft = 0.3048 m, 1 in = 25.4 mm exactly (international agreement of 1959).
        List<Reading> readings =
                table("distance_ft,angle_deg,depth_ft\n36,0,4.5\n").readings();
        assertEquals(List.of(Reading.of(10.9728, 0, 1.3716)), readings);
        assertEquals(
                1.6764,
                table("distance_m,angle_deg,depth_in\n1,0,66\n")
                        .readings()
                        .get(0)
                        .depthMetres());
    }

    @Test
    void bottomAndNoteAreKept() throws InputException {
        ReadingsTable table = table("""
                note,bottom,distance_m,angle_deg,depth_m
                "soft, ""very""
                second line",Silt,11,-20,1.37
                ,,2.5,0,0.9
                """);
        assertEquals(Bottom.SILT, table.readings().get(0).bottom());
        assertEquals("soft, \"very\"\nsecond line", table.readings().get(0).note());
        assertEquals(TWO.get(1), table.readings().get(1));
    }

    @Test
    void otherColumnsArePassedOverAndNamed() throws InputException {
        assertEquals(
                List.of("who", "colour of line"),
                table("who,distance_m,angle_deg,colour of line,depth_m\nx,1,2,y,1\n")
                        .ignoredColumns());
    }

    @Test
    void aHeaderAloneIsATableOfNoReadings() throws InputException {
        assertEquals(new ReadingsTable(List.of(), List.of()), table("distance_m,angle_deg,depth_m\n"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " \n\n", "\uFEFF", "\uFEFF\r\n", ",,\n"})
    void anEmptyTableIsRefused(String text) {
        assertTrue(refusal(text).contains("is empty; its first line must name the columns"));
    }

    @Test
    void theFirstThingWrongIsNamedByLineAndColumn() {
        assertTrue(refusal("11,-20,1.37\n").contains("has no header"));
        assertTrue(refusal("distance_m,angle_deg\n1,2\n").contains("there is no column depth_m"));
        assertTrue(refusal("distance_m,angle_deg,depth\n1,2,3\n").contains("depth needs its unit, such as depth_m"));
        assertTrue(refusal("distance_m,angle_rad,depth_m\n1,2,3\n").contains("there is no column angle_deg"));
        assertTrue(refusal("distance_m,distance_m,angle_deg,depth_m\n").contains("two columns distance_m"));
        assertTrue(refusal("distance_m,angle_deg,depth_m,depth_ft\n").contains("two columns for depth"));
        String head = "distance_m,angle_deg,depth_m,bottom\n11,-20,1.37,silt\n\n";
        assertEquals(
                "r.csv, line 4, column depth_m: \"deep\" is not a number; right is, for example, 1.37.",
                refusal(head + "1,2,deep,\n"));
        assertEquals(
                "r.csv, line 4, column angle_deg: a number is missing; right is, for example, -20.",
                refusal(head + "1, ,1,\n"));
        assertEquals(
                "r.csv, line 5, column depth_m: -1 is out of range, 0 to 30; right is, for example, 1.37.",
                refusal(head + "1,2,1,\r\n1,2,-1,\r\n"));
        assertTrue(refusal(head + "1,2,30.001,\n").contains("30.001 is out of range, 0 to 30"));
        assertTrue(refusal(head + "-1,2,3,\n").contains("line 4, column distance_m: -1 is out of range"));
        assertTrue(refusal(head + "1,361,3,\n").contains("line 4, column angle_deg: 361 is out of range"));
        assertTrue(refusal(head + "1,2,3,mush\n").contains("line 4, column bottom: \"mush\" is none of unknown, firm"));
        assertTrue(refusal(head + "1\n").contains("line 4, column angle_deg: a number is missing"));
        assertTrue(refusal(head + "1,2,3,silt,5\n").contains("line 4 has 5 values under 4 column names"));
        assertTrue(refusal(head + "1,2,\"3,silt\n").contains("line 4: a quote"));
        assertTrue(refusal(head + "1,2,\"3\"x,silt\n").contains("line 4: a quote"));
        assertTrue(refusal(head + "\"1\",2,\"three\nmore\",\n").contains("line 4, column depth_m: \"three more\""));
        assertTrue(refusal("distance_m,angle_deg,depth_ft\n1,2,99\n").contains("99 is out of range, 0 to 98.43"));
        assertTrue(refusal("distance_m,angle_deg,depth_m\n1,2,\u0000\n").contains("is not text"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "NaN",
                "Infinity",
                "-inf",
                "1e400",
                "1e999",
                "0x10",
                "1.234,5",
                "1,2,3",
                "--1",
                "1 2",
                "1d",
                "\u0661"
            })
    void whatIsNoFiniteNumberIsRefused(String cell) {
        assertTrue(refusal("distance_m;angle_deg;depth_m\n1;2;" + cell + "\n").contains("line 2, column depth_m"));
    }

    @Test
    void filesThatCanNotBeReadAreRefused(@TempDir Path folder) throws IOException {
        Path utf16 =
                Files.writeString(folder.resolve("r.csv"), "distance_m,angle_deg,depth_m\n", StandardCharsets.UTF_16);
        assertTrue(assertThrows(InputException.class, () -> ReadingsTable.read(utf16))
                .getMessage()
                .startsWith("r.csv is not UTF-8 text"));
        assertTrue(assertThrows(InputException.class, () -> ReadingsTable.read(folder))
                .getMessage()
                .contains("is a folder"));
        assertTrue(assertThrows(InputException.class, () -> ReadingsTable.read(folder.resolve("none.csv")))
                .getMessage()
                .startsWith("There is no file"));
        Reader broken = new Reader() {
            @Override
            public int read(char[] into, int offset, int length) throws IOException {
                throw new IOException("the line went dead");
            }

            @Override
            public void close() {}
        };
        assertEquals(
                "r.csv could not be read: the line went dead.",
                assertThrows(InputException.class, () -> ReadingsTable.read(broken, "r.csv"))
                        .getMessage());
    }

    @Test
    void aFileIsReadLikeText(@TempDir Path folder) throws IOException, InputException {
        Path file = Files.writeString(folder.resolve("r.csv"), "distance_m,angle_deg,depth_m\n11,-20,1.37\n2.5,0,.9\n");
        assertEquals(TWO, ReadingsTable.read(file).readings());
    }

    @Test
    void readingsAreWrittenAsRfc4180() {
        Reading noted = withNote(TWO.get(0), "soft, \"very\"");
        assertEquals(
                "distance_m,angle_deg,depth_m,bottom,note\r\n"
                        + "11,-20,1.37,,\"soft, \"\"very\"\"\"\r\n2.5,0,0.9,,\r\n",
                ReadingsTable.write(List.of(noted, TWO.get(1))));
    }

    private static Reading withNote(Reading reading, String note) {
        return new Reading(
                reading.typed(),
                reading.place(),
                reading.precision(),
                reading.depthMetres(),
                reading.bottom(),
                note,
                reading.time(),
                reading.extras());
    }

    @Property(tries = 500)
    @Domain(RandomPegs.class)
    void whatIsWrittenIsReadBackTheSame(@ForAll Peg peg) throws InputException {
        List<Reading> readings = peg.readings().stream()
                .map(reading -> withNote(reading, reading.note().replace("\0", "")))
                .toList();
        String text = ReadingsTable.write(readings);
        List<Reading> again = table(text).readings();
        assertEquals(readings.size(), again.size());
        for (int i = 0; i < again.size(); i++) {
            assertTrue(readings.get(i).place().distanceTo(again.get(i).place()) <= 1e-9);
            assertEquals(readings.get(i).depthMetres(), again.get(i).depthMetres());
            assertEquals(readings.get(i).bottom(), again.get(i).bottom());
            assertEquals(readings.get(i).note(), again.get(i).note());
        }
        assertEquals(text, ReadingsTable.write(again));
    }

    @Property(tries = 3000)
    void noTextThrowsAnythingElse(@ForAll String text) {
        for (String tried : List.of(text, "distance_m,angle_deg,depth_m,note\n" + text)) {
            try {
                ReadingsTable table = table(tried);
                assertTrue(table.readings().stream().allMatch(reading -> reading.depthMetres() <= 30));
            } catch (InputException refused) {
                assertTrue(refused.getMessage().startsWith("r.csv"), refused.getMessage());
            }
        }
    }
}
