package pegbed.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Precision;
import pegbed.surface.grid.GridFrame;
import pegbed.surface.posterior.Disc;
import pegbed.surface.posterior.Prediction;
import pegbed.surface.survey.Levels;
import pegbed.surface.survey.Sounding;
import pegbed.surface.survey.Survey;

/**
 * What was foretold against what comes out once the reading is taken. Places are exact, so that nothing else changes.
 */
class LookaheadTest {
    private static final Precision EXACT = new Precision(0, 0);

    private static Sounding sounding(double x, double y, double depth) {
        return new Sounding(x, y, depth, 0.02, EXACT, 0);
    }

    private static List<Sounding> soundings() {
        List<Sounding> soundings = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            double x = (i * 5) % 9 - 4;
            double y = 2 + i;
            soundings.add(sounding(x, y, 1 + 0.1 * Math.sin(x) + 0.05 * y));
        }
        return soundings;
    }

    @Test
    void theMeanMovesAndTheDoubtFallsAsForetold() {
        FittedBottom before = BottomModel.fit(Survey.open(soundings()), Monitor.NONE);
        Sounding planned = sounding(1.3, 4.2, 0);
        Lookahead lookahead = Lookahead.of(before, List.of(planned));
        double[] x = {1.0, 2.5, -3};
        double[] y = {4.5, 6, 9};
        double[][] moves = lookahead.depths(x, y);

        double read = before.at(1.3, 4.2).depthMetres() + lookahead.spreadMetres(0);
        List<Sounding> more = soundings();
        more.add(sounding(1.3, 4.2, read));
        FittedBottom after = BottomModel.fit(Survey.open(more), Monitor.NONE);

        for (int i = 0; i < x.length; i++) {
            Prediction one = before.at(x[i], y[i]);
            Prediction other = after.at(x[i], y[i]);
            assertEquals(one.depthMetres() + moves[i][0], other.depthMetres(), 1e-4);
            assertEquals(variance(one) - moves[i][0] * moves[i][0], variance(other), 1e-4, "variance at " + x[i]);
        }
        assertTrue(moves[0][0] > moves[2][0], "nearer places move more");
    }

    /** The model's own in open water, without what an unsure place adds. */
    private static double variance(Prediction p) {
        return p.sdMetres() * p.sdMetres() - FittedBottom.placingVariance(p.slopeX(), p.slopeY());
    }

    @Test
    void discsMoveAsForetold() {
        FittedBottom before = BottomModel.fit(Survey.open(soundings()), Monitor.NONE);
        GridFrame frame = new GridFrame(-2, 2, Disc.CELL_METRES, 20, 20);
        int node = frame.index(10, 9);
        Lookahead lookahead = Lookahead.of(before, List.of(sounding(1.3, 4.2, 0)));
        double[][] moves = lookahead.discs(frame, new int[] {node})[0];

        List<Sounding> more = soundings();
        more.add(sounding(1.3, 4.2, before.at(1.3, 4.2).depthMetres() - lookahead.spreadMetres(0)));
        Disc seen = BottomModel.fit(Survey.open(more), Monitor.NONE).disc(frame.x(10), frame.y(9));
        Disc foretold = before.disc(frame.x(10), frame.y(9)).after(moves[0][0], moves[1][0], moves[2][0], -1);

        assertEquals(foretold.depthMetres(), seen.depthMetres(), 1e-4);
        assertEquals(foretold.slopeX(), seen.slopeX(), 1e-4);
        assertEquals(foretold.slopeY(), seen.slopeY(), 1e-4);
        assertEquals(foretold.varD(), seen.varD(), 1e-4);
        assertEquals(foretold.covDX(), seen.covDX(), 1e-4);
        assertEquals(foretold.varY(), seen.varY(), 1e-4);
    }

    @Test
    void anUnsurePlaceOnASlopeTellsLess() {
        List<Sounding> slope = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            slope.add(sounding(i % 3 - 1, 2 + 0.7 * i, 0.6 + 0.35 * i));
        }
        FittedBottom bottom = BottomModel.fit(Survey.open(slope), Monitor.NONE);
        Lookahead lookahead = Lookahead.of(
                bottom, List.of(sounding(0.3, 5, 0), new Sounding(0.3, 5, 0, 0.02, new Precision(0.3, 3), 0)));
        double[][] moves = lookahead.depths(new double[] {0.3}, new double[] {5});

        assertTrue(moves[0][1] < moves[0][0]);
        assertTrue(lookahead.spreadMetres(1) > lookahead.spreadMetres(0));
    }

    /** Of each structure exactly, of the mixture nearly: its weights would be a little others without the reading. */
    @Test
    void aReadingThatWasTakenMovedWhatLeavingItOutMovesBack() throws InputException {
        List<Sounding> soundings = soundings();
        int last = soundings.size() - 1;
        Survey all = new Survey(soundings, Survey.of(TestPegs.bend()).water(), Levels.same(1));
        FittedBottom with = BottomModel.fitExactly(all, NeighbouringPegs.NONE, Monitor.NONE);
        Survey fewer = new Survey(soundings.subList(0, last), all.water(), Levels.same(1));
        for (StructureFit fit : with.fits()) {
            checkTaken(TestPegs.alone(fit), fewer, last, 1e-3, 1e-4);
        }
        assertTrue(with.counting().length > 1, "a mixture");
        checkTaken(with, fewer, last, 0.01, 0.005);
    }

    private static void checkTaken(FittedBottom with, Survey fewer, int last, double metres, double squareMetres) {
        FittedBottom without = TestPegs.refitted(with, fewer);
        Lookahead lookahead = Lookahead.of(with, List.of(sounding(1.3, 4.2, 0)))
                .withTaken(last)
                .orElseThrow();
        double[][] moves = lookahead.depths(new double[] {0.4}, new double[] {8.5});
        Prediction before = without.at(0.4, 8.5);
        Prediction after = with.at(0.4, 8.5);
        double outcome = lookahead.outcome(last);

        String which = with.fits().get(0).structure() + " of " + with.counting().length;
        assertEquals(after.depthMetres() - before.depthMetres(), moves[0][1] * outcome, metres, which);
        assertEquals(variance(before) - variance(after), moves[0][1] * moves[0][1], squareMetres, which);
        assertTrue(Math.abs(moves[0][1] * outcome) > 0.005, which + ": it moved something");
    }

    /** Where it is planned a reading moves what is expected by the variance there over its spread. */
    @Test
    void aPlannedReadingOfAMixtureMovesByTheMixturesCovariance() throws InputException {
        FittedBottom bottom = TestPegs.fit(TestPegs.with(TestPegs.bend(), TestPegs.fan(12, 3)));
        assertTrue(bottom.counting().length > 1, "a mixture");
        Sounding planned = sounding(1.3, 6.2, 0);
        Lookahead lookahead = Lookahead.of(bottom, List.of(planned));
        double mean = 0;
        double square = 0;
        for (int s : bottom.counting()) {
            double[] depth = new double[1];
            double[] own = new double[1];
            bottom.fits().get(s).predict(new double[] {1.3}, new double[] {6.2}, depth, own);
            mean += bottom.weight(s) * depth[0];
            square += bottom.weight(s) * (own[0] + depth[0] * depth[0]);
        }
        double variance = square - mean * mean;
        double spread = Math.sqrt(variance + bottom.readingVariance(planned));
        assertEquals(spread, lookahead.spreadMetres(0), 1e-9);
        assertEquals(variance / spread, lookahead.depths(new double[] {1.3}, new double[] {6.2})[0][0], 1e-9);
    }
}
