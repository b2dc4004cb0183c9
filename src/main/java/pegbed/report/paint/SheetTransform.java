package pegbed.report.paint;

import java.awt.geom.AffineTransform;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.View;

/** Where a frame's coordinates come to lie on the sheet that a view shows. */
public final class SheetTransform {
    private SheetTransform() {}

    /** From a frame's coordinates to points on the sheet, y down. */
    public static AffineTransform of(View view, Frame frame) {
        if (frame instanceof Frame.Water) {
            double scale = view.pointsPerMetre();
            return new AffineTransform(scale, 0, 0, -scale, -view.leftMetres() * scale, view.topMetres() * scale);
        }
        if (frame instanceof Frame.At at) {
            return AffineTransform.getTranslateInstance(view.x(at.xMetres()), view.y(at.yMetres()));
        }
        return new AffineTransform();
    }
}
