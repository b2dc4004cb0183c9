package pegbed.storage.disk;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.Closeable;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Reading;
import pegbed.storage.peg.Fingerprint;
import pegbed.storage.peg.Opened;
import pegbed.storage.peg.PegRoundTripTest;
import pegbed.storage.peg.PegWriter;
import pegbed.storage.peg.SamplePeg;

/** Saving is all or nothing, whatever goes wrong. */
class AtomicFileWriterTest {
    private static final byte[] OLD = "old".getBytes(StandardCharsets.UTF_8);
    private static final byte[] NEW = "brand new".getBytes(StandardCharsets.UTF_8);

    @TempDir
    Path folder;

    private Path file() {
        return folder.resolve("tansy-9.peg.json");
    }

    private Fingerprint save(byte[] bytes, Optional<Fingerprint> expected) throws InputException {
        return new AtomicFileWriter(FileOps.DISK).save(file(), bytes, expected);
    }

    /** All but the lock, which stays for the next save. */
    private List<String> everythingInTheFolder() throws IOException {
        try (Stream<Path> paths = Files.walk(folder, new FileVisitOption[0])) {
            return paths.filter(Files::isRegularFile)
                    .filter(path -> !path.toString().endsWith(".lock"))
                    .map(path -> folder.relativize(path).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void aNewFileIsWrittenAndNothingElse() throws IOException, InputException {
        assertEquals(Fingerprint.of(NEW), save(NEW, Optional.empty()));
        assertArrayEquals(NEW, Files.readAllBytes(file()));
        assertEquals(List.of("tansy-9.peg.json"), everythingInTheFolder());
    }

    @Test
    void whatAKilledSaveLeftIsSweptByTheNext() throws IOException, InputException {
        Files.write(file(), OLD);
        String uuid = "123e4567-e89b-12d3-a456-426614174000";
        Path earlier = Files.createDirectory(folder.resolve(AtomicFileWriter.EARLIER_FOLDER));
        Files.write(folder.resolve(".tansy-9.peg.json." + uuid + ".tmp"), NEW);
        Files.write(earlier.resolve(".tansy-9.peg.json.3." + uuid + ".tmp"), NEW);
        Files.write(folder.resolve(".other.peg.json." + uuid + ".tmp"), NEW);
        save(NEW, Optional.empty());
        assertEquals(
                List.of(".other.peg.json." + uuid + ".tmp", ".pegbed-earlier/tansy-9.peg.json.1", "tansy-9.peg.json"),
                everythingInTheFolder());
    }

    @Test
    void theFileThatWasThereIsKept() throws IOException, InputException {
        Files.write(file(), OLD);
        save(NEW, Optional.of(Fingerprint.of(OLD)));
        assertArrayEquals(NEW, Files.readAllBytes(file()));
        assertEquals(List.of(".pegbed-earlier/tansy-9.peg.json.1", "tansy-9.peg.json"), everythingInTheFolder());
        assertArrayEquals(OLD, Files.readAllBytes(PegFile.earlier(file()).get(0)));
    }

    @Test
    void theLatestTenVersionsAreKeptApartForEachFile() throws IOException, InputException {
        Path other = folder.resolve("tansy-9.peg.json.peg.json");
        AtomicFileWriter saver = new AtomicFileWriter(FileOps.DISK);
        saver.save(other, OLD, Optional.empty());
        saver.save(other, NEW, Optional.empty());
        for (int i = 0; i < 25; i++) {
            save(("version " + i).getBytes(StandardCharsets.UTF_8), Optional.empty());
        }
        List<String> kept = new ArrayList<>();
        for (Path each : PegFile.earlier(file())) {
            kept.add(Files.readString(each));
        }
        assertEquals(
                IntStream.range(0, AtomicFileWriter.KEPT)
                        .mapToObj(i -> "version " + (23 - i))
                        .toList(),
                kept);
        assertEquals(1, saver.earlier(other).size());
        assertEquals(2 + AtomicFileWriter.KEPT + 1, everythingInTheFolder().size());
    }

    @Test
    void whatIsThereAlreadyIsNotWrittenAgain() throws IOException, InputException {
        save(OLD, Optional.empty());
        save(OLD, Optional.empty());
        assertEquals(List.of("tansy-9.peg.json"), everythingInTheFolder());
    }

    @Test
    void anothersChangesAreNotWrittenOver() throws IOException, InputException {
        Fingerprint loaded = save(OLD, Optional.empty());
        byte[] theirs = "theirs".getBytes(StandardCharsets.UTF_8);
        Files.write(file(), theirs);
        String sentence = assertThrows(InputException.class, () -> save(NEW, Optional.of(loaded)))
                .getMessage();
        assertEquals(
                "tansy-9.peg.json was changed by somebody else since it was opened, and was not written over;"
                        + " save under another name, or open it again.",
                sentence);
        assertArrayEquals(theirs, Files.readAllBytes(file()));
        assertEquals(List.of("tansy-9.peg.json"), everythingInTheFolder());
        save(NEW, Optional.of(Fingerprint.of(theirs)));
        assertArrayEquals(NEW, Files.readAllBytes(file()));
    }

    @Test
    void aChangeWhileSavingIsNotWrittenOver() throws IOException, InputException {
        byte[] theirs = "theirs".getBytes(StandardCharsets.UTF_8);
        for (boolean existed : new boolean[] {true, false}) {
            Files.deleteIfExists(file());
            if (existed) {
                Files.write(file(), OLD);
            }
            FileOps racing = (FileOps) java.lang.reflect.Proxy.newProxyInstance(
                    FileOps.class.getClassLoader(), new Class<?>[] {FileOps.class}, (proxy, method, arguments) -> {
                        Object answer;
                        try {
                            answer = method.invoke(FileOps.DISK, arguments);
                        } catch (InvocationTargetException e) {
                            throw e.getCause();
                        }
                        if (method.getName().equals("write")) {
                            Files.write(file(), theirs);
                        }
                        return answer;
                    });
            assertThrows(InputException.class, () -> new AtomicFileWriter(racing).save(file(), NEW, Optional.empty()));
            assertArrayEquals(theirs, Files.readAllBytes(file()));
            assertEquals(List.of("tansy-9.peg.json"), everythingInTheFolder());
        }
    }

    @Test
    void aFileThatWasRemovedIsMadeAgain() throws IOException, InputException {
        Fingerprint loaded = save(OLD, Optional.empty());
        Files.delete(file());
        save(NEW, Optional.of(loaded));
        assertArrayEquals(NEW, Files.readAllBytes(file()));
    }

    /** Every step of a save, over an old file and as a new one, goes wrong in every way. */
    @Test
    void whateverStepFailsTheOldFileStaysOrTheNewOneIsWhole() throws IOException, InputException {
        for (boolean existed : new boolean[] {true, false}) {
            FaultyFiles sound = new FaultyFiles(Integer.MAX_VALUE, FaultyFiles.Fault.REFUSED);
            prepare(existed);
            new AtomicFileWriter(sound).save(file(), NEW, Optional.empty());
            int lastName = sound.steps.lastIndexOf(existed ? "rename" : "nameNew");
            assertTrue(sound.steps.containsAll(
                    List.of("real", "write", "read", existed ? "rename" : "nameNew", "forceFolder")));
            for (FaultyFiles.Fault fault : FaultyFiles.Fault.values()) {
                for (int step = 0; step < sound.steps.size(); step++) {
                    boolean garbles = sound.steps.get(step).equals("read")
                            || sound.steps.get(step).equals("write");
                    if (fault != FaultyFiles.Fault.GARBLED || garbles) {
                        boolean sweeps = sound.steps.get(step).equals("list") && step < sound.steps.indexOf("write");
                        // What it only looks at before it takes the lock is read again.
                        boolean looks =
                                existed && fault == FaultyFiles.Fault.GARBLED && step == sound.steps.indexOf("read");
                        failAt(step, fault, existed, step <= lastName && !sweeps && !looks);
                    }
                }
            }
        }
    }

    private void failAt(int step, FaultyFiles.Fault fault, boolean existed, boolean mustFail)
            throws IOException, InputException {
        prepare(existed);
        List<String> before = everythingInTheFolder();
        FaultyFiles files = new FaultyFiles(step, fault);
        String told = fault + " at step " + step + " of " + files.steps;
        if (!mustFail) {
            new AtomicFileWriter(files).save(file(), NEW, Optional.empty());
            assertArrayEquals(NEW, Files.readAllBytes(file()), told);
            return;
        }
        String sentence = assertThrows(
                        InputException.class,
                        () -> new AtomicFileWriter(files).save(file(), NEW, Optional.empty()),
                        told)
                .getMessage();
        assertTrue(sentence.startsWith("tansy-9.peg.json "), sentence);
        assertTrue(sentence.endsWith("."), sentence);
        assertEquals(before, everythingInTheFolder(), told);
        if (existed) {
            assertArrayEquals(OLD, Files.readAllBytes(file()), told);
        }
        if (fault == FaultyFiles.Fault.FULL) {
            assertTrue(sentence.contains("the disk is full"), sentence);
        }
    }

    /** An old file with ten earlier versions, or no file. */
    private void prepare(boolean existed) throws IOException, InputException {
        Files.deleteIfExists(file());
        for (Path each : PegFile.earlier(file())) {
            Files.delete(each);
        }
        if (existed) {
            for (int i = 0; i < AtomicFileWriter.KEPT; i++) {
                save(("version " + i).getBytes(StandardCharsets.UTF_8), Optional.empty());
            }
            save(OLD, Optional.empty());
        }
    }

    @Test
    void aFailedSaveThatCanNotEvenTidyUpStillTellsTheCause() throws IOException {
        Files.write(file(), OLD);
        FileOps stuck = (FileOps) java.lang.reflect.Proxy.newProxyInstance(
                FileOps.class.getClassLoader(), new Class<?>[] {FileOps.class}, (proxy, method, arguments) -> {
                    if (method.getName().equals("rename") || method.getName().equals("delete")) {
                        throw new IOException(method.getName() + " refused");
                    }
                    return method.invoke(FileOps.DISK, arguments);
                });
        String sentence = assertThrows(
                        InputException.class, () -> new AtomicFileWriter(stuck).save(file(), NEW, Optional.empty()))
                .getMessage();
        assertEquals("tansy-9.peg.json could not be saved: rename refused.", sentence);
        assertArrayEquals(OLD, Files.readAllBytes(file()));
    }

    @Test
    void aLockThatCanNotBeReleasedDoesNotUndoTheSave() throws IOException, InputException {
        Files.write(file(), OLD);
        List<String> released = new ArrayList<>();
        FileOps stuck = (FileOps) java.lang.reflect.Proxy.newProxyInstance(
                FileOps.class.getClassLoader(), new Class<?>[] {FileOps.class}, (proxy, method, arguments) -> {
                    Object answer = method.invoke(FileOps.DISK, arguments);
                    if (!method.getName().equals("lock")) {
                        return answer;
                    }
                    return (Closeable) () -> {
                        ((Closeable) answer).close();
                        released.add(Files.readString(file()));
                        throw new IOException("unlock refused");
                    };
                });
        assertEquals(Fingerprint.of(NEW), new AtomicFileWriter(stuck).save(file(), NEW, Optional.empty()));
        assertEquals(List.of("brand new"), released);
        assertArrayEquals(NEW, Files.readAllBytes(file()));
        assertArrayEquals(OLD, Files.readAllBytes(PegFile.earlier(file()).get(0)));
    }

    @Test
    void namesThatCanNotBeSavedAreRefused() throws IOException {
        AtomicFileWriter saver = new AtomicFileWriter(FileOps.DISK);
        assertTrue(assertThrows(InputException.class, () -> saver.save(folder, NEW, Optional.empty()))
                .getMessage()
                .contains("is a folder"));
        Path nowhere = folder.resolve("none").resolve("x.peg.json");
        assertTrue(assertThrows(InputException.class, () -> saver.save(nowhere, NEW, Optional.empty()))
                .getMessage()
                .startsWith("There is no folder"));
        Path root = folder.getRoot();
        assertTrue(assertThrows(InputException.class, () -> saver.save(root, NEW, Optional.empty()))
                .getMessage()
                .contains("is a folder"));
        Path inFile = Files.write(file(), OLD).resolve("x.peg.json");
        assertThrows(InputException.class, () -> saver.save(inFile, NEW, Optional.empty()));
        Path tooLong = folder.resolve("x".repeat(400) + ".peg.json");
        assertThrows(InputException.class, () -> saver.save(tooLong, NEW, Optional.empty()));
        assertEquals(List.of("tansy-9.peg.json"), everythingInTheFolder());
    }

    @Test
    void aFileThatMayNotBeWrittenIsLeftAlone() throws IOException {
        Files.write(file(), OLD);
        FileOps guarded = (FileOps) java.lang.reflect.Proxy.newProxyInstance(
                FileOps.class.getClassLoader(),
                new Class<?>[] {FileOps.class},
                (proxy, method, arguments) ->
                        method.getName().equals("mayWrite") ? false : method.invoke(FileOps.DISK, arguments));
        String sentence = assertThrows(
                        InputException.class, () -> new AtomicFileWriter(guarded).save(file(), NEW, Optional.empty()))
                .getMessage();
        assertTrue(sentence.contains("may not be changed"), sentence);
        assertArrayEquals(OLD, Files.readAllBytes(file()));
    }

    @Test
    void linksAndPermissionsSurvive() throws IOException, InputException {
        Assumptions.assumeTrue(Files.getFileStore(folder).supportsFileAttributeView("posix"));
        Path target = Files.write(folder.resolve("real.peg.json"), OLD);
        Files.setPosixFilePermissions(target, PosixFilePermissions.fromString("rw-rw----"));
        Files.createSymbolicLink(file(), target);
        save(NEW, Optional.empty());
        assertTrue(Files.isSymbolicLink(file()));
        assertArrayEquals(NEW, Files.readAllBytes(target));
        assertEquals("rw-rw----", PosixFilePermissions.toString(Files.getPosixFilePermissions(target)));
    }

    @Test
    void aPegIsSavedAndReadAgain() throws IOException, InputException {
        Peg peg = SamplePeg.peg();
        Fingerprint first = PegFile.save(file(), peg, Optional.empty());
        Opened opened = PegFile.read(file());
        assertEquals(first, opened.fingerprint());
        PegRoundTripTest.assertSame(peg, opened.peg());
        Peg longer = opened.peg().withReading(Reading.of(5, 5, 1));
        Fingerprint second = PegFile.save(file(), longer, Optional.of(opened.fingerprint()));
        assertFalse(first.equals(second));
        assertThrows(InputException.class, () -> PegFile.save(file(), peg, Optional.of(first)));
        assertEquals(
                longer.readings().size(), PegFile.read(file()).peg().readings().size());
        Path earlier = PegFile.earlier(file()).get(0);
        assertArrayEquals(PegWriter.bytes(peg), Files.readAllBytes(earlier));
        assertEquals(first, PegFile.read(earlier).fingerprint());
    }

    @Test
    void aPegThatCouldNotBeReadAgainIsNotSaved() throws IOException {
        for (Peg bad : List.of(
                new Peg(
                        Peg.EMPTY.name(),
                        Optional.empty(),
                        Peg.EMPTY.units(),
                        Peg.EMPTY.pole(),
                        Peg.EMPTY.banks(),
                        Peg.EMPTY.limits(),
                        List.of(),
                        List.of(),
                        Peg.EMPTY.wishes(),
                        Peg.EMPTY.visits(),
                        SamplePeg.extras("later", "not json")),
                Peg.EMPTY.withReading(Reading.of(1e7, 0, 1)),
                Peg.EMPTY.withName(new pegbed.model.PegName("x".repeat(2_000_000), "", "")))) {
            assertThrows(InputException.class, () -> PegFile.save(file(), bad, Optional.empty()));
            assertEquals(List.of(), everythingInTheFolder());
        }
    }
}
