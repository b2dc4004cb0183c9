package pegbed.day;

import java.util.Optional;

/**
 * How fast fish come on a line at present, or would if it were fished.
 *
 * @param line which
 * @param fishAnHour fish an hour
 * @param kilogramsAnHour weight an hour, kilograms; empty while no fish of the day was weighed
 * @param told whether enough is known to be shown: it was fished {@link #LEAST_MINUTES} today, or on an earlier visit
 */
public record LineRate(LineHistory line, Estimate fishAnHour, Optional<Estimate> kilogramsAnHour, boolean told) {
    /** A line that was fished for less has no rate worth showing, minutes (our choice). */
    public static final double LEAST_MINUTES = 10;
}
