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
    private NeighbouringPegs neighbours = NeighbouringPegs.NONE;

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
    public PegMap fit(Peg peg, Monitor monitor) throws InputException {
        return PegMap.of(peg, neighbours(peg, monitor), monitor);
    }

    private synchronized NeighbouringPegs neighbours(Peg peg, Monitor monitor) {
        Question question = new Question(place, peg.name(), peg.wishes().byItself());
        if (!question.equals(known)) {
            NeighbouringPegFiles others = question.place()
                    .file()
                    .map(path -> NeighbouringPegFiles.beside(path, peg))
                    .orElse(NeighbouringPegFiles.NONE);
            neighbours = NeighbourFits.of(others.pegs(), monitor);
            passedOver = question.place().equals(place) ? others.passedOver() : List.of();
            known = question;
        }
        return neighbours;
    }
}
