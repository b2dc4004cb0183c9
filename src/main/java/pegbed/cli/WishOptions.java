package pegbed.cli;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import pegbed.model.InputException;
import pegbed.model.LineCounts;
import pegbed.model.LineWishes;
import pegbed.model.RigWishes;
import pegbed.model.Wishes;
import picocli.CommandLine.Option;

/** Options that change what is wanted of the answers, for this time; what is not given stays as the peg file has it. */
final class WishOptions {
    @Option(
            names = "--target",
            paramLabel = "D",
            description = "The depth sought across and in the margins: metres, or with its unit as 2'9, 33in or 84cm."
                    + " Half the deepest if not given.")
    private String target;

    @Option(names = "--most-lines", paramLabel = "N", description = "Lines wanted at most, 1 to 12.")
    private Integer maxLines;

    @Option(names = "--most-rigs", paramLabel = "N", description = "Rigs wanted at most, 1 to 12.")
    private Integer maxRigs;

    @Option(names = "--track", paramLabel = "N", description = "Lines wanted down the track, 0 to 6.")
    private Integer track;

    @Option(names = "--across", paramLabel = "N", description = "Lines wanted across, 0 to 6.")
    private Integer across;

    @Option(names = "--margins", paramLabel = "N", description = "Lines wanted in each margin, 0 to 6.")
    private Integer margins;

    @Option(names = "--short", paramLabel = "N", description = "Lines wanted in front of the seat, 0 to 6.")
    private Integer shortLines;

    @Option(names = "--dead-depth", description = "Plumb to the float's tip, with no line on the bottom.")
    private boolean deadDepth;

    /** The target depth that was given, metres. */
    OptionalDouble target() throws InputException {
        return target == null ? OptionalDouble.empty() : OptionalDouble.of(Target.metres(target));
    }

    /** The peg's wishes with what was given here. */
    Wishes over(Wishes own) throws InputException {
        LineCounts counts = own.lines().counts();
        try {
            LineWishes lines = own.lines()
                    .withCounts(new LineCounts(
                            given(track, counts.track()),
                            given(across, counts.across()),
                            given(margins, counts.leftMargin()),
                            given(margins, counts.rightMargin()),
                            given(shortLines, counts.shortLines())))
                    .withMost(maxLines == null ? own.lines().most() : OptionalInt.of(maxLines));
            RigWishes rigs = own.rigs()
                    .withMost(maxRigs == null ? own.rigs().most() : OptionalInt.of(maxRigs))
                    .withOverdepth(deadDepth ? OptionalDouble.of(0) : own.rigs().overdepthMetres());
            return own.withLines(lines).withRigs(rigs);
        } catch (IllegalArgumentException e) {
            throw new InputException(e.getMessage(), e);
        }
    }

    private static int given(Integer value, int own) {
        return Optional.ofNullable(value).orElse(own);
    }
}
