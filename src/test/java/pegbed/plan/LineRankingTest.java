package pegbed.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import pegbed.model.Place;
import pegbed.surface.grid.GridFrame;

/** Rating nodes only when their bound comes up gives what rating all of them gives. */
class LineRankingTest {
    @Property(tries = 200)
    void lazyPicksAreThoseOfRatingEveryNode(@ForAll Random random) {
        GridFrame frame = new GridFrame(-2, 0, 0.25, 12, 9);
        double[] worth = random.doubles(frame.size(), 0.01, 1).toArray();
        boolean[] candidate = new boolean[frame.size()];
        LineRanking ranking = new LineRanking(frame);
        for (int i = 0; i < worth.length; i++) {
            candidate[i] = random.nextInt(4) > 0;
            ranking.consider(i, worth[i] + random.nextDouble());
        }
        List<Integer> lazy = ranking
                .best(
                        5,
                        i -> candidate[i]
                                ? Optional.of(new LineRanking.Rated(i, worth[i], LineCandidate.Origin.FLAT))
                                : Optional.empty())
                .stream()
                .map(LineRanking.Rated::index)
                .toList();

        List<Integer> picked = new ArrayList<>();
        IntStream.range(0, worth.length)
                .filter(i -> candidate[i])
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -worth[i]))
                .forEach(i -> {
                    Place place = LineRanking.place(frame, i);
                    if (picked.size() < 5
                            && picked.stream()
                                    .allMatch(other ->
                                            LineRanking.place(frame, other).distanceTo(place)
                                                    >= LineRanking.APART_METRES)) {
                        picked.add(i);
                    }
                });
        assertEquals(picked, lazy);
    }
}
