package pegbed.day;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import pegbed.model.Place;

/**
 * What earlier visits to this peg and water let one expect of a day.
 *
 * <p>The day's fish an hour have a gamma distribution: its mean is that of the visits together with
 * {@link RatePrior#VAGUE}, its variance that between visits (moments: Gelman et al. 2013, section 5.1), drawn towards a
 * usual one where there are few. A place's factor has one likewise: half of what lines differ is taken to last from
 * visit to visit, and is learned; the other half is each day's own.
 *
 * <p>Visits are weighted by season or by the water's temperature only if {@link #LEAST_FOR_WEIGHTS} or more of them
 * have it and the visits bear it out: if each is foretold better by the others with those weights than without, by
 * {@link #LEAST_GAIN} or more in the sum of the logarithms of its probability. Else all count alike.
 */
public final class EarlierVisits {
    /** Fewer visits bear no weighting (our choice). */
    public static final int LEAST_FOR_WEIGHTS = 6;

    /** Gain in log predictive probability that a weighting needs (our choice; 2 is odds of 7 to 1). */
    public static final double LEAST_GAIN = 2;

    /** A visit so far off in the year counts 0.61 of one on the day, days (our choice). */
    private static final double SEASON_DAYS = 45;

    /** A visit at water so much warmer or colder counts 0.61, °C (our choice). */
    private static final double WATER_CELSIUS = 4;

    private static final double YEAR_DAYS = 365.25;

    /** Squared variation between visits before there is any, and for how many visits that counts (our choice). */
    private static final double USUAL_VARIATION = 0.5;

    private static final double USUAL_COUNTS = 3;

    /**
     * A line's factor is the product of one that lasts from visit to visit and one that is each day's own, each a gamma
     * variable of this shape k: 2/k + 1/k² = 1/{@link RatePrior#LINE_SHAPE}.
     */
    private static final double PART_SHAPE =
            RatePrior.LINE_SHAPE + Math.sqrt(RatePrior.LINE_SHAPE * (RatePrior.LINE_SHAPE + 1));

    private final List<PastVisit> visits;

    private EarlierVisits(List<PastVisit> visits) {
        this.visits = List.copyOf(visits);
    }

    /** Visits before the day, in any order. */
    public static EarlierVisits of(List<PastVisit> visits) {
        return new EarlierVisits(visits);
    }

    /**
     * What they let one expect.
     *
     * @param today the day
     * @param waterCelsius temperature of the water on the day, °C; empty if not taken
     */
    public RatePrior prior(LocalDate today, OptionalDouble waterCelsius) {
        if (visits.isEmpty()) {
            return RatePrior.VAGUE;
        }
        RatePrior.Weighting weighting = weighting(waterCelsius.isPresent());
        double[] weights = new double[visits.size()];
        for (int i = 0; i < weights.length; i++) {
            weights[i] = weight(weighting, visits.get(i), today, waterCelsius);
        }
        return new RatePrior(day(visits, weights), places(), visits.size(), weighting);
    }

    private RatePrior.Weighting weighting(boolean waterKnown) {
        RatePrior.Weighting best = RatePrior.Weighting.NONE;
        double most = LEAST_GAIN;
        for (RatePrior.Weighting weighting : RatePrior.Weighting.values()) {
            if (weighting == RatePrior.Weighting.NONE
                    || (weighting == RatePrior.Weighting.WATER_TEMPERATURE && !waterKnown)) {
                continue;
            }
            List<PastVisit> having = visits.stream()
                    .filter(visit -> weighting == RatePrior.Weighting.SEASON
                            || visit.waterCelsius().isPresent())
                    .toList();
            if (having.size() >= LEAST_FOR_WEIGHTS) {
                double gain = foretold(having, weighting) - foretold(having, RatePrior.Weighting.NONE);
                if (gain >= most) {
                    most = gain;
                    best = weighting;
                }
            }
        }
        return best;
    }

