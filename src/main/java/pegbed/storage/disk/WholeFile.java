package pegbed.storage.disk;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import pegbed.model.InputException;

/** Writes what can be made again at any time, such as a picture or a card: whole or not at all. */
public final class WholeFile {
    private WholeFile() {}

    /**
     * Writes bytes under a name, over what is there.
     *
     * @throws InputException if they could not be written; what was there is then as it was
     */
    public static void write(Path path, byte[] bytes) throws InputException {
        fill(path, fresh -> Files.write(fresh, bytes));
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
        fill(path, fresh -> {
            // Long work is more often ended by the person than by itself.
            fresh.toFile().deleteOnExit();
            try (BufferedWriter out = Files.newBufferedWriter(fresh, StandardCharsets.UTF_8)) {
                text.to(out);
            }
        });
    }

    private interface Filling {
        void fill(Path fresh) throws IOException;
    }

    private static void fill(Path path, Filling filling) throws InputException {
        String name = AtomicFileWriter.name(path);
        Path fresh = null;
        try {
            if (Files.isDirectory(path)) {
                throw new InputException(name + " is a folder; give the name of a file.");
            }
            Path folder = path.toAbsolutePath().getParent();
            if (folder == null || !Files.isDirectory(folder)) {
                throw new InputException(
                        "There is no folder " + folder + "; make it first or write " + name + " elsewhere.");
            }
            fresh = Files.createTempFile(folder, ".pegbed", ".tmp");
            filling.fill(fresh);
            Files.move(fresh, path, StandardCopyOption.REPLACE_EXISTING);
            fresh = null;
        } catch (IOException | SecurityException e) {
            throw new InputException(name + " could not be written: " + AtomicFileWriter.reason(e) + ".", e);
        } finally {
            if (fresh != null) {
                deleteQuietly(fresh);
            }
        }
    }

    private static void deleteQuietly(Path path) {
        try {
            Files.deleteIfExists(path);
        } catch (IOException e) {
            // The failure that is being told matters more.
        }
    }
}
