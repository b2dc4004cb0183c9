package pegbed.ui.map;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.report.drawing.Themes;
import pegbed.report.drawing.View;
import pegbed.session.Session;

class MapPaintingTest {
    @TempDir
    Path folder;

    @Test
    void aPictureThatBreaksIsNotWaitedForAndTheLogIsNamed() throws IOException {
        Session session = new Session(folder.resolve("journals"), Session.Executors.AT_ONCE, InstantSource.system());
        MapPainting painting =
                new MapPainting(new BackgroundDrawing(session, Runnable::run), Runnable::run, picture -> {});
        View view = new View(100, 100, 10, 0, 0);
        painting.paint(new MapPainting.Wish(null, null, Optional.empty(), Set.of(), view, true, Themes.LIGHT, 1));
        assertEquals(
                "The map could not be painted; what went wrong is in the log "
                        + session.log().file() + ".",
                session.failure());
        assertTrue(painting.idle());
        String log = Files.readString(session.log().file());
        assertTrue(log.contains("NullPointerException") && log.contains("at pegbed.ui.map.MapPainting"), log);
    }
}
