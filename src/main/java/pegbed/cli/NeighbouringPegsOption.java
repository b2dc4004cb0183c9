package pegbed.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import pegbed.cli.output.Progress;
import pegbed.findings.NeighbourFits;
import pegbed.findings.PegMap;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.storage.shelf.NeighbouringPegFiles;
import pegbed.surface.NeighbouringPegs;
import picocli.CommandLine.Option;

/** Whether a peg starts from other pegs of the same water. */
public final class NeighbouringPegsOption {
    @Option(names = "--by-itself", description = "Take no account of other pegs of the same water in the same folder.")
    private boolean byItself;

    /** What the other pegs beside a file teach its peg; files that were passed over are named on {@code err}. */
    NeighbouringPegs of(Path file, Peg peg, PrintWriter err) {
        if (byItself) {
            return NeighbouringPegs.NONE;
        }
        NeighbouringPegFiles others = NeighbouringPegFiles.beside(file, peg);
        others.passedOver().forEach(sentence -> err.println("Warning: " + sentence));
        return NeighbourFits.of(others.pegs(), Monitor.NONE);
    }

    /** The map of a peg, starting from the other pegs beside its file. */
    PegMap map(Path file, Peg peg, PrintWriter err) throws InputException {
        Progress progress = new Progress(err);
        try {
            return PegMap.of(peg, of(file, peg, err), progress.of("Fitting the bottom"));
        } finally {
            progress.end();
        }
    }
}
