package pegbed.cli.output;

import java.io.PrintWriter;
import java.util.List;
import pegbed.model.Peg;
import pegbed.model.Visit;
import pegbed.surface.posterior.VisitLevel;
import pegbed.visits.LevelAnswer;
import pegbed.visits.LevelAnswer.CheckReading;
import pegbed.wording.LevelWords;
import pegbed.wording.Quantities;

/** The answers of {@code pegbed level} in words. */
public final class LevelText {
    private LevelText() {}

    public static void print(Peg peg, LevelAnswer answer, List<AfterCheck> after, PrintWriter out) {
        LevelWords words = new LevelWords(peg);
        Visit today = peg.today();
        out.println(peg.name().title() + ", " + words.visit(peg.visits().size() - 1) + ", "
                + Quantities.readings(today.readings().size()) + " today"
                + (today.boardToWaterMetres().isPresent()
                        ? ", board to water "
                                + Quantities.of(peg)
                                        .depth(today.boardToWaterMetres().getAsDouble())
                        : ""));
        for (AfterCheck check : after) {
            out.println("Added: " + check.understood());
            check.answer().against().ifPresent(level -> out.println("  " + words.level(level)));
        }
        if (answer.levels().isEmpty()) {
            out.println(LevelWords.FIRST_VISIT);
        }
        if (after.isEmpty() || answer.levels().size() > 1) {
            answer.levels().forEach(level -> out.println(line(level, words)));
        }
        if (today.afresh()) {
            out.println("The bottom was dug out before this visit: earlier readings are kept and not used.");
        }
        answer.board().ifPresent(board -> out.println("! " + words.board(board)));
        answer.changes().forEach(change -> out.println("! " + words.change(change)));
        if (!answer.checks().isEmpty()) {
            out.println("To know it better");
            int number = 1;
            for (CheckReading check : answer.checks()) {
                out.println("  " + number++ + ". " + words.check(check));
                out.println("     " + words.why(check));
            }
        } else if (answer.against().isPresent()) {
            out.println(LevelWords.KNOWN_WELL);
        }
    }

    private static String line(VisitLevel level, LevelWords words) {
        return level.readings() == 0
                ? "Nothing that was read on " + words.visit(level.visit()) + " is used."
                : words.level(level);
    }
}
