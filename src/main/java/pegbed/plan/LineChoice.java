package pegbed.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import pegbed.findings.Zone;

/**
 * The exact choice of a set of lines: it maximises Σ worth − rigs·cost over all sets that keep their spacing and the
 * person's numbers. A line stands in the way of another only where no set with as many lines in each zone avoids it.
 *
 * <p>Sets are enumerated by how many lines they have in each zone; for each such number by branch and bound, fewest
 * lines in the way first and then value. The bound takes the best worths that are left in each zone and the rigs that
 * the lines taken so far need, which more lines can only raise.
 */
final class LineChoice {
    private static final double NOTICEABLE = 1e-12;
    private static final int ZONES = Zone.values().length;

    /**
     * How many lines may be chosen.
     *
     * @param counts the largest number for each zone, in the order of the zones; lines that are fixed count too
     * @param maxLines the largest number of lines in all
     * @param maxRigs the largest number of rigs
     */
    record Wanted(List<Integer> counts, int maxLines, int maxRigs) {
        Wanted {
            counts = List.copyOf(counts);
        }
    }

    /**
     * A set of lines.
     *
     * @param lines in the order of the candidates
     * @param inTheWay pairs of lines of which one stands in the way of the other
     * @param value Σ worth − rigs·cost − inTheWay·cost
     */
    record Chosen(List<LineCandidate> lines, int inTheWay, double value) {}

    private final List<LineCandidate> candidates;
    private final boolean[][] spaced;
    private final boolean[][] crossed;
    /** Candidates that are not fixed by zone, best first. */
    private final List<List<Integer>> byZone;

    private final List<Integer> fixed;
    private final int maxRigs;

    private final int[] wanted = new int[ZONES];
    private final List<Integer> taken = new ArrayList<>();
    private List<Integer> best;
    private int bestCrossings;
    private double bestWorth;

