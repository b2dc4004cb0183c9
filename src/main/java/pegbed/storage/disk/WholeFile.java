package pegbed.storage.disk;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.channels.Channels;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.EnumSet;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import pegbed.model.InputException;

/**
 * Writes what can be made again at any time, such as a picture or a card: whole or not at all. A link is followed; what
 * is no regular file, such as a device or a pipe, is written into and stays what it is. A file that is written over
 * keeps its permissions, owner and group.
 */
public final class WholeFile {
    private static final int MOST_LINKS = 40;

    /** How long what is to read a pipe may take to start. */
    private static final Duration PATIENCE = Duration.ofSeconds(5);

    /** The name of a file that is being written, with its writer's process. */
    private static final Pattern LEFT = Pattern.compile("\\.pegbed-(\\d{1,18})-[0-9a-f-]{36}\\.tmp");

    private WholeFile() {}

    /**
     * Writes bytes under a name, over what is there.
     *
     * @throws InputException if they could not be written; what was there is then as it was
     */
    public static void write(Path path, byte[] bytes) throws InputException {
        fill(path, out -> out.write(bytes));
    }

    /** What is too long to be held whole. */
    public interface Text {
        /** Writes all of it. */
        void to(Appendable out) throws IOException;
    }

    /**
     * Writes a long text piece by piece, over what is there once it is whole.
     *
     * @throws InputException if it could not be written; what was there is then as it was
     */
    public static void write(Path path, Text text) throws InputException {
        fill(path, out -> {
            Writer words = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
            text.to(words);
            words.flush();
        });
    }

    private interface Filling {
        void fill(OutputStream out) throws IOException;
    }

    private static void fill(Path path, Filling filling) throws InputException {
        String name = AtomicFileWriter.name(path);
        Path fresh = null;
        try {
            if (Files.isDirectory(path)) {
                throw new InputException(name + " is a folder; give the name of a file.");
            }
            if (Files.exists(path) && !Files.isRegularFile(path)) {
                try (OutputStream out = opened(path, PATIENCE)) {
                    filling.fill(out);
                }
                return;
            }
            Path target = followed(path);
            Path folder = target.getParent();
            if (folder == null || !Files.isDirectory(folder)) {
                throw new InputException(
                        "There is no folder " + folder + "; make it first or write " + name + " elsewhere.");
            }
            if (AtomicFileWriter.name(target).endsWith(PegFile.ENDING)) {
                throw new InputException(name + " is the name of a peg file and is not written over; give another.");
            }
            sweep(folder);
            fresh = folder.resolve(".pegbed-" + ProcessHandle.current().pid() + "-" + UUID.randomUUID() + ".tmp");
            // Long work is more often ended by the person than by itself.
            fresh.toFile().deleteOnExit();
            Set<StandardOpenOption> options = EnumSet.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            try (OutputStream out =
                    Channels.newOutputStream(Files.newByteChannel(fresh, options, FileModes.of(target)))) {
                FileModes.copy(target, fresh);
                filling.fill(out);
            }
            Files.move(fresh, target, StandardCopyOption.REPLACE_EXISTING);
            fresh = null;
        } catch (IOException | SecurityException e) {
            throw new InputException(name + " could not be written: " + AtomicFileWriter.reason(e) + ".", e);
        } finally {
            if (fresh != null) {
                deleteQuietly(fresh);
            }
        }
    }

    /**
     * Opens what is no regular file. A pipe opens only once somebody reads it, and a thread that waits for that can't
     * be stopped: it is left behind.
     *
     * @param patience how long to wait for a reader
     * @throws IOException if it can't be opened, or nobody reads it by then
     */
    static OutputStream opened(Path path, Duration patience) throws IOException {
        FutureTask<OutputStream> opening =
                new FutureTask<>(() -> Files.newOutputStream(path, StandardOpenOption.WRITE));
        Thread thread = new Thread(opening, "opening " + path);
        thread.setDaemon(true);
        thread.start();
        try {
            return opening.get(patience.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
            throw new FileSystemException(
                    path.toString(), null, "nobody reads this pipe; start what reads it first, or give another file");
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException("the command was stopped");
        } catch (ExecutionException e) {
            throw e.getCause() instanceof IOException cause ? cause : new IOException(e.getCause());
        }
    }

    /**
     * Removes what commands left in a folder that were killed while they wrote: their processes are no longer there.
     */
    private static void sweep(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Matcher left = LEFT.matcher(AtomicFileWriter.name(file));
                if (left.matches()
                        && ProcessHandle.of(Long.parseLong(left.group(1))).isEmpty()) {
                    deleteQuietly(file);
                }
            }
        } catch (IOException | UncheckedIOException | SecurityException e) {
            // What was left takes room only.
        }
    }

    /** The file that a chain of links ends at, whether it is there or not. */
    private static Path followed(Path path) throws IOException {
        Path at = path.toAbsolutePath();
        for (int links = 0; Files.isSymbolicLink(at); links++) {
            if (links == MOST_LINKS) {
                throw new FileSystemException(
                        path.toString(), null, "its links go round in a circle and lead to no file");
            }
            at = at.resolveSibling(Files.readSymbolicLink(at));
        }
        return at;
    }

    private static void deleteQuietly(Path path) {
        try {
            Files.deleteIfExists(path);
        } catch (IOException e) {
            // The failure that is being reported matters more.
        }
    }
}
