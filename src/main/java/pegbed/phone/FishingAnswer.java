package pegbed.phone;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import pegbed.day.LineHistories;
import pegbed.day.LineHistory;
import pegbed.day.LineRate;
import pegbed.model.Day;
import pegbed.model.DayEvent;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.notation.DayNotation;
import pegbed.plan.Plan;
import pegbed.report.day.DayStrip;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.TextMeasure;
import pegbed.session.DayAnswer;
import pegbed.session.DayEdits;
import pegbed.session.DayTaps;
import pegbed.session.TypedDay;
import pegbed.wording.Caution;
import pegbed.wording.DayLogWords;
import pegbed.wording.DayWords;
import pegbed.wording.PlanCards;

/** The day's fishing: the lines as they are fished, what is likely of them, and what a tap on one notes. */
final class FishingAnswer {
    /** What a line's buttons note: a thumb has room for one more than the window's row. */
    private static final List<DayEvent.Kind> TAPS =
            Stream.concat(DayTaps.KINDS.stream(), Stream.of(DayEvent.Kind.LOST)).toList();

    private final PhonePeg phone;
    private final Peg peg;
    private final OffsetDateTime now;

    FishingAnswer(PhonePeg phone, OffsetDateTime now) {
        this.phone = phone;
        peg = phone.peg();
        this.now = now;
    }

    /** The lines, planned ones first, with their buttons. */
    JsonText lines() {
        Day day = DayTaps.today(peg, now);
        Optional<DayAnswer> answer = day.events().isEmpty()
                ? Optional.empty()
                : Optional.of(DayAnswer.of(peg, peg.visits().size() - 1, planned(), List.of(), now));
        LineHistories histories = answer.map(DayAnswer::histories).orElseGet(() -> histories(peg));
        List<PlanCards.LineCard> cards = phone.shownPlan().map(PlanCards::lines).orElse(List.of());
        List<JsonText> lines = new ArrayList<>();
        for (int i = 0; i < histories.lines().size(); i++) {
            Optional<PlanCards.LineCard> card = i < cards.size() ? Optional.of(cards.get(i)) : Optional.empty();
            int index = i;
            lines.add(line(
                    histories.lines().get(i),
                    card,
                    answer.map(known -> known.rates().get(index))));
        }
        return new JsonText()
                .put("lines", lines)
                .put("noLines", lines.isEmpty() ? Optional.of(DayLogWords.NO_LINES) : Optional.empty())
                .put("taps", TAPS.stream().map(FishingAnswer::tap).toList())
                .put("stop", tap(DayEvent.Kind.STOP).put("meaning", DayLogWords.STOP))
                .put("fishing", histories.fished().isPresent())
                .putWords("kindsOfFish", DayTaps.kindsOfFish(peg))
                .put("warning", Caution.markedLine(peg))
                .put("example", DayNotation.EXAMPLE)
                .put("strip", DayLogWords.STRIP)
                .putWords(
                        "outlook",
                        answer.map(known -> DayWords.of(peg).outlook(known.odds()))
                                .orElse(List.of()))
                .putWords("cautions", Caution.day());
    }

    private JsonText line(LineHistory line, Optional<PlanCards.LineCard> card, Optional<LineRate> rate) {
        DayLogWords words = DayLogWords.of(peg);
        return new JsonText()
                .put("title", words.title(line, card))
                .put("state", words.state(line, rate))
                .put("fished", line.fishedNow())
                .put("x", line.place().xMetres())
                .put("y", line.place().yMetres());
    }

    private static JsonText tap(DayEvent.Kind kind) {
        return new JsonText().put("kind", word(kind)).put("words", DayTaps.words(kind));
    }

    private static String word(DayEvent.Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }

    private LineHistories histories(Peg logged) {
        return LineHistories.of(DayTaps.today(logged, now), planned(), now.toInstant());
    }

    private List<Place> planned() {
        return phone.shownPlan().map(Plan::places).orElse(List.of());
    }

    /** The day as a picture; empty while nothing happened on a line. */
    Optional<Drawing> strip(double widthPoints, TextMeasure measure) {
        return DayStrip.of(peg, histories(peg), widthPoints, measure);
    }

    /**
     * Notes what a tap on a line's button says; {@code stop} needs no line.
     *
     * @param fish the kind of fish; empty for none
     */
    JsonText tap(String word, Optional<Place> line, String fish) throws InputException {
        if (word.equals(word(DayEvent.Kind.STOP))) {
            return note(DayTaps.stop(now));
        }
        for (DayEvent.Kind kind : TAPS) {
            if (word(kind).equals(word) && line.isPresent()) {
                DayEvent event = DayTaps.event(peg, kind, line.get(), now);
                return note(kind == DayEvent.Kind.FISH ? event.named(fish, "") : event);
            }
        }
        throw new InputException("The page asked to note '" + word + "', which there is not; load it again.");
    }

    /** Notes a typed event. */
    JsonText typed(String line) throws InputException {
        return note(new TypedDay(peg, Optional.empty(), planned(), now)
                .event(DayNotation.of(peg).parse(line)));
    }

    private JsonText note(DayEvent event) throws InputException {
        phone.edit(DayEdits.add(event), now);
        Peg noted = phone.peg();
        return new JsonText().put("noted", DayLogWords.of(noted).noted(histories(noted), event));
    }
}
