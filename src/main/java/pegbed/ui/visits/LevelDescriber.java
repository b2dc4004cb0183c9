package pegbed.ui.visits;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executor;
import pegbed.findings.PegMap;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.notation.ShortForm;
import pegbed.session.BackgroundTask;
import pegbed.storage.disk.ProgramLog;
import pegbed.surface.posterior.VisitLevel;
import pegbed.visits.LevelAnswer;
import pegbed.visits.LevelAnswer.CheckReading;
import pegbed.visits.LevelByReadings;
import pegbed.wording.LevelWords;

/** Puts levels into words off the owner's thread; only the newest question is answered. */
final class LevelDescriber {
    /** Of so many visits, the latest, the list states how well their level is known. */
    static final int VISITS_WITH_DOUBT = 12;

    private final BackgroundTask describing;
    private final LevelByReadings steps = new LevelByReadings();

    /**
     * What is known of the levels of a map.
     *
     * @param level how today's water stands, one sentence
     * @param rows how each visit's water stands to the first's, in words
     * @param checks readings to take for the level
     * @param steps the level after each of today's first readings
     * @param changes where the bottom has changed
     */
    record Description(
            String level,
            List<String> rows,
            List<VisitsViewModel.Check> checks,
            List<String> steps,
            List<VisitsViewModel.Changed> changes) {}

    /**
     * @param worker does the work, one piece after the other
     * @param owner gets the answers
     * @param log keeps errors that nobody expected
     */
    LevelDescriber(Executor worker, Executor owner, ProgramLog log) {
        describing = new BackgroundTask("The levels could not be worked out", worker, owner, log);
    }

    /** Asks about a map; what was asked before is not wanted any more. */
    void ask(PegMap map, BackgroundTask.Outcome<Description> outcome) {
        describing.latest(monitor -> describe(map, monitor), outcome);
    }

    /** Nothing is wanted any more. */
    void forget() {
        describing.cancel();
    }

    private Description describe(PegMap map, Monitor monitor) {
        LevelWords words = new LevelWords(map.peg());
        LevelAnswer answer = LevelAnswer.of(map);
        List<VisitsViewModel.Check> checks = new ArrayList<>();
        for (CheckReading check : answer.checks()) {
            checks.add(
                    new VisitsViewModel.Check(checks.size() + 1, words.check(check), words.why(check), check.place()));
        }
        List<VisitsViewModel.Changed> changes = answer.changes().stream()
                .map(change -> new VisitsViewModel.Changed(
                        words.change(change), new Place(change.xMetres(), change.yMetres())))
                .toList();
        return new Description(
                words.today(answer), rows(map, words, monitor), checks, steps(map, words, monitor), changes);
    }

    /**
     * Doubts are worked out for the latest visits only: each takes a solve of its own, and a list is to be there soon.
     */
    private static List<String> rows(PegMap map, LevelWords words, Monitor monitor) {
        int visits = map.peg().visits().size();
        List<String> rows = new ArrayList<>();
        for (int v = 0; v < visits; v++) {
            monitor.check();
            if (v == 0) {
                rows.add("the level of the first");
            } else if (v >= visits - VISITS_WITH_DOUBT) {
                rows.add(words.stands(map.bottom().level(v, 0)));
            } else {
                rows.add(words.how(map.bottom().higher(v, 0)));
            }
        }
        return rows;
    }

    private List<String> steps(PegMap map, LevelWords words, Monitor monitor) {
        Peg peg = map.peg();
        ShortForm form = new ShortForm(peg.units(), peg.pole(), '.');
        List<VisitLevel> levels = steps.of(map, monitor);
        List<String> description = new ArrayList<>();
        for (int i = 0; i < levels.size(); i++) {
            description.add(
                    form.printReading(peg.today().readings().get(i)) + ": " + words.stands(levels.get(i)) + ".");
        }
        return description;
    }
}
