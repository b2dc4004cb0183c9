package pegbed.ui.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/** Whether the desktop is dark, where a desktop says so in a way that can be read without asking another program. */
final class SystemTheme {
    private SystemTheme() {}

    /** By {@code GTK_THEME}, else by GTK's own settings; light where neither says anything. */
    static boolean dark(Path home, Map<String, String> environment) {
        String theme = environment.getOrDefault("GTK_THEME", "").toLowerCase(Locale.ROOT);
        if (!theme.isEmpty()) {
            return theme.endsWith(":dark") || theme.endsWith("-dark");
        }
        Path settings = home.resolve(".config").resolve("gtk-3.0").resolve("settings.ini");
        try {
            return Files.readString(settings, StandardCharsets.UTF_8)
                    .lines()
                    .map(line -> line.replaceAll("\\s+", "").toLowerCase(Locale.ROOT))
                    .anyMatch(line -> line.equals("gtk-application-prefer-dark-theme=1")
                            || line.equals("gtk-application-prefer-dark-theme=true")
                            || (line.startsWith("gtk-theme-name=") && line.endsWith("-dark")));
        } catch (IOException | SecurityException saysNothing) {
            return false;
        }
    }
}
