package pegbed.bench.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import pegbed.findings.PegMap;
import pegbed.guidance.Guidance;
import pegbed.guidance.GuidanceWeights;
import pegbed.guidance.NextReading;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;

/**
 * One simulated peg plumbed as the guidance says.
 *
 * @param pegs the peg after 0, 1, 2, … readings
 * @param stopped number of readings at which it first said stop; empty where it never did
 */
public record GuidedRun(List<Peg> pegs, OptionalInt stopped) {
    public static GuidedRun of(PracticePeg peg, long seed, int readings, GuidanceWeights blend) throws InputException {
        SimulatedPlumbing plumbing = new SimulatedPlumbing(peg, seed);
        List<Peg> pegs = new ArrayList<>();
        pegs.add(peg.empty());
        OptionalInt stopped = OptionalInt.empty();
        for (int n = 0; n < readings; n++) {
            NextReading next = Guidance.next(PegMap.of(pegs.get(n), Monitor.NONE), blend);
            if (next.stop() && stopped.isEmpty()) {
                stopped = OptionalInt.of(n);
            }
            pegs.add(pegs.get(n).withReading(plumbing.read(next.place())));
        }
        return new GuidedRun(List.copyOf(pegs), stopped);
    }
}
