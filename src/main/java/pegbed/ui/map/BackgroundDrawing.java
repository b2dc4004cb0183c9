package pegbed.ui.map;

import java.util.Optional;
import java.util.concurrent.Executor;
import pegbed.findings.Findings;
import pegbed.findings.PegMap;
import pegbed.report.map.MapDrawing;
import pegbed.report.map.MapOptions;
import pegbed.session.BackgroundTask;
import pegbed.session.Session;

/**
 * The drawing of the newest map. The shapes of the bottom, which depend on neither answers nor window nor theme, are
 * begun as soon as the bottom is known, while answers are being found on it.
 */
public final class BackgroundDrawing {
    private final Session session;
    private final Executor painter;
    /** Belongs to the painter's thread. */
    private Optional<MapDrawing> drawing = Optional.empty();

    /** The answers of that drawing. */
    private Optional<Findings> found = Optional.empty();

    /** What was asked for last: most likely it is asked for again. */
    private MapOptions options = MapOptions.USUAL;

    /** @param painter draws, one piece after the other */
    public BackgroundDrawing(Session session, Executor painter) {
        this.session = session;
        this.painter = painter;
        session.onMapped(map -> painter.execute(() -> {
            try {
                // With the answers before, which nobody sees: what is painted is asked for with its own.
                found.ifPresent(before -> drawing(map, before, options));
            } catch (RuntimeException saidLater) {
                // What fails here fails once more when the picture is asked for, and is said then.
                drawing = Optional.empty();
            }
        }));
    }

    /** Painting off the owner's thread. */
    BackgroundTask painting(Executor owner) {
        return new BackgroundTask("The map could not be painted", painter, owner, session.log());
    }

    /** Says why there is no picture. */
    void fail(String why) {
        session.fail(why);
    }

    /** The drawing of a map, for the painter's thread; what was drawn before is not drawn again. */
    MapDrawing drawing(PegMap map, Findings findings, MapOptions options) {
        this.options = options;
        MapDrawing made = drawing.map(before -> before.with(map, findings, options))
                .orElseGet(() -> MapDrawing.of(map, findings, options));
        drawing = Optional.of(made);
        found = Optional.of(findings);
        return made;
    }
}
