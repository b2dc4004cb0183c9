package pegbed.visits;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbed.findings.PegMap;
import pegbed.geometry.PegWater;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Reading;
import pegbed.model.Wishes;
import pegbed.surface.BottomModel;
import pegbed.surface.posterior.VisitLevel;
import pegbed.surface.survey.Survey;

/**
 * How well today's level was known after each of today's first readings. Each step fits the bottom to what was read up
 * to then; what was worked out for an earlier question is not worked out again. For one thread.
 */
public final class LevelByReadings {
    /** After this many readings the level is known about as well as it will be. */
    public static final int MAX_STEPS = 6;

    private Map<Peg, Optional<VisitLevel>> known = new LinkedHashMap<>();

    /**
     * The level after today's first reading, after the first two and so on.
     *
     * @param map of the peg
     * @param monitor stops the work
     * @return at most {@value #MAX_STEPS}; none at a first visit
     */
    public List<VisitLevel> of(PegMap map, Monitor monitor) {
        List<VisitLevel> levels = new ArrayList<>();
        Map<Peg, Optional<VisitLevel>> now = new LinkedHashMap<>();
        List<Reading> readings = map.peg().today().readings();
        for (int count = 1; count <= Math.min(MAX_STEPS, readings.size()) && isLater(map.peg()); count++) {
            monitor.check();
            List<Reading> first = readings.subList(0, count);
            Peg then = map.peg().withWishes(Wishes.NONE).withToday(visit -> visit.withReadings(first));
            Optional<VisitLevel> level = known.containsKey(then) ? known.get(then) : level(then, map.water(), monitor);
            now.put(then, level);
            level.ifPresent(levels::add);
        }
        known = now;
        return levels;
    }

    private static boolean isLater(Peg peg) {
        return peg.visits().size() > 1;
    }

    private static Optional<VisitLevel> level(Peg peg, PegWater water, Monitor monitor) {
        return LevelAnswer.against(peg, BottomModel.fit(Survey.of(peg, water), monitor));
    }
}
