package pegbed.ui.map;

import java.util.concurrent.Executor;
import pegbed.findings.Findings;
import pegbed.findings.PegMap;
import pegbed.report.map.MapDrawing;
import pegbed.report.map.MapOptions;
import pegbed.session.Session;

/**
 * The drawing of the newest map. It is begun as soon as the answers are found, before the owner has heard of them, who may
 * be busy: what is drawn depends on neither window nor theme.
 */
public final class BackgroundDrawing {
    private final Executor painter;
    /** Belongs to the painter's thread. */
    private MapDrawing drawing;

    /** @param painter draws, one piece after the other */
    public BackgroundDrawing(Session session, Executor painter) {
        this.painter = painter;
        session.onFound(ready -> painter.execute(() -> drawing(ready.map(), ready.findings(), MapOptions.USUAL)));
    }

    Executor painter() {
        return painter;
    }

    /** The drawing of a map, for the painter's thread; what was drawn before is not drawn again. */
    MapDrawing drawing(PegMap map, Findings findings, MapOptions options) {
        drawing = drawing == null ? MapDrawing.of(map, findings, options) : drawing.with(map, findings, options);
        return drawing;
    }
}
