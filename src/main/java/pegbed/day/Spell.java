package pegbed.day;

import java.time.Duration;
import java.time.Instant;

/**
 * A time in which one line was fished without a break.
 *
 * @param start when it began
 * @param end when it ended, or now
 * @param open whether it still goes on
 */
public record Spell(Instant start, Instant end, boolean open) {
    public Spell {
        if (end.isBefore(start)) {
            throw new IllegalArgumentException("A spell ends after its start, not before.");
        }
    }

    /** How long it took, minutes. */
    public double minutes() {
        return minutesBetween(start, end);
    }

    /** Minutes from one moment to another, below 0 if the other is earlier. */
    static double minutesBetween(Instant from, Instant to) {
        return Duration.between(from, to).toMillis() / 60_000.0;
    }
}
