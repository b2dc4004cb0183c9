package pegbed.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import pegbed.analysis.PegMap;
import pegbed.analysis.WaterMates;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.storage.OtherPegs;
import pegbed.surface.Lesson;
import pegbed.surface.Neighbours;
import picocli.CommandLine.Option;

/** Whether a peg starts from other pegs of the same water. */
final class OtherPegsOption {
    @Option(names = "--by-itself", description = "Take no account of other pegs of the same water in the same folder.")
    private boolean byItself;

    /** What the other pegs beside a file teach its peg; files that were passed over are told on {@code err}. */
    Neighbours of(Path file, Peg peg, PrintWriter err) {
        if (byItself) {
            return Neighbours.NONE;
        }
        OtherPegs others = OtherPegs.beside(file, peg);
        others.passedOver().forEach(sentence -> err.println("Warning: " + sentence));
        return WaterMates.of(others.pegs(), Monitor.NONE);
    }

    /** The map of a peg, starting from the other pegs beside its file. */
    PegMap map(Path file, Peg peg, PrintWriter err) throws InputException {
        return PegMap.of(peg, of(file, peg, err), Monitor.NONE);
    }

    /** Tells a machine what a bottom has from other pegs; nothing where it stands by itself. */
    static void tell(ObjectNode node, Optional<Lesson> lesson) {
        lesson.ifPresent(told ->
                node.putObject("other_pegs").put("count", told.pegs()).put("alike", Output.rounded(told.alike(), 2)));
    }
}
