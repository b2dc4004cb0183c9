package pegbed.ui;

import java.util.OptionalDouble;
import org.locationtech.jts.geom.Envelope;
import pegbed.analysis.Findings;
import pegbed.analysis.PegMap;
import pegbed.analysis.Plan;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.report.drawing.Themes;
import pegbed.report.map.MapDrawing;
import pegbed.report.map.MapOptions;
import pegbed.report.paint.AwtLetters;
import pegbed.report.paint.PngWriter;

/**
 * Draws the sample peg for nobody while the toolkit starts: Java has then loaded, and begun to compile, what the first
 * picture needs. On two cores that shows the first picture about a third sooner (docs/speed.md).
 */
final class WarmUp {
    private static final int SIZE = 500;

    private WarmUp() {}

    /** Begins on a thread of its own that ends with its work. */
    static void begin() {
        Thread thread = new Thread(WarmUp::run, "pegbed-warm-up");
        thread.setDaemon(true);
        thread.start();
    }

    private static void run() {
        try {
            Peg peg = Samples.first();
            PegMap map = PegMap.of(peg, Monitor.NONE);
            Findings findings = Findings.of(map, OptionalDouble.empty());
            MapDrawing drawing = MapDrawing.of(map, findings, MapOptions.USUAL).with(Plan.of(findings, peg.wishes()));
            PngWriter.image(
                    drawing.at(drawing.fitted(new Envelope(0, SIZE, 0, SIZE), SIZE, SIZE), AwtLetters.MEASURE),
                    Themes.LIGHT,
                    1);
        } catch (InputException e) {
            throw new IllegalStateException("The sample peg can be mapped.", e);
        }
    }
}
