package pegbed.report.paint;

import java.awt.geom.AffineTransform;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.FrameScale;
import pegbed.report.drawing.View;

/** Where a frame's coordinates come to lie on the sheet that a view shows, for Java 2D. */
public final class SheetTransform {
    private SheetTransform() {}

    /** From a frame's coordinates to points on the sheet, y down. */
    public static AffineTransform of(View view, Frame frame) {
        FrameScale scale = FrameScale.of(view, frame);
        return new AffineTransform(scale.xScale(), 0, 0, scale.yScale(), scale.xPoints(), scale.yPoints());
    }
}
