package pegbed.session;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Reading;
import pegbed.storage.disk.PegFile;
import pegbed.storage.peg.Fingerprint;
import pegbed.storage.peg.PegWriter;

class SessionFilesTest {
    @TempDir
    private Path folder;

    private final List<String> refused = new ArrayList<>();
    private Path file;
    private Session session;

    @BeforeEach
    void open() throws InputException {
        file = folder.resolve("nine.peg.json");
        PegFile.save(file, Pegs.plumbed(6), Optional.empty());
        session = another();
        session.open(file, refused::add);
        assertEquals(List.of(), refused);
    }

    private Session another() {
        return new Session(
                folder.resolve("journals"), Session.Executors.AT_ONCE, InstantSource.system(), (peg, monitor) -> {
                    throw new InputException("No bottom is wanted here.");
                });
    }

    private static void assertSame(Peg expected, Peg actual) {
        assertEquals(PegWriter.text(expected), PegWriter.text(actual));
    }

    private static void noWay(String sentence) {
        fail(sentence);
    }

    @Test
    void whatIsSavedIsWhatIsReadAgain() throws InputException {
        session.edit(ReadingEdits.add(Reading.of(5, 5, 1.23)));
        assertTrue(session.unsaved());
        session.save(() -> {}, SessionFilesTest::noWay);
        assertFalse(session.unsaved());
        assertSame(session.peg(), PegFile.read(file).peg());
    }

    @Test
    void editsThatWereNotSavedComeBackAfterTheProgramWasKilled() throws InputException {
        session.edit(ReadingEdits.add(Reading.of(5, 5, 1.23)));
        assertTrue(session.kept());
        Peg confirmed = session.peg();
        killed(session);
        Session next = another();
        next.open(file, SessionFilesTest::noWay);
        assertSame(confirmed, next.peg());
        assertTrue(next.unsaved());
        assertTrue(next.news().startsWith("Edits that had not been saved"), next.news());
    }

    /** Lets go of the locks as a killed process does, and of nothing else. */
    private static void killed(Session session) {
        session.close(false, () -> {});
    }

    @Test
    void editsThatWereGivenUpDoNotComeBack() throws InputException {
        session.edit(ReadingEdits.add(Reading.of(5, 5, 1.23)));
        session.close(true, () -> {});
        Session next = another();
        next.open(file, SessionFilesTest::noWay);
        assertEquals(6, next.peg().readings().size());
        assertEquals("", next.news());
    }

    @Test
    void savedEditsAreNotBroughtBackTwice() throws InputException {
        session.edit(ReadingEdits.add(Reading.of(5, 5, 1.23)));
        session.save(() -> {}, SessionFilesTest::noWay);
        killed(session);
        Session next = another();
        next.open(file, SessionFilesTest::noWay);
        assertFalse(next.unsaved());
        assertEquals("", next.news());
    }

    @Test
    void aPegWithoutAFileComesBackToo() throws InputException {
        session.begin(Pegs.bare());
        session.edit(ReadingEdits.add(Reading.of(5, 5, 1.23)));
        Peg confirmed = session.peg();
        killed(session);
        Session next = another();
        next.takeUpLeftBehind(() -> fail("Nothing was left behind."));
        assertSame(confirmed, next.peg());
        assertTrue(next.unsaved());
        assertEquals(Optional.empty(), next.file());
    }

    @Test
    void aPegWithoutEditsLeavesNothingBehind() {
        session.begin(Pegs.bare());
        killed(session);
        List<String> asked = new ArrayList<>();
        another().takeUpLeftBehind(() -> asked.add("nothing"));
        assertEquals(List.of("nothing"), asked);
    }

    @Test
    void aSecondWindowOnTheSameFileIsNoticed() {
        another().open(file, refused::add);
        assertEquals(
                List.of("nine.peg.json is already open in another window; go on there, or close it there first."),
                refused);
    }

