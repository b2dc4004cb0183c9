package pegbed.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import pegbed.model.Peg;
import pegbed.model.Visit;
import pegbed.surface.FittedBottom;
import pegbed.surface.posterior.VisitLevel;

/**
 * A board measure that a visit's readings contradict, as a misread tape or a board that was moved does. The visit's
 * level is taken from its readings alone then.
 *
 * @param visit index of the visit
 * @param earlier index of an earlier visit whose board was measured
 * @param byBoardMetres how much higher the water stood than at the earlier visit by the two measures, metres
 * @param byReadings the same by the readings
 */
public record BoardDisagreement(int visit, int earlier, double byBoardMetres, VisitLevel byReadings) {
    /** A smaller difference is no slip, metres (common practice: a board is read to within an inch or two). */
    private static final double LEAST_METRES = 0.15;

    private static final double STANDARD_DEVIATIONS = 4;

    /** Fewer readings than this don't contradict a measure. */
    private static final int FEWEST_READINGS = 2;

    /** A fitted bottom with the disagreement that it allows for. */
    record Allowed(FittedBottom bottom, Optional<BoardDisagreement> disagreement) {}

    /**
     * Looks whether the latest board measure is contradicted, where the bottom fitted with it looks odd: many readings
     * suspicious, or the bottom changed.
     *
     * @param bottom fitted to the peg as it is
     * @param fit fits the bottom of a peg
     */
    static Allowed in(Peg peg, FittedBottom bottom, Function<Peg, FittedBottom> fit) {
        List<Visit> visits = peg.visits();
        int visit = visits.size() - 1;
        int earlier = visit - 1;
        while (earlier >= 0 && visits.get(earlier).boardToWaterMetres().isEmpty()) {
            earlier--;
        }
        OptionalDouble board = peg.today().boardToWaterMetres();
        if (board.isEmpty() || earlier < 0 || peg.today().readings().size() < FEWEST_READINGS || !isOdd(bottom)) {
            return new Allowed(bottom, Optional.empty());
        }
        FittedBottom without = fit.apply(peg.withToday(today -> today.withBoard(OptionalDouble.empty())));
        VisitLevel byReadings = without.level(visit, earlier);
        double byBoard = visits.get(earlier).boardToWaterMetres().getAsDouble() - board.getAsDouble();
        double difference = Math.abs(byReadings.higherMetres() - byBoard);
        return byReadings.readings() >= FEWEST_READINGS
                        && difference > LEAST_METRES
                        && difference > STANDARD_DEVIATIONS * byReadings.sdMetres()
                ? new Allowed(without, Optional.of(new BoardDisagreement(visit, earlier, byBoard, byReadings)))
                : new Allowed(bottom, Optional.empty());
    }

    private static boolean isOdd(FittedBottom bottom) {
        long suspicious = bottom.readings().stream()
                .filter(check -> check.wrongProbability() > PegMap.SUSPICIOUS)
                .count();
        return suspicious >= FEWEST_READINGS || !bottom.changes().isEmpty();
    }

    /** The peg without the measure that is contradicted. */
    static Peg leftOut(Peg peg, Optional<BoardDisagreement> disagreement) {
        if (disagreement.isEmpty() || disagreement.get().visit() >= peg.visits().size()) {
            return peg;
        }
        int visit = disagreement.get().visit();
        List<Visit> visits = new ArrayList<>(peg.visits());
        visits.set(visit, visits.get(visit).withBoard(OptionalDouble.empty()));
        return peg.withVisits(visits);
    }
}
