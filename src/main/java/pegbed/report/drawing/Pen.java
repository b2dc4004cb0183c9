package pegbed.report.drawing;

import java.util.List;

/**
 * How lines are drawn; round caps and joins.
 *
 * @param colour of the line
 * @param widthPoints above 0
 * @param dashPoints lengths of dash and gap in turn; empty for a full line
 */
public record Pen(Colour colour, double widthPoints, List<Double> dashPoints) {
    public Pen {
        dashPoints = List.copyOf(dashPoints);
        if (!(widthPoints > 0)) {
            throw new IllegalArgumentException("A pen needs a width above 0, not " + widthPoints + ".");
        }
    }

    /** A full line. */
    public static Pen of(Colour colour, double widthPoints) {
        return new Pen(colour, widthPoints, List.of());
    }
}
