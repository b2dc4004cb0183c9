package pegbed.ui.document;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Properties;

/**
 * What the window remembers between runs: the files that were open last, the shelf's folder, the theme, whether the
 * hint was closed. Nothing here is worth a sentence when it can't be read or written; the window then begins as new.
 */
public final class WindowPreferences {
    private static final int MAX_RECENT = 8;

    private final Path file;
    private final Properties values = new Properties();

    /** @param folder where it is written down; made if there is none */
    public WindowPreferences(Path folder) {
        file = folder.resolve("window.properties");
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            values.load(reader);
        } catch (IOException | IllegalArgumentException beginsAsNew) {
            values.clear();
        }
    }

    /** The files that were open last, the latest first. */
    public List<Path> recent() {
        List<Path> paths = new ArrayList<>();
        for (int i = 0; i < MAX_RECENT; i++) {
            String path = values.getProperty("recent." + i, "");
            try {
                if (!path.isEmpty()) {
                    paths.add(Path.of(path));
                }
            } catch (InvalidPathException notAPathHere) {
                // It came from another system.
            }
        }
        return List.copyOf(paths);
    }

    public void addRecent(Path path) {
        List<Path> paths = new ArrayList<>(recent());
        Path whole = path.toAbsolutePath().normalize();
        paths.remove(whole);
        paths.add(0, whole);
        setRecent(paths);
    }

    public void forgetRecent(Path path) {
        List<Path> paths = new ArrayList<>(recent());
        paths.remove(path.toAbsolutePath().normalize());
        setRecent(paths);
    }

    private void setRecent(List<Path> paths) {
        for (int i = 0; i < MAX_RECENT; i++) {
            values.setProperty("recent." + i, i < paths.size() ? paths.get(i).toString() : "");
        }
        write();
    }

    /** The folder that the shelf looks at; empty where none was chosen. */
    public Optional<Path> shelf() {
        try {
            return Optional.ofNullable(values.getProperty("shelf")).map(Path::of);
        } catch (InvalidPathException notAPathHere) {
            return Optional.empty();
        }
    }

    public void setShelf(Path folder) {
        values.setProperty("shelf", folder.toString());
        write();
    }

    /** Whether the dark theme was chosen; empty while the system is followed. */
    public Optional<Boolean> dark() {
        return Optional.ofNullable(values.getProperty("dark")).map(Boolean::parseBoolean);
    }

    public void setDark(boolean dark) {
        values.setProperty("dark", String.valueOf(dark));
        write();
    }

    /** Whether the hint of the first start was closed. */
    public boolean hintClosed() {
        return Boolean.parseBoolean(values.getProperty("hint.closed", "false"));
    }

    public void closeHint() {
        values.setProperty("hint.closed", "true");
        write();
    }

    private void write() {
        try {
            Files.createDirectories(file.getParent());
            try (Writer writer = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
                values.store(writer, null);
            }
        } catch (IOException | SecurityException nothingRemembered) {
            // The next run begins as new.
        }
    }
}
