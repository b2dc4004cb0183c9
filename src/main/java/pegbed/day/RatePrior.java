package pegbed.day;

import java.util.List;
import java.util.Optional;
import pegbed.model.Place;

/**
 * What is taken of the fish an hour before anything is caught.
 *
 * @param day of the fish an hour of the whole day over all its lines
 * @param places where earlier visits say how much better or worse than the day a place was
 * @param visits how many earlier visits are behind it
 * @param weighting by what those visits are weighted
 */
public record RatePrior(GammaDistribution day, List<AtPlace> places, int visits, Weighting weighting) {
    /**
     * How far lines differ within a day: a line's rate is the day's times a gamma variable of this shape and mean 1,
     * whose standard deviation is 0.82 (our choice).
     */
    public static final double LINE_SHAPE = 1.5;

    /**
     * Without earlier visits: the shape is that of Jeffreys' prior of a Poisson rate (Gelman et al. 2013, section 2.8),
     * and its mean is 20 fish an hour, soon outweighed: rather much, since a line that is thought too good is tried and
     * one that is thought too bad never is (our choice).
     */
    public static final RatePrior VAGUE =
            new RatePrior(new GammaDistribution(0.5, 0.025), List.of(), 0, Weighting.NONE);

    /** By what earlier visits are weighted. */
    public enum Weighting {
        /** All alike, since they are too few or their rates do not hang on season or water. */
        NONE,
        /** By how near they lie in the year. */
        SEASON,
        /** By how near the water's temperature was. */
        WATER_TEMPERATURE
    }

    /**
     * How a place did in earlier visits.
     *
     * @param place where
     * @param factor its fish an hour over those of the same days, above 0
     * @param shape how sure that is: the shape of its gamma distribution
     * @param visits how many visits fished it
     */
    public record AtPlace(Place place, double factor, double shape, int visits) {}

    public RatePrior {
        places = List.copyOf(places);
    }

    /** What is known of a place; empty where no earlier visit fished near. */
    public Optional<AtPlace> at(Place place) {
        return LineHistories.nearest(places.stream().map(AtPlace::place).toList(), place)
                .map(places::get);
    }

    double factor(Place place) {
        return at(place).map(AtPlace::factor).orElse(1.0);
    }

    double shape(Place place) {
        return at(place).map(AtPlace::shape).orElse(LINE_SHAPE);
    }
}
