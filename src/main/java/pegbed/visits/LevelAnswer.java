package pegbed.visits;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbed.findings.BoardDisagreement;
import pegbed.findings.PegMap;
import pegbed.geometry.PegWater;
import pegbed.geometry.Shapes;
import pegbed.model.Mark;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Precision;
import pegbed.surface.FittedBottom;
import pegbed.surface.LevelChecks;
import pegbed.surface.LevelChecks.LevelCheck;
import pegbed.surface.posterior.BottomChange;
import pegbed.surface.posterior.VisitLevel;
import pegbed.surface.survey.Sounding;

/**
 * Today's level of the water: against every earlier visit, what would determine it better, and where the bottom has
 * changed.
 *
 * @param levels today against every earlier visit, in order of time; empty at a first visit
 * @param against the earlier visit that counts: the one with the most readings still in use; empty if none has any
 * @param checks readings to take for the level, best first; none where it is known well enough
 * @param changes where the bottom has changed between visits, the surest first
 * @param board today's board measure, if the readings contradict it
 */
public record LevelAnswer(
        List<VisitLevel> levels,
        Optional<VisitLevel> against,
        List<CheckReading> checks,
        List<BottomChange> changes,
        Optional<BoardDisagreement> board) {
    /** A level known as well as this needs no check: about what a careful reading repeats within, metres. */
    public static final double KNOWN_SD_METRES = 0.015;

    /** How many checks are proposed at most. */
    public static final int MAX_CHECKS = 3;

    /** Checks lie so far apart that one change of the bottom can't spoil two, metres. */
    private static final double APART_METRES = 2;

    /** How well a direction is known that is sighted on a mark, degrees (common practice). */
    private static final double MARK_SD_DEGREES = 1.5;

    /** How well a distance is known at a joint of the pole, metres (common practice). */
    private static final double JOINT_SD_METRES = 0.10;

    private static final double WIDEST_DEGREES = 60;
    private static final double STEP_DEGREES = 10;
    private static final double MARGIN_DEGREES = 80;
    private static final double MARGIN_REACH_METRES = 7;

    /**
     * A reading to take for the level.
     *
     * @param place where
     * @param depthMetres what it should read today, metres
     * @param sdMetres standard deviation of that, today's level included, metres
     * @param slope steepness there, rise over run
     * @param sdAfterMetres standard deviation of the level once this and those before it are taken, metres
     */
    public record CheckReading(Place place, double depthMetres, double sdMetres, double slope, double sdAfterMetres) {}

    public LevelAnswer {
        levels = List.copyOf(levels);
        checks = List.copyOf(checks);
        changes = List.copyOf(changes);
    }

    /** The level of a peg's latest visit. */
    public static LevelAnswer of(PegMap map) {
        return of(map.peg(), map.water(), map.bottom(), map.board());
    }

    /** The level of the latest visit of a peg whose bottom is fitted. */
    public static LevelAnswer of(Peg peg, PegWater water, FittedBottom bottom) {
        return of(peg, water, bottom, Optional.empty());
    }

    private static LevelAnswer of(Peg peg, PegWater water, FittedBottom bottom, Optional<BoardDisagreement> board) {
        List<VisitLevel> levels = levels(peg, bottom);
        Optional<VisitLevel> against = against(levels);
        List<CheckReading> checks =
                against.map(level -> checks(peg, water, bottom, level)).orElse(List.of());
        return new LevelAnswer(levels, against, checks, bottom.changes(), board);
    }

    /** The level of the latest visit against the earlier one that counts; empty if none does. */
    static Optional<VisitLevel> against(Peg peg, FittedBottom bottom) {
        return against(levels(peg, bottom));
    }

    private static List<VisitLevel> levels(Peg peg, FittedBottom bottom) {
        return peg.visits().size() < 2 ? List.of() : bottom.levels();
    }

    /** The one with the most readings in use, the earliest of several. */
    private static Optional<VisitLevel> against(List<VisitLevel> levels) {
        return levels.stream()
                .filter(level -> level.readings() > 0)
                .reduce((best, next) -> next.readings() > best.readings() ? next : best);
    }

    private static List<CheckReading> checks(Peg peg, PegWater water, FittedBottom bottom, VisitLevel level) {
        if (level.sdMetres() <= KNOWN_SD_METRES) {
            return List.of();
        }
        List<Sounding> candidates = candidates(peg, water);
        List<CheckReading> checks = new ArrayList<>();
        for (LevelCheck check : LevelChecks.best(bottom, level.visit(), candidates, MAX_CHECKS, APART_METRES)) {
            Sounding at = candidates.get(check.candidate());
            checks.add(new CheckReading(
                    new Place(at.xMetres(), at.yMetres()),
                    bottom.at(at.xMetres(), at.yMetres()).depthMetres(),
                    check.sdExpectedMetres(),
                    check.slope(),
                    check.sdAfterMetres()));
        }
        return checks;
    }

    /** Where a check may be taken. */
    public static List<Place> checkPlaces(Peg peg, PegWater water) {
        return candidates(peg, water).stream()
                .map(s -> new Place(s.xMetres(), s.yMetres()))
                .toList();
    }

    /**
     * Where a check may be taken, and how well it would be placed: at the pole's joints, towards marks and every 10°,
     * in the fishable water.
     */
    private static List<Sounding> candidates(Peg peg, PegWater water) {
        List<Sounding> all = new ArrayList<>();
        int today = peg.visits().size() - 1;
        for (double joint : peg.pole().jointMetres()) {
            for (Mark mark : peg.marks()) {
                add(all, water, joint, mark.place().angleDegrees(), MARK_SD_DEGREES, today);
            }
            for (double angle = -WIDEST_DEGREES; angle <= WIDEST_DEGREES; angle += STEP_DEGREES) {
                add(all, water, joint, angle, Precision.PLAIN.sdAngleDegrees(), today);
            }
            if (joint <= MARGIN_REACH_METRES) {
                add(all, water, joint, -MARGIN_DEGREES, Precision.PLAIN.sdAngleDegrees(), today);
                add(all, water, joint, MARGIN_DEGREES, Precision.PLAIN.sdAngleDegrees(), today);
            }
        }
        return all;
    }

    private static void add(
            List<Sounding> all, PegWater water, double distance, double angle, double sdAngle, int visit) {
        Place place = Place.polar(distance, angle);
        if (distance <= water.reachMetres()
                && water.fishable().contains(Shapes.FACTORY.createPoint(Shapes.coordinate(place)))) {
            all.add(new Sounding(
                    place.xMetres(),
                    place.yMetres(),
                    0,
                    Sounding.FIRM_SD_METRES,
                    new Precision(JOINT_SD_METRES, sdAngle),
                    visit));
        }
    }
}
