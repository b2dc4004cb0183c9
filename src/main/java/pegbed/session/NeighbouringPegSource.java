package pegbed.session;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import pegbed.findings.InformedBottom;
import pegbed.findings.PegMap;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.PegName;
import pegbed.storage.shelf.NeighbouringPegFiles;

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
    private InformedBottom informed = new InformedBottom(List.of());

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
        return informed.alone(peg, monitor);
    }

    @Override
    public synchronized PegMap fit(Peg peg, Monitor monitor) throws InputException {
        look(peg);
        return informed.fit(peg, monitor);
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
        informed = new InformedBottom(files.pegs());
        passedOver = question.place().equals(place) ? files.passedOver() : List.of();
        known = question;
    }
}
