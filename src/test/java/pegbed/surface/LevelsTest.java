package pegbed.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Precision;
import pegbed.model.Reading;
import pegbed.model.Visit;
import pegbed.surface.posterior.ReadingCheck;
import pegbed.surface.survey.Levels;
import pegbed.surface.survey.Sounding;

class LevelsTest {
    private static final double FREE = 0.12 * 0.12;
    private static final double BOARD = 0.01 * 0.01;
    private static final double EXACT = 1e-15;

    /** Visits by their board measures; NaN where the board was not measured. */
    private static Levels levels(int shown, double... boards) {
        List<Visit> visits = Arrays.stream(boards)
                .mapToObj(
                        b -> TestPegs.visit(Double.isNaN(b) ? OptionalDouble.empty() : OptionalDouble.of(b), List.of()))
                .toList();
        return Levels.of(visits, shown);
    }

    private static void check(Levels levels, double[] mean, double[][] covariance) {
        for (int a = 0; a < mean.length; a++) {
            assertEquals(mean[a], levels.mean(a), EXACT, "mean of visit " + a);
            for (int b = 0; b < mean.length; b++) {
                assertEquals(covariance[a][b], levels.covariance(a, b), EXACT, "covariance of " + a + " and " + b);
            }
        }
    }

    @Test
    void oneVisitIsItsOwnLevel() {
        check(levels(0, Double.NaN), new double[] {0}, new double[][] {{0}});
        check(levels(0, 0.4), new double[] {0}, new double[][] {{0}});
    }

    @Test
    void twoVisitsWithoutBoards() {
        check(levels(1, Double.NaN, Double.NaN), new double[] {0, 0}, new double[][] {{FREE, 0}, {0, 0}});
        check(levels(0, Double.NaN, Double.NaN), new double[] {0, 0}, new double[][] {{0, 0}, {0, FREE}});
    }

    /** 30 cm down to the water, then 38 cm: the water fell by 8 cm and everything reads 8 cm shallower. */
    @Test
    void twoVisitsWithBoards() {
        check(levels(1, 0.30, 0.38), new double[] {0.08, 0}, new double[][] {{BOARD, 0}, {0, 0}});
        check(levels(0, 0.30, 0.38), new double[] {0, -0.08}, new double[][] {{0, 0}, {0, BOARD}});
    }

    @Test
    void oneBoardOfTwoTellsNothing() {
        for (double[] boards : new double[][] {{0.3, Double.NaN}, {Double.NaN, 0.3}}) {
            Levels levels = levels(1, boards);
            assertEquals(0, levels.mean(0), EXACT);
            // But for what one measure alone is unsure of.
            assertEquals(FREE, levels.covariance(0, 0), BOARD);
        }
    }

    /** Offsets of the first two against the third share the third's own. */
    @Test
    void threeVisitsWithoutBoards() {
        double no = Double.NaN;
        check(levels(2, no, no, no), new double[] {0, 0, 0}, new double[][] {
            {FREE, FREE, 0}, {FREE, 2 * FREE, 0}, {0, 0, 0}
        });
    }

    /** Every difference of two boards is known to 1 cm; two differences with one board in common share half of that. */
    @Test
    void threeVisitsWithBoards() {
        check(levels(2, 0.30, 0.38, 0.25), new double[] {-0.05, -0.13, 0}, new double[][] {
            {BOARD, BOARD / 2, 0}, {BOARD / 2, BOARD, 0}, {0, 0, 0}
        });
        check(levels(0, 0.30, 0.38, 0.25), new double[] {0, -0.08, 0.05}, new double[][] {
            {0, 0, 0}, {0, BOARD, BOARD / 2}, {0, BOARD / 2, BOARD}
        });
    }

    /** Boards at the second and third visit only: the first is free, and expected at the level of the second. */
    @Test
    void threeVisitsWithTheFirstBoardMissing() {
        check(levels(2, Double.NaN, 0.38, 0.25), new double[] {-0.13, -0.13, 0}, new double[][] {
            {FREE + BOARD / 2, BOARD / 2, 0}, {BOARD / 2, BOARD, 0}, {0, 0, 0}
        });
    }

    /** Placed exactly, a second visit's readings lie off the first's by what the water fell. */
    private static Peg twice(double fall, OptionalDouble first, OptionalDouble second) {
        List<Reading> before = new ArrayList<>();
        List<Reading> after = new ArrayList<>();
        for (double angle = -50; angle <= 50; angle += 25) {
            for (double distance : new double[] {3, 6, 9}) {
                Place place = Place.polar(distance, angle);
                double depth = TestPegs.bottom(place.xMetres(), place.yMetres());
                before.add(exact(Reading.of(distance, angle, depth)));
                after.add(exact(Reading.of(distance, angle, depth - fall)));
            }
        }
        return TestPegs.bend().withVisits(List.of(TestPegs.visit(first, before), TestPegs.visit(second, after)));
    }

    private static Reading exact(Reading r) {
        return new Reading(
                r.typed(), r.place(), new Precision(0, 0), r.depthMetres(), r.bottom(), r.note(), r.time(), r.extras());
    }

    private static void recovers(Peg peg, double fall) throws InputException {
        FittedBottom bottom = TestPegs.fit(peg);
        for (ReadingCheck check : bottom.readings()) {
            Sounding s = bottom.survey().soundings().get(check.sounding());
            assertEquals(0, check.residualMetres(), 0.012);
            // Told at the second visit's level, whichever visit the reading is of.
            double shown = s.depthMetres() - (s.visit() == 0 ? fall : 0);
            assertEquals(shown, bottom.at(s.xMetres(), s.yMetres()).depthMetres(), 0.012);
        }
    }

    @Test
    void aSecondVisitIsBroughtToItsLevelByTheBoard() throws InputException {
        recovers(twice(0.08, OptionalDouble.of(0.30), OptionalDouble.of(0.38)), 0.08);
        recovers(twice(-0.20, OptionalDouble.of(0.30), OptionalDouble.of(0.10)), -0.20);
    }

    @Test
    void aSecondVisitIsBroughtToItsLevelByItsReadingsAlone() throws InputException {
        recovers(twice(0.08, OptionalDouble.empty(), OptionalDouble.empty()), 0.08);
    }

    @Test
    void anotherVisitLeavesTheLevelOfTheShownOneAlone() throws InputException {
        Peg both = twice(0.08, OptionalDouble.of(0.30), OptionalDouble.of(0.38));
        Peg second = both.withVisits(both.visits().subList(1, 2));
        double apart = TestPegs.fit(both).at(0, 6).depthMetres()
                - TestPegs.fit(second).at(0, 6).depthMetres();
        assertTrue(Math.abs(apart) < 0.02, "differs by " + apart);
    }
}
