package pegbed.report.drawing;

/**
 * A surface with a current path, as the canvases of toolkits and of HTML have it. Coordinates are points from the top
 * left corner, y down; lines have round caps and joins.
 */
public interface DrawingCanvas {
    /** Begins another path; nothing of the one before is left. */
    void beginPath();

    /** Begins another line of the path. */
    void moveTo(double xPoints, double yPoints);

    /** Goes on with the line. */
    void lineTo(double xPoints, double yPoints);

    /** Goes back to the beginning of the line. */
    void closePath();

    /** Fills the path, where it winds about a point at all (SVG 2: {@code nonzero}). */
    void fill(Colour colour);

    /** Draws along the path. */
    void stroke(Pen pen);

    /**
     * Writes a line of text.
     *
     * @param text words, lettering, alignment and turn count; its place does not
     * @param xPoints of the anchor on the baseline
     * @param yPoints of the anchor on the baseline
     * @param ink halo, then letters
     */
    void write(Text text, double xPoints, double yPoints, Ink ink);
}
