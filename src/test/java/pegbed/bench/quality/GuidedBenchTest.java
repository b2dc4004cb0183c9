package pegbed.bench.quality;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pegbed.bench.practice.Fan;
import pegbed.bench.practice.GuidedRun;
import pegbed.bench.practice.PracticePeg;
import pegbed.bench.practice.SimulatedPlumbing;
import pegbed.findings.Confidence;
import pegbed.geometry.PegWater;
import pegbed.model.InputException;
import pegbed.model.Place;
import pegbed.model.Reading;

/** On an invented practice peg: a straight cut, 1 m deep on both shelves and 1.8 m between. */
class GuidedBenchTest {
    @TempDir
    private Path folder;

    private PracticePeg peg;

    @BeforeEach
    void write() throws IOException, InputException {
        CutPeg.write(folder.resolve("cut"));
        peg = PracticePeg.all(folder).get(0);
    }

    @ParameterizedTest
    @ValueSource(ints = {15, 20, 25, 30, 38, 45})
    void aFanHasItsReadingsAllInTheWater(int count) throws InputException {
        PegWater water = PegWater.of(peg.empty());
        for (boolean staggered : new boolean[] {false, true}) {
            List<Place> places = Fan.of(water, count, staggered);
            assertEquals(count, places.size());
            assertEquals(count, places.stream().distinct().count());
            for (Place place : places) {
                assertTrue(water.isWater(place.xMetres(), place.yMetres()), place.toString());
            }
        }
    }

    @Test
    void everySecondRadialOfAStaggeredFanStartsFurtherOut() throws InputException {
        List<Place> places = Fan.of(PegWater.of(peg.empty()), 30, true);
        double first = nearest(places, -50);
        double second = nearest(places, -25);
        double third = nearest(places, 0);

        assertTrue(second > first + 0.3 && second > third + 0.3, first + ", " + second + ", " + third);
    }

    private static double nearest(List<Place> places, double angle) {
        return places.stream()
                .filter(p -> Math.abs(p.angleDegrees() - angle) < 0.1)
                .mapToDouble(Place::distanceMetres)
                .min()
                .orElseThrow();
    }

    @Test
    void plumbingIsTheSameForTheSameSeedAndOffByTheNoise() {
        Place meant = Place.polar(6, 0);
        Reading one = new SimulatedPlumbing(peg, 3).read(meant);
        SimulatedPlumbing many = new SimulatedPlumbing(peg, 4);
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < 500; i++) {
            double d = many.read(meant).depthMetres();
            sum += d;
            squares += d * d;
        }

        assertEquals(one, new SimulatedPlumbing(peg, 3).read(meant));
        assertNotEquals(
                one.depthMetres(), new SimulatedPlumbing(peg, 5).read(meant).depthMetres());
        assertEquals(meant.distanceMetres(), one.place().distanceMetres(), 1e-9, "reported as it was meant");
        // Level ground there: the depth's own noise alone.
        assertEquals(1.8, sum / 500, 0.002);
        assertEquals(0.01, Math.sqrt(squares / 500 - sum / 500 * sum / 500), 0.002);
    }

    @Test
    void aPlummetThatLandsOnTheBankIsThrownAgain() {
        SimulatedPlumbing plumbing = new SimulatedPlumbing(peg, 6);
        for (int i = 0; i < 100; i++) {
            double depth = plumbing.read(Place.polar(10.95, 0)).depthMetres();
            assertTrue(depth > 0.9, "read " + depth);
        }
    }

    @Test
    void guidedRunsAreRepeatableAndScored() throws InputException {
        GuidedBench bench = new GuidedBench(List.of(peg), 2);
        List<List<GuidedRun>> runs = bench.runs(16, pegbed.guidance.GuidanceWeights.USUAL);

        assertEquals(runs, bench.runs(16, pegbed.guidance.GuidanceWeights.USUAL));
        assertFalse(runs.get(0).get(0).equals(runs.get(0).get(1)), "each draw has its own errors");
        List<List<Score>> scores = bench.guided(runs, 16);
        assertEquals(2, scores.get(0).size());
        assertTrue(Figure.of(scores, Score::deepestRegretMetres).mean() < 0.1);
        assertEquals(17, runs.get(0).get(0).pegs().size(), "the peg without readings, and after each");
    }

    @Test
    void figuresAreMeansOverPegsWithTheirErrors() {
        List<List<Score>> byPeg =
                List.of(List.of(score(0.1, true), score(0.3, false)), List.of(score(0.4, true), score(0.4, true)));

        Figure regret = Figure.of(byPeg, Score::deepestRegretMetres);
        // Pegs' means 0.2 and 0.4: mean 0.3, standard error 0.1.
        assertEquals(0.3, regret.mean(), 1e-12);
        assertEquals(0.1, regret.error(), 1e-12);
        Figure right = Figure.ofOutcomes(byPeg, Outcome::right);
        // 1 of 2 and 2 of 2: share 3/4, residuals −½ and ½, error √(½·2/1)/4 = ¼.
        assertEquals(0.75, right.mean(), 1e-12);
        assertEquals(0.25, right.error(), 1e-12);
    }

    private static Score score(double regret, boolean right) {
        List<Outcome> outcomes = List.of(new Outcome(Confidence.LIKELY, OptionalDouble.empty(), right, false));
        return new Score(0.1, 0.1, Optional.empty(), 1, regret, outcomes, outcomes, Map.of());
    }

    @Test
    void beyondTheKnownGridTheNearestDiscStandsIn() {
        assertEquals(peg.truth().disc(12.5, 5).depth(), peg.truth().disc(14, 5).depth(), 1e-12);
        assertTrue(Double.isNaN(peg.truth().disc(0, -1).depth()), "land stays land");
    }
}
