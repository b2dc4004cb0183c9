package pegbed.session;

import java.util.List;
import java.util.Optional;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.Peg;

/** What a peg must contain before a bottom can be found. */
public final class MissingInputs {
    private MissingInputs() {}

    /** Why no bottom can be found yet; empty if it can be tried. */
    static Optional<Answer> of(Peg peg) {
        if (peg.readings().isEmpty()
                && nearPoints(peg) == 0
                && peg.banks().far().isEmpty()) {
            return Optional.of(new Answer.NothingYet(Optional.empty()));
        }
        return sentence(peg).map(missing -> new Answer.TooLittle(missing, Optional.empty()));
    }

    /** What is missing and how to give it, one sentence; empty if a bottom can be found. */
    public static Optional<String> sentence(Peg peg) {
        long near = nearPoints(peg);
        if (near < 2) {
            return Optional.of("The near bank needs "
                    + (near == 0 ? "two points" : "one more point")
                    + ": where the water's edge is to your left and to your right, such as edge 3 80L and edge 3 80R.");
        }
        return peg.readings().isEmpty()
                ? Optional.of("No reading yet: plumb a place and type it, such as 11 20L 4'6.")
                : Optional.empty();
    }

    private static long nearPoints(Peg peg) {
        return peg.banks().near().stream().map(BankPoint::place).distinct().count();
    }

    /** The same lack, with a picture of the place. */
    static Answer with(Answer lack, Answer.Ready place) {
        return lack instanceof Answer.TooLittle little
                ? new Answer.TooLittle(little.missing(), Optional.of(place))
                : new Answer.NothingYet(Optional.of(place));
    }

    /** The peg as it can be drawn: without a near bank, the water is taken to begin at the seat. */
    public static Peg drawable(Peg peg) {
        if (nearPoints(peg) >= 2) {
            return peg;
        }
        double reach = peg.pole().reachMetres();
        return peg.withBanks(new Banks(
                List.of(BankPoint.at(-reach, 0), BankPoint.at(reach, 0)),
                peg.banks().far(),
                peg.banks().islands()));
    }
}
