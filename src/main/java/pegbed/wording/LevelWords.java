package pegbed.wording;

import java.util.List;
import java.util.stream.Stream;
import pegbed.findings.BoardDisagreement;
import pegbed.findings.Confidence;
import pegbed.findings.PegMap;
import pegbed.model.Decimals;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Visit;
import pegbed.surface.posterior.BottomChange;
import pegbed.surface.posterior.VisitLevel;
import pegbed.visits.LevelAnswer;
import pegbed.visits.LevelAnswer.CheckReading;
import pegbed.visits.VisitComparison;

/** Levels, checks and changes in the angler's words. */
public final class LevelWords {
    /** What is known of the level at a first visit. */
    public static final String FIRST_VISIT =
            "This is the first visit: its level is the one that later visits are measured against.";

    /** No check reading would determine the level better. */
    public static final String KNOWN_WELL = "That is as well as a reading can tell it.";

    /** No steeper than this is called level ground, rise over run. */
    private static final double LEVEL_GROUND = 0.1;

    private final Peg peg;
    private final Quantities quantities;

    public LevelWords(Peg peg) {
        this.peg = peg;
        this.quantities = Quantities.of(peg);
    }

    /** A visit by its day, such as {@code 2 May 2026}, or by its number where that is not known. */
    public String visit(int index) {
        Visit visit = peg.visits().get(index);
        return visit.start().map(Quantities::day).orElse("visit " + (index + 1));
    }

    /** How today's water stands: {@code The water stands 3 in higher than on 2 May 2026, known to ¾ in.} */
    public String level(VisitLevel level) {
        return "The water stands " + stands(level.higherMetres()) + " on " + visit(level.visit()) + ", known to "
                + quantities.depthToQuarterInch(level.sdMetres()) + " (one standard deviation).";
    }

    /** How today's water stands, whether it is known well, and whether the board contradicts it, a sentence or more. */
    public String today(LevelAnswer answer) {
        if (answer.levels().isEmpty()) {
            return FIRST_VISIT;
        }
        String board = answer.board().map(this::board).map(said -> said + " ").orElse("");
        return board
                + answer.against()
                        .map(this::level)
                        .orElse("Nothing that was read earlier is used, so today's level stands alone.")
                + (answer.against().isPresent() && answer.checks().isEmpty() ? " " + KNOWN_WELL : "");
    }

    /** How one water stands to another in few words: {@code 3 in higher, give or take ¾ in}. */
    public String stands(VisitLevel level) {
        return how(level.higherMetres()) + ", give or take " + quantities.depthToQuarterInch(level.sdMetres());
    }

    /**
     * How one water stands to another, without how well that is known: {@code 3 in higher}.
     *
     * @param metres by how much it stands higher, metres
     */
    public String how(double metres) {
        return isSame(metres)
                ? "as high"
                : quantities.depthToHalfInch(Math.abs(metres)) + (metres > 0 ? " higher" : " lower");
    }

    /** What is shown as nothing is not called higher or lower. */
    private boolean isSame(double metres) {
        return quantities.depthToHalfInch(Math.abs(metres)).equals(quantities.depthToHalfInch(0));
    }

    /** A check to take: where to ship to, what to aim at, and what it should read. */
    public String check(CheckReading check) {
        return "Plumb at " + quantities.place(check.place()) + ": about " + quantities.depth(check.depthMetres())
                + " expected.";
    }

    /** Why there, and what is known after it. */
    public String why(CheckReading check) {
        return (check.slope() <= LEVEL_GROUND
                        ? "The ground there is level"
                        : "The ground there is " + Steepness.oneIn(check.slope()))
                + " and well plumbed; with it the level is known to "
                + quantities.depthToQuarterInch(check.sdAfterMetres())
                + ".";
    }

    /** A place that two visits show to differ. */
    public String changed(VisitComparison.ChangedPlace place) {
        return (place.deeperMetres() > 0 ? "Dug out or washed away: " : "Silted up: ")
                + quantities.depthToHalfInch(Math.abs(place.deeperMetres())) + " ± "
                + quantities.depthToHalfInch(place.sdMetres())
                + (place.deeperMetres() > 0 ? " deeper" : " shallower") + " at "
                + quantities.placeByClock(place.middle()) + ", over "
                + Decimals.text(place.areaMetres2(), 1) + " m².";
    }

    /** What two visits show, in a heading sentence. */
    public String compared(VisitComparison comparison) {
        String visits = visit(comparison.earlier()) + " and " + visit(comparison.later());
        return comparison.places().isEmpty()
                ? "Between " + visits + " nothing changed by more than the doubt."
                : "Between " + visits + " the bottom changed, where it is more than twice the doubt:";
    }

    /** Why a ring on the map and a comparison tell different figures for one place. */
    public static final String WHY_TWO_FIGURES =
            "The ring on the map tells another figure: it takes all visits together, and the change for one hollow or"
                    + " heap; here the two visits alone count, and a change is taken for small until they show more.";

    /** Where a map shows that the bottom has changed between visits, a sentence each; none where nothing shows it. */
    public static List<String> changes(PegMap map) {
        LevelWords words = new LevelWords(map.peg());
        return Stream.concat(
                        map.board().stream().map(words::board),
                        map.bottom().changes().stream().map(words::change))
                .toList();
    }

    /** That the board disagrees with what was plumbed, and what to do. */
    public String board(BoardDisagreement board) {
        return "The board disagrees: by it the water stands " + stands(board.byBoardMetres()) + " on "
                + visit(board.earlier()) + ", by the readings "
                + stands(board.byReadings().higherMetres())
                + " then, known to "
                + quantities.depthToQuarterInch(board.byReadings().sdMetres())
                + ". The readings are believed; measure the board again, or correct the measure of "
                + visit(board.visit()) + ".";
    }

    private String stands(double higher) {
        return isSame(higher)
                ? "as high as"
                : quantities.depthToHalfInch(Math.abs(higher)) + (higher > 0 ? " higher than" : " lower than");
    }

    /** By how much the bottom has changed: {@code 4½ in deeper}. */
    public String amount(BottomChange change) {
        return quantities.depthToHalfInch(Math.abs(change.deeperMetres()))
                + (change.deeperMetres() > 0 ? " deeper" : " shallower");
    }

    /** A change of the bottom, with place, amount and odds. */
    public String change(BottomChange change) {
        Place place = new Place(change.xMetres(), change.yMetres());
        String odds = change.probability() > 0.99
                ? "more than 99 in 100"
                : Decimals.text(100 * change.probability(), 0) + " in 100";
        return "The bottom " + (Confidence.of(change.probability()) == Confidence.SURE ? "has" : "seems to have")
                + " changed at "
                + quantities.placeByClock(place) + ": about " + amount(change) + " ± "
                + quantities.depthToHalfInch(change.sdMetres()) + " since " + visit(change.since() - 1) + ", odds "
                + odds
                + "; older readings there count for less.";
    }
}
