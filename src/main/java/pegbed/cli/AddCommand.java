package pegbed.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import pegbed.cli.output.Output;
import pegbed.cli.output.Progress;
import pegbed.findings.PegMap;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.notation.Entry;
import pegbed.notation.Line;
import pegbed.notation.LineBounds;
import pegbed.notation.Notation;
import pegbed.surface.BottomModel;
import pegbed.surface.posterior.ReadingCheck;
import pegbed.surface.survey.Survey;
import pegbed.wording.MapWords;
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
        PegArgument.Changed<Added> changed = PegArgument.change(path, output.err(), this::added);
        List<String> echoes = changed.answer().echoes();
        if (output.json()) {
            ArrayNode added = output.array();
            echoes.forEach(added::add);
            output.print(output.object().set("added", added));
        } else {
            echoes.forEach(echo -> output.out().println("Added: " + echo));
        }
        output.out().flush();
        warnOfUnexpected(changed.peg(), changed.answer().readings());
        return 0;
    }

    /**
     * Names the latest readings of today's visit that the others contradict, as a wrong unit or a slip of the finger
     * does.
     *
     * @param readings how many were added
     */
    private void warnOfUnexpected(Peg peg, int readings) throws InputException {
        int all =
                peg.visits().stream().mapToInt(visit -> visit.readings().size()).sum();
        if (readings == 0) {
            return;
        }
        MapWords words = MapWords.of(peg);
        Progress progress = new Progress(output.err());
        List<ReadingCheck> checks = BottomModel.fit(
                        Survey.of(peg), progress.of("Added; looking for what the others contradict"))
                .readings();
        progress.end();
        checks.stream()
                .filter(check -> check.sounding() >= all - readings && check.sounding() < all)
                .filter(check -> check.wrongProbability() > PegMap.SUSPICIOUS)
                .forEach(check -> output.err().println("Warning: " + words.suspiciousAsTyped(check)));
    }

    /**
     * What was added.
     *
     * @param echoes how each line was understood
     * @param readings how many of them are readings
     */
    private record Added(List<String> echoes, int readings) {}

    /** The peg with the lines. */
    private PegArgument.Changed<Added> added(Peg before) throws InputException {
        Peg peg = before;
        List<String> echoes = new ArrayList<>();
        int readings = 0;
        for (String typed : lines) {
            Line line = Notation.of(peg).parse(typed);
            LineBounds.refuse(peg, line, typed);
            echoes.add(TypedLineWords.of(peg).understood(line));
            peg = Entry.in(peg, line);
            readings += line instanceof Line.ReadingLine ? 1 : 0;
        }
        return new PegArgument.Changed<>(peg, new Added(echoes, readings));
    }
}
