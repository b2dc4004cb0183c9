package pegbed.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import pegbed.cli.output.NeighbouringPegsJson;
import pegbed.cli.output.Output;
import pegbed.cli.output.Progress;
import pegbed.findings.PegMap;
import pegbed.guidance.CheckAnswer;
import pegbed.guidance.CheckLine;
import pegbed.guidance.Guidance;
import pegbed.guidance.NextReading;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.notation.ShortForm;
import pegbed.wording.GuidanceWords;
import pegbed.wording.MapWords;
import pegbed.wording.Quantities;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code pegbed next}: where to plumb next, and why. */
@Command(
        name = "next",
        mixinStandardHelpOptions = true,
        description = "Says which reading to take next, and why; and when to stop.")
final class NextCommand implements Callable<Integer> {
    private static final int MAX_COUNT = 50;

    @Parameters(paramLabel = "PEG", description = "The peg file.")
    private Path path;

    @Option(
            names = "--count",
            paramLabel = "N",
            defaultValue = "1",
            description = "How many readings, each as if those before it came out as expected; 1 if not given.")
    private WholeNumber count;

    @Option(names = "--target", paramLabel = "D", description = "As for pegbed lines.")
    private String target;

    @Mixin
    private NeighbouringPegsOption others;

    @Mixin
    private Output output;

    @Override
    public Integer call() throws InputException {
        int readings = count.within("--count", 1, MAX_COUNT);
        Peg peg = PegArgument.look(path, output.err()).peg();
        if (target != null) {
            peg = peg.withWishes(peg.wishes().withTarget(OptionalDouble.of(Target.metres(target))));
        }
        PegMap map = others.map(path, peg, output.err());
        Progress progress = new Progress(output.err());
        List<NextReading> plan = Guidance.plan(map, readings, progress.of("Planning readings"));
        progress.end();
        Optional<CheckLine> check = CheckLine.offer(map);
        Optional<CheckAnswer> answer = CheckLine.answer(peg, Monitor.NONE);
        if (output.json()) {
            json(map, plan, check, answer);
        } else {
            MapWords.neighbours(map).ifPresent(output.out()::println);
            text(peg, plan, check, answer);
        }
        return 0;
    }

    private void text(Peg peg, List<NextReading> plan, Optional<CheckLine> check, Optional<CheckAnswer> answer) {
        Quantities quantities = Quantities.of(peg);
        GuidanceWords words = GuidanceWords.of(peg);
        if (plan.get(0).stop()) {
            output.out().println(GuidanceWords.stop());
        }
        for (int i = 0; i < plan.size(); i++) {
            NextReading next = plan.get(i);
            output.out().println((plan.size() > 1 ? i + 1 + ". " : "") + words.where(next));
            output.out().println("   " + words.why(next));
        }
        check.ifPresent(line -> {
            output.out().println("To test the map: " + GuidanceWords.WHY_CHECK_LINE);
            output.out().println("   " + quantities.place(line.first()));
            output.out().println("   " + quantities.place(line.second()));
            output.out().println("   " + GuidanceWords.HOW_TO_ADD);
        });
        answer.ifPresent(shown -> output.out().println(words.answer(shown)));
    }

    /** The first reading's keys stand at the top, all of them in order under {@code next}. */
    private void json(PegMap map, List<NextReading> plan, Optional<CheckLine> check, Optional<CheckAnswer> answer) {
        Peg peg = map.peg();
        ObjectNode root = reading(peg, plan.get(0));
        ArrayNode all = root.putArray("next");
        plan.forEach(next -> all.add(reading(peg, next)));
        check.ifPresent(line -> {
            ArrayNode places = root.putArray("check_line");
            places.add(place(peg, line.first()));
            places.add(place(peg, line.second()));
        });
        answer.ifPresent(shown -> root.put("check_answer", GuidanceWords.of(peg).answer(shown)));
        NeighbouringPegsJson.put(root, map.bottom().lesson());
        output.print(root);
    }

    private ObjectNode reading(Peg peg, NextReading next) {
        ObjectNode node = place(peg, next.place());
        node.put("why", GuidanceWords.of(peg).why(next));
        node.put("stop", next.stop());
        if (!Double.isNaN(next.gain())) {
            node.put("gain", Output.rounded(next.gain(), 3));
        }
        return node;
    }

    private ObjectNode place(Peg peg, Place place) {
        ObjectNode node = output.object();
        node.put("distance_m", Output.rounded(place.distanceMetres(), 2));
        node.put("angle_deg", Output.rounded(place.angleDegrees(), 1));
        node.put("section", ShortForm.section(peg.pole(), place.distanceMetres()));
        node.put("aim", Quantities.of(peg).aim(place));
        return node;
    }
}
