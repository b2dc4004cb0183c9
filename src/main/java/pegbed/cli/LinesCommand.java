package pegbed.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.concurrent.Callable;
import pegbed.cli.output.LessonsJson;
import pegbed.cli.output.LinesJson;
import pegbed.cli.output.LinesText;
import pegbed.cli.output.Output;
import pegbed.cli.output.PlanJson;
import pegbed.findings.Findings;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.plan.Plan;
import pegbed.session.VisitLessons;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code pegbed lines}: the main job. */
@Command(
        name = "lines",
        mixinStandardHelpOptions = true,
        description =
                "Finds the deepest place, the flat spots at the target depth, the slopes, and the lines and rigs.")
final class LinesCommand implements Callable<Integer> {
    @Parameters(paramLabel = "PEG", description = "The peg file.")
    private Path path;

    @Mixin
    private WishOptions wishes;

    @Mixin
    private NeighbouringPegsOption others;

    @Mixin
    private Output output;

    @Override
    public Integer call() throws InputException {
        Peg peg = PegArgument.look(path, output.err()).peg();
        Findings findings = Findings.of(others.map(path, peg, output.err()), wishes.target());
        Plan plan = Plan.of(findings, wishes.over(peg.wishes()));
        VisitLessons lessons = VisitLessons.of(findings.map(), peg, OffsetDateTime.now(ZoneId.systemDefault()));
        if (output.json()) {
            ObjectNode json = LinesJson.of(findings).setAll(PlanJson.of(plan));
            LessonsJson.putTarget(json, peg, lessons);
            output.print(json);
        } else {
            LinesText.print(findings, plan, lessons, output.out());
        }
        return 0;
    }
}
