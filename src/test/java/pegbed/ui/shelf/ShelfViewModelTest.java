package pegbed.ui.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.RejectedExecutionException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.PegName;
import pegbed.session.Pegs;
import pegbed.ui.app.Desks;
import pegbed.ui.app.WindowViewModels;
import pegbed.ui.document.WindowPreferences;

class ShelfViewModelTest {
    @TempDir
    private Path home;

    private Path pegs;
    private WindowViewModels desk;
    private ShelfViewModel shelf;

    @BeforeEach
    void fill() throws IOException {
        pegs = Files.createDirectories(home.resolve("pegs/cut"));
        for (String name : List.of("tansy-cut-14", "tansy-cut-9", "hobbrel-pond-3")) {
            Files.copy(Path.of("sample-pegs", name + ".peg.json"), pegs.resolve(name + ".peg.json"));
        }
        desk = Desks.atOnce(home.resolve("own"), Pegs.bare());
        shelf = shelf();
        shelf.choose(home.resolve("pegs"));
    }

    private ShelfViewModel shelf() {
        return new ShelfViewModel(
                desk.session(), new WindowPreferences(home.resolve("own")), Runnable::run, Runnable::run);
    }

    private ShelfViewModel.Row only(String words) {
        shelf.textProperty().set(words);
        assertEquals(1, shelf.rows().size());
        return shelf.rows().get(0);
    }

    @Test
    void listsByVenueWaterAndNumber() {
        assertEquals(
                List.of("3", "9", "14"),
                shelf.rows().stream().map(ShelfViewModel.Row::number).toList());
        ShelfViewModel.Row nine = shelf.rows().get(1);
        assertEquals("Mallowfield Pools", nine.venue());
        assertEquals("Tansy Cut", nine.water());
        assertEquals("18 Jul 2026", nine.lastVisit());
        assertEquals("30", nine.readings());
        assertTrue(nine.deepest().matches("\\d ft.*"), nine.deepest());
        assertEquals("", nine.level());
        assertFalse(shelf.rows().get(2).level().isEmpty());
        assertEquals("3 pegs", shelf.countProperty().get());
    }

    @Test
    void findsWhileTyping() {
        assertEquals("14", only("cut 14").number());
        assertEquals("1 of 3 pegs", shelf.countProperty().get());
        shelf.textProperty().set("");
        assertEquals(3, shelf.rows().size());
    }

    @Test
    void theFolderIsRemembered() {
        ShelfViewModel again = shelf();
        assertEquals(0, again.rows().size());
        again.look();
        assertEquals(3, again.rows().size());
        ShelfViewModel fresh = new ShelfViewModel(
                desk.session(), new WindowPreferences(home.resolve("another")), Runnable::run, Runnable::run);
        fresh.look();
        assertTrue(fresh.folderProperty().get().startsWith("Choose the folder"));
    }

    @Test
    void beginsWhereTheOpenPegLiesUntilAFolderIsChosen() {
        desk.document().open(pegs.resolve("tansy-cut-9.peg.json"));
        ShelfViewModel fresh = new ShelfViewModel(
                desk.session(), new WindowPreferences(home.resolve("another")), Runnable::run, Runnable::run);
        fresh.look();
        assertEquals(3, fresh.rows().size());
        assertEquals(pegs.toAbsolutePath().toString(), fresh.folderProperty().get());
    }

    @Test
    void whatOthersChangedIsReadAgain() throws IOException {
        Path nine = pegs.resolve("tansy-cut-9.peg.json");
        Files.writeString(nine, Files.readString(nine).replace("Tansy Cut", "Pansy Ditch"));
        assertEquals("Tansy Cut", shelf.rows().get(1).water());
        shelf.look();
        assertEquals(
                "Pansy Ditch",
                shelf.rows().get(0).water().isEmpty() ? "" : only("pansy").water());
    }

    @Test
    void copiesRenamesMovesAndDeletes() {
        shelf.duplicate(only("cut 14"));
        assertTrue(
                shelf.saidProperty().get().startsWith("Tansy Cut, peg 14 has a copy, "),
                shelf.saidProperty().get());
        shelf.textProperty().set("");
        assertTrue(shelf.countProperty().get().startsWith("4 pegs; ⚠ 2 files"));
        shelf.rename(only("14-copy"), new PegName("Mallowfield Pools", "Tansy Cut", "15"));
        assertEquals(
                "Tansy Cut, peg 14 is now Tansy Cut, peg 15.",
                shelf.saidProperty().get());
        shelf.move(only("cut 15"), home.resolve("pegs/other"));
        assertTrue(Files.exists(home.resolve("pegs/other/tansy-cut-14-copy.peg.json")));
        shelf.delete(only("cut 15"));
        assertTrue(Files.exists(home.resolve("pegs/other/deleted/tansy-cut-14-copy.peg.json")));
        assertEquals(0, shelf.rows().size());
        assertEquals("", shelf.errorProperty().get());
    }

