package pegbed.storage.disk;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/** Where the program keeps what is the person's but in no peg file. */
public final class Folders {
    private Folders() {}

    /** The program's own folder on this machine, as {@link #own(String, Path, Map)} tells. */
    public static Path own() {
        Path home = Path.of(System.getProperty("user.home", "."));
        return own(System.getProperty("os.name", ""), home, System.getenv());
    }

    /**
     * The program's own folder: {@code PEGBED_HOME} where it is set, else where the system wants such things.
     *
     * @param system name of the operating system
     * @param home the person's home folder
     * @param environment the variables of the environment
     */
    public static Path own(String system, Path home, Map<String, String> environment) {
        String set = environment.getOrDefault("PEGBED_HOME", "");
        if (!set.isBlank()) {
            return Path.of(set);
        }
        String name = system.toLowerCase(Locale.ROOT);
        if (name.contains("win")) {
            String data = environment.getOrDefault("APPDATA", "");
            return data.isBlank() ? home.resolve("Pegbed") : Path.of(data).resolve("Pegbed");
        }
        if (name.contains("mac")) {
            return home.resolve("Library").resolve("Application Support").resolve("Pegbed");
        }
        String data = environment.getOrDefault("XDG_DATA_HOME", "");
        return (data.isBlank() ? home.resolve(".local").resolve("share") : Path.of(data)).resolve("pegbed");
    }
}
