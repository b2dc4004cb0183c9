package pegbed.samples;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pegbed.findings.Confidence;
import pegbed.findings.Findings;
import pegbed.findings.FlatSpot;
import pegbed.findings.PegMap;
import pegbed.findings.Zone;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.storage.disk.PegFile;
import pegbed.storage.peg.Opened;

/** Every file in {@code sample-pegs} loads, analyses, and is saved again byte for byte. */
class SamplePegsTest {
    private static final Path FOLDER = Path.of("sample-pegs");

    static Stream<Path> files() throws IOException {
        try (Stream<Path> all = Files.list(FOLDER)) {
            return all.filter(f -> f.toString().endsWith(PegFile.ENDING)).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void isSavedAgainByteForByte(Path file, @TempDir Path folder) throws IOException, InputException {
        Opened opened = PegFile.read(file);
        assertInstanceOf(Opened.Whole.class, opened);
        Path copy = folder.resolve("copy.peg.json");
        PegFile.save(copy, opened.peg(), Optional.empty());
        assertArrayEquals(Files.readAllBytes(file), Files.readAllBytes(copy));
    }

    @ParameterizedTest
    @MethodSource("files")
    void saysThatItIsInvented(Path file) throws InputException {
        assertTrue(PegFile.read(file).peg().visits().stream()
                .allMatch(visit -> visit.note()
                        .equals(visit.readings().isEmpty() ? SamplePegs.INVENTED_FISHING : SamplePegs.INVENTED)));
    }

    @ParameterizedTest
    @MethodSource("files")
    void isWhatTheMakerMakes(Path file) throws InputException {
        Peg made = SamplePegs.all().get(file.getFileName().toString());
        Peg read = PegFile.read(file).peg();
        assertEquals(made.visits().size(), read.visits().size());
        for (int v = 0; v < made.visits().size(); v++) {
            assertEquals(made.visits().get(v).day(), read.visits().get(v).day());
        }
        assertEquals(made.readings().size(), read.readings().size());
        for (int i = 0; i < made.readings().size(); i++) {
            assertEquals(made.readings().get(i).typed(), read.readings().get(i).typed());
            assertEquals(
                    0,
                    made.readings()
                            .get(i)
                            .place()
                            .distanceTo(read.readings().get(i).place()),
                    1e-9);
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void analysesWithoutSuspicion(Path file) throws InputException {
        PegMap map = PegMap.of(PegFile.read(file).peg(), Monitor.NONE);
        assertTrue(map.suspicious().isEmpty(), () -> map.suspicious().toString());
    }

    /** Common practice: a track of 5 ft 6 in leads to about 2 ft 9 in, and 2 to 3 ft across is found flat. */
    @Test
    void halfTheTrackIsSoughtAcrossAndFoundFlat() throws InputException {
        Findings findings = Findings.of(
                PegMap.of(PegFile.read(FOLDER.resolve("tansy-cut-14.peg.json")).peg(), Monitor.NONE),
                OptionalDouble.empty());
        double foot = 0.3048;
        assertEquals(5.5 * foot, findings.deepest().spot().depthMetres(), 0.25 * foot);
        assertEquals(2.75 * foot, findings.targetMetres(), 0.125 * foot);
        FlatSpot across = findings.flats().stream()
                .filter(flat -> flat.zone() == Zone.ACROSS)
                .findFirst()
                .orElseThrow();
        assertEquals(Confidence.SURE, across.confidence());
        assertTrue(across.spot().depthMetres() > 2 * foot && across.spot().depthMetres() < 3 * foot);
        assertFalse(across.area().isEmpty());
        assertTrue(across.area().get().areaMetres2() > 2);
    }

    /**
     * The second visit of peg 9 stands 8 cm higher; with four readings of it the offset is found to a few centimetres.
     */
    @Test
    void theSecondVisitIsDeeperByItsLevel() throws InputException {
        Peg peg = PegFile.read(FOLDER.resolve("tansy-cut-9.peg.json")).peg();
        double second = PegMap.of(peg, Monitor.NONE).bottom().at(0, 4.5).depthMetres();
        double first = PegMap.of(peg.withVisits(peg.visits().subList(0, 1)), Monitor.NONE)
                .bottom()
                .at(0, 4.5)
                .depthMetres();
        assertEquals(0.08, second - first, 0.04);
    }
}