    @Test
    void aFileThatAnotherProgramChangedIsNoticedAndNotWrittenOver() throws InputException {
        Peg others = Pegs.plumbed(7);
        PegFile.save(file, others, Optional.empty());
        session.lookForOtherChanges();
        assertTrue(session.changedByAnother());
        session.edit(ReadingEdits.add(Reading.of(5, 5, 1.23)));
        session.save(() -> fail("It was saved over the other's changes."), refused::add);
        assertEquals(1, refused.size());
        assertTrue(refused.get(0).contains("changed by somebody else"), refused.get(0));
        assertSame(others, PegFile.read(file).peg());
    }

    @Test
    void openingAgainTakesTheOthersChanges() throws InputException {
        session.edit(ReadingEdits.add(Reading.of(5, 5, 1.23)));
        PegFile.save(file, Pegs.plumbed(7), Optional.empty());
        session.open(file, SessionFilesTest::noWay);
        assertEquals(7, session.peg().readings().size());
        assertFalse(session.unsaved());
    }

    @Test
    void savingUnderANameMovesTheSessionThere() throws InputException {
        session.edit(ReadingEdits.add(Reading.of(5, 5, 1.23)));
        Path other = folder.resolve("ten.peg.json");
        session.saveAs(other, () -> {}, SessionFilesTest::noWay);
        assertEquals(Optional.of(other), session.file());
        assertEquals(6, PegFile.read(file).peg().readings().size());
        session.edit(ReadingEdits.add(Reading.of(6, 5, 1.3)));
        session.save(() -> {}, SessionFilesTest::noWay);
        assertEquals(8, PegFile.read(other).peg().readings().size());
        Session next = another();
        next.open(file, SessionFilesTest::noWay);
        assertEquals(6, next.peg().readings().size());
    }

    @Test
    void aDamagedFileIsReadAsFarAsItGoesAndStaysAsItIs() throws IOException {
        String text = Files.readString(file);
        byte[] cut = text.substring(0, text.length() - 60).getBytes(StandardCharsets.UTF_8);
        Path damaged = folder.resolve("cut.peg.json");
        Files.write(damaged, cut);
        session.open(damaged, SessionFilesTest::noWay);
        assertEquals(Optional.empty(), session.file());
        assertTrue(session.unsaved());
        assertTrue(session.news().startsWith("cut.peg.json is damaged at line"), session.news());
        assertTrue(session.peg().readings().size() >= 4);
        session.save(() -> fail("It has no file."), refused::add);
        assertEquals(List.of("This peg has no file yet; save it under a name."), refused);
        assertEquals(new String(cut, StandardCharsets.UTF_8), Files.readString(damaged));
    }

    @Test
    void editsThatWereKeptOutliveTheirFile() throws InputException, IOException {
        session.edit(ReadingEdits.add(Reading.of(5, 5, 1.23)));
        Peg confirmed = session.peg();
        killed(session);
        byte[] whole = Files.readAllBytes(file);
        byte[] nothing = new byte[whole.length];
        for (byte[] spoiled : List.of(Arrays.copyOf(whole, whole.length - 60), nothing, new byte[0])) {
            Files.write(file, spoiled);
            Session next = another();
            next.open(file, SessionFilesTest::noWay);

            assertSame(confirmed, next.peg());
            assertEquals(Optional.empty(), next.file());
            assertTrue(next.unsaved());
            assertTrue(next.news().endsWith("saving asks for a new name."), next.news());
            assertArrayEquals(spoiled, Files.readAllBytes(file), "the file stays as it is");
            next.edit(ReadingEdits.add(Reading.of(6, 5, 1.1)));
            Path mended = folder.resolve("mended.peg.json");
            next.saveAs(mended, () -> {}, SessionFilesTest::noWay);
            assertSame(next.peg(), PegFile.read(mended).peg());
            killed(next);
            Files.delete(mended);
        }
    }

    @Test
    void aDamagedFileWithoutKeptEditsIsNotMadeUp() throws IOException {
        killed(session);
        Files.write(file, new byte[50]);
        Session next = another();
        next.open(file, refused::add);
        assertEquals(1, refused.size());
        assertEquals(0, next.peg().readings().size());
    }

    @Test
    void aFileThatIsNotThereLeavesTheOpenPegAlone() {
        session.open(folder.resolve("none.peg.json"), refused::add);
        assertEquals(1, refused.size());
        assertEquals(Optional.of(file), session.file());
        assertEquals(6, session.peg().readings().size());
    }

