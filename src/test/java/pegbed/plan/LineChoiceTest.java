package pegbed.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import pegbed.findings.Spot;
import pegbed.findings.Zone;
import pegbed.model.Place;

/** The choice of a set of lines against going through all sets. */
class LineChoiceTest {
    private static final LineChoice.Wanted USUAL = new LineChoice.Wanted(List.of(1, 1, 1, 1, 0), 12, 12);

    /** A candidate with nothing but what the choice looks at. */
    private static LineCandidate candidate(Zone zone, Place place, double depth, double worth, boolean fixed) {
        return new LineCandidate(
                Optional.ofNullable(zone),
                fixed ? LineCandidate.Origin.FIXED : LineCandidate.Origin.FLAT,
                new Spot(place, depth, 0.02, 0.05, 0.6),
                depth,
                1,
                worth);
    }

    private static LineCandidate free(Zone zone, double distance, double angle, double depth, double worth) {
        return candidate(zone, Place.polar(distance, angle), depth, worth, false);
    }

    @Property(tries = 400)
    void theChoiceIsTheBestOfAllSets(@ForAll Random random, @ForAll @IntRange(min = 0, max = 11) int count) {
        List<LineCandidate> candidates = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Zone zone = Zone.values()[random.nextInt(Zone.values().length)];
            Place place = Place.polar(1 + random.nextInt(24) * 0.5, -90 + 10 * random.nextInt(19));
            double depth = 0.6 + 0.04 * random.nextInt(30);
            boolean fixed = random.nextInt(8) == 0
                    && candidates.stream()
                            .filter(LineCandidate::isFixed)
                            .allMatch(other -> LineRules.spaced(other.place(), place));
            candidates.add(
                    candidate(random.nextInt(9) == 0 && fixed ? null : zone, place, depth, worth(random), fixed));
        }
        List<Integer> counts =
                IntStream.range(0, 5).mapToObj(i -> random.nextInt(3)).toList();
        int fixed = (int) candidates.stream().filter(LineCandidate::isFixed).count();
        LineChoice.Wanted wanted =
                new LineChoice.Wanted(counts, Math.max(fixed, 1 + random.nextInt(6)), 1 + random.nextInt(4));

        LineChoice.Chosen chosen = LineChoice.best(candidates, wanted);

