package pegbed.analysis;

import java.util.ArrayList;
import java.util.List;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Reading;

/**
 * When another reading would hardly change the lines: when the best next reading is expected to gain less than {@value
 * #LEAST_GAIN} (a chance of one in fourteen of winning a flat spot, or 1 cm at the deepest place), now and before the last
 * reading too.
 */
public final class StopRule {
    /** The least gain that is worth a reading, in the unit of {@link NextReading#gain}. */
    public static final double LEAST_GAIN = 0.07;

    private StopRule() {}

    /**
     * Whether to stop.
     *
     * @param gain of the best next reading now; NaN while it is not reckoned
     */
    static boolean stops(PegMap map, double gain, Blend blend) throws InputException {
        List<Reading> today = map.peg().today().readings();
        if (!(gain < LEAST_GAIN) || today.isEmpty() || map.peg().readings().size() <= blend.spreadUntil()) {
            return false;
        }
        List<Reading> fewer = new ArrayList<>(today);
        fewer.remove(fewer.size() - 1);
        Peg before = map.peg().withToday(visit -> visit.withReadings(fewer));
        PegMap earlier = PegMap.of(before, Monitor.NONE);
        List<Candidate> open = Candidates.of(before, earlier.water()).open();
        return Appraisal.of(earlier, open, blend).most() < LEAST_GAIN;
    }
}
