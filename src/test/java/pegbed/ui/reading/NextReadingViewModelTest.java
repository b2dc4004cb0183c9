package pegbed.ui.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.session.Pegs;
import pegbed.ui.app.Desks;
import pegbed.ui.app.WindowViewModels;

class NextReadingViewModelTest {
    @TempDir
    private Path folder;

    @Test
    void aPegWithBanksAloneIsToldWhereToBegin() {
        WindowViewModels desk = Desks.atOnce(folder, Pegs.bare());
        Place first = desk.guide().nextProperty().get().orElseThrow().place();
        assertTrue(first.distanceMetres() <= 16);
        assertTrue(
                desk.guide().wordsProperty().get().startsWith("Next: section "),
                desk.guide().wordsProperty().get());
    }

    @Test
    void aReadingTakenLeadsToAnother() {
        WindowViewModels desk = Desks.atOnce(folder, Pegs.bare());
        Place first = desk.guide().nextProperty().get().orElseThrow().place();
        desk.box().enter();
        desk.box().textProperty().set(desk.box().textProperty().get() + "4'");
        assertTrue(desk.box().enter());
        assertNotEquals(first, desk.guide().nextProperty().get().orElseThrow().place());
    }

    @Test
    void withoutBanksThereIsNoNextReading() {
        WindowViewModels desk = Desks.atOnce(folder, Peg.EMPTY);
        assertEquals(Optional.empty(), desk.guide().nextProperty().get());
        assertEquals("", desk.guide().wordsProperty().get());
    }
}
