package pegbed.ui.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.InputException;
import pegbed.session.Pegs;
import pegbed.storage.disk.PegFile;
import pegbed.ui.app.Desks;
import pegbed.ui.app.WindowViewModels;

class DocumentViewModelTest {
    @TempDir
    private Path folder;

    private WindowViewModels desk;
    private DocumentViewModel document;

    @BeforeEach
    void open() {
        desk = Desks.atOnce(folder.resolve("own"), Pegs.plumbed(5));
        document = desk.document();
    }

    private void addReading() {
        desk.box().textProperty().set("6 0 4'");
        assertTrue(desk.box().enter());
    }

    @Test
    void theTitleSaysWhatIsOpenAndWhetherItIsSaved() {
        assertEquals(
                "Tansy Cut, peg 9 (not saved yet) – Pegbed",
                document.windowTitleProperty().get());
        addReading();
        assertEquals(
                "*Tansy Cut, peg 9 (not saved yet) – Pegbed",
                document.windowTitleProperty().get());
        assertEquals("Kept, not saved yet", document.keepingProperty().get());
        document.saveAs(folder.resolve("nine"), () -> {});
        assertEquals(
                "Tansy Cut, peg 9 (nine.peg.json) – Pegbed",
                document.windowTitleProperty().get());
        assertEquals("Saved", document.keepingProperty().get());
        assertEquals(List.of(folder.resolve("nine.peg.json").toAbsolutePath()), document.recent());
    }

    @Test
    void dialogsBeginInTheFolderOfTheFile() {
        assertEquals(Optional.empty(), document.folder());
        document.saveAs(folder.resolve("nine"), () -> {});
        assertEquals(Optional.of(folder.toAbsolutePath()), document.folder());
        document.begin(Pegs.plumbed(3));
        assertEquals(Optional.of(folder.toAbsolutePath()), document.folder());
    }

    @Test
    void aNameIsCompletedSoThatTheShelfListsIt() {
        for (String name : List.of("copy", "copy.json", "copy.peg", "copy.peg.json")) {
            Path whole = folder.resolve(name + "-folder").resolve("copy.peg.json");
            assertTrue(whole.getParent().toFile().mkdir());
            document.saveAs(whole.resolveSibling(name), () -> {});
            assertEquals(Optional.of(whole), document.file());
            assertEquals("", document.newsProperty().get());
        }
    }

    @Test
    void aNameThatIsCompletedToOneInUseWritesNothingOver() throws InputException {
        Path file = folder.resolve("copy.peg.json");
        PegFile.save(file, Pegs.plumbed(7), Optional.empty());
        document.saveAs(folder.resolve("copy.json"), () -> fail("It was written over without a question."));
        assertEquals(
                "copy.peg.json is there already; choose that file itself to write over it, or type another name.",
                document.newsProperty().get());
        assertEquals(7, PegFile.read(file).peg().readings().size());
    }

    @Test
    void undoSaysWhatItWouldUndo() {
        assertEquals("", document.undoProperty().get());
        addReading();
        assertEquals("Add reading", document.undoProperty().get());
        document.undo();
        assertEquals("Add reading", document.redoProperty().get());
    }

    @Test
    void aNameForTheFileComesFromThePeg() {
        assertEquals("tansy-cut-peg-9.peg.json", document.suggestedName());
    }

    @Test
    void aFileThatIsNotThereIsSaidAndForgotten() {
        document.open(folder.resolve("none.peg.json"));
        assertTrue(
                document.newsProperty().get().startsWith("There is no file"),
                document.newsProperty().get());
        assertEquals(List.of(), document.recent());
        document.dismissNews();
        assertEquals("", document.newsProperty().get());
        document.open(folder.resolve("none.peg.json"));
        assertTrue(document.newsProperty().get().startsWith("There is no file"));
    }

    @Test
    void anotherProgramsChangeIsSaidUntilTheFileIsOpenedAgain() throws InputException {
        Path file = folder.resolve("nine.peg.json");
        document.saveAs(file, () -> {});
        PegFile.save(file, Pegs.plumbed(7), Optional.empty());
        desk.session().lookForOtherChanges();
        assertTrue(document.changedByAnotherProperty().get());
        assertTrue(document.newsProperty().get().startsWith("Another window or program has changed"));
        document.save(() -> fail("The other's changes were written over."));
        assertTrue(
                document.newsProperty().get().contains("changed by somebody else"),
                document.newsProperty().get());
        document.dismissNews();
        document.open(file);
        assertEquals("", document.newsProperty().get());
        assertEquals(7, desk.session().peg().readings().size());
    }

    @Test
    void whatIsRememberedOutlivesTheWindow() {
        document.saveAs(folder.resolve("nine.peg.json"), () -> {});
        desk.remembered().closeHint();
        desk.remembered().setDark(true);
        WindowPreferences next = new WindowPreferences(folder.resolve("own"));
        assertTrue(next.hintClosed());
        assertEquals(Optional.of(true), next.dark());
        assertEquals(List.of(folder.resolve("nine.peg.json").toAbsolutePath()), next.recent());
    }
}
