package pegbed.guidance;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pegbed.findings.PegMap;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.surface.FittedBottom;
import pegbed.surface.posterior.Prediction;
import pegbed.surface.survey.Sounding;

/**
 * Two readings that cross the pattern of those before, to test the system: on rough or sloping ground an error of
 * position shows as an error of depth (cross-lines: NOAA Field Procedures Manual). One lies where the bottom falls away
 * outward and one where it rises, so that a wrong distance and a wrong level can be distinguished.
 *
 * @param first where to take the one
 * @param second where to take the other
 */
public record CheckLine(Place first, Place second) {
    /** With this note a reading is a check reading: it tests the map of the others. */
    public static final String NOTE = "check line";

    /** From so many readings there is a pattern to cross. */
    public static final int OFFERED_FROM = 15;

    /** Nearer than this to a reading a place does not cross the pattern, metres. */
    private static final double CLEAR_METRES = 1.0;

    /** How far apart the two are at least, metres. */
    private static final double APART_METRES = 2.0;

    /** On ground less steep than this a wrong position hardly shows. */
    private static final double MIN_SLOPE = 0.1;

    /** The two readings; empty before there is a pattern, once they were taken, or where no slope can be crossed. */
    public static Optional<CheckLine> offer(PegMap map) {
        List<Reading> readings = map.peg().readings();
        if (readings.size() < OFFERED_FROM || readings.stream().anyMatch(CheckLine::isCheck)) {
            return Optional.empty();
        }
        List<Candidate> clear = Candidates.of(map.peg(), map.water()).all().stream()
                .filter(candidate ->
                        readings.stream().noneMatch(r -> r.place().distanceTo(candidate.place()) < CLEAR_METRES))
                .toList();
        Optional<Candidate> falling = steepest(map, clear, 1);
        Optional<Candidate> other = falling.flatMap(first -> {
            List<Candidate> apart = clear.stream()
                    .filter(c -> c.place().distanceTo(first.place()) >= APART_METRES)
                    .toList();
            // Where nothing rises outward, as on a pond, a second place that falls must do.
            return steepest(map, apart, -1).or(() -> steepest(map, apart, 1));
        });
        return other.map(second -> new CheckLine(falling.get().place(), second.place()));
    }

    /** Whether a reading was taken as a check. */
    public static boolean isCheck(Reading reading) {
        return reading.note().toLowerCase(Locale.ROOT).startsWith(NOTE);
    }

    /** The place at which a wrong distance shows best beside the doubt there. */
    private static Optional<Candidate> steepest(PegMap map, List<Candidate> candidates, int sign) {
        return candidates.stream()
                .filter(candidate -> sign * outward(map.bottom(), candidate.place()) >= MIN_SLOPE)
                .max(Comparator.comparingDouble(candidate -> shows(map.bottom(), candidate)));
    }

    private static double shows(FittedBottom bottom, Candidate candidate) {
        Place place = candidate.place();
        double sd = bottom.at(place.xMetres(), place.yMetres()).sdMetres();
        return Math.abs(outward(bottom, place)) / Math.hypot(sd, 0.05);
    }

    /** Change of depth per metre outward. */
    private static double outward(FittedBottom bottom, Place place) {
        Prediction p = bottom.at(place.xMetres(), place.yMetres());
        double r = place.distanceMetres();
        return r == 0 ? 0 : (p.slopeX() * place.xMetres() + p.slopeY() * place.yMetres()) / r;
    }

    /**
     * What the check readings of a peg show of the map of the others; empty where there are fewer than two.
     *
     * @throws InputException if the banks can't be used
     */
    public static Optional<CheckAnswer> answer(Peg peg, Monitor monitor) throws InputException {
        List<Reading> checks =
                peg.readings().stream().filter(CheckLine::isCheck).toList();
        if (checks.size() < 2) {
            return Optional.empty();
        }
        Peg others = peg.withVisits(peg.visits().stream()
                .map(visit -> visit.withReadings(
                        visit.readings().stream().filter(r -> !isCheck(r)).toList()))
                .toList());
        FittedBottom bottom = PegMap.of(others, monitor).bottom();
        return Optional.of(CheckAnswer.of(
                checks.stream().map(check -> difference(bottom, check)).toList()));
    }

    private static CheckAnswer.Difference difference(FittedBottom bottom, Reading check) {
        double x = check.place().xMetres();
        double y = check.place().yMetres();
        Sounding sounding = Sounding.of(check, 0);
        Prediction p = bottom.at(x, y);
        double variance = p.sdMetres() * p.sdMetres() + bottom.readingVariance(sounding);
        return new CheckAnswer.Difference(
                check.depthMetres() - p.depthMetres(), Math.sqrt(variance), outward(bottom, check.place()));
    }
}
