package pegbed.day;

import java.time.Month;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import pegbed.model.Place;

/** What visits teach together: fish and weight for each hour fished, by kinds of places. */
public final class Lessons {
    /** A kind fished for less on a visit is not compared with others, hours (our choice). */
    public static final double LEAST_HOURS = 1.0 / 3;

    /** A visit with fewer fish decides nothing (our choice). */
    public static final int LEAST_FISH = 3;

    /** A target is offered from so many compared visits on (our choice). */
    public static final int LEAST_VISITS = 3;

    /** So seldom may chance alone have a depth do best so often, if a target is offered (our choice). */
    public static final double MOST_BY_CHANCE = 0.2;

    /** A line deeper than this share of the deepest is no line at the target depth (our choice). */
    public static final double SHALLOWER_SHARE = 0.8;

    private final List<PastVisit> visits;

    private Lessons(List<PastVisit> visits) {
        this.visits = List.copyOf(visits);
    }

    /** The lessons of visits to one peg. */
    public static Lessons of(List<PastVisit> visits) {
        return new Lessons(visits);
    }

    /** By bands of depth: a band is named by its middle in steps of its width, 0, 1, 2 … */
    public List<Lesson<Integer>> byDepth(DepthAt depth, double bandMetres) {
        return by((place, visit) -> band(depth.metres(place, visit), bandMetres));
    }

    /** By bands of distance from the seat, named likewise. */
    public List<Lesson<Integer>> byDistance(double bandMetres) {
        return by((place, visit) -> band(OptionalDouble.of(place.distanceMetres()), bandMetres));
    }

    /** By part of the peg, as a function gives it; a place for which it is empty is left out. */
    public <K extends Comparable<K>> List<Lesson<K>> byPart(Function<Place, Optional<K>> part) {
        return by((place, visit) -> part.apply(place));
    }

    /** By month. Months are never fished on one visit, so none is compared. */
    public List<Lesson<Month>> byMonth() {
        Map<Integer, Month> months = new TreeMap<>();
        visits.forEach(visit -> months.put(visit.index(), visit.date().getMonth()));
        return by((place, visit) -> Optional.of(months.get(visit)));
    }

    private static Optional<Integer> band(OptionalDouble metres, double bandMetres) {
        return metres.isPresent() ? Optional.of((int) Math.round(metres.getAsDouble() / bandMetres)) : Optional.empty();
    }

    private <K extends Comparable<K>> List<Lesson<K>> by(BiFunction<Place, Integer, Optional<K>> kind) {
        Map<K, Sum> sums = new TreeMap<>();
        for (PastVisit visit : visits) {
            Map<K, Sum> caught = caught(visit, kind);
            Set<K> best = best(caught);
            caught.forEach((key, sum) -> {
                Sum all = sums.computeIfAbsent(key, unused -> new Sum());
                all.add(sum);
                all.visits++;
                if (!best.isEmpty() && sum.hours >= LEAST_HOURS) {
                    all.compared++;
                    all.best += best.contains(key) ? 1 : 0;
                }
            });
        }
        List<Lesson<K>> lessons = new ArrayList<>();
        sums.forEach((key, sum) -> lessons.add(sum.lesson(key)));
        return lessons;
    }

    private static <K extends Comparable<K>> Map<K, Sum> caught(
            PastVisit visit, BiFunction<Place, Integer, Optional<K>> kind) {
        Map<K, Sum> caught = new TreeMap<>();
        for (LineCatch line : visit.lines()) {
            kind.apply(line.place(), visit.index())
                    .ifPresent(key ->
                            caught.computeIfAbsent(key, unused -> new Sum()).add(line));
        }
        return caught;
    }

