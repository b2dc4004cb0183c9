package pegbed.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.surface.posterior.ReadingCheck;
import pegbed.surface.survey.Survey;

class GrossErrorsTest {
    /** An invented bottom without anything so small that one reading alone finds it. */
    private static double bottom(double x, double y) {
        double across = Math.min(1, Math.max(0, y / 4)) * Math.min(1, Math.max(0, (12 - y) / 4));
        return 0.3 + 1.3 * across + 0.02 * x;
    }

    private static List<Reading> fan(int count, long seed) {
        return fan(count, seed, GrossErrorsTest::bottom);
    }

    private static List<Reading> fan(int count, long seed, DoubleBinaryOperator depth) {
        Random random = new Random(seed);
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double distance = 1.5 + 9.5 * random.nextDouble();
            double angle = -60 + 120 * random.nextDouble();
            Place place = Place.polar(distance, angle);
            double z = depth.applyAsDouble(place.xMetres(), place.yMetres()) + 0.02 * random.nextGaussian();
            readings.add(Reading.of(distance, angle, z));
        }
        return readings;
    }

    /** A made reading among others, at a place that others surround. */
    private static List<Reading> withSlip(int count, long seed, double slip) {
        List<Reading> readings = new ArrayList<>(fan(count - 1, seed));
        Place place = Place.polar(6, 15);
        readings.add(count / 2, Reading.of(6, 15, bottom(place.xMetres(), place.yMetres()) + slip));
        return readings;
    }

    @ParameterizedTest
    @CsvSource({"1, 0.6", "1, 1", "1, 1.5", "2, 0.6", "2, 1", "2, 1.5", "3, -0.7", "3, 0.8", "3, -1.2"})
    void aSlipIsCalledAndItsDepthIsWhatTheOthersSay(long seed, double slip) throws InputException {
        List<Reading> readings = withSlip(30, seed, slip);
        Place place = readings.get(15).place();
        double truth = bottom(place.xMetres(), place.yMetres());
        FittedBottom bottom = TestPegs.fit(TestPegs.with(TestPegs.bend(), readings));

        List<Integer> called =
                bottom.calls().stream().map(GrossErrors.Call::sounding).toList();
        assertEquals(List.of(15), called);
        ReadingCheck check = bottom.readings().get(15);
        assertTrue(check.wrongProbability() > 0.9);
        assertEquals(truth, check.expectedMetres(), 0.15);
        assertEquals(truth + slip, check.readMetres(), 1e-9);
        // A quarter of the answer still half believes it.
        assertEquals(truth, bottom.at(place.xMetres(), place.yMetres()).depthMetres(), 0.15 * Math.abs(slip) + 0.12);
        assertEquals(30, bottom.soundings());
        for (ReadingCheck other : bottom.readings()) {
            assertTrue(other.sounding() == 15 || other.wrongProbability() == 0, "only that one");
        }
    }

    /** Half of the answer heeds a call among few readings, so that the doubt there stays large. */
    @Test
    void amongFewReadingsACallIsBelievedByHalf() throws InputException {
        List<Reading> readings = withSlip(16, 3, 1.2);
        FittedBottom bottom = TestPegs.fit(TestPegs.with(TestPegs.bend(), readings));
        assertEquals(
                List.of(8),
                bottom.calls().stream().map(GrossErrors.Call::sounding).toList());
        assertEquals(6, bottom.fits().size());
        double heeding = 0;
        for (int s = 3; s < 6; s++) {
            heeding += bottom.weight(s);
        }
        assertEquals(0.5, heeding, 1e-12);
        Place place = readings.get(8).place();
        double sd = bottom.at(place.xMetres(), place.yMetres()).sdMetres();
        assertTrue(sd > 0.15, "sd " + sd);
    }

    /** A ledge that drops by 1 m within 40 cm is no mistake of whoever plumbed it. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void aSteepLedgeIsNoMistake(long seed) throws InputException {
        List<Reading> readings = fan(30, seed, (x, y) -> 0.7 + Math.max(0, Math.min(1, (y - 3.5 - 0.1 * x) / 0.4)));
        FittedBottom bottom = TestPegs.fit(TestPegs.with(TestPegs.bend(), readings));
        assertEquals(List.of(), bottom.calls());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void whereNothingIsWrongNothingIsCalled(long seed) throws InputException {
        FittedBottom bottom = TestPegs.fit(TestPegs.with(TestPegs.bend(), fan(25, seed)));
        assertEquals(List.of(), bottom.calls());
        assertTrue(bottom.readings().stream().allMatch(check -> check.wrongProbability() == 0));
    }

    /** A hump of 25 cm, which one reading of this fan found, is what bottoms have. */
    @Test
    void aSmallHumpIsNoMistake() throws InputException {
        assertEquals(
                List.of(),
                TestPegs.fit(TestPegs.with(TestPegs.bend(), TestPegs.fan(29, 4)))
                        .calls());
    }

    /** A narrow hump of 60 cm that one reading found stands alone; a second beside it settles that it is there. */
    @Test
    void whatIsReadTwiceIsNoMistake() throws InputException {
        List<Reading> readings = new ArrayList<>(TestPegs.fan(29, 4));
        Place place = readings.get(19).place();
        double depth = readings.get(19).depthMetres() - 0.4;
        readings.set(19, Reading.of(place.distanceMetres(), place.angleDegrees(), depth));
        assertEquals(
                1,
                TestPegs.fit(TestPegs.with(TestPegs.bend(), readings)).calls().size(),
                "the hump was read once");
        Place beside = new Place(place.xMetres() + 0.1, place.yMetres() + 0.1);
        readings.add(Reading.of(beside.distanceMetres(), beside.angleDegrees(), depth));
        FittedBottom again = TestPegs.fit(TestPegs.with(TestPegs.bend(), readings));
        assertEquals(List.of(), again.calls());
        assertEquals(depth, again.at(place.xMetres(), place.yMetres()).depthMetres(), 0.08);
    }

    /** With so few nothing can be said against a reading. */
    @Test
    void fewReadingsContradictNone() throws InputException {
        assertEquals(
                List.of(),
                TestPegs.fit(TestPegs.with(TestPegs.bend(), withSlip(7, 3, 1.5)))
                        .calls());
    }

    /** 14 m, 46 ft written for 4.6 ft, in a water of some 1.5 m. */
    @ParameterizedTest
    @ValueSource(ints = {10, 14, 20, 30})
    void aDepthThatNoPegHasIsCalledAndForgotten(int count) throws InputException {
        List<Reading> readings = withSlip(count, 3, 0);
        int slip = count / 2;
        Reading right = readings.get(slip);
        readings.set(slip, Reading.of(6, 15, 14.02));
        FittedBottom bottom = TestPegs.fit(TestPegs.with(TestPegs.bend(), readings));

        assertTrue(bottom.calls().stream().anyMatch(call -> call.sounding() == slip), "it is called");
        assertTrue(bottom.readings().get(slip).wrongProbability() > 0.9);
        for (double[] at : new double[][] {{-4, 6}, {0, 5}, {4, 8}}) {
            double depth = bottom.at(at[0], at[1]).depthMetres();
            assertEquals(bottom(at[0], at[1]), depth, 0.8, "at " + at[0]);
        }
        assertEquals(right.depthMetres(), bottom.readings().get(slip).expectedMetres(), 1);
    }

    /** The doubt goes with its reading when another is added before it is worked out anew. */
    @Test
    void oneReadingMoreKeepsTheCall() throws InputException {
        List<Reading> readings = withSlip(30, 2, 1.5);
        Peg peg = TestPegs.with(TestPegs.bend(), readings);
        FittedBottom before = TestPegs.fit(peg);
        List<Reading> more = new ArrayList<>(readings);
        more.add(Reading.of(8.3, -24, 1.5));
        Survey now = Survey.of(
                TestPegs.with(TestPegs.bend(), more), before.survey().water().orElseThrow());
        IncrementalUpdate update =
                IncrementalUpdate.of(before, before.grid(Monitor.NONE), now).orElseThrow();
        assertEquals(
                List.of(15),
                update.bottom().calls().stream().map(GrossErrors.Call::sounding).toList());
        ReadingCheck was = before.readings().get(15);
        ReadingCheck is = update.bottom().readings().get(15);
        assertEquals(was.wrongProbability(), is.wrongProbability());
        assertEquals(was.expectedMetres(), is.expectedMetres(), 0.05);
    }
}
