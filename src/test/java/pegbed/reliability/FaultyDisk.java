package pegbed.reliability;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * The machine's disk, on which things go wrong when a test wants it, and from which power can be cut: what was not
 * forced by then may be lost, bytes and names alike. Paths from {@link #path} lead through it, whatever code uses them.
 */
final class FaultyDisk {
    /** What is done to a disk. */
    enum Step {
        READ,
        OPEN,
        WRITE,
        FORCE,
        TRUNCATE,
        RENAME,
        DELETE
    }

    /** What goes wrong. */
    enum Fault {
        WRITE_ERROR(Step.WRITE),
        DISK_FULL(Step.WRITE),
        FSYNC_ERROR(Step.FORCE),
        RENAME_REFUSED(Step.RENAME),
        READ_ONLY(Step.OPEN, Step.WRITE, Step.TRUNCATE, Step.RENAME, Step.DELETE),
        READ_ERROR(Step.READ),
        DEAD(Step.values());

        private final List<Step> steps;

        Fault(Step... steps) {
            this.steps = List.of(steps);
        }

        /** Whether new names still come to be surely on the disk; where they don't, a power cut may take them. */
        boolean forcesFolders() {
            return !steps.contains(Step.FORCE);
        }
    }

    private final FaultyFileSystem system = new FaultyFileSystem(this);
    private final List<FileChannel> open = new ArrayList<>();
    private final Map<Path, byte[]> onDisk = new HashMap<>();
    private final Map<Path, Deque<Runnable>> namesNotForced = new HashMap<>();
    private Fault fault;
    private int sparedSteps;
    private int failingSteps;
    private int room;
    private int failed;

    /** The path through this disk. */
    Path path(Path real) {
        return new FaultyPath(system, real);
    }

    /**
     * Lets things go wrong from now on.
     *
     * @param spared how many of the steps that the fault concerns still succeed
     * @param failing how many of them fail after that
     * @param bytes how many bytes of the first failing write reach the disk
     */
    void breakWith(Fault next, int spared, int failing, int bytes) {
        fault = next;
        sparedSteps = spared;
        failingSteps = failing;
        room = bytes;
    }

    /** Lets all succeed again. */
    void heal() {
        fault = null;
    }

    /** How many steps have failed so far. */
    int failed() {
        return failed;
    }

    void before(Step step) throws IOException {
        if (fails(step)) {
            throw failure();
        }
    }

    private boolean fails(Step step) {
        if (fault == null || !fault.steps.contains(step)) {
            return false;
        }
        if (sparedSteps > 0) {
            sparedSteps--;
            return false;
        }
        if (failingSteps <= 0) {
            fault = null;
            return false;
        }
        failingSteps--;
        failed++;
        return true;
    }

    private IOException failure() {
        return switch (fault) {
            case DISK_FULL -> new IOException("No space left on device");
            case READ_ONLY -> new AccessDeniedException("a path");
            default -> new IOException("Input/output error");
        };
    }

    /** How many of so many bytes may be written; throws where none. */
    int room(int wanted) throws IOException {
        if (!fails(Step.WRITE)) {
            return wanted;
        }
        if (room > 0 && wanted > 0) {
            int part = Math.min(room, wanted);
            room = 0;
            failingSteps++;
            return part;
        }
        throw failure();
    }

    FileChannel opened(Path path, FileChannel channel, boolean emptied) {
        if (emptied) {
            touched(path);
        }
        FileChannel faulty = new FaultyChannel(this, path, channel);
        open.add(channel);
        return faulty;
    }

    /** A file is about to change; remembers what is surely on the disk. */
    void touched(Path path) {
        if (!onDisk.containsKey(path)) {
            onDisk.put(path, bytes(path));
        }
    }

    void forced(Path path) {
        if (Files.isDirectory(path)) {
            namesNotForced.remove(path);
        } else {
            onDisk.remove(path);
        }
    }

    void made(Path path) {
        onDisk.put(path, new byte[0]);
        undoing(path, () -> remove(path));
    }

    void deleting(Path path) {
        if (!Files.exists(path)) {
            return;
        }
        byte[] bytes = bytes(path);
        undoing(path, () -> write(path, bytes));
    }

    void renaming(Path from, Path to) {
        if (!Files.exists(from)) {
            return;
        }
        byte[] moved = bytes(from);
        boolean replaced = Files.exists(to);
        byte[] before = replaced ? bytes(to) : new byte[0];
        byte[] sure = onDisk.remove(from);
        if (sure != null) {
            onDisk.put(to, sure);
        } else {
            onDisk.remove(to);
        }
        undoing(to, () -> {
            write(from, moved);
            if (replaced) {
                write(to, before);
            } else {
                remove(to);
            }
        });
    }

    private void undoing(Path path, Runnable undo) {
        namesNotForced
                .computeIfAbsent(path.getParent(), folder -> new ArrayDeque<>())
                .push(undo);
    }

    /** The program is killed: its files are closed and unlocked, and nothing else happens. */
    void kill() {
        try {
            for (FileChannel channel : open) {
                channel.close();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        open.clear();
        heal();
    }

    /** Power is cut: of what was not forced, some bytes and some folders' new names are lost. */
    void cutPower(Random random) {
        kill();
        onDisk.forEach((path, sure) -> {
            if (Files.exists(path)) {
                write(path, left(sure, bytes(path), random));
            }
        });
        for (Deque<Runnable> undos : namesNotForced.values()) {
            if (random.nextBoolean()) {
                undos.forEach(Runnable::run);
            }
        }
    }

    /** What may be left of a file: what was forced, what was written since, or some of that. */
    private static byte[] left(byte[] sure, byte[] now, Random random) {
        boolean longer = now.length > sure.length && Arrays.equals(Arrays.copyOf(now, sure.length), sure);
        if (!longer) {
            return random.nextBoolean() ? sure : now;
        }
        int length = sure.length + random.nextInt(now.length - sure.length + 1);
        byte[] left = Arrays.copyOf(now, length);
        if (random.nextInt(3) == 0) {
            Arrays.fill(left, sure.length + random.nextInt(length - sure.length + 1), length, (byte) 0);
        }
        return left;
    }

    private static byte[] bytes(Path path) {
        try {
            return Files.readAllBytes(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void write(Path path, byte[] bytes) {
        try {
            Files.write(path, bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void remove(Path path) {
        try {
            Files.deleteIfExists(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
