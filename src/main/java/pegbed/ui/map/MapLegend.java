package pegbed.ui.map;

import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.ScrollPane;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Theme;

/** What tints and signs of the map mean, over its right edge, on request. */
final class MapLegend extends ScrollPane {
    private static final double GAP = 8;

    private final Canvas canvas = new Canvas(1, 1);

    MapLegend() {
        setId("map-legend");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText("Legend of the map: depths, doubt, flat spots, signs");
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setContent(canvas);
        setFocusTraversable(false);
        setVisible(false);
        setManaged(false);
    }

    /** The drawing in window points, each of its own points so many. */
    void show(Drawing drawing, Theme theme, double enlarged) {
        canvas.setWidth(drawing.view().widthPoints() * enlarged);
        canvas.setHeight(drawing.view().heightPoints() * enlarged);
        GraphicsContext graphics = canvas.getGraphicsContext2D();
        graphics.save();
        graphics.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        graphics.scale(enlarged, enlarged);
        CanvasPainter.paint(drawing, drawing.view(), theme, graphics);
        graphics.restore();
    }

    /** Lies at the top right of a map of a size; scrolls where it is higher than that. */
    void place(double mapWidth, double mapHeight) {
        double height = Math.min(canvas.getHeight() + 2, mapHeight - 2 * GAP);
        double bar = height < canvas.getHeight() ? 16 : 2;
        double width = Math.min(canvas.getWidth() + bar, mapWidth - 2 * GAP);
        resizeRelocate(mapWidth - width - GAP, GAP, Math.max(1, width), Math.max(1, height));
    }
}