    /** Sum over visits of the log probability of its fish by the others. */
    private static double foretold(List<PastVisit> visits, RatePrior.Weighting weighting) {
        double sum = 0;
        for (PastVisit left : visits) {
            List<PastVisit> others = new ArrayList<>(visits);
            others.remove(left);
            double[] weights = new double[others.size()];
            for (int i = 0; i < weights.length; i++) {
                weights[i] = weight(weighting, others.get(i), left.date(), left.waterCelsius());
            }
            sum += PoissonGamma.logProbability(day(others, weights), left.hours(), left.fish());
        }
        return sum;
    }

    private static double weight(
            RatePrior.Weighting weighting, PastVisit visit, LocalDate date, OptionalDouble waterCelsius) {
        return switch (weighting) {
            case NONE -> 1;
            case SEASON -> {
                double days = Math.abs(visit.date().getDayOfYear() - date.getDayOfYear());
                yield bell(Math.min(days, YEAR_DAYS - days) / SEASON_DAYS);
            }
            case WATER_TEMPERATURE ->
                visit.waterCelsius().isEmpty()
                        ? 0
                        : bell((visit.waterCelsius().getAsDouble() - waterCelsius.orElseThrow()) / WATER_CELSIUS);
        };
    }

    private static double bell(double z) {
        return Math.exp(-z * z / 2);
    }

    private static GammaDistribution day(List<PastVisit> visits, double[] weights) {
        GammaDistribution vague = RatePrior.VAGUE.day();
        double fish = vague.shape();
        double hours = vague.rate();
        double count = 0;
        double squares = 0;
        for (int i = 0; i < weights.length; i++) {
            fish += weights[i] * visits.get(i).fish();
            hours += weights[i] * visits.get(i).hours();
            count += weights[i];
            squares += weights[i] * weights[i];
        }
        double effective = squares > 0 ? count * count / squares * Math.min(1, count) : 0;
        double mean = fish / hours;
        double between = (USUAL_COUNTS * USUAL_VARIATION + effective * between(visits, weights, mean))
                / (USUAL_COUNTS + effective);
        double ofMean = (between + USUAL_VARIATION) / (effective + 1) + 1 / fish;
        return GammaDistribution.ofMean(mean, between + ofMean);
    }

    /** Squared variation of the rate between visits beyond that of a Poisson number of fish; 0 or more. */
    private static double between(List<PastVisit> visits, double[] weights, double mean) {
        double excess = 0;
        double exposure = 0;
        for (int i = 0; i < weights.length; i++) {
            double expected = mean * visits.get(i).hours();
            double off = visits.get(i).fish() - expected;
            excess += weights[i] * (off * off - expected);
            exposure += weights[i] * expected * expected;
        }
        return exposure > 0 ? Math.max(0, excess / exposure) : 0;
    }

    private List<RatePrior.AtPlace> places() {
        List<Place> places = new ArrayList<>();
        for (PastVisit visit : visits) {
            for (LineCatch line : visit.lines()) {
                if (LineHistories.nearest(places, line.place()).isEmpty()) {
                    places.add(line.place());
                }
            }
        }
        return places.stream().map(this::at).toList();
    }

    private RatePrior.AtPlace at(Place place) {
        GammaDistribution factor = new GammaDistribution(PART_SHAPE, PART_SHAPE);
        int count = 0;
        for (PastVisit visit : visits) {
            int caught = 0;
            double hours = 0;
            for (LineCatch line : visit.lines()) {
                if (line.place().distanceTo(place) <= LineHistories.SAME_LINE_METRES) {
                    caught += line.fish();
                    hours += line.hours();
                }
            }
            if (hours > 0) {
                count++;
                factor = factor.learning(caught, hours * visit.rate(), 1, PART_SHAPE);
            }
        }
        GammaDistribution today = factor.timesIndependent(new GammaDistribution(PART_SHAPE, PART_SHAPE));
        return new RatePrior.AtPlace(place, today.mean(), today.shape(), count);
    }
}
