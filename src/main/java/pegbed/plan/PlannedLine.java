package pegbed.plan;

import java.util.List;
import java.util.Optional;
import pegbed.findings.Spot;
import pegbed.model.Bottom;
import pegbed.model.Place;

/**
 * A line of a plan.
 *
 * @param number 1 for the one to start on
 * @param candidate the place
 * @param rig number of its rig, from 1
 * @param role when it is fished
 * @param downhillDegrees direction in which its ground gets deeper, degrees from straight out, positive to the right
 * @param felt what the plummet felt at the nearest reading within 1 m, where that was soft; else unknown
 * @param neighbours the other lines, nearest first
 * @param givenUp a better place that was given up for the others
 */
public record PlannedLine(
        int number,
        LineCandidate candidate,
        int rig,
        Role role,
        double downhillDegrees,
        Bottom felt,
        List<Neighbour> neighbours,
        Optional<GivenUp> givenUp) {
    /** When a line is fished (common practice). */
    public enum Role {
        /** Fished first. */
        START,
        /** Fed a little from the start, fished when the first slows. */
        PRIME,
        /** Left quiet until late. */
        REST
    }

    /**
     * Another line.
     *
     * @param number which
     * @param metres how far it is, metres
     * @param inTheWay whether one lies within 1 m of the other's way to the seat
     */
    public record Neighbour(int number, double metres, boolean inTheWay) {}

    /**
     * A better place in the same zone, and why it was not taken.
     *
     * @param candidate the place
     * @param reason why
     * @param line the line that it would disturb; 0 where it is the rigs
     */
    public record GivenUp(LineCandidate candidate, Reason reason, int line) {}

    /** Why a better place was given up. */
    public enum Reason {
        /** It lies within 2 m of another line. */
        SPACING,
        /** It lies in the way of another line, or that in its way. */
        PATH,
        /** It would need one more rig. */
        RIG
    }

    public Place place() {
        return candidate.place();
    }

    public Spot spot() {
        return candidate.spot();
    }
}
