package pegbed;

import java.text.MessageFormat;
import java.util.ResourceBundle;

/**
 * What libraries log through {@link System.Logger}: warnings and errors go to standard error, a line each. Java's own
 * logging, which would be loaded for the toolkit's first line, takes a good part of a quick start.
 */
public final class LibraryMessages extends System.LoggerFinder {
    /** The toolkit's remark that it comes from the class path, which is meant: the program is one jar. */
    private static final String MEANT = "Unsupported JavaFX configuration";

    /** For {@link java.util.ServiceLoader}. */
    public LibraryMessages() {}

    @Override
    public System.Logger getLogger(String name, Module module) {
        return new ToStandardError(name);
    }

    private record ToStandardError(String name) implements System.Logger {
        @Override
        public String getName() {
            return name;
        }

        @Override
        public boolean isLoggable(Level level) {
            return level != Level.OFF && level.compareTo(Level.WARNING) >= 0;
        }

        @Override
        public void log(Level level, ResourceBundle bundle, String words, Throwable thrown) {
            if (!isLoggable(level) || (words != null && words.startsWith(MEANT))) {
                return;
            }
            System.err.println(name + ": " + words + (thrown == null ? "" : " (" + thrown + ")"));
        }

        @Override
        public void log(Level level, ResourceBundle bundle, String format, Object... values) {
            boolean filled = format != null && values != null && values.length > 0;
            log(level, bundle, filled ? MessageFormat.format(format, values) : format, (Throwable) null);
        }
    }
}
