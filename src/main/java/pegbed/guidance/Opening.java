package pegbed.guidance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pegbed.model.Place;
import pegbed.model.Reading;

/**
 * The first readings, before the model has anything to reckon with: straight out at 2 m, .3e + 1, .55e, .78e and e,
 * where e is the last reachable distance, then 3 m along each margin. A place that can't be plumbed gives way to the
 * nearest that can; one near which the person has already read is passed over.
 */
final class Opening {
    /** How many readings the opening has. */
    static final int READINGS = 7;

    private static final double FIRST_METRES = 2;
    private static final double SIDE_METRES = 3;
    private static final double SIDE_DEGREES = 80;

    /** Nearer than this to a reading a place counts as read, metres. */
    private static final double READ_METRES = 0.75;

    /** Further than this from where it was wanted a place answers another question, metres. */
    private static final double AWAY_METRES = 2.5;

    private Opening() {}

    /**
     * One of the opening's places.
     *
     * @param candidate where
     * @param question what it asks
     */
    record Step(Candidate candidate, Reason.OpeningQuestion question) {}

    private record Wish(Place place, Reason.OpeningQuestion question) {}

    /** The next of the opening's places; empty when there is none left. */
    static Optional<Step> next(List<Candidate> candidates, List<Reading> readings, boolean farBank) {
        if (readings.size() >= READINGS) {
            return Optional.empty();
        }
        for (Wish wish : wishes(candidates, farBank)) {
            Optional<Candidate> nearest = candidates.stream()
                    .min(Comparator.comparingDouble(c -> c.place().distanceTo(wish.place)));
            if (nearest.isPresent()
                    && nearest.get().place().distanceTo(wish.place) <= AWAY_METRES
                    && readings.stream()
                            .noneMatch(r -> r.place().distanceTo(nearest.get().place()) < READ_METRES)) {
                return Optional.of(new Step(nearest.get(), wish.question));
            }
        }
        return Optional.empty();
    }

    private static List<Wish> wishes(List<Candidate> candidates, boolean farBank) {
        double end = candidates.stream()
                .filter(c -> Math.abs(c.angleDegrees()) < 5)
                .mapToDouble(Candidate::distanceMetres)
                .max()
                .orElse(0);
        List<Wish> wishes = new ArrayList<>();
        wishes.add(new Wish(Place.polar(FIRST_METRES, 0), Reason.OpeningQuestion.NEAR_LEDGE));
        wishes.add(new Wish(
                Place.polar(0.3 * end + 1, 0),
                farBank ? Reason.OpeningQuestion.TRACK_START : Reason.OpeningQuestion.NEAR_SLOPE_END));
        wishes.add(new Wish(Place.polar(0.55 * end, 0), Reason.OpeningQuestion.MIDDLE));
        wishes.add(new Wish(
                Place.polar(0.78 * end, 0),
                farBank ? Reason.OpeningQuestion.FAR_SLOPE_START : Reason.OpeningQuestion.FALL_FURTHER_OUT));
        wishes.add(new Wish(Place.polar(end, 0), Reason.OpeningQuestion.LAST_REACH));
        wishes.add(new Wish(Place.polar(SIDE_METRES, -SIDE_DEGREES), Reason.OpeningQuestion.LEFT_MARGIN));
        wishes.add(new Wish(Place.polar(SIDE_METRES, SIDE_DEGREES), Reason.OpeningQuestion.RIGHT_MARGIN));
        return wishes;
    }
}
