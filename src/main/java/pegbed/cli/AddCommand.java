package pegbed.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import pegbed.cli.output.Output;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.notation.Entry;
import pegbed.notation.Line;
import pegbed.notation.Notation;
import pegbed.wording.TypedLineWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code pegbed add}: typed lines into a peg file, all or none. */
@Command(
        name = "add",
        mixinStandardHelpOptions = true,
        description = "Adds readings, edges and snags, each typed as one line, such as \"11 -20 4'6 silt\".")
final class AddCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "PEG", description = "The peg file.")
    private Path path;

    @Parameters(
            index = "1..*",
            arity = "1..*",
            paramLabel = "LINE",
            description = "DISTANCE DIRECTION DEPTH [bottom] [note], or edge …, or snag …")
    private List<String> lines;

    @Mixin
    private Output output;

    @Override
    public Integer call() throws InputException {
        List<String> echoes =
                PegArgument.change(path, output.err(), this::added).answer();
        if (output.json()) {
            ArrayNode added = output.array();
            echoes.forEach(added::add);
            output.print(output.object().set("added", added));
        } else {
            echoes.forEach(echo -> output.out().println("Added: " + echo));
        }
        return 0;
    }

    /** The peg with the lines, and how each was understood. */
    private PegArgument.Changed<List<String>> added(Peg before) throws InputException {
        Peg peg = before;
        List<String> echoes = new ArrayList<>();
        for (String typed : lines) {
            Line line = Notation.of(peg).parse(typed);
            echoes.add(TypedLineWords.of(peg).understood(line));
            peg = Entry.in(peg, line);
        }
        return new PegArgument.Changed<>(peg, echoes);
    }
}
