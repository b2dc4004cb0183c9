package pegbed.ui.map;

import java.util.concurrent.Executor;
import pegbed.findings.Findings;
import pegbed.findings.PegMap;
import pegbed.report.map.MapDrawing;
import pegbed.report.map.MapOptions;
import pegbed.session.BackgroundTask;
import pegbed.session.Session;

/**
 * The drawing of the newest map. It is begun as soon as the answers are found, before the owner has heard of them, who
 * may be busy: what is drawn depends on neither window nor theme.
 */
public final class BackgroundDrawing {
    private final Session session;
    private final Executor painter;
    /** Belongs to the painter's thread. */
    private MapDrawing drawing;
    /** What was asked for last: most likely it is asked for again. */
    private MapOptions options = MapOptions.USUAL;

    /** @param painter draws, one piece after the other */
    public BackgroundDrawing(Session session, Executor painter) {
        this.session = session;
        this.painter = painter;
        // What fails here fails once more when the picture is asked for, and is said then.
        session.onFound(ready -> painter.execute(() -> {
            try {
                drawing(ready.map(), ready.findings(), options);
            } catch (RuntimeException saidLater) {
                drawing = null;
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
        drawing = drawing == null ? MapDrawing.of(map, findings, options) : drawing.with(map, findings, options);
        return drawing;
    }
}
