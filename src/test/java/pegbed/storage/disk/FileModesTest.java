package pegbed.storage.disk;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.InputException;

/** Who may read a file, and what a link or a device is, does not change by being written. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class FileModesTest {
    private static final byte[] OLD = "old".getBytes(StandardCharsets.UTF_8);
    private static final byte[] NEW = "new".getBytes(StandardCharsets.UTF_8);

    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void name() {
        file = folder.resolve("map.svg");
    }

    private static String mode(Path path) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
    }

    private void old(String mode) throws IOException {
        Files.deleteIfExists(file);
        Files.write(file, OLD);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(mode));
    }

    @Test
    void anExportKeepsTheModeOfTheFileItReplaces() throws IOException, InputException {
        for (String mode : new String[] {"rw-rw-r--", "rw-------", "rw-r--r--", "rwxrw-rw-"}) {
            old(mode);
            WholeFile.write(file, NEW);
            assertEquals(mode, mode(file));
            WholeFile.write(file, (WholeFile.Text) to -> to.append("words"));
            assertEquals(mode, mode(file));
            assertEquals("words", Files.readString(file));
        }
    }

    @Test
    void aNewExportHasTheModeOfAnyNewFile() throws IOException, InputException {
        String usual = mode(Files.createFile(folder.resolve("usual")));
        WholeFile.write(file, NEW);
        assertEquals(usual, mode(file));
    }

    @Test
    void savedAndEarlierVersionsKeepTheModeOfTheFile() throws IOException, InputException {
        for (String mode : new String[] {"rw-------", "rw-rw-r--"}) {
            old(mode);
            new AtomicFileWriter(FileOps.DISK).save(file, NEW, Optional.empty());
            assertEquals(mode, mode(file));
            assertEquals(mode, mode(PegFile.earlier(file).get(0)));
            assertArrayEquals(OLD, Files.readAllBytes(PegFile.earlier(file).get(0)));
        }
    }

    @Test
    void aPosixAccessControlListIsKept() throws Exception {
        assumeTrue(PosixLists.known(), "setfacl is not installed");
        old("rw-r-----");
        assumeTrue(said("setfacl", "-m", "user:65533:rw-", file.toString()).isEmpty(), "no lists on this disk");
        String list = said("getfacl", "--numeric", "--omit-header", file.toString());
        assertTrue(list.contains("user:65533:rw-\ngroup::r--"), list);

        new AtomicFileWriter(FileOps.DISK).save(file, NEW, Optional.empty());
        assertEquals(list, said("getfacl", "--numeric", "--omit-header", file.toString()));
        Path earlier = PegFile.earlier(file).get(0);
        assertEquals(list, said("getfacl", "--numeric", "--omit-header", earlier.toString()));
        WholeFile.write(file, OLD);
        assertEquals(list, said("getfacl", "--numeric", "--omit-header", file.toString()));
        assertArrayEquals(OLD, Files.readAllBytes(file));
    }

    /** What a command says on either output. */
    private static String said(String... command) throws IOException {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        process.getOutputStream().close();
        return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    @Test
    void aLinkIsFollowed() throws IOException, InputException {
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        Path target = elsewhere.resolve("there.svg");
        Files.createSymbolicLink(file, Path.of("elsewhere", "there.svg"));
        for (int i = 0; i < 2; i++) {
            WholeFile.write(file, i == 0 ? OLD : NEW);
            assertTrue(Files.isSymbolicLink(file));
            assertArrayEquals(i == 0 ? OLD : NEW, Files.readAllBytes(target));
        }
        try (Stream<Path> left = Files.list(elsewhere)) {
            assertEquals(1, left.count());
        }
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void aDeviceStaysOne() throws IOException, InputException {
        Path device = Path.of("/dev/null");
        Files.createSymbolicLink(file, device);
        WholeFile.write(file, NEW);
        WholeFile.write(device, NEW);
        assertTrue(Files.isSymbolicLink(file));
        assertTrue(!Files.isRegularFile(device), "a device");
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void aPipeIsWrittenInto() throws Exception {
        assertEquals(0, new ProcessBuilder("mkfifo", file.toString()).start().waitFor());
        Callable<byte[]> read = () -> {
            try (InputStream in = Files.newInputStream(file)) {
                return in.readAllBytes();
            }
        };
        FutureTask<byte[]> reader = new FutureTask<>(read);
        Thread thread = new Thread(reader);
        thread.setDaemon(true);
        thread.start();
        WholeFile.write(file, NEW);
        assertArrayEquals(NEW, reader.get());
        assertTrue(!Files.isRegularFile(file));
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void aPipeThatNobodyReadsIsRefused() throws Exception {
        assertEquals(0, new ProcessBuilder("mkfifo", file.toString()).start().waitFor());
        FileSystemException refused = assertThrows(
                FileSystemException.class,
                () -> WholeFile.opened(file, Duration.ofMillis(50)).close());
        assertEquals("nobody reads this pipe; start what reads it first, or give another file", refused.getReason());
        // Lets the thread go that still waits.
        Files.newInputStream(file).close();
    }

    @Test
    void whatKilledCommandsLeftIsSwept() throws Exception {
        Process ended = new ProcessBuilder("true").start();
        assertEquals(0, ended.waitFor());
        String end = "-123e4567-e89b-12d3-a456-426614174000.tmp";
        Path left = Files.write(folder.resolve(".pegbed-" + ended.pid() + end), OLD);
        Path running =
                Files.write(folder.resolve(".pegbed-" + ProcessHandle.current().pid() + end), OLD);
        Path other = Files.write(folder.resolve("pegbed-" + ended.pid() + end), OLD);
        WholeFile.write(file, NEW);
        assertTrue(Files.notExists(left));
        assertTrue(Files.exists(running), "another command still writes it");
        assertTrue(Files.exists(other), "no command's file");
        assertArrayEquals(NEW, Files.readAllBytes(file));
    }
}
