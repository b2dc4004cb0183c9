package pegbed.session;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.findings.NeighbourFits;
import pegbed.findings.PegMap;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.storage.disk.PegFile;
import pegbed.storage.shelf.NeighbouringPegFiles;

class NeighbouringPegSourceTest {
    private static final String OWN = "tansy-cut-14.peg.json";
    private static final String OTHER = "tansy-cut-9.peg.json";

    private final NeighbouringPegSource source = new NeighbouringPegSource();

    private static Path copied(String name, Path folder) throws Exception {
        return Files.copy(Path.of("sample-pegs", name), folder.resolve(name));
    }

    @Test
    void aPegIsThereByItsOwnReadingsBeforeOthersAreTakenIn(@TempDir Path folder) throws Exception {
        Path file = copied(OWN, folder);
        copied(OTHER, folder);
        Peg peg = PegFile.read(file).peg();
        source.at(Optional.of(file));

        PegMap alone = source.alone(peg, Monitor.NONE).orElseThrow();
        assertTrue(alone.bottom().lesson().isEmpty());

        PegMap all = source.fit(peg, Monitor.NONE);
        PegMap expected = PegMap.of(
                peg, NeighbourFits.of(NeighbouringPegFiles.beside(file, peg).pegs(), Monitor.NONE), Monitor.NONE);
        assertTrue(all.bottom().lesson().isPresent());
        assertArrayEquals(depths(expected), depths(all));
        assertEquals(expected.checks(), all.checks());

        assertTrue(source.alone(peg, Monitor.NONE).isEmpty(), "what others teach is known by now");
    }

    private static double[] depths(PegMap map) {
        return IntStream.range(0, map.grid().frame().size())
                .mapToDouble(map.grid().depth()::at)
                .toArray();
    }

    @Test
    void whereNothingElseIsKnownNothingIsFittedTwice(@TempDir Path folder) throws Exception {
        Path file = copied(OWN, folder);
        Peg peg = PegFile.read(file).peg();
        source.at(Optional.of(file));

        assertFalse(source.alone(peg, Monitor.NONE).isPresent());
    }
}