    private LineChoice(List<LineCandidate> candidates, Wanted limits) {
        this.candidates = candidates;
        int n = candidates.size();
        spaced = new boolean[n][n];
        crossed = new boolean[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                spaced[i][j] = LineRules.spaced(
                        candidates.get(i).place(), candidates.get(j).place());
                crossed[i][j] = LineRules.inTheWay(
                        candidates.get(i).place(), candidates.get(j).place());
                spaced[j][i] = spaced[i][j];
                crossed[j][i] = crossed[i][j];
            }
        }
        fixed = IntStream.range(0, n)
                .filter(i -> candidates.get(i).isFixed())
                .boxed()
                .toList();
        byZone = Arrays.stream(Zone.values()).map(this::free).toList();
        maxRigs = Math.max(limits.maxRigs(), rigs(fixed));
    }

    private List<Integer> free(Zone zone) {
        return IntStream.range(0, candidates.size())
                .filter(i -> !candidates.get(i).isFixed())
                .filter(i -> candidates.get(i).zone().stream().anyMatch(zone::equals))
                .filter(i -> fixed.stream().allMatch(other -> spaced[i][other]))
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -candidates.get(i).worth()))
                .toList();
    }

    /**
     * The best set. Every fixed candidate is in it, even where they break a limit on their own.
     *
     * @param candidates in an order that settles ties: the first of equals is taken
     */
    static Chosen best(List<LineCandidate> candidates, Wanted limits) {
        return new LineChoice(candidates, limits).choose(limits);
    }

    private Chosen choose(Wanted limits) {
        int[] free = new int[ZONES];
        for (Zone zone : Zone.values()) {
            long pinned = fixed.stream()
                    .filter(i -> candidates.get(i).zone().stream().anyMatch(zone::equals))
                    .count();
            int wish = limits.counts().get(zone.ordinal()) - (int) pinned;
            free[zone.ordinal()] =
                    Math.max(0, Math.min(wish, byZone.get(zone.ordinal()).size()));
        }
        int room = limits.maxLines() - fixed.size();
        Chosen found = null;
        for (int[] numbers : numbers(free)) {
            if (Arrays.stream(numbers).sum() > Math.max(0, room) || (found != null && hopeless(numbers, found))) {
                continue;
            }
            Chosen chosen = withNumbers(numbers);
            if (chosen != null && (found == null || chosen.value() > found.value() + NOTICEABLE)) {
                found = chosen;
            }
        }
        return found;
    }

    /** All ways to take up to so many of each zone, the most first. */
    private static List<int[]> numbers(int[] max) {
        List<int[]> all = new ArrayList<>();
        int[] numbers = max.clone();
        while (true) {
            all.add(numbers.clone());
            int zone = 0;
            while (zone < ZONES && numbers[zone] == 0) {
                numbers[zone] = max[zone];
                zone++;
            }
            if (zone == ZONES) {
                return all;
            }
            numbers[zone]--;
        }
    }

    private boolean hopeless(int[] numbers, Chosen found) {
        double max = worth(fixed);
        for (int zone = 0; zone < ZONES; zone++) {
            max += worth(byZone.get(zone).subList(0, numbers[zone]));
        }
        return max - LineRules.RIG_COST * rigs(fixed) <= found.value() + NOTICEABLE;
    }

    private Chosen withNumbers(int[] numbers) {
        System.arraycopy(numbers, 0, wanted, 0, ZONES);
        taken.clear();
        taken.addAll(fixed);
        best = null;
        bestCrossings = Integer.MAX_VALUE;
        bestWorth = Double.NEGATIVE_INFINITY;
        take(0, 0, crossings(fixed), worth(fixed));
        if (best == null) {
            return null;
        }
        List<LineCandidate> lines =
                best.stream().sorted().map(candidates::get).collect(Collectors.toUnmodifiableList());
        return new Chosen(lines, bestCrossings, bestWorth - LineRules.PATH_COST * bestCrossings);
    }

    /** Takes what is still wanted of a zone from its candidates of this rank on, then goes on to the next zone. */
    private void take(int zone, int rank, int crossings, double worth) {
        int next = zone;
        int from = rank;
        while (next < ZONES && wanted[next] == 0) {
            next++;
            from = 0;
        }
        int rigs = rigs(taken);
        double value = worth - LineRules.RIG_COST * rigs;
        if (rigs > maxRigs || !better(crossings, next == ZONES ? value : value + left(next, from))) {
            return;
        }
        if (next == ZONES) {
            best = List.copyOf(taken);
            bestCrossings = crossings;
            bestWorth = value;
            return;
        }
        List<Integer> ranked = byZone.get(next);
        for (int i = from; i + wanted[next] <= ranked.size(); i++) {
            int candidate = ranked.get(i);
            int more = crossingsWith(candidate);
            if (more >= 0) {
                taken.add(candidate);
                wanted[next]--;
                take(
                        next,
                        i + 1,
                        crossings + more,
                        worth + candidates.get(candidate).worth());
                wanted[next]++;
                taken.remove(taken.size() - 1);
            }
        }
    }

    /** How many of the lines taken a further one and it stand in the way of each other; -1 where it is too near one. */
    private int crossingsWith(int candidate) {
        int count = 0;
        for (int other : taken) {
            if (!spaced[candidate][other]) {
                return -1;
            }
            count += crossed[candidate][other] ? 1 : 0;
        }
        return count;
    }

    private boolean better(int crossings, double value) {
        return crossings < bestCrossings || (crossings == bestCrossings && value > bestWorth + NOTICEABLE);
    }

    /** The most that the lines still wanted can be worth. */
    private double left(int zone, int rank) {
        List<Integer> ranked = byZone.get(zone);
        double max = worth(ranked.subList(rank, Math.min(ranked.size(), rank + wanted[zone])));
        for (int later = zone + 1; later < ZONES; later++) {
            max += worth(byZone.get(later).subList(0, wanted[later]));
        }
        return max;
    }

    private double worth(List<Integer> lines) {
        double sum = 0;
        for (int i : lines) {
            sum += candidates.get(i).worth();
        }
        return sum;
    }

    private int crossings(List<Integer> lines) {
        int count = 0;
        for (int i = 0; i < lines.size(); i++) {
            for (int j = 0; j < i; j++) {
                count += crossed[lines.get(i)][lines.get(j)] ? 1 : 0;
            }
        }
        return count;
    }

    private int rigs(List<Integer> lines) {
        double[] depths = new double[lines.size()];
        for (int i = 0; i < depths.length; i++) {
            depths[i] = candidates.get(lines.get(i)).spot().depthMetres();
        }
        return RigCover.count(depths, LineRules.TRAVEL_METRES);
    }
}
