package pegbed.report.drawing;

/**
 * From a frame's coordinates to points on the sheet that a view shows.
 *
 * @param xScale points for one of the frame's units to the right
 * @param yScale points down for one of the frame's units along its y
 * @param xPoints where the frame's origin lies, points from the left edge
 * @param yPoints where the frame's origin lies, points down from the top edge
 */
public record FrameScale(double xScale, double yScale, double xPoints, double yPoints) {
    private static final FrameScale SHEET = new FrameScale(1, 1, 0, 0);

    /** Where a frame's coordinates come to lie. */
    public static FrameScale of(View view, Frame frame) {
        if (frame instanceof Frame.Water) {
            double scale = view.pointsPerMetre();
            return new FrameScale(scale, -scale, -view.leftMetres() * scale, view.topMetres() * scale);
        }
        if (frame instanceof Frame.At at) {
            return new FrameScale(1, 1, view.x(at.xMetres()), view.y(at.yMetres()));
        }
        return SHEET;
    }

    /** Points from the left edge of the sheet. */
    public double x(double inFrame) {
        return inFrame * xScale + xPoints;
    }

    /** Points down from the top edge of the sheet. */
    public double y(double inFrame) {
        return inFrame * yScale + yPoints;
    }
}
