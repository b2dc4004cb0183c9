package pegbed.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Precision;
import pegbed.model.Reading;
import pegbed.model.Visit;
import pegbed.surface.posterior.BottomChange;
import pegbed.surface.posterior.Gradient;
import pegbed.surface.posterior.ReadingCheck;
import pegbed.surface.posterior.VisitLevel;
import pegbed.surface.prior.PlaceCoordinates;
import pegbed.surface.survey.Sounding;
import pegbed.surface.survey.Survey;

/**
 * Levels of visits. A survey moved by a constant is what the reduction of soundings undoes: correcting observed depths
 * for the height of the water above or below the reference plane when they were taken (IHO S-32, Hydrographic
 * Dictionary).
 */
class VisitLevelTest {
    private static final double PRIOR = 0.12 * 0.12;

    private static Reading exact(double distance, double angle, double shift) {
        Place place = Place.polar(distance, angle);
        Reading r = Reading.of(distance, angle, TestPegs.bottom(place.xMetres(), place.yMetres()) + shift);
        return new Reading(
                r.typed(), r.place(), new Precision(0, 0), r.depthMetres(), r.bottom(), r.note(), r.time(), r.extras());
    }

    private static List<Reading> fan(double shift, double... distances) {
        List<Reading> readings = new ArrayList<>();
        for (double angle = -40; angle <= 40; angle += 20) {
            for (double distance : distances) {
                readings.add(exact(distance, angle, shift));
            }
        }
        return readings;
    }

    private static Peg twice(List<Reading> first, List<Reading> second) {
        return TestPegs.bend()
                .withVisits(List.of(
                        TestPegs.visit(OptionalDouble.empty(), first), TestPegs.visit(OptionalDouble.empty(), second)));
    }

    /** With every reading as it was read, however doubtful. */
    private static FittedBottom exactly(Peg peg) throws InputException {
        return BottomModel.fitExactly(Survey.of(peg), NeighbouringPegs.NONE, Monitor.NONE);
    }

    @Test
    void aSurveyMovedByAConstantIsRecovered() throws InputException {
        for (double shift : new double[] {0.08, -0.15, 0}) {
            FittedBottom bottom = TestPegs.fit(twice(fan(0, 3, 5, 7, 9), fan(shift, 3, 5, 7, 9)));
            VisitLevel level = bottom.level(0);
            assertEquals(shift, level.higherMetres(), 0.004);
            assertEquals(20, level.readings());
            assertTrue(level.sdMetres() < 0.02, "sd " + level.sdMetres());
            assertEquals(0, bottom.level(1).higherMetres(), 1e-12);
            assertEquals(0, bottom.level(1).sdMetres(), 1e-12);
        }
    }

    @Test
    void aVisitWithNothingReadIsAsHighAsTheFirstAndAsUnsureAsAnyVisit() throws InputException {
        VisitLevel level = TestPegs.fit(twice(fan(0, 3, 6, 9), List.of())).level(0);
        assertEquals(0, level.higherMetres(), 1e-9);
        assertEquals(0.12, level.sdMetres(), 1e-9);
    }

    /**
     * δ̂ = (w·y)/(1/0.12² + Σw), w = M⁻¹1, M = K_post + diag τ², y = d − μ, worked for two readings and each structure.
     */
    @Test
    void theOffsetIsThatOfTheFormulaByHand() throws InputException {
        List<Reading> first = fan(0, 4, 7);
        List<Reading> second = List.of(exact(5.5, -10, 0.10), exact(6, 15, 0.07));
        FittedBottom before = exactly(TestPegs.bend().withToday(v -> v.withReadings(first)));
        FittedBottom both = exactly(twice(first, second));
        double expected = 0;
        for (int s : both.counting()) {
            Expected two = new Expected(before.fits().get(s), second);
            double noise = 0.02 * 0.02 + 1e-6;
            double a = two.covariance[0][0] + noise;
            double b = two.covariance[0][1];
            double c = two.covariance[1][1] + noise;
            double determinant = a * c - b * b;
            double w0 = (c - b) / determinant;
            double w1 = (a - b) / determinant;
            double y0 = second.get(0).depthMetres() - two.mean[0];
            double y1 = second.get(1).depthMetres() - two.mean[1];
            double own = (w0 * y0 + w1 * y1) / (1 / PRIOR + w0 + w1);
            assertEquals(own, both.fits().get(s).higher(1, 0), 1e-6);
            expected += both.weight(s) * own;
        }
        assertEquals(expected, both.level(0).higherMetres(), 1e-6);
    }

