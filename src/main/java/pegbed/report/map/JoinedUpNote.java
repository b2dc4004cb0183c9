package pegbed.report.map;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.Text;

/** Says on the map itself that it is joined up, so that nobody takes it for the model's. */
public final class JoinedUpNote {
    /** What it says. */
    public static final String WORDS = "Joined up: straight between readings, no model";

    private static final Lettering LETTERS = Lettering.bold(11);
    private static final double AIR_POINTS = 5;

    private JoinedUpNote() {}

    /** In the top left corner, before anything else has a place. */
    static void add(Composition to) {
        Envelope area = to.area;
        double width = to.measure.widthPoints(WORDS, LETTERS) + 2 * AIR_POINTS;
        double height = LETTERS.sizePoints() * Lettering.CAP_HEIGHT + 2 * AIR_POINTS;
        double left = area.getMinX() + AIR_POINTS;
        double top = area.getMinY() + AIR_POINTS;
        Geometry panel = Symbols.box(left, top, left + width, top + height);
        to.fill(Role.PANEL, Layer.SEAT, Frame.SHEET, panel);
        to.stroke(Role.LEGEND_RULE, Layer.SEAT, Frame.SHEET, panel.getBoundary());
        to.add(new Text(
                Role.JOINED_UP,
                Layer.SEAT,
                Frame.SHEET,
                left + AIR_POINTS,
                top + height - AIR_POINTS,
                Text.Align.START,
                0,
                LETTERS,
                WORDS));
        to.space.takeForSign(Layer.SEAT, new LabelBox(left + width / 2, top + height / 2, width + 4, height + 4, 0));
    }
}
