package pegbed.storage.disk;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import pegbed.model.InputException;

/** Whether this program's memory holds what a file holds; a file that is too large is refused, and nothing stalls. */
public final class Memory {
    private Memory() {}

    /** Something that is read. */
    public interface Reading<T> {
        T read() throws IOException, InputException;
    }

    /**
     * Reads a file if there is room for it.
     *
     * @param times how many times the file's size reading takes at most
     * @throws FileSystemException if there is too little room, with the reason in words
     */
    public static <T> T reading(Path path, int times, Reading<T> reading) throws IOException, InputException {
        long bytes = Files.isRegularFile(path) ? Files.size(path) : 0;
        if (bytes > Runtime.getRuntime().maxMemory() / times) {
            throw tooLarge(path, bytes);
        }
        try {
            return reading.read();
        } catch (OutOfMemoryError e) {
            throw tooLarge(path, bytes);
        }
    }

    private static FileSystemException tooLarge(Path path, long bytes) {
        return new FileSystemException(
                path.toString(),
                null,
                "it has " + Math.max(1, bytes >> 20)
                        + " megabytes, more than this program's memory holds; start it with more, such as java -Xmx4g");
    }
}
