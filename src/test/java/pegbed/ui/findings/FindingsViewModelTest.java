package pegbed.ui.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.findings.Confidence;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.session.Answer;
import pegbed.session.Pegs;
import pegbed.session.PlaceEdits;
import pegbed.session.PlaceEdits.Bank;
import pegbed.ui.app.Desks;
import pegbed.ui.app.WindowViewModels;

class FindingsViewModelTest {
    @TempDir
    private Path folder;

    @Test
    void theDeepestComesFirstInThePersonsWords() {
        WindowViewModels desk = Desks.atOnce(folder, Pegs.plumbed(20));
        FindingsViewModel.Found deepest = desk.findings().found().get(0);
        assertEquals("D", deepest.badge());
        assertTrue(deepest.title().matches("Deepest, [45] ft.*"), deepest.title());
        assertTrue(deepest.where().contains("section"), deepest.where());
        assertEquals("", desk.findings().stateProperty().get());
        assertFalse(desk.findings().outdatedProperty().get());
    }

    @Test
    void flatSpotsAreNumberedAsOnTheMapAndOnesThatAreNotThereHaveNoNumber() {
        WindowViewModels desk = Desks.atOnce(folder, Pegs.plumbed(20));
        Answer.Ready ready = (Answer.Ready) desk.session().answer();
        List<FindingsViewModel.Found> found = desk.findings().found();
        assertEquals(ready.findings().flats().size() + 1, found.size());
        for (int i = 0; i < ready.findings().flats().size(); i++) {
            boolean none = ready.findings().flats().get(i).confidence() == Confidence.NONE;
            assertEquals(none ? "–" : String.valueOf(i + 1), found.get(i + 1).badge());
        }
    }

    @Test
    void anEmptyPegSaysWhatToGive() {
        WindowViewModels desk = Desks.atOnce(folder, Peg.EMPTY);
        assertEquals(
                "Nothing is known of this peg yet: give its banks and a reading.",
                desk.findings().stateProperty().get());
        assertTrue(desk.findings().found().isEmpty());
    }

    @Test
    void banksThatCrossKeepTheOldMapMarkedAsOld() throws InputException {
        WindowViewModels desk = Desks.atOnce(folder, Pegs.plumbed(20));
        Answer.Ready before = (Answer.Ready) desk.session().answer();
        desk.session().edit(PlaceEdits.bank(Bank.NEAR, List.of(BankPoint.at(-9, 0), BankPoint.at(9, 30))));
        assertTrue(desk.findings().outdatedProperty().get());
        assertTrue(desk.findings().troubleProperty().get());
        assertTrue(
                desk.findings().stateProperty().get().endsWith("The map is the one before."),
                desk.findings().stateProperty().get());
        assertEquals(before, desk.findings().shownProperty().get().orElseThrow());
        desk.document().undo();
        assertFalse(desk.findings().outdatedProperty().get());
    }

    @Test
    void withoutBanksThereIsNoMapToShow() throws InputException {
        WindowViewModels desk = Desks.atOnce(folder, Pegs.plumbed(20));
        desk.session().edit(PlaceEdits.bank(Bank.NEAR, Banks.NONE.near()));
        assertTrue(desk.findings().shownProperty().get().isEmpty());
        assertTrue(desk.findings().stateProperty().get().startsWith("The near bank needs two points"));
    }
}
