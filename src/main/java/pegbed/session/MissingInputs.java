package pegbed.session;

import java.util.List;
import java.util.Optional;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.Peg;

/** What a peg must contain before a bottom can be found. */
final class MissingInputs {
    private MissingInputs() {}

    /** Why no bottom can be found yet; empty if it can be tried. */
    static Optional<Answer> of(Peg peg) {
        boolean noReadings = peg.readings().isEmpty();
        long near = peg.banks().near().stream().map(BankPoint::place).distinct().count();
        if (noReadings && near == 0 && peg.banks().far().isEmpty()) {
            return Optional.of(new Answer.NothingYet(Optional.empty()));
        }
        if (near < 2) {
            return Optional.of(new Answer.TooLittle(
                    "The near bank needs "
                            + (near == 0 ? "two points" : "one more point")
                            + ": where the water's edge is to your left and to your right, such as edge 3 80L and edge 3 80R.",
                    Optional.empty()));
        }
        if (noReadings) {
            return Optional.of(new Answer.TooLittle(
                    "No reading yet: plumb a place and type it, such as 11 20L 4'6.", Optional.empty()));
        }
        return Optional.empty();
    }

    /** The same lack, with a picture of the place. */
    static Answer with(Answer lack, Answer.Ready place) {
        return lack instanceof Answer.TooLittle little
                ? new Answer.TooLittle(little.missing(), Optional.of(place))
                : new Answer.NothingYet(Optional.of(place));
    }

    /** The peg as it can be drawn: without a near bank, the water is taken to begin at the seat. */
    static Peg drawable(Peg peg) {
        if (peg.banks().near().stream().map(BankPoint::place).distinct().count() >= 2) {
            return peg;
        }
        double reach = peg.pole().reachMetres();
        return peg.withBanks(new Banks(
                List.of(BankPoint.at(-reach, 0), BankPoint.at(reach, 0)),
                peg.banks().far(),
                peg.banks().islands()));
    }
}
