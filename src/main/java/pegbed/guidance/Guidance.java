package pegbed.guidance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import pegbed.findings.PegMap;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.surface.Lookahead;
import pegbed.surface.posterior.ReadingCheck;
import pegbed.visits.LevelAnswer;

/**
 * Which reading to take next: at a later visit first what tells the level of the day; an opening of seven; then what
 * lowers the doubt of the whole map; then what finds deeper water, because half its depth is what is sought afterwards;
 * then two of three for the deepest place and the flat spots and one for the map. The same peg gets the same answer.
 */
public final class Guidance {
    /** A gain below this is none. */
    private static final double NOTHING = 1e-9;

    private final PegMap map;
    private final GuidanceWeights blend;
    private final List<Candidate> open;

    private Guidance(PegMap map, GuidanceWeights blend, List<Candidate> open) {
        this.map = map;
        this.blend = blend;
        this.open = open;
    }

    /** A reading so near another was taken at the same place again, metres. */
    private static final double AGAIN_WITHIN_METRES = 0.6;

    /**
     * The reading to take next.
     *
     * @param map the peg with all its readings so far, none at all included
     * @throws InputException if there is no place left to plumb
     */
    public static NextReading next(PegMap map) throws InputException {
        return next(map, GuidanceWeights.USUAL);
    }

    /** As {@link #next(PegMap)} with another blend. */
    public static NextReading next(PegMap map, GuidanceWeights blend) throws InputException {
        Optional<NextReading> level = level(map);
        if (level.isPresent()) {
            return level.get();
        }
        Candidates candidates = Candidates.of(map.peg(), map.water());
        Optional<Opening.Step> opening =
                Opening.next(candidates.all(), map.peg().readings(), map.water().hasFarBank());
        if (opening.isPresent()) {
            return new NextReading(
                    opening.get().candidate().place(),
                    NextReading.Purpose.OPENING,
                    new Reason.OpeningPlace(opening.get().question()),
                    Double.NaN,
                    false);
        }
        Optional<NextReading> again = again(map);
        if (again.isPresent()) {
            return again.get();
        }
        List<Candidate> open = candidates.open();
        if (open.isEmpty()) {
            throw new InputException("There is no place left to plumb in this water; every one has been read twice.");
        }
        return new Guidance(map, blend, open).next();
    }

    /** At a later visit its level, while it is not known well and the first readings of the day are still to come. */
    private static Optional<NextReading> level(PegMap map) {
        if (map.peg().visits().size() < 2 || map.peg().today().readings().size() >= LevelAnswer.MAX_CHECKS) {
            return Optional.empty();
        }
        return LevelAnswer.of(map).checks().stream()
                .findFirst()
                .map(check -> new NextReading(
                        check.place(),
                        NextReading.Purpose.LEVEL,
                        new Reason.LevelOfDay(check.depthMetres(), check.sdAfterMetres()),
                        Double.NaN,
                        false));
    }

    /** The first reading that the others contradict and that was not taken again. */
    private static Optional<NextReading> again(PegMap map) {
        List<Reading> readings = map.peg().readings();
        for (ReadingCheck check : map.suspicious()) {
            if (check.sounding() < readings.size()) {
                Place place = readings.get(check.sounding()).place();
                boolean repeated = readings.subList(check.sounding() + 1, readings.size()).stream()
                        .anyMatch(reading -> reading.place().distanceTo(place) < AGAIN_WITHIN_METRES);
                if (!repeated) {
                    return Optional.of(
                            new NextReading(place, NextReading.Purpose.AGAIN, Reasons.again(check), Double.NaN, false));
                }
            }
        }
        return Optional.empty();
    }

