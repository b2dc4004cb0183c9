package pegbed.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import pegbed.analysis.Findings;
import pegbed.analysis.Plan;
import pegbed.model.InputException;
import pegbed.model.Peg;
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
    private OtherPegsOption others;

    @Mixin
    private Output output;

    @Override
    public Integer call() throws InputException {
        Peg peg = PegOnDisk.look(path, output.err()).peg();
        Findings findings = Findings.of(others.map(path, peg, output.err()), wishes.target());
        Plan plan = Plan.of(findings, wishes.over(peg.wishes()));
        if (output.json()) {
            output.print(LinesJson.of(findings).setAll(PlanJson.of(plan)));
        } else {
            LinesText.print(findings, plan, output.out());
        }
        return 0;
    }
}