    /** The kinds with most fish an hour on a visit; empty where there is nothing to compare or hardly a fish. */
    private static <K> Set<K> best(Map<K, Sum> caught) {
        Map<K, Sum> compared = new LinkedHashMap<>(caught);
        compared.values().removeIf(sum -> sum.hours < LEAST_HOURS);
        int fish = compared.values().stream().mapToInt(sum -> sum.fish).sum();
        Set<K> best = new LinkedHashSet<>();
        if (compared.size() < 2 || fish < LEAST_FISH) {
            return best;
        }
        double most = compared.values().stream().mapToDouble(Sum::rate).max().orElseThrow();
        compared.forEach((key, sum) -> {
            if (sum.rate() == most) {
                best.add(key);
            }
        });
        return best;
    }

    /**
     * The target depth that the visits speak for, among lines no deeper than {@link #SHALLOWER_SHARE} of the deepest;
     * empty unless one band did best in more than half of the {@link #LEAST_VISITS} or more visits in which it was
     * compared, and chance alone, every depth that was fished on a visit being as likely, would have it do so in at
     * most {@link #MOST_BY_CHANCE} of cases.
     *
     * @param depth of the lines at their visits
     * @param deepestMetres of the peg, metres
     * @param bandMetres depths as near as this are one, metres
     */
    public Optional<TargetLesson> target(DepthAt depth, double deepestMetres, double bandMetres) {
        DepthAt shallower = (place, visit) -> {
            OptionalDouble metres = depth.metres(place, visit);
            return metres.isPresent() && metres.getAsDouble() <= SHALLOWER_SHARE * deepestMetres
                    ? metres
                    : OptionalDouble.empty();
        };
        Lesson<Integer> most = null;
        for (Lesson<Integer> lesson : byDepth(shallower, bandMetres)) {
            if (most == null
                    || lesson.best() > most.best()
                    || (lesson.best() == most.best() && lesson.fishAnHour() > most.fishAnHour())) {
                most = lesson;
            }
        }
        if (most == null
                || most.compared() < LEAST_VISITS
                || 2 * most.best() <= most.compared()
                || byChance(most, shallower, bandMetres) > MOST_BY_CHANCE) {
            return Optional.empty();
        }
        return Optional.of(new TargetLesson(most.kind() * bandMetres, most.best(), most.compared()));
    }

    /** The probability that a band does best so often or more, if on each visit every band is as likely to. */
    private double byChance(Lesson<Integer> lesson, DepthAt depth, double bandMetres) {
        double[] probability = {1};
        for (PastVisit visit : visits) {
            Map<Integer, Sum> caught = caught(visit, (place, index) -> band(depth.metres(place, index), bandMetres));
            Sum own = caught.get(lesson.kind());
            if (own == null || own.hours < LEAST_HOURS || best(caught).isEmpty()) {
                continue;
            }
            double share = 1.0 / compared(caught.values());
            double[] next = new double[probability.length + 1];
            for (int k = 0; k < probability.length; k++) {
                next[k] += probability[k] * (1 - share);
                next[k + 1] += probability[k] * share;
            }
            probability = next;
        }
        double sum = 0;
        for (int k = lesson.best(); k < probability.length; k++) {
            sum += probability[k];
        }
        return sum;
    }

    private static long compared(Collection<Sum> sums) {
        return sums.stream().filter(sum -> sum.hours >= LEAST_HOURS).count();
    }

    /** What is counted of one kind. */
    private static final class Sum {
        private int visits;
        private int compared;
        private int best;
        private double hours;
        private int fish;
        private int weighed;
        private double kilograms;

        void add(LineCatch line) {
            hours += line.hours();
            fish += line.fish();
            weighed += line.weighed();
            kilograms += line.kilograms();
        }

        void add(Sum other) {
            hours += other.hours;
            fish += other.fish;
            weighed += other.weighed;
            kilograms += other.kilograms;
        }

        double rate() {
            return fish / hours;
        }

        <K> Lesson<K> lesson(K key) {
            double weight = weighed > 0 ? rate() * kilograms / weighed : Double.NaN;
            return new Lesson<>(key, visits, hours, fish, rate(), weight, compared, best);
        }
    }
}
