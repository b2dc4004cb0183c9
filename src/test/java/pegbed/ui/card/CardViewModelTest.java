package pegbed.ui.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.InputException;
import pegbed.plan.Plan;
import pegbed.storage.disk.ProgramLog;
import pegbed.ui.app.Desks;
import pegbed.ui.app.SamplePegFiles;

/** Cards whose work is done when the test says so. */
class CardViewModelTest {
    private static final CardViewModel.Printers NONE = new CardViewModel.Printers(List.of(), Optional.empty());

    @TempDir
    private Path folder;

    private final Queue<Runnable> work = new ArrayDeque<>();
    private final Queue<Runnable> seeking = new ArrayDeque<>();
    private final List<String> news = new ArrayList<>();
    private int looks;
    private Plan plan;

    @BeforeEach
    void plan() throws InputException {
        plan = Desks.atOnce(folder, SamplePegFiles.first())
                .plan()
                .planProperty()
                .get()
                .orElseThrow();
    }

    private CardViewModel card() {
        return new CardViewModel(
                plan,
                Optional::empty,
                new CardViewModel.Helpers(
                        work::add,
                        seeking::add,
                        Runnable::run,
                        () -> {
                            looks++;
                            return NONE;
                        },
                        new ProgramLog(folder)),
                news::add);
    }

    private static void all(Queue<Runnable> waiting) {
        while (!waiting.isEmpty()) {
            waiting.remove().run();
        }
    }

    @Test
    void aCardIsThereAtOnceAndItsPictureFollows() {
        CardViewModel card = card();
        assertTrue(card.drawingProperty().get());
        assertTrue(card.pictureProperty().get().isEmpty());
        all(work);
        assertFalse(card.drawingProperty().get());
        // A5 at 200 dots an inch.
        assertEquals(
                148 / 25.4 * 200, card.pictureProperty().get().orElseThrow().getWidth(), 1);
        assertEquals("", card.messageProperty().get());
    }

    @Test
    void thePictureDoesNotWaitForThePrinters() {
        CardViewModel card = card();
        all(work);
        assertTrue(card.pictureProperty().get().isPresent());
        assertTrue(card.printersProperty().get().isEmpty());
        all(seeking);
        assertEquals(Optional.of(NONE), card.printersProperty().get());
    }

    @Test
    void nothingIsDrawnOrLookedForOnceTheCardIsPutAway() {
        CardViewModel first = card();
        first.close();
        CardViewModel second = card();
        all(work);
        all(seeking);
        assertTrue(first.pictureProperty().get().isEmpty());
        assertTrue(first.printersProperty().get().isEmpty());
        assertTrue(second.pictureProperty().get().isPresent());
        assertEquals(1, looks);
    }

    @Test
    void aCardThatIsPutAwayIsSavedAllTheSameAndARefusalIsToldElsewhere() {
        Path file = folder.resolve("card.svg");
        CardViewModel card = card();
        card.save(file);
        card.save(folder.resolve("card.doc"));
        card.close();
        all(work);
        assertTrue(Files.exists(file));
        assertEquals(List.of("card.doc must end in .pdf, .png, .svg or .html."), news);
    }

    @Test
    void whatBecameOfSavingIsTold() {
        CardViewModel card = card();
        card.save(folder.resolve("card.svg"));
        assertEquals("Saving card.svg …", card.messageProperty().get());
        all(work);
        assertEquals("Saved card.svg.", card.messageProperty().get());
        card.save(folder.resolve("none").resolve("card.svg"));
        all(work);
        assertTrue(
                card.messageProperty().get().contains("card.svg"),
                card.messageProperty().get());
        assertFalse(
                card.messageProperty().get().startsWith("Saved"),
                card.messageProperty().get());
        assertEquals(List.of(), news);
    }

    @Test
    void printersThatCannotBeFoundAreNotWaitedForAndTheLogIsNamed() throws IOException {
        ProgramLog log = new ProgramLog(folder);
        CardViewModel card = new CardViewModel(
                plan,
                Optional::empty,
                new CardViewModel.Helpers(
                        work::add,
                        Runnable::run,
                        Runnable::run,
                        () -> {
                            throw new IllegalStateException("no spooler");
                        },
                        log),
                news::add);
        assertEquals(
                "The printers could not be found; what went wrong is in the log " + log.file() + ".",
                card.messageProperty().get());
        assertEquals(Optional.of(NONE), card.printersProperty().get());
        assertTrue(Files.readString(log.file()).contains("IllegalStateException: no spooler"));
    }

    @Test
    void aCardThatCannotBeDrawnIsNotWaitedFor() throws IOException {
        ProgramLog log = new ProgramLog(folder);
        CardViewModel card = new CardViewModel(
                null,
                Optional::empty,
                new CardViewModel.Helpers(Runnable::run, seeking::add, Runnable::run, () -> NONE, log),
                news::add);
        assertEquals(
                "The card could not be drawn; what went wrong is in the log " + log.file() + ".",
                card.messageProperty().get());
        assertFalse(card.drawingProperty().get());
        assertTrue(Files.readString(log.file()).contains("NullPointerException"));
    }

    @Test
    void theFileIsNamedAfterThePeg() {
        assertEquals("tansy-cut-peg-9-card.pdf", card().suggestedName());
    }

    @Test
    void whatVanishesOnItsWayToThePrinterIsNotCalledPrinted() throws IOException {
        Path spooler = folder.resolve("lpr");
        assertTrue(CardViewModel.hindrance("Linux", spooler).orElseThrow().contains("save the card as a PDF"));
        assertEquals(Optional.empty(), CardViewModel.hindrance("Mac OS X", spooler));
        Files.writeString(spooler, "");
        assertTrue(spooler.toFile().setExecutable(true));
        assertEquals(Optional.empty(), CardViewModel.hindrance("Linux", spooler));
    }
}
