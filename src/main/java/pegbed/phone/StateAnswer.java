package pegbed.phone;

import java.util.Locale;
import java.util.Optional;
import pegbed.model.Peg;
import pegbed.model.Visit;
import pegbed.session.DayEdits;
import pegbed.session.VisitEdits;
import pegbed.storage.peg.Moments;
import pegbed.wording.Caution;
import pegbed.wording.LevelWords;
import pegbed.wording.Quantities;

/** How the open peg stands: what its title bar, buttons and visit need. */
final class StateAnswer {
    private StateAnswer() {}

    static JsonText of(PhonePeg phone, Request request) {
        Peg peg = phone.peg();
        Visit today = peg.today();
        JsonText state = new JsonText()
                .put("title", peg.name().title())
                .put("venue", peg.name().venue())
                .put("water", peg.name().water())
                .put("number", peg.name().number())
                .put("depthUnit", peg.units().depth().name().toLowerCase(Locale.ROOT))
                .put("distanceUnit", peg.units().distance().name().toLowerCase(Locale.ROOT))
                .put("revision", (double) phone.revision())
                .put("answered", phone.isAnswered())
                .put("readings", peg.readings().size())
                .put("readingsWords", Quantities.readings(peg.readings().size()))
                .put("canUndo", phone.undoLabel().isPresent())
                .put("undoWords", phone.undoLabel())
                .put("canRedo", phone.redoLabel().isPresent())
                .put("redoWords", phone.redoLabel())
                .put("missing", phone.missing())
                .put("warning", Caution.markedLine(peg));
        JsonText visit = new JsonText()
                .put("number", peg.visits().size())
                .put("first", peg.visits().size() == 1)
                .put("words", new LevelWords(peg).visit(peg.visits().size() - 1))
                .put("readings", today.readings().size());
        if (today.boardToWaterMetres().isPresent()) {
            visit.put(
                    "board", Quantities.of(peg).depth(today.boardToWaterMetres().getAsDouble()));
        }
        Moments.read(request.words("now")).ifPresent(now -> {
            Optional<String> whyNot = VisitEdits.whyNot(peg, now);
            visit.put("canBegin", whyNot.isEmpty())
                    .put("whyNot", whyNot)
                    .put("over", whyNot.isEmpty() && DayEdits.isOver(today, now));
        });
        return state.put("visit", visit);
    }
}
