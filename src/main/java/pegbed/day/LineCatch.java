package pegbed.day;

import pegbed.model.Place;

/**
 * What a line gave on one visit.
 *
 * @param place where it lay
 * @param hours how long it was fished
 * @param fish how many came in
 * @param weighed how many of them were weighed
 * @param kilograms weight of those that were weighed, kilograms
 */
public record LineCatch(Place place, double hours, int fish, int weighed, double kilograms) {
    /** What a line gave up to now. */
    public static LineCatch of(LineHistory line) {
        return new LineCatch(line.place(), line.fishedMinutes() / 60, line.fish(), line.weighed(), line.kilograms());
    }
}