    @Test
    void aFileThatAnotherChangedIsLeftAloneAndReadAgain() throws IOException {
        ShelfViewModel.Row stale = only("cut 9");
        Path nine = pegs.resolve("tansy-cut-9.peg.json");
        String theirs = Files.readString(nine) + "\n";
        Files.writeString(nine, theirs);
        shelf.delete(stale);
        assertTrue(shelf.errorProperty().get().contains("was changed by somebody else"));
        assertEquals(theirs, Files.readString(nine));
        shelf.delete(only("cut 9"));
        assertFalse(Files.exists(nine));
    }

    @Test
    void theOpenPegIsNotTakenAwayUnderTheWindow() {
        Path nine = pegs.resolve("tansy-cut-9.peg.json");
        desk.document().open(nine);
        shelf.delete(only("cut 9"));
        assertEquals(
                "That peg is open in this window; open another peg before you delete this one.",
                shelf.errorProperty().get());
        shelf.rename(only("cut 9"), new PegName("", "", "90"));
        shelf.move(only("cut 9"), home);
        assertTrue(Files.exists(nine));
        assertFalse(desk.session().changedByAnother());
    }

    @Test
    void aFileThatCanNotBeReadIsListedWithItsTrouble() throws IOException {
        Files.writeString(pegs.resolve("torn.peg.json"), "nonsense");
        shelf.look();
        ShelfViewModel.Row torn = only("torn");
        assertFalse(torn.canBeRead());
        assertEquals("torn.peg.json", torn.venue());
        assertFalse(torn.trouble().isEmpty());
    }

    @Test
    void aFolderThatIsGoneIsSaid() {
        shelf.choose(home.resolve("nowhere"));
        assertTrue(shelf.errorProperty().get().startsWith("There is no folder "));
        assertEquals(0, shelf.rows().size());
    }

    /** Of two looks at once the later one's folder is shown, whichever was begun first. */
    @Test
    void anOlderLookIsNotShownOverANewerOne() throws IOException {
        Deque<Runnable> waiting = new ArrayDeque<>();
        ShelfViewModel slow = new ShelfViewModel(
                desk.session(), new WindowPreferences(home.resolve("own")), waiting::add, Runnable::run);
        slow.look();
        slow.choose(Files.createDirectories(home.resolve("empty")));
        assertTrue(slow.lookingProperty().get());
        waiting.remove().run();
        assertEquals(0, slow.rows().size());
        assertTrue(slow.lookingProperty().get());
        waiting.remove().run();
        assertFalse(slow.lookingProperty().get());
        assertEquals(
                "No peg file lies in this folder or in the folders in it.",
                slow.countProperty().get());
    }

    @Test
    void aFolderThatCannotBeLookedAtIsNotWaitedForAndTheLogIsNamed() throws IOException {
        ShelfViewModel failing = new ShelfViewModel(
                desk.session(),
                new WindowPreferences(home.resolve("own")),
                work -> {
                    throw new RejectedExecutionException("closed");
                },
                Runnable::run);
        failing.choose(pegs);
        assertEquals(
                "The folder could not be looked at; what went wrong is in the log "
                        + desk.session().log().file() + ".",
                failing.errorProperty().get());
        assertFalse(failing.lookingProperty().get());
        assertTrue(Files.readString(desk.session().log().file()).contains("RejectedExecutionException: closed"));
    }

    @Test
    void eachPegStandsWithItsFile() {
        assertEquals(
                List.of("hobbrel-pond-3.peg.json", "tansy-cut-9.peg.json", "tansy-cut-14.peg.json"),
                shelf.rows().stream()
                        .map(row -> Path.of(row.file()).getFileName().toString())
                        .toList());
        assertEquals(
                Path.of("cut", "tansy-cut-9.peg.json"),
                Path.of(shelf.rows().get(1).file()));
        shelf.choose(pegs);
        assertEquals("tansy-cut-9.peg.json", shelf.rows().get(1).file());
    }
}
