package pegbed.storage.disk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.logging.ErrorManager;
import java.util.logging.FileHandler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.SimpleFormatter;

/**
 * The log of errors nobody expected, with their stack traces, in the program's own folder. Nothing of it is touched, or
 * even loaded, before there is something to write. Thread-safe.
 */
public final class ProgramLog {
    private static final String FILE = "pegbed-0.log";

    /** The newest file is number 0; a full one moves up by one, the oldest goes. */
    private static final String PATTERN = "pegbed-%g.log";

    private static final int FILES = 4;
    private static final int BYTES = 500_000;

    private final Path folder;

    /** @param folder the program's own folder, see {@link Folders}; made when there is something to write */
    public ProgramLog(Path folder) {
        this.folder = folder;
    }

    /** The log's newest file. */
    public Path file() {
        return folder.resolve(FILE);
    }

    /**
     * Writes an error with its stack trace.
     *
     * @param what what could not be done, a sentence without its full stop, such as {@code The card could not be drawn}
     * @return one sentence for the person: {@code what}, and where the log lies or why nothing could be written to it
     */
    public String report(String what, Throwable error) {
        Optional<String> trouble = write(what, error);
        return what
                + (trouble.isEmpty()
                        ? "; what went wrong is in the log " + file() + "."
                        : ", for " + error + "; the log " + file() + " can't be written, for " + trouble.get() + ".");
    }

    /** Opened for each error and closed again, so that windows and commands can share it. */
    private synchronized Optional<String> write(String what, Throwable error) {
        try {
            Files.createDirectories(folder);
            FileHandler handler =
                    new FileHandler(folder.toString().replace("%", "%%") + "/" + PATTERN, BYTES, FILES, true);
            Failures failures = new Failures();
            handler.setErrorManager(failures);
            handler.setEncoding(StandardCharsets.UTF_8.name());
            handler.setFormatter(new SimpleFormatter());
            LogRecord entry = new LogRecord(Level.SEVERE, "{0} [{1}]");
            entry.setParameters(new Object[] {what, Thread.currentThread().getName()});
            entry.setLoggerName("pegbed");
            entry.setThrown(error);
            handler.publish(entry);
            handler.close();
            return Optional.ofNullable(failures.why);
        } catch (IOException | RuntimeException e) {
            return Optional.of(e.toString());
        }
    }

    /** What the handler would print otherwise. */
    private static final class Failures extends ErrorManager {
        private String why;

        @Override
        public synchronized void error(String words, Exception error, int code) {
            why = words == null ? String.valueOf(error) : words;
        }
    }
}
