package pegbed.cli;

import java.nio.file.Path;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import pegbed.analysis.Findings;
import pegbed.analysis.PegMap;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code pegbed lines}: the main job. */
@Command(
        name = "lines",
        mixinStandardHelpOptions = true,
        description = "Finds the deepest place, the flat spots at the target depth, and the slopes.")
final class LinesCommand implements Callable<Integer> {
    @Parameters(paramLabel = "PEG", description = "The peg file.")
    private Path path;

    @Option(
            names = "--target",
            paramLabel = "D",
            description = "The depth sought across and in the margins: metres, or with its unit as 2'9, 33in or 84cm."
                    + " Half the deepest if not given.")
    private String target;

    @Mixin
    private Output output;

    @Override
    public Integer call() throws InputException {
        Peg peg = PegOnDisk.look(path, output.err()).peg();
        OptionalDouble wished = target == null ? OptionalDouble.empty() : OptionalDouble.of(Target.metres(target));
        Findings findings = Findings.of(PegMap.of(peg, Monitor.NONE), wished);
        if (output.json()) {
            output.print(LinesJson.of(findings));
        } else {
            LinesText.print(findings, output.out());
        }
        return 0;
    }
}
