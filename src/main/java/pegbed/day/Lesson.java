package pegbed.day;

/**
 * What one kind of place gave over visits: a depth band, a distance, a part of the peg, or a month.
 *
 * @param <K> what names the kind
 * @param kind which
 * @param visits how many visits fished it
 * @param hours how long it was fished in them together
 * @param fish how many came in
 * @param fishAnHour fish for each hour fished
 * @param kilogramsAnHour weight for each hour fished, kilograms: fish an hour times the mean weight of those weighed;
 *     NaN if none was
 * @param compared in how many visits something else was fished too, long enough to compare
 * @param best in how many of these it gave most fish an hour, a tie counting for all in it
 */
public record Lesson<K>(
        K kind,
        int visits,
        double hours,
        int fish,
        double fishAnHour,
        double kilogramsAnHour,
        int compared,
        int best) {}
