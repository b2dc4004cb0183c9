package pegbed.guidance;

import pegbed.model.Pole;

/**
 * How long it takes to go from one reading to the next: 20 s to plumb, 6 s a section shipped out or in, 4 s for 20° of
 * swing (from memory).
 */
final class MoveCost {
    private static final double READING_SECONDS = 20;
    private static final double SECTION_SECONDS = 6;
    private static final double SWING_SECONDS_PER_DEGREE = 4.0 / 20;

    private MoveCost() {}

    /** Seconds from one place to a reading at another. */
    static double seconds(Pole pole, double fromMetres, double fromDegrees, double toMetres, double toDegrees) {
        return READING_SECONDS
                + SECTION_SECONDS * Math.abs(sections(pole, fromMetres) - sections(pole, toMetres))
                + SWING_SECONDS_PER_DEGREE * Math.abs(fromDegrees - toDegrees);
    }

    /** How many sections are out for a distance: the first joint that reaches it. */
    private static int sections(Pole pole, double metres) {
        int out = 0;
        while (out < pole.jointMetres().size() && pole.jointMetres().get(out) < metres - 0.05) {
            out++;
        }
        return out;
    }
}
