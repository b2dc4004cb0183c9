package pegbed.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import pegbed.cli.output.Output;
import pegbed.cli.output.Progress;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.visits.VisitComparison;
import pegbed.wording.LevelWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code pegbed compare}: what silted up and what was dug out between two visits. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        description = "Says where the bottom differs between two visits by more than the doubt.")
final class CompareCommand implements Callable<Integer> {
    @Parameters(paramLabel = "PEG", description = "The peg file.")
    private Path path;

    @Option(
            names = "--from",
            paramLabel = "N",
            description = "The earlier visit, 1 for the first; the first if not given.")
    private WholeNumber from = new WholeNumber("1");

    @Option(names = "--to", paramLabel = "N", description = "The later visit; the latest if not given.")
    private WholeNumber to;

    @Mixin
    private Output output;

    @Override
    public Integer call() throws InputException {
        Peg peg = PegArgument.look(path, output.err()).peg();
        int most = Math.max(1, peg.visits().size());
        int earlier = from.within("--from", 1, most);
        int later = to == null ? most : to.within("--to", 1, most);
        Progress progress = new Progress(output.err());
        VisitComparison comparison =
                VisitComparison.of(peg, earlier - 1, later - 1, progress.of("Comparing the visits"));
        progress.end();
        LevelWords words = new LevelWords(peg);
        if (output.json()) {
            ObjectNode root = output.object();
            root.put("from_visit", earlier);
            root.put("to_visit", later);
            ArrayNode places = root.putArray("places");
            for (VisitComparison.ChangedPlace place : comparison.places()) {
                ObjectNode node = places.addObject();
                node.put("x_m", Output.rounded(place.middle().xMetres(), 2));
                node.put("y_m", Output.rounded(place.middle().yMetres(), 2));
                node.put("deeper_m", Output.rounded(place.deeperMetres(), 3));
                node.put("sd_m", Output.rounded(place.sdMetres(), 3));
                node.put("area_m2", Output.rounded(place.areaMetres2(), 2));
                node.put("words", words.changed(place));
            }
            output.print(root);
        } else {
            output.out().println(words.compared(comparison));
            comparison.places().forEach(place -> output.out().println("  " + words.changed(place)));
        }
        return 0;
    }
}