    /** What one structure expects of the bottom at the places of readings. */
    private static final class Expected {
        final double[] mean;
        final double[][] covariance;

        Expected(StructureFit fit, List<Reading> readings) {
            int n = readings.size();
            PlaceCoordinates places = fit.places(
                    readings.stream().mapToDouble(r -> r.place().xMetres()).toArray(),
                    readings.stream().mapToDouble(r -> r.place().yMetres()).toArray());
            double[][] w = new double[n][fit.observations().count];
            mean = new double[n];
            covariance = new double[n][n];
            for (int i = 0; i < n; i++) {
                fit.covariances(places, i, w[i]);
                mean[i] = fit.prior().depth(places, i) + fit.process().mean(w[i]);
                fit.process().whiten(w[i]);
            }
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    covariance[i][j] =
                            fit.process().covariance(fit.covariance().between(places, i, places, j), w[i], w[j], 1, 1);
                }
            }
        }
    }

    /**
     * (1 − Σw)²·0.12² + wᵀ(C K_post C + N)w, w the solve's weights of two exactly placed readings, C the factors of the
     * steepness there, K_post the covariance of the mixture: Σ w_s (K_s + m_s m_sᵀ) − m̄m̄ᵀ.
     */
    @Test
    void theDoubtIsWhatTheWeightsMakeOfTheErrorsAsTheyAreStated() throws InputException {
        List<Reading> first = fan(0, 4, 7);
        List<Reading> second = List.of(exact(5.5, -10, 0.10), exact(6, 15, 0.07));
        FittedBottom before = exactly(TestPegs.bend().withToday(v -> v.withReadings(first)));
        FittedBottom both = exactly(twice(first, second));
        double[] x = second.stream().mapToDouble(r -> r.place().xMetres()).toArray();
        double[] y = second.stream().mapToDouble(r -> r.place().yMetres()).toArray();
        double[] mean = new double[2];
        double a = 0;
        double b = 0;
        double c = 0;
        for (int s : both.counting()) {
            Expected two = new Expected(before.fits().get(s), second);
            double weight = both.weight(s);
            mean[0] += weight * two.mean[0];
            mean[1] += weight * two.mean[1];
            a += weight * (two.covariance[0][0] + two.mean[0] * two.mean[0]);
            b += weight * (two.covariance[0][1] + two.mean[0] * two.mean[1]);
            c += weight * (two.covariance[1][1] + two.mean[1] * two.mean[1]);
        }
        a -= mean[0] * mean[0];
        b -= mean[0] * mean[1];
        c -= mean[1] * mean[1];
        double[] factor = new double[2];
        for (int i = 0; i < 2; i++) {
            Gradient g = both.gradients(x, y)[i];
            factor[i] = SteepnessDoubt.bottom(Math.hypot(g.dx(), g.dy()));
        }
        double noise = 0.02 * 0.02 + 1e-6;
        double determinant = (a + noise + PRIOR) * (c + noise + PRIOR) - (b + PRIOR) * (b + PRIOR);
        double w0 = PRIOR * (c + noise - b) / determinant;
        double w1 = PRIOR * (a + noise - b) / determinant;
        double expected = (1 - w0 - w1) * (1 - w0 - w1) * PRIOR
                + w0 * w0 * (factor[0] * factor[0] * a + noise)
                + 2 * w0 * w1 * factor[0] * factor[1] * b
                + w1 * w1 * (factor[1] * factor[1] * c + noise);

        assertEquals(Math.sqrt(expected), both.level(0).sdMetres(), 1e-6);
        assertEquals(both.level(0).sdMetres(), both.level(0, 1).sdMetres(), 1e-12);
    }

    /** Of readings with nothing read before them the first is where a reading is least in doubt: least 1ᵀM1. */
    @Test
    void theFirstCheckIsTheOneThatTellsMost() throws InputException {
        Peg arrived = twice(fan(0, 3, 5, 7, 9), List.of());
        FittedBottom bottom = TestPegs.fit(arrived);
        List<Sounding> candidates = new ArrayList<>();
        for (Reading r : fan(0, 2, 5, 7.5)) {
            candidates.add(
                    Sounding.of(Reading.of(r.place().distanceMetres(), r.place().angleDegrees(), 0), 1));
        }
        List<LevelChecks.LevelCheck> best = LevelChecks.best(bottom, 0, candidates, 3, 2);
        assertEquals(3, best.size());
        double[][] stated = SteepnessDoubt.covariance(bottom, candidates);
        double least = Double.POSITIVE_INFINITY;
        int index = -1;
        for (int i = 0; i < candidates.size(); i++) {
            Sounding s = candidates.get(i);
            Gradient g = SteepnessDoubt.of(bottom.gradients(new double[] {s.xMetres()}, new double[] {s.yMetres()})[0]);
            double doubt = stated[i][i] + bottom.readingVariance(s, g);
            if (doubt < least) {
                least = doubt;
                index = i;
            }
        }
        assertEquals(index, best.get(0).candidate());
        assertTrue(best.get(1).sdAfterMetres() < best.get(0).sdAfterMetres());
        assertTrue(best.get(2).sdAfterMetres() < best.get(1).sdAfterMetres());
        Sounding one = candidates.get(best.get(0).candidate());
        for (int i = 1; i < 3; i++) {
            Sounding other = candidates.get(best.get(i).candidate());
            assertTrue(Math.hypot(one.xMetres() - other.xMetres(), one.yMetres() - other.yMetres()) >= 2);
        }
    }

    /**
     * What is said to be known after a check is what is known once it is taken, the map learning nothing new from it.
     */
    @Test
    void aCheckLeavesTheDoubtThatWasForetold() throws InputException {
        List<Reading> first = fan(0, 4, 7);
        FittedBottom bottom = TestPegs.fit(twice(first, List.of()));
        Reading check = exact(5.5, -10, 0.10);
        List<Sounding> candidates = List.of(Sounding.of(check, 1));
        double foretold = LevelChecks.best(bottom, 0, candidates, 1, 0).get(0).sdAfterMetres();
        // The slope there is told a little otherwise once the check is known.
        assertEquals(
                foretold, TestPegs.fit(twice(first, List.of(check))).level(0).sdMetres(), 0.003);
    }

    /** One reading that stands alone may as well be misplaced; a second beside it settles it. */
    @Test
    void oneReadingAloneTellsNoChange() throws InputException {
        List<Reading> first = fan(0, 3, 4.5, 6, 7.5, 9);
        List<Reading> second = new ArrayList<>(fan(0.05, 4, 8));
        second.add(exact(6, 0, 0.30));
        assertEquals(List.of(), TestPegs.fit(twice(first, second)).changes());
        second.add(exact(6.3, 3, 0.30));
        assertEquals(1, TestPegs.fit(twice(first, second)).changes().size());
    }

    @Test
    void whatWasReadBeforeADiggingIsKeptAndNotUsed() throws InputException {
        Peg peg = twice(fan(0.5, 3, 6, 9), fan(0, 3, 6, 9)).withToday(v -> v.withAfresh(true));
        FittedBottom bottom = TestPegs.fit(peg);
        assertEquals(15, bottom.soundings());
        assertEquals(30, bottom.survey().soundings().size());
        assertEquals(0, bottom.level(0).readings());
        assertEquals(TestPegs.bottom(0, 6), bottom.at(0, 6).depthMetres(), 0.03);
        assertTrue(bottom.changes().isEmpty());
        assertEquals(
                List.of(15, 16, 17),
                bottom.readings().stream().map(ReadingCheck::sounding).limit(3).toList());
    }

    @Test
    void aPlaceThatWasDugOutIsToldAndOlderReadingsThereCountForLess() throws InputException {
        List<Reading> second = new ArrayList<>(fan(0.05, 4, 8));
        second.add(exact(6, 0, 0.30));
        second.add(exact(6.3, 3, 0.30));
        List<Reading> first = fan(0, 3, 4.5, 6, 7.5, 9);
        FittedBottom bottom = TestPegs.fit(twice(first, second));
        assertEquals(1, bottom.changes().size());
        BottomChange change = bottom.changes().get(0);
        assertTrue(Math.hypot(change.xMetres(), change.yMetres() - 6) < 1, change.toString());
        assertEquals(0.25, change.deeperMetres(), 0.1);
        assertEquals(1, change.since());
        for (Sounding s : bottom.survey().soundings()) {
            double share =
                    BottomChange.share(Math.hypot(s.xMetres() - change.xMetres(), s.yMetres() - change.yMetres()));
            double expected = s.visit() == 0 ? share * Math.hypot(change.deeperMetres(), change.sdMetres()) : 0;
            assertEquals(expected, s.changeSdMetres(), 1e-9);
        }
        // Neighbours of the hole still pull the level a little.
        assertEquals(0.05, bottom.level(0).higherMetres(), 0.04);
        assertEquals(TestPegs.bottom(0, 6) + 0.30, bottom.at(0, 6).depthMetres(), 0.08);
        assertEquals(List.of(), TestPegs.fit(twice(first, fan(0.05, 4, 6, 8))).changes());
    }

    @Test
    void oneHoleIsToldOnceAndSinceTheVisitThatFoundIt() throws InputException {
        double[][] within = {{6, 0}, {6.3, 3}, {5.8, -4}, {6.4, -3}, {5.7, 4}, {6, 7}, {6, -7}};
        // The second visit looked at the place and found it as it was.
        List<Reading> second = List.of(exact(6, 0, 0.02), exact(4, 20, 0.02), exact(8, -20, 0.02), exact(5, 0, 0.02));
        for (double hole : new double[] {0.3, 0.6}) {
            for (int count = 2; count <= within.length; count++) {
                List<Reading> third = new ArrayList<>(fan(0, 2, 3, 4.5, 7.7, 9, 10.5));
                for (int i = 0; i < count; i++) {
                    third.add(exact(within[i][0], within[i][1], hole));
                }
                List<Visit> visits =
                        new ArrayList<>(twice(fan(0, 3, 4.5, 6, 7.5, 9), second).visits());
                visits.add(TestPegs.visit(OptionalDouble.empty(), third));
                List<BottomChange> changes =
                        TestPegs.fit(TestPegs.bend().withVisits(visits)).changes();

                assertEquals(1, changes.size(), hole + " by " + count + ": " + changes);
                assertEquals(2, changes.get(0).since());
            }
        }
    }

    @Test
    void whatChangedIsFoundOverItsGroundOnly() throws InputException {
        List<Reading> second = new ArrayList<>(fan(0.05, 4, 8));
        second.add(exact(6, 0, 0.30));
        second.add(exact(6.3, 3, 0.30));
        Survey survey = Survey.of(twice(fan(0, 3, 4.5, 6, 7.5, 9), second));
        ChangeField field = ChangeField.of(survey, 0, 1, Monitor.NONE);
        assertTrue(field.at(0, 6.1).isShown());
        assertEquals(0.25, field.at(0, 6.1).deeperMetres(), 0.1);
        ChangeField.Change elsewhere = field.at(-5, 6.1);
        assertTrue(!elsewhere.isShown(), elsewhere.toString());
        assertEquals(0.15, field.at(12, 1).sdMetres(), 0.01);
    }

    /** One water against another is what both are against a third, whichever visit is shown. */
    @Test
    void anyTwoVisitsAreToldAgainstEachOther() throws InputException {
        Peg peg = TestPegs.bend()
                .withVisits(List.of(
                        TestPegs.visit(OptionalDouble.empty(), fan(0, 3, 5, 7, 9)),
                        TestPegs.visit(OptionalDouble.empty(), fan(0.08, 3, 5, 7, 9)),
                        TestPegs.visit(OptionalDouble.empty(), fan(-0.05, 3, 5, 7, 9))));
        FittedBottom bottom = TestPegs.fit(peg);
        VisitLevel second = bottom.level(1, 0);
        assertEquals(0.08, second.higherMetres(), 0.004);
        assertTrue(second.sdMetres() > 0 && second.sdMetres() < 0.02, "sd " + second.sdMetres());
        assertEquals(-second.higherMetres(), bottom.level(0, 1).higherMetres(), 1e-12);
        assertEquals(bottom.level(0).higherMetres() - bottom.level(1).higherMetres(), second.higherMetres(), 1e-12);
        assertEquals(0, bottom.level(1, 1).sdMetres(), 1e-12);
    }
}
