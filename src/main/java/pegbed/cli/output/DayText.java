package pegbed.cli.output;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbed.day.LineHistory;
import pegbed.model.DayEvent;
import pegbed.model.Peg;
import pegbed.model.Visit;
import pegbed.session.DayAnswer;
import pegbed.session.VisitLessons;
import pegbed.wording.Caution;
import pegbed.wording.DayLogWords;
import pegbed.wording.DayWords;
import pegbed.wording.Quantities;
import pegbed.wording.Sentences;

/** A day's log as text. */
public final class DayText {
    private DayText() {}

    /**
     * Prints a day's log and what it says of its lines.
     *
     * @param visit which visit, from 0
     * @param lessons what finished visits teach, if the bottom is known
     */
    public static void print(Peg peg, int visit, DayAnswer answer, Optional<VisitLessons> lessons, PrintWriter out) {
        DayLogWords words = DayLogWords.of(peg);
        DayWords said = DayWords.of(peg);
        Visit looked = peg.visits().get(visit);
        out.println(peg.name().water() + ", peg " + peg.name().number() + ", visit " + (visit + 1)
                + looked.start().map(start -> ", " + Quantities.day(start)).orElse(""));
        words.conditions(answer.day().conditions()).ifPresent(out::println);
        out.println();
        if (answer.day().events().isEmpty()) {
            out.println("Nothing was noted; begin with --add \"line 1 start\".");
            lessons.ifPresent(known -> taught(peg, known, out));
            return;
        }
        out.println("Log");
        List<List<String>> rows = new ArrayList<>();
        List<DayEvent> events = answer.day().events();
        for (int i = 0; i < events.size(); i++) {
            DayEvent event = events.get(i);
            rows.add(List.of(
                    Integer.toString(i + 1),
                    DayLogWords.clock(event.time()),
                    words.line(answer.histories(), event),
                    words.what(event)));
        }
        PlanText.table(rows, out);
        out.println();
        out.println("Lines");
        rows.clear();
        for (int i = 0; i < answer.rates().size(); i++) {
            LineHistory line = answer.rates().get(i).line();
            rows.add(List.of(
                    Sentences.capital(said.line(line)),
                    words.given(line),
                    said.rate(answer.rates().get(i)).orElse(""),
                    said.weight(answer.rates().get(i)).orElse(""),
                    said.since(line)));
        }
        PlanText.table(rows, out);
        said.outlook(answer.odds()).forEach(sentence -> out.println("  " + sentence));
        said.visits(answer.prior().visits()).ifPresent(sentence -> out.println("  " + sentence));
        lessons.ifPresent(known -> taught(peg, known, out));
        out.println();
        Caution.day().forEach(out::println);
    }

    private static void taught(Peg peg, VisitLessons lessons, PrintWriter out) {
        if (lessons.visits() > 0) {
            out.println();
            LessonsText.print(peg, lessons, out);
        }
    }
}
