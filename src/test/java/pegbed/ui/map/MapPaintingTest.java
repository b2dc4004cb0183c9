package pegbed.ui.map;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Envelope;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Themes;
import pegbed.report.drawing.View;
import pegbed.report.map.MapDrawing;
import pegbed.report.map.MapOptions;
import pegbed.report.paint.LetterOutlines;
import pegbed.session.Answer;
import pegbed.session.Pegs;
import pegbed.session.Session;
import pegbed.ui.app.Desks;

class MapPaintingTest {
    @TempDir
    Path folder;

    @Test
    void aPegWithoutReadingsIsDrawnAsTheGuessThatItIs() {
        Session session = Desks.atOnce(folder, Pegs.bare()).session();
        Answer.Ready place = session.answer().picture().orElseThrow();
        Set<Layer> layers = Layer.ofPlaceAlone(MapOptions.USUAL.layers());
        MapDrawing drawing = MapDrawing.of(place.map(), place.findings(), new MapOptions(layers));
        Envelope area = new Envelope(0, 400, 0, 400);
        Drawing drawn = drawing.at(drawing.fitted(area, 400, 400), LetterOutlines.MEASURE);
        assertFalse(drawn.only(Set.of(Layer.DOUBT)).items().isEmpty());
        assertTrue(drawn.only(Set.of(Layer.CONTOURS)).items().isEmpty());
    }

    @Test
    void aPictureThatBreaksIsNotWaitedForAndTheLogIsNamed() throws IOException {
        Session session = new Session(folder.resolve("journals"), Session.Executors.AT_ONCE, InstantSource.system());
        MapPainting painting =
                new MapPainting(new BackgroundDrawing(session, Runnable::run), Runnable::run, picture -> {});
        View view = new View(100, 100, 10, 0, 0);
        painting.paint(new MapPainting.Wish(
                null, null, Optional.empty(), Set.of(), false, Optional.empty(), view, true, Themes.LIGHT, 1, false));
        assertEquals(
                "The map could not be painted; what went wrong is in the log "
                        + session.log().file() + ".",
                session.failure());
        assertTrue(painting.idle());
        String log = Files.readString(session.log().file());
        assertTrue(log.contains("NullPointerException") && log.contains("at pegbed.ui.map.MapPainting"), log);
    }
}
