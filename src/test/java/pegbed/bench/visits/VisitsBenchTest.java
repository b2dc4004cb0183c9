package pegbed.bench.visits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.bench.practice.Fan;
import pegbed.bench.practice.MadeBottom;
import pegbed.bench.practice.MadePegs;
import pegbed.bench.practice.PracticePeg;
import pegbed.bench.practice.SimulatedPlumbing;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Reading;
import pegbed.surface.BottomModel;
import pegbed.surface.FittedBottom;
import pegbed.surface.survey.Survey;

/** On an invented peg. */
class VisitsBenchTest {
    @TempDir
    private Path folder;

    private List<PracticePeg> pegs() throws IOException, InputException {
        MadePegs.write(folder.resolve("made"), new MadeBottom(new Random(11), false));
        return PracticePeg.all(folder);
    }

    @Test
    void firstVisitsArePlumbedOnceAndTablesAreTakenAsTheyAre() throws IOException, InputException {
        List<PracticePeg> pegs = pegs();
        Files.writeString(folder.resolve("made").resolve("fan15.csv"), "distance_m,angle_deg,depth_m\n5,10,1.25\n");
        FirstVisits visits = FirstVisits.of(folder, pegs);
        assertEquals(List.of("fan15", "stagger20", "fan30", "guided30", "guided45"), visits.plans());
        assertEquals(1, visits.after("fan15").get(0).readings().size());
        assertEquals(20, visits.after("stagger20").get(0).readings().size());
        assertEquals(30, visits.after("fan30").get(0).readings().size());
        List<Reading> guided = visits.after("guided45").get(0).readings();
        assertEquals(45, guided.size());
        assertEquals(guided.subList(0, 30), visits.after("guided30").get(0).readings());
    }

    /**
     * A place is reported less often than with its place known, and more often than by chance; better known, more
     * often.
     */
    @Test
    void whatIsBetterKnownHasAHigherCeiling() throws IOException, InputException {
        PracticePeg peg = pegs().get(0);
        double[] known = new double[2];
        for (int dense = 0; dense < 2; dense++) {
            SimulatedPlumbing plumbing = new SimulatedPlumbing(peg, 3);
            Peg first = peg.with(Fan.of(pegbed.geometry.PegWater.of(peg.empty()), dense == 0 ? 15 : 45, true).stream()
                    .map(plumbing::read)
                    .toList());
            FittedBottom before = BottomModel.fit(Survey.of(first), Monitor.NONE);
            List<Double> with = new ArrayList<>();
            List<Double> without = new ArrayList<>();
            Random chance = new Random(4);
            for (int run = 0; run < 100; run++) {
                List<Reading> readings = List.of(
                        Reading.of(4, -30, 1),
                        Reading.of(6, 30, 1),
                        Reading.of(5, 15, 1),
                        Reading.of(6, 48, 1),
                        Reading.of(6.4, 50, 1));
                ChangeCeiling.Reported reported = new ChangeCeiling(peg, before, 0.15, 1.5).of(readings, chance);
                known[dense] = reported.known();
                with.addAll(reported.with());
                without.addAll(reported.without());
            }
            double found = share(ChangeCeiling.reported(with, without));
            assertTrue(found <= known[dense] + 0.05 && found >= 0.05, found + " beside " + known[dense]);
            assertEquals(0.05, share(ChangeCeiling.reported(without, without)), 0.01);
        }
        assertTrue(known[1] > known[0], known[0] + " " + known[1]);
        assertTrue(known[1] <= 1);
    }

    private static double share(List<Double> reported) {
        return (double) Collections.frequency(reported, 1.0) / reported.size();
    }
}
