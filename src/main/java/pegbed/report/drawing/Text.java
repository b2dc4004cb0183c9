package pegbed.report.drawing;

/**
 * A line of text. The halo, if the theme gives its role one, is painted first.
 *
 * @param role what it means
 * @param layer what it is switched with
 * @param frame what the coordinates are
 * @param x of the anchor on the baseline, in the frame's unit
 * @param y of the anchor on the baseline, in the frame's unit
 * @param align which part of the text lies at the anchor
 * @param turnDegrees turned about the anchor, degrees clockwise as seen, -90 to 90, so that it can always be read
 * @param lettering size and face
 * @param words what a person typed may stand in it: a painter must treat it as text, whatever it holds
 */
public record Text(
        Role role,
        Layer layer,
        Frame frame,
        double x,
        double y,
        Align align,
        double turnDegrees,
        Lettering lettering,
        String words)
        implements Item {
    /** Which part of a text lies at its anchor. */
    public enum Align {
        START,
        MIDDLE,
        END
    }

    public Text {
        if (!(Math.abs(turnDegrees) <= 90)) {
            throw new IllegalArgumentException("A text turned by " + turnDegrees + "° stands on its head.");
        }
    }
}
