package pegbed.ui.profile;

import java.util.List;
import java.util.function.ToDoubleFunction;
import javafx.geometry.VPos;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import pegbed.findings.DepthProfile;
import pegbed.ui.controls.Texts;
import pegbed.wording.Quantities;
import pegbed.wording.Steepness;

/** Draws a profile: water, bottom, doubt, lips and feet. The depth is drawn larger than the distance. */
final class ProfileDrawing {
    private static final double LEFT = 58;
    private static final double RIGHT = 14;
    private static final double TOP = 16;
    private static final double FOOT = 20;
    private static final Font SMALL = Font.font("SansSerif", 11);

    /** Of letters and the room about them, points. */
    private static final double LABEL_HALF_HEIGHT = 7;

    private static final double LABEL_FROM_MARK = 12;

    private final GraphicsContext canvas;
    private final double width;
    private final double height;
    private final boolean dark;
    private final Quantities quantities;
    private double along0;
    private double alongScale;
    private double depthScale;

    ProfileDrawing(Canvas canvas, boolean dark, Quantities quantities) {
        this.canvas = canvas.getGraphicsContext2D();
        this.width = canvas.getWidth();
        this.height = canvas.getHeight();
        this.dark = dark;
        this.quantities = quantities;
    }

    void clear() {
        canvas.clearRect(0, 0, width, height);
    }

    void draw(DepthProfile profile) {
        List<DepthProfile.Point> points = profile.points();
        double deepest = points.stream()
                .mapToDouble(p -> p.depthMetres() + Math.min(p.sdMetres(), 0.5))
                .max()
                .orElse(1);
        along0 = points.get(0).alongMetres();
        double length = Math.max(0.5, points.get(points.size() - 1).alongMetres() - along0);
        alongScale = (width - LEFT - RIGHT) / length;
        depthScale = (height - TOP - FOOT) / Math.max(0.3, deepest * 1.08);
        canvas.setFont(SMALL);
        canvas.setTextBaseline(VPos.CENTER);
        water(points);
        bottom(points);
        axes(points, deepest, length);
        for (DepthProfile.Slope slope : profile.slopes()) {
            slope(slope);
        }
    }

    private double x(DepthProfile.Point point) {
        return LEFT + (point.alongMetres() - along0) * alongScale;
    }

    private double y(double depthMetres) {
        return TOP + Math.max(0, depthMetres) * depthScale;
    }

    private Color ink() {
        return dark ? Color.web("#f2f5f4") : Color.web("#14222e");
    }

    private void water(List<DepthProfile.Point> points) {
        canvas.setFill(dark ? Color.web("#25465a") : Color.web("#cfe6ee"));
        area(points, p -> 0, DepthProfile.Point::depthMetres);
        canvas.setStroke(dark ? Color.web("#7fb2cc") : Color.web("#3c7894"));
        canvas.setLineWidth(1);
        canvas.strokeLine(LEFT, y(0), width - RIGHT, y(0));
    }

    private void bottom(List<DepthProfile.Point> points) {
        canvas.setFill(dark ? Color.web("#6b5f49") : Color.web("#d9c9a6"));
        double floor = (height - FOOT - TOP) / depthScale;
        area(points, DepthProfile.Point::depthMetres, p -> floor);
        canvas.setFill(dark ? Color.web("#f2f5f4", 0.28) : Color.web("#14222e", 0.20));
        area(points, p -> p.depthMetres() - p.sdMetres(), p -> Math.min(floor, p.depthMetres() + p.sdMetres()));
        canvas.setStroke(ink());
        canvas.setLineWidth(1.8);
        canvas.beginPath();
        for (DepthProfile.Point point : points) {
            canvas.lineTo(x(point), y(point.depthMetres()));
        }
        canvas.stroke();
    }

    private void area(
            List<DepthProfile.Point> points,
            ToDoubleFunction<DepthProfile.Point> upper,
            ToDoubleFunction<DepthProfile.Point> lower) {
        canvas.beginPath();
        for (DepthProfile.Point point : points) {
            canvas.lineTo(x(point), y(upper.applyAsDouble(point)));
        }
        for (int i = points.size() - 1; i >= 0; i--) {
            canvas.lineTo(x(points.get(i)), y(lower.applyAsDouble(points.get(i))));
        }
        canvas.closePath();
        canvas.fill();
    }

    private void axes(List<DepthProfile.Point> points, double deepest, double length) {
        canvas.setFill(ink());
        canvas.setTextAlign(TextAlignment.RIGHT);
        for (double depth : DepthTicks.metres(deepest, depthScale, quantities.depthUnit())) {
            canvas.fillText(depth == 0 ? "water" : quantities.depth(depth), LEFT - 6, y(depth));
        }
        canvas.setTextAlign(TextAlignment.CENTER);
        double start = points.get(0).place().distanceMetres();
        boolean fromSeat = Math.abs(points.get(points.size() - 1).place().distanceMetres() - start - length) < 0.2;
        double each = length > 8 ? 2 : 1;
        double first = fromSeat ? Math.ceil(start / each) * each - start : 0;
        for (double along = first; along <= length + 1e-9; along += each) {
            canvas.fillText(
                    Texts.number(along + (fromSeat ? start : 0), 0) + " m",
                    LEFT + along * alongScale,
                    height - FOOT / 2);
        }
    }

    /** The lip as an open and the foot as a full mark, so that they differ without colour too. */
    private void slope(DepthProfile.Slope slope) {
        Color mark = dark ? Color.web("#ffb37a") : Color.web("#b23a0e");
        canvas.setStroke(mark);
        canvas.setFill(mark);
        canvas.setLineWidth(2);
        double lipX = x(slope.lip());
        double lipY = y(slope.lip().depthMetres());
        double footX = x(slope.foot());
        double footY = y(slope.foot().depthMetres());
        canvas.strokeOval(lipX - 4, lipY - 4, 8, 8);
        canvas.fillOval(footX - 4, footY - 4, 8, 8);
        canvas.setTextAlign(TextAlignment.CENTER);
        canvas.setFill(ink());
        double middle = Math.max(LEFT + 24, Math.min(width - RIGHT - 24, (lipX + footX) / 2));
        canvas.fillText(Steepness.oneIn(slope.steepest()), middle, labelMiddle(lipY, footY, y(0), height - FOOT));
    }

    /**
     * Where the middle of a slope's label lies: above its marks, or below them where it would reach the water's
     * surface.
     *
     * @param surface where the water's surface is, points, as all of these, downwards
     * @param floor the lower edge of the drawing
     */
    static double labelMiddle(double lip, double foot, double surface, double floor) {
        double above = Math.min(lip, foot) - LABEL_FROM_MARK;
        if (above - LABEL_HALF_HEIGHT > surface) {
            return above;
        }
        return Math.min(Math.max(lip, foot) + LABEL_FROM_MARK, floor - LABEL_HALF_HEIGHT);
    }
}
