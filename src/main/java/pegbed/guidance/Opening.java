package pegbed.guidance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pegbed.model.Place;
import pegbed.model.Reading;

/**
 * The first readings, before the model has anything to reckon with: straight out at 2 m, .3e + 1, .55e, .78e and e, where
 * e is the last reachable distance, then 3 m along each margin. A place that can't be plumbed gives way to the nearest
 * that can; one near which the person has already read is passed over.
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
     * @param why what it is for, a sentence
     */
    record Step(Candidate candidate, String why) {}

    private record Wish(Place place, String why) {}

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
                return Optional.of(new Step(nearest.get(), wish.why));
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
        wishes.add(new Wish(Place.polar(FIRST_METRES, 0), "It tells how quickly the near ledge drops."));
        wishes.add(new Wish(
                Place.polar(0.3 * end + 1, 0),
                farBank ? "It tells where the track begins." : "It tells where the near slope ends."));
        wishes.add(new Wish(Place.polar(0.55 * end, 0), "It tells how deep the middle is."));
        wishes.add(new Wish(
                Place.polar(0.78 * end, 0),
                farBank
                        ? "It tells where the bottom begins to rise on the far side."
                        : "It tells whether the bottom still falls further out."));
        wishes.add(new Wish(Place.polar(end, 0), "It tells how deep it is as far out as can be reached."));
        wishes.add(new Wish(Place.polar(SIDE_METRES, -SIDE_DEGREES), "It tells how deep the left margin is."));
        wishes.add(new Wish(Place.polar(SIDE_METRES, SIDE_DEGREES), "It tells how deep the right margin is."));
        return wishes;
    }
}
