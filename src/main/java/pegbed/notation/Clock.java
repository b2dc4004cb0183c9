package pegbed.notation;

/** Directions on a clock face: twelve is straight out, an hour is 30° to the right, a minute half a degree. */
public final class Clock {
    private static final int ROUND_MINUTES = 12 * 60;

    private Clock() {}

    /** Degrees from straight out, positive to the right, in (-180, 180]. */
    static double angleDegrees(int hour, int minute) {
        int minutes = hour % 12 * 60 + minute;
        return (minutes > ROUND_MINUTES / 2 ? minutes - ROUND_MINUTES : minutes) / 2.0;
    }

    /** The time, such as {@code 11:20}, to the nearest so many minutes. */
    public static String print(double angleDegrees, int stepMinutes) {
        long minutes = Math.floorMod(Math.round(angleDegrees * 2 / stepMinutes) * stepMinutes, (long) ROUND_MINUTES);
        long hour = minutes / 60 == 0 ? 12 : minutes / 60;
        return hour + (minutes % 60 < 10 ? ":0" : ":") + minutes % 60;
    }
}
