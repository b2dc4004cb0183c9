package pegbed.storage.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.PegName;
import pegbed.model.Reading;
import pegbed.storage.disk.PegFile;
import pegbed.storage.peg.PegWriter;

class NeighbouringPegFilesTest {
    @TempDir
    private Path folder;

    private static Peg peg(String venue, String water, String number) {
        return Peg.EMPTY.withName(new PegName(venue, water, number)).withReading(Reading.of(4, 0, 1.2));
    }

    private Path save(String file, Peg peg) throws InputException {
        Path path = folder.resolve(file + PegFile.ENDING);
        PegFile.save(path, peg, Optional.empty());
        return path;
    }

    private static List<String> numbers(NeighbouringPegFiles others) {
        return others.pegs().stream().map(peg -> peg.name().number()).toList();
    }

    @Test
    void areThoseOfTheSameVenueAndWaterNearestFirst() throws InputException, IOException {
        Path nine = save("nine", peg("Mallowfield Pools", "Tansy Cut", "9"));
        save("a", peg("Mallowfield Pools", "Tansy Cut", "14"));
        save("b", peg("mallowfield pools ", "TANSY CUT", "10"));
        save("c", peg("Mallowfield Pools", "Hobbrel Pond", "9"));
        save("d", peg("Elsewhere", "Tansy Cut", "8"));
        save("e", peg("Mallowfield Pools", "Tansy Cut", "9"));
        save("f-copy", peg("Mallowfield Pools", "Tansy Cut", "14").withReading(Reading.of(6, 0, 1.5)));
        Files.createDirectories(folder.resolve("deleted"));
        save("deleted/g", peg("Mallowfield Pools", "Tansy Cut", "8"));

        NeighbouringPegFiles others =
                NeighbouringPegFiles.beside(nine, PegFile.read(nine).peg());

        assertEquals(List.of("10", "14"), numbers(others), "not itself, no copy of it, each peg once");
        assertEquals(1, others.pegs().get(1).readings().size(), "of two files of one peg that of the shorter name");
        assertTrue(others.passedOver().isEmpty());
    }

    @Test
    void areTheNearestOfMany() throws InputException {
        Path twenty = save("own", peg("v", "w", "20"));
        for (int number = 1; number <= 30; number++) {
            save("peg" + number, peg("v", "w", Integer.toString(number)));
        }
        assertEquals(
                List.of("19", "21", "18", "22", "17", "23"),
                numbers(NeighbouringPegFiles.beside(twenty, PegFile.read(twenty).peg())));
    }

    @Test
    void areNoneWhereThePegStandsByItselfOrItsWaterHasNoName() throws InputException {
        Path nine = save("nine", peg("v", "w", "9"));
        save("ten", peg("v", "w", "10"));
        save("eleven", peg("v", "", "11"));
        Peg peg = PegFile.read(nine).peg();
        assertEquals(1, NeighbouringPegFiles.beside(nine, peg).pegs().size());
        assertEquals(
                NeighbouringPegFiles.NONE,
                NeighbouringPegFiles.beside(nine, peg.withWishes(peg.wishes().withByItself(true))));
        assertEquals(
                NeighbouringPegFiles.NONE, NeighbouringPegFiles.beside(nine, peg.withName(new PegName("v", "", "9"))));
        assertEquals(NeighbouringPegFiles.NONE, NeighbouringPegFiles.beside(folder.resolve("none/here.peg.json"), peg));
    }

    @Test
    void brokenFilesArePassedOverWithASentence() throws InputException, IOException {
        Path nine = save("nine", peg("v", "w", "9"));
        save("ten", peg("v", "w", "10"));
        Path cut = save("cut", peg("v", "w", "11"));
        String whole = Files.readString(cut);
        Files.writeString(cut, whole.substring(0, whole.indexOf("depth_m")));
        Files.writeString(folder.resolve("noise" + PegFile.ENDING), "{\"format\": \"pegbed-peg\", \"ven");
        Files.writeString(folder.resolve("other" + PegFile.ENDING), "{\"format\": \"something else\"}");
        Files.write(folder.resolve("zero" + PegFile.ENDING), new byte[64]);
        Files.createDirectories(folder.resolve("folder" + PegFile.ENDING));

        NeighbouringPegFiles others =
                NeighbouringPegFiles.beside(nine, PegFile.read(nine).peg());

        assertEquals(List.of("10"), numbers(others));
        assertEquals(3, others.passedOver().size(), others.passedOver().toString());
        assertTrue(others.passedOver().stream().anyMatch(sentence -> sentence.startsWith("cut.peg.json is damaged")));
        assertTrue(others.passedOver().stream().anyMatch(sentence -> sentence.startsWith("noise.peg.json could not")));
        assertTrue(others.passedOver().stream().allMatch(sentence -> sentence.endsWith(".")));
    }

    @Test
    void manyBrokenFilesAreCounted() throws InputException, IOException {
        Path nine = save("nine", peg("v", "w", "9"));
        for (int i : IntStream.range(0, 10).toArray()) {
            Files.writeString(folder.resolve("noise" + i + PegFile.ENDING), "no");
        }
        List<String> said =
                NeighbouringPegFiles.beside(nine, PegFile.read(nine).peg()).passedOver();
        assertEquals(4, said.size());
        assertEquals("7 more files could not be used either.", said.get(3));
    }

    @Test
    void theNameIsReadWhereverItStands() throws InputException, IOException {
        Path nine = save("nine", peg("v", "w", "9"));
        String text = PegWriter.text(peg("v", "w", "10"));
        int start = text.indexOf("  \"venue\"");
        int end = text.indexOf("  \"depth_unit\"");
        String name = text.substring(start, end).strip();
        String turned = text.substring(0, start)
                + text.substring(end, text.lastIndexOf('}')).stripTrailing()
                + ",\n  " + name.substring(0, name.length() - 1) + "\n}\n";
        Files.writeString(folder.resolve("turned" + PegFile.ENDING), turned);
        assertEquals(
                List.of("10"),
                numbers(NeighbouringPegFiles.beside(nine, PegFile.read(nine).peg())));
    }

    private static Peg plumbed(String number, double... depths) {
        Peg peg = Peg.EMPTY.withName(new PegName("v", "w", number));
        for (int i = 0; i < depths.length; i++) {
            peg = peg.withReading(Reading.of(4 + i, 10 * i, depths[i]));
        }
        return peg;
    }

    @Test
    void aCopyUnderAnotherNumberTeachesNothingAndIsSaid() throws InputException {
        Path nine = save("nine", plumbed("9", 1.1, 1.2, 1.3, 1.4));
        save("copy", plumbed("10", 1.1, 1.2, 1.3, 1.4));
        save("copy-read-on", plumbed("11", 1.1, 1.2, 1.3, 1.4, 0.8));
        save("own", plumbed("12", 1.1, 1.2, 1.3, 1.5));
        save("twin", plumbed("13", 1.1, 1.2, 1.3, 1.5));
        save("few-alike", plumbed("14", 1.1, 1.2));

        NeighbouringPegFiles others =
                NeighbouringPegFiles.beside(nine, PegFile.read(nine).peg());

        assertEquals(List.of("12", "14"), numbers(others));
        assertEquals(
                List.of(
                        "copy.peg.json has the same readings as this peg, as a copy has, and teaches nothing.",
                        "copy-read-on.peg.json has the same readings as this peg, as a copy has, and teaches nothing.",
                        "twin.peg.json has the same readings as w, peg 12, as a copy has, and teaches nothing more."),
                others.passedOver());
    }
}