        assertEquals(bruteForce(candidates, wanted), chosen.value(), 1e-9);
        assertEquals(value(chosen.lines()), chosen.value(), 1e-9);
        assertEquals(crossings(chosen.lines()), chosen.inTheWay());
        assertTrue(isAllowed(chosen.lines(), candidates, wanted));
    }

    private static double worth(Random random) {
        return random.nextInt(20) / 20.0;
    }

    /** The definition: per number of lines in each zone the fewest in the way, then the greatest value. */
    private static double bruteForce(List<LineCandidate> candidates, LineChoice.Wanted wanted) {
        Map<List<Long>, List<LineCandidate>> best = new HashMap<>();
        for (int set = 0; set < 1 << candidates.size(); set++) {
            int members = set;
            List<LineCandidate> lines = IntStream.range(0, candidates.size())
                    .filter(i -> (members >> i & 1) == 1)
                    .mapToObj(candidates::get)
                    .toList();
            if (isAllowed(lines, candidates, wanted)) {
                best.merge(numbers(lines), lines, (a, b) -> {
                    int crossings = crossings(a) - crossings(b);
                    return crossings < 0 || (crossings == 0 && value(a) >= value(b)) ? a : b;
                });
            }
        }
        return best.values().stream().mapToDouble(LineChoiceTest::value).max().orElseThrow();
    }

    private static List<Long> numbers(List<LineCandidate> lines) {
        return Arrays.stream(Zone.values())
                .map(zone -> lines.stream()
                        .filter(line -> line.zone().equals(Optional.of(zone)))
                        .count())
                .toList();
    }

    private static boolean isAllowed(
            List<LineCandidate> lines, List<LineCandidate> candidates, LineChoice.Wanted wanted) {
        List<LineCandidate> fixed =
                candidates.stream().filter(LineCandidate::isFixed).toList();
        boolean counts = IntStream.range(0, 5)
                .allMatch(zone -> numbers(lines).get(zone)
                        <= Math.max(wanted.counts().get(zone), numbers(fixed).get(zone)));
        boolean spaced = lines.stream()
                .allMatch(a -> lines.stream().allMatch(b -> a == b || a.place().distanceTo(b.place()) >= 2 - 1e-9));
        return lines.containsAll(fixed)
                && counts
                && spaced
                && lines.size() <= wanted.maxLines()
                && rigs(lines) <= Math.max(wanted.maxRigs(), rigs(fixed));
    }

    private static int crossings(List<LineCandidate> lines) {
        int count = 0;
        for (int i = 0; i < lines.size(); i++) {
            for (int j = 0; j < i; j++) {
                count += LineRules.inTheWay(lines.get(i).place(), lines.get(j).place()) ? 1 : 0;
            }
        }
        return count;
    }

    private static int rigs(List<LineCandidate> lines) {
        return RigCoverTest.fewestByPartition(
                lines.stream().map(line -> line.spot().depthMetres()).toList(), 0.075);
    }

    private static double value(List<LineCandidate> lines) {
        return lines.stream().mapToDouble(LineCandidate::worth).sum()
                - LineRules.RIG_COST * rigs(lines)
                - LineRules.PATH_COST * crossings(lines);
    }

    @Test
    void nothingToChooseFromGivesNoLines() {
        assertEquals(List.of(), LineChoice.best(List.of(), USUAL).lines());
    }

    @Test
    void aLineInTheWayIsMovedAside() {
        LineCandidate track = free(Zone.TRACK, 8, 0, 1.6, 1);
        LineCandidate behind = free(Zone.ACROSS, 13, 0, 0.8, 0.9);
        LineCandidate aside = free(Zone.ACROSS, 13, 10, 0.8, 0.5);
        LineChoice.Chosen chosen = LineChoice.best(List.of(track, behind, aside), USUAL);
        assertEquals(List.of(track, aside), chosen.lines());
        assertEquals(0, chosen.inTheWay());
    }

    @Test
    void aLineInTheWayIsTakenWhereNothingAvoidsIt() {
        LineCandidate track = free(Zone.TRACK, 8, 0, 1.6, 1);
        LineCandidate behind = free(Zone.ACROSS, 13, 0, 0.8, 0.9);
        LineChoice.Chosen chosen = LineChoice.best(List.of(track, behind), USUAL);
        assertEquals(List.of(track, behind), chosen.lines());
        assertEquals(1, chosen.inTheWay());
    }

    @Test
    void ofTwoPlacesNearlyAsGoodTheOneThatSharesARigIsTaken() {
        LineCandidate left = free(Zone.LEFT_MARGIN, 3, -80, 0.76, 0.9);
        LineCandidate shallow = free(Zone.RIGHT_MARGIN, 3, 80, 0.60, 0.92);
        LineCandidate same = free(Zone.RIGHT_MARGIN, 5, 80, 0.78, 0.88);
        assertEquals(
                List.of(left, same),
                LineChoice.best(List.of(left, shallow, same), USUAL).lines());
    }

    @Test
    void linesLessThanTwoMetresApartAreNeverTakenTogether() {
        LineCandidate left = free(Zone.TRACK, 6, 0, 1.5, 1);
        LineCandidate near = free(Zone.ACROSS, 7.9, 0, 1.5, 1);
        assertEquals(1, LineChoice.best(List.of(left, near), USUAL).lines().size());
    }

    @Test
    void aFixedLineIsKeptHoweverLittleItIsWorth() {
        LineCandidate poor = candidate(Zone.TRACK, Place.polar(6, 0), 1.5, 0.05, true);
        LineCandidate good = free(Zone.TRACK, 7, 0, 1.5, 1);
        assertEquals(List.of(poor), LineChoice.best(List.of(poor, good), USUAL).lines());
    }
}
