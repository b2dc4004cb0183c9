package pegbed.ui.visits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.Peg;
import pegbed.ui.app.Desks;
import pegbed.ui.app.WindowViewModels;

class NeighbouringPegsViewModelTest {
    @TempDir
    private Path folder;

    private Path nine;

    @BeforeEach
    void pegs() throws IOException {
        Path samples = Path.of("sample-pegs");
        nine = Files.copy(samples.resolve("tansy-cut-9.peg.json"), folder.resolve("nine.peg.json"));
        Files.copy(samples.resolve("tansy-cut-14.peg.json"), folder.resolve("fourteen.peg.json"));
    }

    private WindowViewModels desk() {
        WindowViewModels desk = Desks.atOnce(folder.resolve("own"), Peg.EMPTY);
        desk.session().open(nine, sentence -> {
            throw new AssertionError(sentence);
        });
        return desk;
    }

    private static double depth(WindowViewModels desk) {
        return desk.session()
                .answer()
                .shown()
                .orElseThrow()
                .map()
                .bottom()
                .at(6, 9)
                .depthMetres();
    }

    @Test
    void anOpenedPegSaysFromWhomItStartedAndCanBeTakenByItself() {
        WindowViewModels desk = desk();
        NeighbouringPegsViewModel others = desk.others();
        assertEquals(
                "Started from 1 other peg of Tansy Cut.", others.wordsProperty().get());
        assertTrue(others.offeredProperty().get());
        double taught = depth(desk);

        others.setByItself(true);
        assertEquals("", others.wordsProperty().get());
        assertTrue(others.offeredProperty().get(), "it can be switched back");
        assertTrue(desk.session().peg().wishes().byItself());
        double alone = depth(desk);
        assertFalse(Math.abs(alone - taught) < 1e-6, "the bottom is worked out again");

        desk.document().undo();
        assertEquals(taught, depth(desk));
        assertFalse(others.byItselfProperty().get());
    }

    @Test
    void aPegWithoutAFileHasNobodyToLearnFrom() {
        NeighbouringPegsViewModel others =
                Desks.atOnce(folder.resolve("own"), Peg.EMPTY).others();
        assertEquals("", others.wordsProperty().get());
        assertFalse(others.offeredProperty().get());
    }

    @Test
    void aBrokenNeighbourIsNamed() throws IOException {
        Files.writeString(folder.resolve("fourteen.peg.json"), "{\"format\": \"pegbed-peg\", ");
        NeighbouringPegsViewModel others = desk().others();
        assertTrue(others.passedOverProperty().get().startsWith("fourteen.peg.json could not be read"));
        assertEquals("", others.wordsProperty().get());
    }
}
