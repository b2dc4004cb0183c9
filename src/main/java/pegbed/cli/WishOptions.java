package pegbed.cli;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import pegbed.model.InputException;
import pegbed.model.LineCounts;
import pegbed.model.LineWishes;
import pegbed.model.RigWishes;
import pegbed.model.StartLine;
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
    private WholeNumber maxLines;

    @Option(names = "--most-rigs", paramLabel = "N", description = "Rigs wanted at most, 1 to 12.")
    private WholeNumber maxRigs;

    @Option(names = "--track", paramLabel = "N", description = "Lines wanted down the track, 0 to 6.")
    private WholeNumber track;

    @Option(names = "--across", paramLabel = "N", description = "Lines wanted across, 0 to 6.")
    private WholeNumber across;

    @Option(names = "--margins", paramLabel = "N", description = "Lines wanted in each margin, 0 to 6.")
    private WholeNumber margins;

    @Option(names = "--short", paramLabel = "N", description = "Lines wanted in front of the seat, 0 to 6.")
    private WholeNumber shortLines;

    @Option(
            names = "--start-on",
            paramLabel = "PART",
            description = "Where you like to start: track, across, short or margin.")
    private String start;

    @Option(names = "--dead-depth", description = "Plumb to the float's tip, with no line on the bottom.")
    private boolean deadDepth;

    /** The target depth that was given, metres. */
    OptionalDouble target() throws InputException {
        return target == null ? OptionalDouble.empty() : OptionalDouble.of(Target.metres(target));
    }

    /** The peg's wishes with what was given here. */
    Wishes over(Wishes own) throws InputException {
        LineCounts counts = own.lines().counts();
        LineWishes lines = own.lines()
                .withCounts(new LineCounts(
                        within("--track", track, 0, LineCounts.MOST, counts.track()),
                        within("--across", across, 0, LineCounts.MOST, counts.across()),
                        within("--margins", margins, 0, LineCounts.MOST, counts.leftMargin()),
                        within("--margins", margins, 0, LineCounts.MOST, counts.rightMargin()),
                        within("--short", shortLines, 0, LineCounts.MOST, counts.shortLines())))
                .withMost(most(
                        "--most-lines", maxLines, LineWishes.MOST, own.lines().most()))
                .withStart(start(own.lines().start()));
        RigWishes rigs = own.rigs()
                .withMost(
                        most("--most-rigs", maxRigs, RigWishes.MOST, own.rigs().most()))
                .withOverdepth(deadDepth ? OptionalDouble.of(0) : own.rigs().overdepthMetres());
        return own.withLines(lines).withRigs(rigs);
    }

    private Optional<StartLine> start(Optional<StartLine> own) throws InputException {
        if (start == null) {
            return own;
        }
        Optional<StartLine> part = StartLine.of(start.strip().toLowerCase(Locale.ROOT));
        if (part.isEmpty()) {
            throw new InputException("--start-on takes track, across, short or margin, not '" + start + "'.");
        }
        return part;
    }

    private static OptionalInt most(String option, WholeNumber value, int most, OptionalInt own) throws InputException {
        return value == null ? own : OptionalInt.of(within(option, value, 1, most, 1));
    }

    private static int within(String option, WholeNumber value, int least, int most, int own) throws InputException {
        return value == null ? own : value.within(option, least, most);
    }
}
