package pegbed.cli;

import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import pegbed.cli.output.AfterCheck;
import pegbed.cli.output.LevelJson;
import pegbed.cli.output.LevelText;
import pegbed.cli.output.Output;
import pegbed.cli.output.Progress;
import pegbed.findings.PegMap;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.notation.Entry;
import pegbed.notation.Line;
import pegbed.notation.LineBounds;
import pegbed.notation.Notation;
import pegbed.session.VisitEdits;
import pegbed.visits.LevelAnswer;
import pegbed.wording.TypedLineWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code pegbed level}: how today's water stands to the earlier visits'. */
@Command(
        name = "level",
        mixinStandardHelpOptions = true,
        description = {
            "Says how high the water stands today, and which one to three readings would tell it best.",
            "Everything else is at today's level at once."
        })
public final class LevelCommand implements Callable<Integer> {
    @Parameters(paramLabel = "PEG", description = "The peg file.")
    private Path path;

    @Option(names = "--arrive", description = "Begin a new visit, today's: what is added from now on belongs to it.")
    private boolean arrive;

    @Option(
            names = "--board",
            paramLabel = "M",
            description = "From the board down to the water: metres, or with its unit as 38cm or 15in.")
    private String board;

    @Option(
            names = "--check",
            paramLabel = "LINE",
            description = "A check reading, typed as one line such as \"s4 0 5'6\"; may be given more than once.")
    private List<String> checks = List.of();

    @Option(
            names = "--dug-out",
            description =
                    "The bottom was dug out before this visit: earlier readings stay in the file and are not used.")
    private boolean dugOut;

    @Mixin
    private Output output;

    @Override
    public Integer call() throws InputException {
        boolean changes = arrive || board != null || !checks.isEmpty() || dugOut;
        PegArgument.Changed<Answers> changed = changes
                ? PegArgument.change(path, output.err(), this::answered)
                : answered(PegArgument.look(path, output.err()).peg());
        LevelAnswer answer = changed.answer().last();
        List<AfterCheck> after = changed.answer().after();
        if (output.json()) {
            output.print(LevelJson.of(changed.peg(), answer, after));
        } else {
            LevelText.print(changed.peg(), answer, after, output.out());
        }
        return 0;
    }

    /** The answer after each check reading, and the last. */
    private record Answers(List<AfterCheck> after, LevelAnswer last) {}

    /** The peg with what the options say, and the answers. */
    private PegArgument.Changed<Answers> answered(Peg before) throws InputException {
        Peg peg = before;
        if (arrive) {
            OffsetDateTime now = OffsetDateTime.now(ZoneId.systemDefault()).truncatedTo(ChronoUnit.SECONDS);
            peg = VisitEdits.begin(peg, now).change().apply(peg);
        }
        if (board != null) {
            OptionalDouble metres = OptionalDouble.of(Target.metres("--board", board));
            peg = peg.withToday(visit -> visit.withBoard(metres));
        }
        if (dugOut) {
            if (peg.visits().size() < 2) {
                throw new InputException("This is the first visit, so there are no readings from before the digging;"
                        + " begin today's with --arrive --dug-out.");
            }
            peg = peg.withToday(visit -> visit.withAfresh(true));
        }
        Progress progress = new Progress(output.err());
        List<AfterCheck> after = new ArrayList<>();
        for (String typed : checks) {
            Line line = Notation.of(peg).parse(typed);
            if (!(line instanceof Line.ReadingLine)) {
                throw new InputException("--check takes a reading, such as \"s4 0 5'6\", not '" + typed + "'.");
            }
            LineBounds.refuse(peg, line, typed);
            String understood = TypedLineWords.of(peg).understood(line);
            peg = Entry.in(peg, line);
            after.add(new AfterCheck(understood, LevelAnswer.of(PegMap.of(peg, progress.of("Fitting the bottom")))));
        }
        LevelAnswer answer = after.isEmpty()
                ? LevelAnswer.of(PegMap.of(peg, progress.of("Fitting the bottom")))
                : after.get(after.size() - 1).answer();
        progress.end();
        return new PegArgument.Changed<>(peg, new Answers(after, answer));
    }
}
