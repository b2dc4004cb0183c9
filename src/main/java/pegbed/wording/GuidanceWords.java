package pegbed.wording;

import java.util.List;
import pegbed.findings.Zone;
import pegbed.guidance.CheckAnswer;
import pegbed.guidance.CheckLine;
import pegbed.guidance.NextReading;
import pegbed.guidance.Reason;
import pegbed.model.Decimals;
import pegbed.model.Peg;

/** Where to plumb next and what check readings show, in the person's words and units. */
public final class GuidanceWords {
    /** Why a check line is worth plumbing. */
    public static final String WHY_CHECK_LINE =
            "Two readings on the slopes between the others would show whether distances and level are right.";

    /** How the readings of a check line are marked as such. */
    public static final String HOW_TO_ADD = "Add them with the note \"" + CheckLine.NOTE + "\".";

    private static final String CHANGES_LITTLE = "another reading would hardly change the lines";

    private final Quantities quantities;

    private GuidanceWords(Peg peg) {
        quantities = Quantities.of(peg);
    }

    /** The words at a peg. */
    public static GuidanceWords of(Peg peg) {
        return new GuidanceWords(peg);
    }

    /** Where the reading is: distance, direction, clock and aim. */
    public String where(NextReading next) {
        return quantities.place(next.place());
    }

    /** Why it is worth taking, one sentence. */
    public String why(NextReading next) {
        Reason reason = next.reason();
        if (reason instanceof Reason.OpeningPlace opening) {
            return opening(opening.question());
        }
        if (reason instanceof Reason.LevelOfDay level) {
            return "It tells how high the water stands today: about " + quantities.depth(level.depthMetres())
                    + " expected, and with it the level is known to "
                    + quantities.depthToQuarterInch(level.sdAfterMetres()) + ".";
        }
        if (reason instanceof Reason.NothingPlumbed) {
            return "Nothing has been plumbed yet, and this place tells most about the rest.";
        }
        if (reason instanceof Reason.FillsGap gap) {
            return "It would fill the map where it is least known: the nearest reading is "
                    + Decimals.text(gap.nearestMetres(), 1) + " m away.";
        }
        if (reason instanceof Reason.SurestMap) {
            return "Of all places it would make the map as a whole surest.";
        }
        if (reason instanceof Reason.DepthOfDeepest) {
            return "It would settle how deep the deepest spot is.";
        }
        if (reason instanceof Reason.DeeperThan than) {
            return "It would settle whether it is deeper here than at "
                    + quantities.distance(than.deepest().distanceMetres()) + ", "
                    + quantities.direction(than.deepest().angleDegrees()) + ", the deepest so far.";
        }
        if (reason instanceof Reason.Contradicted contradicted) {
            double off = contradicted.readMetres() - contradicted.expectedMetres();
            return "The reading here, " + quantities.depth(contradicted.readMetres()) + ", is "
                    + quantities.depthToHalfInch(Math.abs(off)) + (off > 0 ? " deeper" : " shallower")
                    + " than the others expect; plumb it again.";
        }
        return flat((Reason.FlatSpotSought) reason);
    }

    private static String opening(Reason.OpeningQuestion question) {
        return switch (question) {
            case NEAR_LEDGE -> "It tells how quickly the near ledge drops.";
            case TRACK_START -> "It tells where the track begins.";
            case NEAR_SLOPE_END -> "It tells where the near slope ends.";
            case MIDDLE -> "It tells how deep the middle is.";
            case FAR_SLOPE_START -> "It tells where the bottom begins to rise on the far side.";
            case FALL_FURTHER_OUT -> "It tells whether the bottom still falls further out.";
            case LAST_REACH -> "It tells how deep it is as far out as can be reached.";
            case LEFT_MARGIN -> "It tells how deep the left margin is.";
            case RIGHT_MARGIN -> "It tells how deep the right margin is.";
        };
    }

    private String flat(Reason.FlatSpotSought flat) {
        String target = quantities.target(flat.targetMetres());
        String ground = ground(flat.zone(), flat.farBank());
        return switch (flat.question()) {
            case SLOPE -> "It would settle whether " + ground + " is level where it is about " + target + " deep.";
            case DEPTH -> "It would settle how deep " + ground + " is, where " + target + " is sought.";
        };
    }

    private static String ground(Zone zone, boolean farBank) {
        return switch (zone) {
            case ACROSS -> farBank ? "the ledge across" : "the bottom further out";
            case LEFT_MARGIN -> "the left margin";
            case RIGHT_MARGIN -> "the right margin";
            case SHORT -> "the bottom short";
            case TRACK -> "the track";
        };
    }

    /** Says, before a list of readings, that no more are needed. */
    public static String stop() {
        return "You can stop: " + CHANGES_LITTLE + ". If you go on:";
    }

    /** Where to plumb next and why, in one line, and whether that is still needed. */
    public String line(NextReading next) {
        return (next.stop() ? "Enough, " + CHANGES_LITTLE + "; if you like: " : "Next: ") + where(next) + ". "
                + why(next);
    }

    /** What check readings show of the map, one or two sentences. */
    public String answer(CheckAnswer answer) {
        double offset = answer.offsetMetres();
        return switch (answer.verdict()) {
            case AGREES -> "The check readings agree with the map: " + differences(answer.differences());
            case ROUGHER ->
                "The check readings do not agree with the map: " + differences(answer.differences())
                        + " Trust it less between the readings, and plumb what you mean to fish.";
            case DISTANCES_WRONG ->
                "The check readings fit only if distances are told about " + Decimals.text(Math.abs(offset), 1)
                        + " m too " + (offset > 0 ? "long" : "short") + ": check which joint is which.";
            case LEVEL_WRONG ->
                "The check readings are about " + quantities.depthToHalfInch(Math.abs(offset))
                        + (offset > 0 ? " deeper" : " shallower") + " than the others: the water has "
                        + (offset > 0 ? "risen" : "fallen")
                        + ", or the float has slipped. Plumb a known spot again.";
        };
    }

    private String differences(List<CheckAnswer.Difference> differences) {
        StringBuilder words = new StringBuilder("they are ");
        for (int i = 0; i < differences.size(); i++) {
            CheckAnswer.Difference d = differences.get(i);
            words.append(i == 0 ? "" : i == differences.size() - 1 ? " and " : ", ")
                    .append(quantities.depthToHalfInch(Math.abs(d.metres())))
                    .append(d.metres() >= 0 ? " deeper" : " shallower");
        }
        double largestSd = differences.stream()
                .mapToDouble(CheckAnswer.Difference::sdMetres)
                .max()
                .orElse(0);
        return words.append(", where up to ")
                .append(quantities.depthToHalfInch(2 * largestSd))
                .append(" was to be expected.")
                .toString();
    }
}
