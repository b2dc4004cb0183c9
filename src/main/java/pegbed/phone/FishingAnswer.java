package pegbed.phone;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pegbed.day.LineHistories;
import pegbed.day.LineHistory;
import pegbed.model.DayEvent;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.notation.DayNotation;
import pegbed.plan.Plan;
import pegbed.session.DayEdits;
import pegbed.session.DayTaps;
import pegbed.session.TypedDay;
import pegbed.wording.Caution;
import pegbed.wording.DayLogWords;
import pegbed.wording.DayWords;
import pegbed.wording.PlanCards;
import pegbed.wording.Sentences;

/** The day's fishing: the lines as they are fished, and what a tap on one notes. */
final class FishingAnswer {
    private final PhonePeg phone;
    private final OffsetDateTime now;

    FishingAnswer(PhonePeg phone, OffsetDateTime now) {
        this.phone = phone;
        this.now = now;
    }

    /** The lines, planned ones first, with their buttons. */
    JsonText lines() {
        Optional<Plan> plan = phone.shownPlan();
        List<PlanCards.LineCard> cards = plan.map(PlanCards::lines).orElse(List.of());
        DayLogWords words = DayLogWords.of(phone.peg());
        List<JsonText> lines = new ArrayList<>();
        List<LineHistory> histories = histories().lines();
        for (int i = 0; i < histories.size(); i++) {
            LineHistory line = histories.get(i);
            List<String> parts = words.parts(line);
            lines.add(new JsonText()
                    .put(
                            "title",
                            i < cards.size()
                                    ? cards.get(i).number() + ". "
                                            + cards.get(i).title()
                                    : Sentences.capital(DayWords.of(phone.peg()).line(line)))
                    .put(
                            "state",
                            parts.isEmpty() ? DayLogWords.NOTHING_YET : Sentences.capital(String.join("; ", parts)))
                    .put("fished", line.fishedNow())
                    .put("x", line.place().xMetres())
                    .put("y", line.place().yMetres()));
        }
        return new JsonText()
                .put("lines", lines)
                .put(
                        "taps",
                        DayTaps.KINDS.stream()
                                .map(kind ->
                                        new JsonText().put("kind", word(kind)).put("words", DayTaps.words(kind)))
                                .toList())
                .put("fishing", histories.stream().anyMatch(LineHistory::fishedNow))
                .putWords("cautions", Caution.day());
    }

    private static String word(DayEvent.Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }

    private LineHistories histories() {
        return LineHistories.of(DayTaps.today(phone.peg(), now), planned(), now.toInstant());
    }

    private List<Place> planned() {
        return phone.shownPlan().map(Plan::places).orElse(List.of());
    }

    /** Notes what a tap on a line's button says; {@code stop} needs no line. */
    JsonText tap(String word, Optional<Place> line) throws InputException {
        if (word.equals(word(DayEvent.Kind.STOP))) {
            return note(DayTaps.stop(now));
        }
        for (DayEvent.Kind kind : DayTaps.KINDS) {
            if (word(kind).equals(word) && line.isPresent()) {
                return note(DayTaps.event(phone.peg(), kind, line.get(), now));
            }
        }
        throw new InputException("The page asked to note '" + word + "', which there is not; load it again.");
    }

    /** Notes a typed event. */
    JsonText typed(String line) throws InputException {
        Peg peg = phone.peg();
        return note(new TypedDay(peg, Optional.empty(), planned(), now)
                .event(DayNotation.of(peg).parse(line)));
    }

    private JsonText note(DayEvent event) throws InputException {
        phone.edit(DayEdits.add(event), now);
        return new JsonText().put("noted", DayLogWords.of(phone.peg()).noted(histories(), event));
    }
}
