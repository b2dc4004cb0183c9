package pegbed.model;

/**
 * How many lines are wanted in each part of the peg, each 0 to {@value #MOST}.
 *
 * @param track down the track, or in the deepest water where there is no far bank
 * @param across across
 * @param leftMargin in the left margin
 * @param rightMargin in the right margin
 * @param shortLines in front of the seat, within the first sections
 */
public record LineCounts(int track, int across, int leftMargin, int rightMargin, int shortLines) {
    /** More lines than this in one part of a peg can't be kept 2 m apart and fed. */
    public static final int MOST = 6;

    /** One down the track, one across, one in each margin (common practice). */
    public static final LineCounts USUAL = new LineCounts(1, 1, 1, 1, 0);

    public LineCounts {
        Check.within(track, 0, MOST, "The number of lines down the track");
        Check.within(across, 0, MOST, "The number of lines across");
        Check.within(leftMargin, 0, MOST, "The number of lines in the left margin");
        Check.within(rightMargin, 0, MOST, "The number of lines in the right margin");
        Check.within(shortLines, 0, MOST, "The number of short lines");
    }
}