    /**
     * The next few readings, each planned as if those before it came out as expected.
     *
     * @param count how many, 1 or more; fewer come back where the places run out
     * @throws InputException if there is no place left to plumb at all
     */
    public static List<NextReading> plan(PegMap map, int count, Monitor monitor) throws InputException {
        List<NextReading> plan = new ArrayList<>();
        PegMap ahead = map;
        plan.add(next(ahead));
        while (plan.size() < count) {
            monitor.check();
            monitor.progress((double) plan.size() / count);
            Place place = plan.get(plan.size() - 1).place();
            double expected = Math.min(
                    Reading.DEEPEST_METRES,
                    Math.max(
                            0,
                            ahead.bottom().at(place.xMetres(), place.yMetres()).depthMetres()));
            Peg peg = ahead.peg().withReading(Reading.of(place.distanceMetres(), place.angleDegrees(), expected));
            ahead = PegMap.of(peg, map.bottom().neighbours(), monitor);
            if (Candidates.of(peg, ahead.water()).open().isEmpty()) {
                return plan;
            }
            plan.add(next(ahead));
        }
        return plan;
    }

    private NextReading next() throws InputException {
        int readings = map.peg().readings().size();
        if (readings < blend.spreadUntil()) {
            return forMap(Double.NaN, false);
        }
        if (readings < blend.deepestUntil()) {
            ValueOfInformation deepest = ValueOfInformation.ofDeepest(map, open, blend);
            if (deepest.max() >= blend.minDeepestGain()) {
                Place place = open.get(nearest(deepest.total())).place();
                return new NextReading(
                        place, NextReading.Purpose.DEEPEST, Reasons.deepest(map, place), Double.NaN, false);
            }
        }
        ValueOfInformation appraisal = ValueOfInformation.of(map, open, blend);
        double max = appraisal.max();
        boolean stop = readings > blend.spreadUntil() && StopRule.stops(max, appraisal::maxBefore);
        boolean mapsTurn = blend.mapEvery() > 0
                && Math.floorMod(readings - blend.deepestUntil(), blend.mapEvery()) == blend.mapEvery() - 1;
        if (mapsTurn || max < NOTHING) {
            return forMap(max, stop);
        }
        int best = nearest(appraisal.total());
        Place place = open.get(best).place();
        Decision choice = appraisal.dominant(best);
        return choice.zone().isEmpty()
                ? new NextReading(place, NextReading.Purpose.DEEPEST, Reasons.deepest(map, place), max, stop)
                : new NextReading(
                        place,
                        NextReading.Purpose.FLAT,
                        Reasons.flat(map, choice, appraisal.question(best)),
                        max,
                        stop);
    }

    private NextReading forMap(double gain, boolean stop) {
        int visit = map.peg().visits().size() - 1;
        Lookahead lookahead = Lookahead.of(
                map.bottom(),
                open.stream().map(candidate -> candidate.planned(visit)).toList());
        Place place =
                open.get(nearest(VarianceReduction.of(map, lookahead, blend))).place();
        return new NextReading(place, NextReading.Purpose.MAP, Reasons.map(map, place), gain, stop);
    }

    /** Of those whose gain is almost the greatest, the one that is reached soonest from the last reading. */
    private int nearest(double[] gains) {
        double max = Arrays.stream(gains).max().orElse(0);
        Peg peg = map.peg();
        List<Reading> today = peg.today().readings();
        Place from =
                today.isEmpty() ? new Place(0, 0) : today.get(today.size() - 1).place();
        int best = -1;
        double min = Double.POSITIVE_INFINITY;
        for (int c = 0; c < gains.length; c++) {
            if (gains[c] >= (1 - blend.tie()) * max) {
                Candidate candidate = open.get(c);
                double seconds = MoveCost.seconds(
                        peg.pole(),
                        from.distanceMetres(),
                        from.angleDegrees(),
                        candidate.distanceMetres(),
                        candidate.angleDegrees());
                if (seconds < min - 1e-9 || (seconds < min + 1e-9 && gains[c] > gains[best])) {
                    min = seconds;
                    best = c;
                }
            }
        }
        return best;
    }
}
