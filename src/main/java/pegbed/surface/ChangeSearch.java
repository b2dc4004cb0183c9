package pegbed.surface;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pegbed.model.Monitor;
import pegbed.surface.posterior.BottomChange;
import pegbed.surface.survey.Sounding;
import pegbed.surface.survey.Survey;

/**
 * Finds where the bottom has changed between visits.
 *
 * <p>A change at place c since visit s adds A·φ to the readings from then on, A ~ N(0, 0.25²) m, φ = exp(−d²/(2·0.6²))
 * at distance d from c. What those readings are against what the earlier ones make expected ({@link ExpectedReadings})
 * says how much likelier they are with the change than without, B ({@link ChangeEvidence}). The places tried are the
 * readings of visit s and the middles between neighbours; the odds are the prior odds times the mean B over the places.
 *
 * <p>A change that is found raises the variance of every older reading by ((A² + var A)·φ²): the older readings lose
 * weight by their distance, none beyond some 1.5 m. Then the bottom is fitted again, and looked over again.
 */
final class ChangeSearch {
    /**
     * Odds before any reading that the bottom of a peg has changed between two visits (our choice: so that of the
     * visits to an invented bottom that has not changed fewer than one in twenty raise one).
     */
    private static final double PRIOR_ODDS = 0.4;

    /** From here on a change is raised. */
    static final double RAISED_FROM = 0.5;

    /** Readings so near each other may lie in one change, metres. */
    private static final double NEIGHBOUR_METRES = 1.5;

    private static final int MOST_CHANGES = 4;

    /** Of a visit with more readings than this, the first so many are looked at. */
    private static final int MOST_READINGS = 200;

    /** Of more visits than this the latest so many are looked at, so that a peg fished for years is answered soon. */
    private static final int MOST_VISITS = 12;

    private final FittedBottom bottom;
    private final List<BottomChange> known;
    private final Observations observations;
    private final List<Sounding> soundings;

    ChangeSearch(FittedBottom bottom, List<BottomChange> known) {
        this.bottom = bottom;
        this.known = List.copyOf(known);
        this.observations = bottom.fits().get(0).observations();
        this.soundings = bottom.survey().soundings();
    }

    /** The bottom with its changes found and heeded. */
    static FittedBottom heeded(FittedBottom first, Monitor monitor) {
        FittedBottom bottom = first;
        List<BottomChange> changes = new ArrayList<>();
        while (changes.size() < MOST_CHANGES) {
            Optional<BottomChange> change = new ChangeSearch(bottom, changes).surest(monitor);
            if (change.isEmpty() || change.get().probability() < RAISED_FROM) {
                break;
            }
            changes.add(change.get());
            bottom = BottomModel.fitExactly(
                    lighter(bottom.survey(), List.of(change.get())), bottom.neighbours(), monitor);
        }
        return bottom.withChanges(changes);
    }

    /** The survey in which older soundings near changes have lost weight. */
    static Survey lighter(Survey survey, List<BottomChange> changes) {
        return survey.withSoundings(
                survey.soundings().stream().map(s -> lighter(s, changes)).toList());
    }

    private static Sounding lighter(Sounding sounding, List<BottomChange> changes) {
        Sounding lighter = sounding;
        for (BottomChange change : changes) {
            if (sounding.visit() < change.since()) {
                double apart = Math.hypot(sounding.xMetres() - change.xMetres(), sounding.yMetres() - change.yMetres());
                lighter = lighter.changed(
                        Math.hypot(change.deeperMetres(), change.sdMetres()) * BottomChange.share(apart));
            }
        }
        return lighter;
    }

    /**
     * A change that may be.
     *
     * @param logFactor logarithm of its Bayes factor at its place
     */
    private record Found(BottomChange change, double logFactor) {
        /** Whether it is raised at all; several that are can be equally sure in figures. */
        private double raised() {
            return Math.min(change.probability(), RAISED_FROM);
        }
    }

    /**
     * The surest change, whatever its odds; of those that would be raised, the one that explains the readings best,
     * which settles since when it is. Empty if no visit has earlier readings to differ from.
     */
    Optional<BottomChange> surest(Monitor monitor) {
        int earliest = Arrays.stream(observations.sounding)
                .map(i -> soundings.get(i).visit())
                .min()
                .orElse(Integer.MAX_VALUE);
        int[] visits = soundings.stream()
                .filter(Sounding::isUsed)
                .mapToInt(Sounding::visit)
                .filter(since -> since > earliest)
                .distinct()
                .sorted()
                .toArray();
        return Arrays.stream(visits, Math.max(0, visits.length - MOST_VISITS), visits.length)
                .peek(since -> monitor.check())
                .mapToObj(this::since)
                .flatMap(Optional::stream)
                .max(Comparator.comparingDouble(Found::raised).thenComparingDouble(Found::logFactor))
                .map(Found::change);
    }

    private Optional<Found> since(int visit) {
        List<double[]> places = places(visit);
        if (places.isEmpty()) {
            return Optional.empty();
        }
        ExpectedReadings expected = ExpectedReadings.of(bottom, v -> v >= visit);
        ChangeEvidence evidence = new ChangeEvidence(expected.calibrated());
        double sum = 0;
        double[] where = places.get(0);
        ChangeEvidence.Change best = evidence.of(shape(where, expected));
        for (double[] place : places) {
            ChangeEvidence.Change change = evidence.of(shape(place, expected));
            sum += Math.exp(Math.min(600, change.logFactor()));
            if (change.logFactor() > best.logFactor()) {
                best = change;
                where = place;
            }
        }
        double odds = PRIOR_ODDS * sum / places.size();
        BottomChange change =
                new BottomChange(where[0], where[1], visit, best.metres(), best.sdMetres(), odds / (1 + odds));
        return Optional.of(new Found(change, best.logFactor()));
    }

    /**
     * The readings of a visit and the middles between neighbours, but for those in a change that is known to have come
     * then or later: what is older has lost its weight there, so that nothing is left for the visit to differ from.
     */
    private List<double[]> places(int visit) {
        List<Sounding> own = soundings.stream()
                .filter(s -> s.visit() == visit && s.isUsed())
                .limit(MOST_READINGS)
                .toList();
        List<double[]> places = new ArrayList<>();
        for (int i = 0; i < own.size(); i++) {
            Sounding one = own.get(i);
            places.add(new double[] {one.xMetres(), one.yMetres()});
            for (int j = 0; j < i; j++) {
                Sounding other = own.get(j);
                double apart = Math.hypot(one.xMetres() - other.xMetres(), one.yMetres() - other.yMetres());
                if (apart > 0 && apart <= NEIGHBOUR_METRES) {
                    places.add(
                            new double[] {(one.xMetres() + other.xMetres()) / 2, (one.yMetres() + other.yMetres()) / 2
                            });
                }
            }
        }
        places.removeIf(place -> known.stream()
                .anyMatch(change -> change.since() >= visit
                        && Math.hypot(change.xMetres() - place[0], change.yMetres() - place[1]) < NEIGHBOUR_METRES));
        return places;
    }

    private static double[] shape(double[] place, ExpectedReadings expected) {
        double[] phi = new double[expected.difference.length];
        for (int i = 0; i < phi.length; i++) {
            phi[i] = BottomChange.share(Math.hypot(expected.x[i] - place[0], expected.y[i] - place[1]));
        }
        return phi;
    }
}
