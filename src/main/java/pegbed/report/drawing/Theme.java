package pegbed.report.drawing;

/** Colours and pens by what things mean. Every theme answers for every role. */
public interface Theme {
    /** Colour of an area. */
    Colour fill(Role role, int step, int steps);

    /** Pen of a line. */
    Pen pen(Role role);

    /** Ink of a text. */
    Ink ink(Role role);
}
