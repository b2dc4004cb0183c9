package pegbed.ui.fishing;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import pegbed.day.LineHistories;
import pegbed.day.LineHistory;
import pegbed.day.LineRate;
import pegbed.model.Day;
import pegbed.model.DayEvent;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.notation.DayNotation;
import pegbed.session.BackgroundTask;
import pegbed.session.DayAnswer;
import pegbed.session.DayEdits;
import pegbed.session.DayTaps;
import pegbed.session.Session;
import pegbed.session.TypedDay;
import pegbed.ui.plan.PlanViewModel;
import pegbed.wording.DayLogWords;
import pegbed.wording.DayWords;
import pegbed.wording.PlanCards;

/** What a tap on a line notes, and how the lines of the day stand. */
public final class FishingViewModel {
    /**
     * A line as it is fished.
     *
     * @param place where
     * @param title what it is called and how deep it is
     * @param state how long it is fished, when it was fed, what it gave
     * @param fished whether it is being fished
     */
    public record FishingLine(Place place, String title, String state, boolean fished) {}

    private final Session session;
    private final PlanViewModel plan;
    private final Clock clock;
    private final BackgroundTask reckoning;
    private final ObservableList<FishingLine> lines = FXCollections.observableArrayList();
    private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper outlook = new ReadOnlyStringWrapper("");
    private final ObservableList<String> kinds = FXCollections.observableArrayList();
    private final ReadOnlyObjectWrapper<Optional<String>> kind = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<LineHistories> histories = new ReadOnlyObjectWrapper<>();
    private String noted = "";
    private long notedRevision = -1;
    private Optional<Question> asked = Optional.empty();
    private Optional<DayAnswer> answer = Optional.empty();

    /** What the rates depend on, the clock aside. */
    private record Question(Day day, List<Place> planned) {}

    /**
     * @param plan the planned lines
     * @param clock tells when a tap was made
     * @param worker reckons the rates
     * @param owner runs what belongs to the owner's thread
     */
    public FishingViewModel(Session session, PlanViewModel plan, Clock clock, Executor worker, Executor owner) {
        this.session = session;
        this.plan = plan;
        this.clock = clock;
        reckoning = new BackgroundTask("The day's rates could not be worked out", worker, owner, session.log());
        session.onChange(this::refresh);
        plan.planProperty().addListener((property, before, now) -> refresh());
        refresh();
    }

    /** The lines, the planned ones first. */
    public ObservableList<FishingLine> lines() {
        return lines;
    }

    /** What was noted last, with a tick once it is kept; or why it was not. */
    public ReadOnlyStringProperty saidProperty() {
        return said.getReadOnlyProperty();
    }

    /** What is likely of the other lines, in words; empty while there is too little to say. */
    ReadOnlyStringProperty outlookProperty() {
        return outlook.getReadOnlyProperty();
    }

    /** The lines of the day as they were fished up to now. */
    ReadOnlyObjectProperty<LineHistories> historiesProperty() {
        return histories.getReadOnlyProperty();
    }

    /** The kinds of fish that were noted at this peg, the latest first. */
    ObservableList<String> kinds() {
        return kinds;
    }

    /** The kind that a tap notes; empty for none. */
    ReadOnlyObjectProperty<Optional<String>> kindProperty() {
        return kind.getReadOnlyProperty();
    }

    /** From now on a tap notes this kind of fish. */
    void chooseKind(Optional<String> chosen) {
        kind.set(chosen);
    }

    /** Notes what happened on a line. */
    void note(DayEvent.Kind what, Place line) {
        DayEvent event = DayTaps.event(session.peg(), what, line, now());
        note(what == DayEvent.Kind.FISH ? event.named(kind.get().orElse(""), "") : event);
    }

    /** Nothing is fished from now on. */
    void stop() {
        note(DayTaps.stop(now()));
    }

    /**
     * Notes a typed event.
     *
     * @return whether it was understood and noted
     */
    boolean note(String typed) {
        try {
            Peg peg = session.peg();
            note(new TypedDay(peg, Optional.empty(), planned(), now())
                    .event(DayNotation.of(peg).parse(typed)));
            return true;
        } catch (InputException e) {
            say(e.getMessage());
            return false;
        }
    }

    private void note(DayEvent event) {
        try {
            session.edit(DayEdits.add(event));
            noted = DayLogWords.of(session.peg()).noted(histories(), event);
            notedRevision = session.revision();
            refresh();
        } catch (InputException e) {
            say(e.getMessage());
        }
    }

    private void say(String sentence) {
        noted = "";
        said.set(sentence);
    }

    /** The present moment, to the second. */
    public OffsetDateTime now() {
        return OffsetDateTime.now(clock).withNano(0);
    }

    private List<Place> planned() {
        return plan.lines().stream().map(PlanCards.LineCard::place).toList();
    }

    /** The clock has gone on. */
    void tick() {
        asked = Optional.empty();
        refresh();
    }

    private void refresh() {
        if (!noted.isEmpty()) {
            boolean undone = session.revision() != notedRevision;
            boolean kept = session.keptRevision() >= notedRevision;
            noted = undone ? "" : noted;
            said.set(undone ? "" : (kept ? "✓ " : "Noting ") + noted + (kept ? "" : "…"));
        }
        refreshKinds();
        Day day = DayTaps.today(session.peg(), now());
        answer = answer.filter(known -> known.day().equals(day));
        show(histories());
        List<Place> planned = planned();
        Optional<Question> question = Optional.of(new Question(day, planned));
        if (!day.events().isEmpty() && !asked.equals(question)) {
            asked = question;
            Peg peg = session.peg();
            reckoning.latest(
                    monitor -> DayAnswer.of(peg, peg.visits().size() - 1, planned, List.of(), now()),
                    new BackgroundTask.Outcome<>(
                            reckoned -> {
                                answer = Optional.of(reckoned);
                                show(reckoned.histories());
                            },
                            this::say));
        }
    }

    private void refreshKinds() {
        List<String> all = DayTaps.kindsOfFish(session.peg());
        // Buttons keep their places while nothing new came up, so that no tap goes astray.
        if (!kinds.containsAll(all) || kinds.size() != all.size()) {
            kinds.setAll(all);
            kind.set(kind.get().filter(all::contains));
        }
    }

    private LineHistories histories() {
        return LineHistories.of(DayTaps.today(session.peg(), now()), planned(), clock.instant());
    }

    private void show(LineHistories now) {
        histories.set(now);
        outlook.set(answer.map(
                        known -> String.join(" ", DayWords.of(session.peg()).outlook(known.odds())))
                .orElse(""));
        DayLogWords words = DayLogWords.of(session.peg());
        List<FishingLine> shown = new ArrayList<>();
        for (int i = 0; i < now.lines().size(); i++) {
            LineHistory line = now.lines().get(i);
            int index = i;
            Optional<PlanCards.LineCard> card =
                    i < plan.lines().size() ? Optional.of(plan.lines().get(i)) : Optional.empty();
            Optional<LineRate> rate = answer.map(DayAnswer::rates)
                    .filter(rates -> index < rates.size())
                    .map(rates -> rates.get(index));
            shown.add(
                    new FishingLine(line.place(), words.title(line, card), words.state(line, rate), line.fishedNow()));
        }
        if (!lines.equals(shown)) {
            lines.setAll(shown);
        }
    }
}
