package pegbed.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import pegbed.cli.output.LevelJson;
import pegbed.cli.output.Output;
import pegbed.cli.output.Progress;
import pegbed.findings.DoubtSummary;
import pegbed.findings.PegMap;
import pegbed.geometry.Doubts;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.storage.disk.PegFile;
import pegbed.storage.peg.Opened;
import pegbed.wording.LevelWords;
import pegbed.wording.MapWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code pegbed check}: whether a peg file is sound and its readings agree. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = "Says whether the file is sound and the readings agree; exit 1 if something should be looked at.")
final class CheckCommand implements Callable<Integer> {
    @Parameters(paramLabel = "PEG", description = "The peg file.")
    private Path path;

    @Mixin
    private Output output;

    @Override
    public Integer call() throws InputException {
        Opened opened = PegFile.read(path);
        Peg peg = opened.peg();
        List<String> found = new ArrayList<>();
        if (opened instanceof Opened.Recovered damaged) {
            found.add("The file is damaged at " + damaged.where() + ": " + damaged.why());
            found.addAll(damaged.lost());
        }
        Doubts.contradiction(peg).ifPresent(found::add);
        PegMap map;
        Progress progress = new Progress(output.err());
        try {
            map = PegMap.of(peg, progress.of("Fitting the bottom"));
        } catch (InputException e) {
            // The bottom can't be worked out, often because of what was lost: that must be said all the same.
            found.add(e.getMessage());
            return without(peg, found);
        } finally {
            progress.end();
        }
        found.addAll(Doubts.sentences(Doubts.misplaced(peg, map.water())));
        MapWords words = MapWords.of(peg);
        map.suspicious().forEach(check -> found.add(words.suspiciousWithDoubt(check)));
        found.addAll(LevelWords.changes(map));
        Optional<DoubtSummary> doubt = DoubtSummary.of(map);
        if (output.json()) {
            ObjectNode node = output.object();
            node.put("readings", map.bottom().soundings());
            ArrayNode list = node.putArray("found");
            found.forEach(list::add);
            node.set("changes", LevelJson.changes(peg, map.bottom().changes()));
            doubt.ifPresent(d -> {
                node.put("median_sd_m", Output.rounded(d.medianSdMetres(), 3));
                node.put("guess_share", Output.rounded(d.guessShare(), 2));
                d.order().ifPresent(order -> node.put("survey_order", order.title()));
            });
            output.print(node);
        } else {
            print(found);
            doubt.ifPresent(d -> output.out().println(words.doubt(d)));
        }
        return found.isEmpty() ? 0 : Cli.NO;
    }

    /** Says what was found where the bottom itself can't be worked out. */
    private int without(Peg peg, List<String> found) {
        if (output.json()) {
            ObjectNode node = output.object();
            node.put(
                    "readings",
                    peg.visits().stream()
                            .mapToInt(visit -> visit.readings().size())
                            .sum());
            ArrayNode list = node.putArray("found");
            found.forEach(list::add);
            output.print(node);
        } else {
            print(found);
        }
        return Cli.NO;
    }

    private void print(List<String> found) {
        output.out().println(found.isEmpty() ? "The file is sound and the readings agree." : "To look at:");
        found.forEach(line -> output.out().println("  " + line));
    }
}
