package pegbed.session;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pegbed.model.Extras;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Visit;

/** Edits of the visits. */
public final class VisitEdits {
    private VisitEdits() {}

    /**
     * Begins today's visit: what is read from now on belongs to it.
     *
     * @param peg the peg as it stands
     * @param now when the visit begins
     * @throws InputException if the latest visit is today's already, or begins later than now
     */
    public static Edit begin(Peg peg, OffsetDateTime now) throws InputException {
        Optional<String> refused = whyNot(peg, now);
        if (refused.isPresent()) {
            throw new InputException(refused.get());
        }
        return Edit.of("Begin visit", before -> {
            List<Visit> visits = new ArrayList<>(before.visits());
            visits.add(new Visit(Optional.of(now), OptionalDouble.empty(), List.of(), "", Extras.NONE));
            return before.withVisits(visits);
        });
    }

    /** Why no visit can be begun, one sentence; empty if one can. */
    public static Optional<String> whyNot(Peg peg, OffsetDateTime now) {
        Visit last = peg.today();
        boolean fished = !last.day().events().isEmpty();
        if (last.readings().isEmpty() && last.boardToWaterMetres().isEmpty() && !fished) {
            return Optional.of(
                    peg.visits().size() == 1
                            ? "Nothing was read at this peg yet, so the first visit is today's: plumb and type."
                            : "The latest visit has nothing in it yet, so it is today's already: plumb and type.");
        }
        if (last.start().filter(start -> start.isAfter(now)).isPresent()) {
            return Optional.of("The latest visit begins on " + last.start().get()
                    + ", which is not yet; look at this machine's clock.");
        }
        return Optional.empty();
    }

    /** From the board on the platform down to today's water, metres; empty if it is not measured. */
    public static Edit board(OptionalDouble metres) {
        return Edit.of("Change board measure", peg -> peg.withToday(visit -> visit.withBoard(metres)));
    }

    /** The bottom was dug out before today's visit, or was not after all; the earlier readings stay. */
    public static Edit dugOut(boolean afresh) {
        return Edit.of(
                afresh ? "Dug out before today" : "Not dug out after all",
                peg -> peg.withToday(visit -> visit.withAfresh(afresh)));
    }
}
