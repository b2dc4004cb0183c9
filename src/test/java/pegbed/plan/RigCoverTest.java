package pegbed.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** The fewest rigs against going through all ways to share depths out. */
class RigCoverTest {
    /** The fewest groups, by going through all partitions. */
    static int fewestByPartition(List<Double> depths, double travel) {
        return fewest(depths, 0, new ArrayList<>(), travel);
    }

    private static int fewest(List<Double> depths, int next, List<List<Double>> groups, double travel) {
        if (next == depths.size()) {
            return groups.size();
        }
        int best = Integer.MAX_VALUE;
        for (int i = 0; i <= groups.size(); i++) {
            if (i == groups.size()) {
                groups.add(new ArrayList<>());
            }
            List<Double> group = groups.get(i);
            group.add(depths.get(next));
            if (Collections.max(group) - Collections.min(group) <= travel + 1e-9) {
                best = Math.min(best, fewest(depths, next + 1, groups, travel));
            }
            group.remove(group.size() - 1);
            if (group.isEmpty()) {
                groups.remove(i);
                break;
            }
        }
        return best;
    }

    @Property(tries = 300)
    void noSharingOutNeedsFewer(
            @ForAll @Size(max = 7) List<@DoubleRange(min = 0.3, max = 0.8) Double> depths,
            @ForAll @DoubleRange(min = 0, max = 0.2) double travel) {
        List<List<Integer>> groups = RigCover.fewest(depths, travel);
        assertEquals(fewestByPartition(depths, travel), groups.size());
        double[] array = depths.stream().mapToDouble(Double::doubleValue).toArray();
        assertEquals(groups.size(), RigCover.count(array, travel));
        assertEquals(
                IntStream.range(0, depths.size()).boxed().toList(),
                groups.stream().flatMap(List::stream).sorted().toList());
        for (List<Integer> group : groups) {
            List<Double> own = group.stream().map(depths::get).toList();
            assertTrue(Collections.max(own) - Collections.min(own) <= travel + 1e-9);
        }
    }

    @Test
    void noLinesNeedNoRig() {
        assertEquals(List.of(), RigCover.fewest(List.of(), 0.075));
    }

    /** Common practice: 2 ft 6 in across and in both margins, 5 ft 6 in down the track. */
    @Test
    void ledgeLinesShareARigAndTheTrackHasItsOwn() {
        double ledge = 2.5 * 0.3048;
        double track = 5.5 * 0.3048;
        assertEquals(
                List.of(List.of(1, 2, 3), List.of(0)),
                RigCover.fewest(List.of(track, ledge, ledge, ledge), LineRules.TRAVEL_METRES));
    }

    /** Common practice: a rig is slid by 3 in; 2 ft 6 in and 2 ft 8 in share one, 2 ft 6 in and 2 ft 10 in do not. */
    @Test
    void threeInchesOfTravelAreAllowed() {
        double inch = 0.0254;
        assertEquals(
                1,
                RigCover.fewest(List.of(30 * inch, 32 * inch), LineRules.TRAVEL_METRES)
                        .size());
        assertEquals(
                2,
                RigCover.fewest(List.of(30 * inch, 34 * inch), LineRules.TRAVEL_METRES)
                        .size());
        assertEquals(
                1, RigCover.fewest(List.of(0.5, 0.575), LineRules.TRAVEL_METRES).size());
        assertEquals(
                2,
                RigCover.fewest(List.of(0.5, 0.5751), LineRules.TRAVEL_METRES).size());
    }
}
