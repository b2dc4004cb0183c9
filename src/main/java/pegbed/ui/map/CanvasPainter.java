package pegbed.ui.map;

import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.FontPosture;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;
import pegbed.report.drawing.CanvasPainting;
import pegbed.report.drawing.Colour;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.DrawingCanvas;
import pegbed.report.drawing.Ink;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Pen;
import pegbed.report.drawing.Text;
import pegbed.report.drawing.Theme;
import pegbed.report.drawing.View;

/** Paints a drawing on a canvas: the few items that must follow at once, over the picture that is painted aside. */
final class CanvasPainter implements DrawingCanvas {
    private final GraphicsContext canvas;

    private CanvasPainter(GraphicsContext canvas) {
        this.canvas = canvas;
    }

    /** Paints a drawing as a view shows it, which may be another than the one its labels were placed for. */
    static void paint(Drawing drawing, View view, Theme theme, GraphicsContext canvas) {
        canvas.save();
        canvas.setLineCap(StrokeLineCap.ROUND);
        canvas.setLineJoin(StrokeLineJoin.ROUND);
        canvas.setTextBaseline(VPos.BASELINE);
        CanvasPainting.paint(drawing, view, theme, new CanvasPainter(canvas));
        canvas.restore();
    }

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
        canvas.setFill(colour(colour));
        canvas.fill();
    }

    @Override
    public void stroke(Pen pen) {
        take(pen);
        canvas.stroke();
    }

    private void take(Pen pen) {
        canvas.setStroke(colour(pen.colour()));
        canvas.setLineWidth(pen.widthPoints());
        canvas.setLineDashes(
                pen.dashPoints().stream().mapToDouble(Double::doubleValue).toArray());
    }

    @Override
    public void write(Text text, double xPoints, double yPoints, Ink ink) {
        canvas.save();
        canvas.translate(xPoints, yPoints);
        canvas.rotate(text.turnDegrees());
        canvas.setFont(font(text.lettering()));
        canvas.setTextAlign(
                switch (text.align()) {
                    case START -> TextAlignment.LEFT;
                    case MIDDLE -> TextAlignment.CENTER;
                    case END -> TextAlignment.RIGHT;
                });
        ink.halo().ifPresent(halo -> {
            take(halo);
            canvas.strokeText(text.words(), 0, 0);
        });
        canvas.setFill(colour(ink.colour()));
        canvas.fillText(text.words(), 0, 0);
        canvas.restore();
    }

    private static Font font(Lettering lettering) {
        return Font.font(
                "SansSerif",
                lettering.bold() ? FontWeight.BOLD : FontWeight.NORMAL,
                lettering.italic() ? FontPosture.ITALIC : FontPosture.REGULAR,
                lettering.sizePoints());
    }

    static Color colour(Colour colour) {
        return Color.rgb(colour.red(), colour.green(), colour.blue(), colour.opacity());
    }
}
