package pegbed.storage.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Reading;
import pegbed.storage.peg.Fingerprint;
import pegbed.storage.peg.PegWriter;
import pegbed.storage.peg.SamplePeg;

class JournalTest {
    private static final Optional<Fingerprint> BASE = Optional.of(Fingerprint.of(new byte[] {1}));

    @TempDir
    private Path folder;

    private Journal open() throws InputException {
        return Journal.open(folder, "nine").orElseThrow();
    }

    private static Peg peg(int readings) {
        Peg peg = SamplePeg.peg();
        for (int i = 0; i < readings; i++) {
            peg = peg.withReading(Reading.of(2 + i * 0.01, 0, 1));
        }
        return peg;
    }

    private static void assertHolds(Peg peg, Journal journal) throws InputException {
        assertEquals(
                PegWriter.text(peg), PegWriter.text(journal.last().orElseThrow().peg()));
    }

    @Test
    void theLastStateIsReadAgain() throws InputException {
        try (Journal journal = open()) {
            assertEquals(Optional.empty(), journal.last());
            journal.append(new Journal.Entry(peg(1), BASE));
            assertEquals(BASE, journal.last().orElseThrow().base());
            journal.append(new Journal.Entry(peg(2), Optional.empty()));
        }
        try (Journal again = open()) {
            assertHolds(peg(2), again);
            assertEquals(Optional.empty(), again.last().orElseThrow().base());
        }
    }

    @Test
    void aRecordCutOffAnywhereIsPassedOverAndWritingGoesOn() throws InputException, IOException {
        Path path = folder.resolve("nine.journal");
        try (Journal journal = open()) {
            journal.append(new Journal.Entry(peg(1), BASE));
        }
        byte[] first = Files.readAllBytes(path);
        try (Journal journal = open()) {
            journal.append(new Journal.Entry(peg(2), BASE));
        }
        byte[] both = Files.readAllBytes(path);
        for (int cut = first.length; cut < both.length; cut += 97) {
            Files.write(path, Arrays.copyOf(both, cut));
            try (Journal journal = open()) {
                assertHolds(peg(1), journal);
                journal.append(new Journal.Entry(peg(3), BASE));
                assertHolds(peg(3), journal);
            }
        }
    }

    @Test
    void rubbishAtTheEndHidesNothing() throws InputException, IOException {
        try (Journal journal = open()) {
            journal.append(new Journal.Entry(peg(1), BASE));
        }
        Files.write(folder.resolve("nine.journal"), new byte[5000], StandardOpenOption.APPEND);
        try (Journal journal = open()) {
            assertHolds(peg(1), journal);
        }
    }

    @Test
    void whoComesSecondGetsNone() throws InputException {
        try (Journal journal = open()) {
            assertEquals(Optional.empty(), Journal.open(folder, "nine"));
            assertTrue(Journal.open(folder, "ten").isPresent());
        }
        open().close();
    }

    @Test
    void aClearedJournalHoldsNothingAndLeavesNoFile() throws InputException {
        Journal journal = open();
        journal.append(new Journal.Entry(peg(1), BASE));
        assertEquals(List.of("nine"), Journal.names(folder));
        journal.clear();
        assertEquals(Optional.empty(), journal.last());
        journal.close();
        assertEquals(List.of(), Journal.names(folder));
    }

    @Test
    void aLongJournalIsBegunAgainWithItsLastState() throws InputException, IOException {
        Peg large = peg(3000);
        long one;
        try (Journal journal = open()) {
            journal.append(new Journal.Entry(large, BASE));
            one = Files.size(folder.resolve("nine.journal"));
            for (int i = 1; i < 4_000_000 / one + 3; i++) {
                journal.append(new Journal.Entry(large.withReading(Reading.of(3 + i, 0, 1)), BASE));
            }
            assertEquals(
                    3001 + SamplePeg.peg().readings().size(),
                    journal.last().orElseThrow().peg().readings().size());
        }
        assertTrue(Files.size(folder.resolve("nine.journal")) < 4_000_000 + one);
    }

    @Test
    void rubbishBetweenRecordsHidesNeither() throws InputException, IOException {
        Path path = folder.resolve("nine.journal");
        try (Journal journal = open()) {
            journal.append(new Journal.Entry(peg(1), BASE));
        }
        byte[] first = Files.readAllBytes(path);
        try (Journal journal = open()) {
            journal.clear();
            journal.append(new Journal.Entry(peg(2), BASE));
        }
        byte[] second = Files.readAllBytes(path);
        Files.write(path, Arrays.copyOf(first, first.length - 40));
        Files.write(path, second, StandardOpenOption.APPEND);
        try (Journal journal = open()) {
            assertHolds(peg(2), journal);
            journal.append(new Journal.Entry(peg(3), BASE));
            assertHolds(peg(3), journal);
        }
    }

    @Test
    void aSecondLookDoesNotLetGoOfTheLock() throws InputException {
        try (Journal journal = open()) {
            journal.append(new Journal.Entry(peg(1), BASE));
            assertEquals(Optional.empty(), Journal.open(folder, "nine"));
            assertEquals(Optional.empty(), Journal.open(folder, "nine"));
            assertHolds(peg(1), journal);
        }
        open().close();
    }

    @Test
    void aPegWithoutAFileLeavesNotEvenALock() throws InputException, IOException {
        Journal.open(folder, Journal.UNNAMED + "1").orElseThrow().close();
        try (var files = Files.list(folder)) {
            assertEquals(List.of(), files.toList());
        }
    }
}