    @Test
    void undoneEditsAreKeptAsUndone() throws InputException {
        session.edit(ReadingEdits.add(Reading.of(5, 5, 1.23)));
        session.undo();
        killed(session);
        Session next = another();
        next.open(file, SessionFilesTest::noWay);
        assertEquals(6, next.peg().readings().size());
        assertFalse(next.unsaved());
    }

    @Test
    void aPegIsOpenedAndSavedWhereNoJournalCanBeKept() throws IOException, InputException {
        Files.writeString(folder.resolve("no folder"), "");
        Session without = new Session(
                folder.resolve("no folder"), Session.Executors.AT_ONCE, InstantSource.system(), (peg, monitor) -> {
                    throw new InputException("No bottom is wanted here.");
                });
        killed(session);
        without.open(file, SessionFilesTest::noWay);
        assertTrue(without.news().startsWith("Edits can't be kept safe between saves"), without.news());
        without.edit(ReadingEdits.add(Reading.of(5, 5, 1.23)));
        assertFalse(without.kept());
        assertTrue(without.trouble().startsWith("Edits can't be kept safe between saves"), without.trouble());
        without.save(() -> {}, SessionFilesTest::noWay);
        assertTrue(without.kept());
        assertEquals(7, PegFile.read(file).peg().readings().size());
    }

    @Test
    void aNewPegThatCanNotBeKeptSaysSoAndLeavesTheOldFileAlone() throws IOException, InputException {
        Files.writeString(folder.resolve("no folder"), "");
        Session without = new Session(
                folder.resolve("no folder"), Session.Executors.AT_ONCE, InstantSource.system(), (peg, monitor) -> {
                    throw new InputException("No bottom is wanted here.");
                });
        killed(session);
        without.open(file, SessionFilesTest::noWay);
        without.begin(Pegs.bare());
        without.edit(ReadingEdits.add(Reading.of(5, 5, 1.23)));
        assertFalse(without.kept());
        without.save(() -> fail("It has no file."), refused::add);
        assertEquals(List.of("This peg has no file yet; save it under a name."), refused);
        assertEquals(6, PegFile.read(file).peg().readings().size());
    }

    @Test
    void aJournalThatCanNotBeReadIsSetAsideAndTheFileOpens() throws IOException, InputException {
        session.edit(ReadingEdits.add(Reading.of(5, 5, 1.23)));
        killed(session);
        Path journal;
        try (var files = Files.list(folder.resolve("journals"))) {
            journal = files.filter(path -> path.toString().endsWith(".journal"))
                    .findFirst()
                    .orElseThrow();
        }
        byte[] later = "{\"format\": \"pegbed-peg\", \"version\": 99}".getBytes(StandardCharsets.UTF_8);
        String head = later.length + " " + Fingerprint.of(later).sha256() + " -\n";
        Files.writeString(journal, head + new String(later, StandardCharsets.UTF_8));
        Session next = another();
        next.open(file, SessionFilesTest::noWay);
        assertTrue(next.news().contains("were set aside as"), next.news());
        assertEquals(6, next.peg().readings().size());
        assertTrue(Files.exists(journal.resolveSibling(journal.getFileName() + ".unread1")));
    }

    @Test
    void whereReadingsWereLostItIsSaidHowMany() throws IOException {
        String text = Files.readString(Path.of("sample-pegs", "tansy-cut-9.peg.json"));
        Path one = folder.resolve("one.peg.json");
        Files.writeString(one, text.replaceFirst("\"depth_m\": [0-9.]+", "\"depth_m\": -7"));
        session.open(one, SessionFilesTest::noWay);
        assertTrue(session.news().contains(" 1 of 30 readings was lost; what could"), session.news());
        Path most = folder.resolve("most.peg.json");
        // All but the first.
        int first = text.indexOf("\"depth_m\"", text.indexOf("\"readings\"")) + 1;
        Files.writeString(
                most,
                text.substring(0, first) + text.substring(first).replaceAll("\"depth_m\": [0-9.]+", "\"depth_m\": -7"));
        session.open(most, SessionFilesTest::noWay);
        assertTrue(session.news().contains(" Nearly all of 30 readings were lost; what could"), session.news());
    }
}
