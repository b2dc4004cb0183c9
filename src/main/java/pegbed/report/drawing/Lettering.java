package pegbed.report.drawing;

/**
 * Size and face of letters, always sans-serif.
 *
 * @param sizePoints em size in points of the sheet, above 0
 * @param bold whether bold
 * @param italic whether slanted
 */
public record Lettering(double sizePoints, boolean bold, boolean italic) {
    /** Height of a capital or figure above the baseline as a share of the size (measured on DejaVu Sans: 0.73). */
    public static final double CAP_HEIGHT = 0.73;

    public Lettering {
        if (!(sizePoints > 0)) {
            throw new IllegalArgumentException("Letters need a size above 0, not " + sizePoints + ".");
        }
    }

    public static Lettering plain(double sizePoints) {
        return new Lettering(sizePoints, false, false);
    }

    public static Lettering bold(double sizePoints) {
        return new Lettering(sizePoints, true, false);
    }

    public static Lettering italic(double sizePoints) {
        return new Lettering(sizePoints, false, true);
    }
}
