package pegbed.findings;

import java.util.List;
import java.util.Optional;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.surface.NeighbouringPegs;

/**
 * The bottom of a peg that other pegs inform. Fitting the others takes long, so until that is done the peg can be shown
 * by its own readings alone. For one thread at a time.
 */
public final class InformedBottom {
    private final List<Peg> others;

    /** What the others teach; empty until they are fitted. */
    private Optional<NeighbouringPegs> neighbours;

    /** The peg by its own readings, which {@link #fit} goes on from. */
    private Optional<PegMap> alone = Optional.empty();

    /** @param others pegs of the same water that inform it */
    public InformedBottom(List<Peg> others) {
        this.others = List.copyOf(others);
        neighbours = others.isEmpty() ? Optional.of(NeighbouringPegs.NONE) : Optional.empty();
    }

    /**
     * The bottom by the peg's own readings, while others wait to be fitted.
     *
     * @return empty where {@link #fit} has nothing to wait for
     * @throws InputException if there is no bottom, as {@link PegMap#of(Peg, Monitor)} says
     */
    public Optional<PegMap> alone(Peg peg, Monitor monitor) throws InputException {
        alone = waitsForOthers(peg) ? Optional.of(PegMap.of(peg, monitor)) : Optional.empty();
        return alone;
    }

    private boolean waitsForOthers(Peg peg) {
        return neighbours.isEmpty() && !peg.wishes().byItself();
    }

    /**
     * The bottom by all that is known; the others are fitted when they are first needed.
     *
     * @throws InputException if there is no bottom, as {@link PegMap#of(Peg, Monitor)} says
     */
    public PegMap fit(Peg peg, Monitor monitor) throws InputException {
        if (waitsForOthers(peg)) {
            neighbours = Optional.of(NeighbourFits.of(others, monitor));
        }
        NeighbouringPegs teachers = peg.wishes().byItself() ? NeighbouringPegs.NONE : neighbours.orElseThrow();
        Optional<PegMap> itself = alone.filter(map -> map.peg().equals(peg));
        alone = Optional.empty();
        return itself.isPresent() ? itself.get().with(teachers, monitor) : PegMap.of(peg, teachers, monitor);
    }
}
