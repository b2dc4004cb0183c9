package pegbed.storage.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class FoldersTest {
    private static final Path HOME = Path.of("home");

    @Test
    void theProgramsOwnFolderIsWhereTheSystemWantsIt() {
        assertEquals(Path.of("here"), Folders.own("Linux", HOME, Map.of("PEGBED_HOME", "here")));
        assertEquals(HOME.resolve(".local/share/pegbed"), Folders.own("Linux", HOME, Map.of()));
        assertEquals(Path.of("data", "pegbed"), Folders.own("Linux", HOME, Map.of("XDG_DATA_HOME", "data")));
        assertEquals(Path.of("roaming", "Pegbed"), Folders.own("Windows 11", HOME, Map.of("APPDATA", "roaming")));
        assertEquals(HOME.resolve("Library/Application Support/Pegbed"), Folders.own("Mac OS X", HOME, Map.of()));
    }
}
