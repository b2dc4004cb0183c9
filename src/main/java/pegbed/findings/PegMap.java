package pegbed.findings;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import pegbed.geometry.PegWater;
import pegbed.model.Conditions;
import pegbed.model.Day;
import pegbed.model.DayEvent;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Parallel;
import pegbed.model.Peg;
import pegbed.model.Visit;
import pegbed.model.Wishes;
import pegbed.surface.BottomGrid;
import pegbed.surface.BottomModel;
import pegbed.surface.FittedBottom;
import pegbed.surface.IncrementalUpdate;
import pegbed.surface.NeighbouringPegs;
import pegbed.surface.grid.GridFrame;
import pegbed.surface.posterior.ReadingCheck;
import pegbed.surface.survey.Survey;

/**
 * Everything about a peg's bottom that does not depend on the target depth.
 *
 * @param peg the document it was made from
 * @param water its water
 * @param bottom the fitted bottom, at the level of the latest visit
 * @param grid that bottom on 25 cm
 * @param zones where the zones lie
 * @param deepest the deepest usable place
 * @param slopes the steepest place of each zone
 * @param checks every reading beside what the peg's other readings make of it, in the survey's order
 * @param board the board measure that its visit's readings contradict and that is left out of account, if there is one
 */
public record PegMap(
        Peg peg,
        PegWater water,
        FittedBottom bottom,
        BottomGrid grid,
        Zones zones,
        Deepest deepest,
        List<SteepestSlope> slopes,
        List<ReadingCheck> checks,
        Optional<BoardDisagreement> board) {
    /** Of a day no more than that there was fishing can change the bottom ({@link Visit#isFishedOnly}). */
    private static final Day FISHED = new Day(
            Conditions.NONE,
            List.of(DayEvent.of(Instant.EPOCH.atOffset(ZoneOffset.UTC), DayEvent.Kind.STOP, Optional.empty())));

    /** From this probability on that a reading is grossly wrong it is suspicious. */
    public static final double SUSPICIOUS = 0.9;

    /**
     * Fits the bottom of a peg and finds its deepest usable place.
     *
     * @throws InputException if the banks can't be used
     */
    public static PegMap of(Peg peg, Monitor monitor) throws InputException {
        return of(peg, NeighbouringPegs.NONE, monitor);
    }

    /**
     * As {@link #of(Peg, Monitor)}, starting from what other pegs of the same water teach.
     *
     * @throws InputException if the banks can't be used
     */
    public static PegMap of(Peg peg, NeighbouringPegs neighbours, Monitor monitor) throws InputException {
        PegWater water = PegWater.of(peg);
        Survey survey = Survey.of(peg, water);
        Supplier<BoardDisagreement.Allowed> byItself = () -> BoardDisagreement.in(
                peg, BottomModel.fit(survey, monitor), other -> BottomModel.fit(Survey.of(other, water), monitor));
        if (neighbours.isEmpty()) {
            BoardDisagreement.Allowed alone = byItself.get();
            FittedBottom itself = alone.bottom();
            return found(peg, water, itself, itself.grid(monitor), itself.readings(), alone.disagreement());
        }
        Parallel.Both<BoardDisagreement.Allowed, FittedBottom> fits =
                Parallel.both(byItself, () -> BottomModel.fit(survey, neighbours, Monitor.NONE));
        BoardDisagreement.Allowed alone = fits.first();
        FittedBottom itself = alone.bottom();
        // Other pegs may be wrong about this one: only its own readings can make a reading suspicious.
        FittedBottom bottom = alone.disagreement().isEmpty()
                ? fits.second()
                : BottomModel.fit(
                        Survey.of(BoardDisagreement.leftOut(peg, alone.disagreement()), water), neighbours, monitor);
        FittedBottom judge = bottom.lesson().isPresent() ? itself : bottom;
        return found(peg, water, bottom, bottom.grid(monitor), judge.readings(), alone.disagreement());
    }

    /**
     * This map, which was made without other pegs, as {@link #of(Peg, NeighbouringPegs, Monitor)} makes it with them.
     *
     * @throws InputException if the banks can't be used
     */
    public PegMap with(NeighbouringPegs neighbours, Monitor monitor) throws InputException {
        if (neighbours.isEmpty()) {
            return this;
        }
        FittedBottom taught =
                BottomModel.fit(Survey.of(BoardDisagreement.leftOut(peg, board), water), neighbours, monitor);
        List<ReadingCheck> judged = taught.lesson().isPresent() ? checks : taught.readings();
        return found(peg, water, taught, taught.grid(monitor), judged, board);
    }

    /**
     * Finds what there is on a bottom that has been fitted already.
     *
     * @throws InputException if the banks can't be used
     */
    public static PegMap of(Peg peg, PegWater water, FittedBottom bottom, Monitor monitor) throws InputException {
        return found(peg, water, bottom, bottom.grid(monitor), bottom.readings(), Optional.empty());
    }

    /**
     * The map with one more reading, of which everything that is learned from all readings together is kept, so that it
     * is there at once ({@link IncrementalUpdate}). It is to be followed by a map that is worked out anew.
     *
     * @param other the peg with one more reading at the end of its latest visit
     * @return empty where that is not all that is new
     * @throws InputException if the banks can't be used
     */
    public Optional<PegMap> withOneMore(Peg other) throws InputException {
        if (!withoutToday(peg).equals(withoutToday(other))) {
            return Optional.empty();
        }
        Survey survey = Survey.of(BoardDisagreement.leftOut(other, board), water);
        Optional<IncrementalUpdate> one = IncrementalUpdate.of(bottom, grid, survey);
        return one.isEmpty()
                ? Optional.empty()
                : Optional.of(found(
                        other,
                        water,
                        one.get().bottom(),
                        one.get().grid(),
                        with(one.get().check()),
                        board));
    }

    private static PegMap found(
            Peg peg,
            PegWater water,
            FittedBottom bottom,
            BottomGrid grid,
            List<ReadingCheck> checks,
            Optional<BoardDisagreement> board)
            throws InputException {
        Zones zones = Zones.of(grid, water, peg.pole());
        return new PegMap(
                peg,
                water,
                bottom,
                grid,
                zones,
                DeepestSearch.of(grid, zones),
                SteepestSlope.of(grid, zones),
                checks,
                board);
    }

    /** A peg without what its latest visit read. */
    private static Peg withoutToday(Peg peg) {
        return peg.withToday(visit -> visit.withReadings(List.of()));
    }

    private List<ReadingCheck> with(ReadingCheck check) {
        List<ReadingCheck> all = new ArrayList<>();
        for (ReadingCheck known : checks) {
            all.add(known.sounding() < check.sounding() ? known : known.after(1));
        }
        all.add(check);
        all.sort(Comparator.comparingInt(ReadingCheck::sounding));
        return all;
    }

    /** Whether a reading was added to it without working it out anew. */
    public boolean isProvisional() {
        return grid.isProvisional();
    }

    /** The same bottom, for a peg that differs only in what does not change it, such as its wishes. */
    public PegMap withPeg(Peg other) {
        return new PegMap(other, water, bottom, grid, zones, deepest, slopes, checks, board);
    }

    /** The part of a peg that its bottom depends on: what was caught tells nothing of it. */
    public static Peg bottomOf(Peg peg) {
        return peg.withWishes(Wishes.NONE.withByItself(peg.wishes().byItself()))
                .withVisits(peg.visits().stream()
                        .map(visit -> visit.withDay(visit.isFishedOnly() ? FISHED : Day.NONE))
                        .toList());
    }

    /** Whether another map is of the same bottom and place, made by {@link #withPeg} if it is not the same one. */
    public boolean differsInWishesOnly(PegMap other) {
        return grid == other.grid;
    }

    /** The node of the grid nearest to a place, -1 off the grid. */
    public int nodeAt(double xMetres, double yMetres) {
        GridFrame frame = grid.frame();
        long column = Math.round((xMetres - frame.xMinMetres()) / frame.cellMetres());
        long row = Math.round((yMetres - frame.yMinMetres()) / frame.cellMetres());
        boolean within = column >= 0 && row >= 0 && column < frame.columns() && row < frame.rows();
        return within ? frame.index((int) column, (int) row) : -1;
    }

    /** The readings that the others contradict. */
    public List<ReadingCheck> suspicious() {
        return checks.stream()
                .filter(check -> check.wrongProbability() > SUSPICIOUS)
                .toList();
    }
}
