package pegbed.ui.reading;

import pegbed.session.ReadingAt;

/**
 * One reading as the table shows it.
 *
 * @param at which reading
 * @param number its number on the peg, from 1
 * @param distance as said, else in the person's unit
 * @param direction as said, else in degrees
 * @param depth as said, else in the person's unit
 * @param depthMetres for sorting, metres
 * @param distanceMetres for sorting, metres
 * @param angleDegrees for sorting, degrees
 * @param bottom what the plummet felt, one word
 * @param note the person's own words
 * @param doubt what is suspicious about it, one sentence; empty if nothing is
 */
record ReadingRow(
        ReadingAt at,
        int number,
        String distance,
        String direction,
        String depth,
        double depthMetres,
        double distanceMetres,
        double angleDegrees,
        String bottom,
        String note,
        String doubt) {
    boolean suspicious() {
        return !doubt.isEmpty();
    }
}
