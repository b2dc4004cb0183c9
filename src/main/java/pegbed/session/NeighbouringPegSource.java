package pegbed.session;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import pegbed.findings.NeighbourFits;
import pegbed.findings.PegMap;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.PegName;
import pegbed.storage.shelf.NeighbouringPegFiles;
import pegbed.surface.NeighbouringPegs;

/**
 * The other pegs of the same water beside the open file. They are read and fitted when they are first needed, by
 * whoever works out the answers, and again only when the peg has another file or name. Thread-safe.
 */
final class NeighbouringPegSource implements Recomputation.Fitting {
    /** Where the open peg's file lies. */
    private record Place(Optional<Path> file, long looked) {}

    private volatile Place place = new Place(Optional.empty(), 0);
    private volatile List<String> passedOver = List.of();
    private Question known = new Question(place, Peg.EMPTY.name(), true);
    private List<Peg> others = List.of();
    /** What the others teach; empty until they are fitted. */
    private Optional<NeighbouringPegs> neighbours = Optional.of(NeighbouringPegs.NONE);

    /** The peg by its own readings, which {@link #fit} goes on from. */
    private Optional<PegMap> alone = Optional.empty();

    private record Question(Place place, PegName name, boolean byItself) {}

    /** The open peg has this file now; what lies beside it is looked at again. For the owner's thread; never waits. */
    void at(Optional<Path> file) {
        place = new Place(file, place.looked() + 1);
        passedOver = List.of();
    }

    /** What lies beside the file and could not be read, a sentence each. */
    List<String> passedOver() {
        return passedOver;
    }

    @Override
    public synchronized Optional<PegMap> alone(Peg peg, Monitor monitor) throws InputException {
        look(peg);
        alone = neighbours.isPresent() ? Optional.empty() : Optional.of(PegMap.of(peg, monitor));
        return alone;
    }

    @Override
    public synchronized PegMap fit(Peg peg, Monitor monitor) throws InputException {
        look(peg);
        NeighbouringPegs teachers = neighbours.isPresent() ? neighbours.get() : NeighbourFits.of(others, monitor);
        neighbours = Optional.of(teachers);
        Optional<PegMap> itself = alone.filter(map -> map.peg().equals(peg));
        alone = Optional.empty();
        return itself.isPresent() ? itself.get().with(teachers, monitor) : PegMap.of(peg, teachers, monitor);
    }

    private void look(Peg peg) {
        Question question = new Question(place, peg.name(), peg.wishes().byItself());
        if (question.equals(known)) {
            return;
        }
        NeighbouringPegFiles files = question.place()
                .file()
                .map(path -> NeighbouringPegFiles.beside(path, peg))
                .orElse(NeighbouringPegFiles.NONE);
        others = files.pegs();
        neighbours = others.isEmpty() ? Optional.of(NeighbouringPegs.NONE) : Optional.empty();
        passedOver = question.place().equals(place) ? files.passedOver() : List.of();
        known = question;
    }
}
