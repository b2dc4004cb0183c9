package pegbed.ui.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.InputException;

class StartTest {
    @TempDir
    private Path folder;

    @Test
    void withoutADisplayThereIsNoWindow() {
        assertFalse(Window.hasDisplay("Linux", Map.of(), ""));
        assertFalse(Window.hasDisplay("Linux", Map.of("DISPLAY", " "), ""));
        assertTrue(Window.hasDisplay("Linux", Map.of("DISPLAY", ":0"), ""));
        assertTrue(Window.hasDisplay("Linux", Map.of(), "Monocle"));
        assertTrue(Window.hasDisplay("Windows 11", Map.of(), ""));
        assertTrue(Window.hasDisplay("Mac OS X", Map.of(), ""));
    }

    @Test
    void aDarkDesktopIsFollowedWhereItSaysSo() throws IOException {
        assertTrue(SystemTheme.dark(folder, Map.of("GTK_THEME", "Adwaita:dark")));
        assertFalse(SystemTheme.dark(folder, Map.of("GTK_THEME", "Adwaita")));
        assertFalse(SystemTheme.dark(folder, Map.of()));
        Path settings = folder.resolve(".config/gtk-3.0/settings.ini");
        Files.createDirectories(settings.getParent());
        Files.writeString(settings, "[Settings]\ngtk-application-prefer-dark-theme = 1\n");
        assertTrue(SystemTheme.dark(folder, Map.of()));
    }

    @Test
    void theSamplePegComesWithTheProgram() throws InputException {
        assertEquals("Tansy Cut, peg 9", SamplePegFiles.first().name().title());
        assertTrue(SamplePegFiles.first().readings().size() > 10);
    }
}
