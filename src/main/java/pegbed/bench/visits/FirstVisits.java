package pegbed.bench.visits;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pegbed.bench.practice.Fan;
import pegbed.bench.practice.GuidedRun;
import pegbed.bench.practice.PracticePeg;
import pegbed.bench.practice.SimulatedPlumbing;
import pegbed.geometry.PegWater;
import pegbed.guidance.GuidanceWeights;
import pegbed.model.InputException;
import pegbed.model.Peg;

/** The first visits that second visits come after: three fans, and what the guidance makes its user take. */
final class FirstVisits {
    private static final List<String> FANS = List.of("fan15", "stagger20", "fan30");
    private static final int[] FAN_COUNTS = {15, 20, 30};
    private static final List<String> GUIDED = List.of("guided30", "guided45");
    private static final int[] GUIDED_COUNTS = {30, 45};

    private final Map<String, List<Peg>> byPlan = new LinkedHashMap<>();

    private FirstVisits() {}

    /**
     * First visits to pegs. A fan is the table of the peg's folder; where there is none, it is plumbed.
     *
     * @param practice folder of the pegs' folders
     */
    static FirstVisits of(Path practice, List<PracticePeg> pegs) throws InputException {
        FirstVisits visits = new FirstVisits();
        for (int f = 0; f < FANS.size(); f++) {
            List<Peg> plumbed = new ArrayList<>();
            for (int p = 0; p < pegs.size(); p++) {
                Path table = practice.resolve(pegs.get(p).name()).resolve(FANS.get(f) + ".csv");
                plumbed.add(Files.exists(table) ? pegs.get(p).with(table) : fan(pegs.get(p), f, p));
            }
            visits.byPlan.put(FANS.get(f), plumbed);
        }
        GUIDED.forEach(plan -> visits.byPlan.put(plan, new ArrayList<>()));
        for (int p = 0; p < pegs.size(); p++) {
            GuidedRun run = GuidedRun.of(pegs.get(p), 1000L * p, GUIDED_COUNTS[1], GuidanceWeights.USUAL);
            for (int g = 0; g < GUIDED.size(); g++) {
                visits.byPlan.get(GUIDED.get(g)).add(run.pegs().get(GUIDED_COUNTS[g]));
            }
        }
        return visits;
    }

    private static Peg fan(PracticePeg peg, int fan, int number) throws InputException {
        SimulatedPlumbing plumbing = new SimulatedPlumbing(peg, 500L * number + FAN_COUNTS[fan]);
        return peg.with(Fan.of(PegWater.of(peg.empty()), FAN_COUNTS[fan], fan == 1).stream()
                .map(plumbing::read)
                .toList());
    }

    /** Names of the ways in which the first visit was plumbed. */
    List<String> plans() {
        return List.copyOf(byPlan.keySet());
    }

    /** The pegs after a first visit, in the order of the practice pegs. */
    List<Peg> after(String plan) {
        return byPlan.get(plan);
    }
}
