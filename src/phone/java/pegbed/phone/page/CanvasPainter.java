package pegbed.phone.page;

import java.util.HashMap;
import java.util.Map;
import org.teavm.jso.JSBody;
import org.teavm.jso.JSObject;
import org.teavm.jso.canvas.CanvasRenderingContext2D;
import pegbed.report.drawing.Colour;
import pegbed.report.drawing.DrawingCanvas;
import pegbed.report.drawing.Ink;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Pen;
import pegbed.report.drawing.Text;
import pegbed.report.drawing.TextMeasure;

/** Paints on the 2D context of a canvas of the page (HTML Standard), and measures texts by it. */
final class CanvasPainter implements DrawingCanvas, TextMeasure {
    private static final String FACE = "system-ui, sans-serif";

    /** Widths of texts by lettering and words: the same few are asked for at each picture. */
    private static final Map<Lettering, Map<String, Double>> WIDTHS = new HashMap<>();

    private static final int MOST_WIDTHS = 2000;

    private final CanvasRenderingContext2D canvas;

    /** @param density pixels of the canvas for a CSS pixel */
    CanvasPainter(JSObject surface, double density) {
        canvas = context(surface);
        canvas.setTransform(density, 0, 0, density, 0, 0);
        canvas.setLineCap("round");
        canvas.setLineJoin("round");
        canvas.setTextBaseline("alphabetic");
    }

    @JSBody(params = "surface", script = "return surface.getContext('2d');")
    private static native CanvasRenderingContext2D context(JSObject surface);

    @JSBody(
            params = {"canvas", "dashes"},
            script = "canvas.setLineDash(dashes === '' ? [] : dashes.split(' ').map(Number));")
    private static native void dash(CanvasRenderingContext2D canvas, String dashes);

    @Override
    public void beginPath() {
        canvas.beginPath();
    }

    @Override
    public void moveTo(double xPoints, double yPoints) {
        canvas.moveTo(xPoints, yPoints);
    }

    @Override
    public void lineTo(double xPoints, double yPoints) {
        canvas.lineTo(xPoints, yPoints);
    }

    @Override
    public void closePath() {
        canvas.closePath();
    }

    @Override
    public void fill(Colour colour) {
        canvas.setFillStyle(css(colour));
        canvas.fill();
    }

    @Override
    public void stroke(Pen pen) {
        take(pen);
        canvas.stroke();
    }

    private void take(Pen pen) {
        canvas.setStrokeStyle(css(pen.colour()));
        canvas.setLineWidth(pen.widthPoints());
        StringBuilder dashes = new StringBuilder();
        for (double length : pen.dashPoints()) {
            dashes.append(dashes.length() == 0 ? "" : " ").append(length);
        }
        dash(canvas, dashes.toString());
    }

    @Override
    public void write(Text text, double xPoints, double yPoints, Ink ink) {
        canvas.save();
        canvas.translate(xPoints, yPoints);
        canvas.rotate(Math.toRadians(text.turnDegrees()));
        canvas.setFont(font(text.lettering()));
        canvas.setTextAlign(
                switch (text.align()) {
                    case START -> "left";
                    case MIDDLE -> "center";
                    case END -> "right";
                });
        if (ink.halo().isPresent()) {
            take(ink.halo().get());
            canvas.strokeText(text.words(), 0, 0);
        }
        canvas.setFillStyle(css(ink.colour()));
        canvas.fillText(text.words(), 0, 0);
        canvas.restore();
    }

    @Override
    public double widthPoints(String words, Lettering lettering) {
        Map<String, Double> known = WIDTHS.computeIfAbsent(lettering, each -> new HashMap<>());
        Double width = known.get(words);
        if (width == null) {
            canvas.setFont(font(lettering));
            width = canvas.measureText(words).getWidth();
            if (known.size() > MOST_WIDTHS) {
                known.clear();
            }
            known.put(words, width);
        }
        return width;
    }

    private static String font(Lettering lettering) {
        return (lettering.italic() ? "italic " : "") + (lettering.bold() ? "bold " : "") + lettering.sizePoints()
                + "px " + FACE;
    }

    private static String css(Colour colour) {
        return colour.opacity() == 1
                ? colour.hex()
                : "rgba(" + colour.red() + "," + colour.green() + "," + colour.blue() + "," + colour.opacity() + ")";
    }
}
