package pegbed.session;

import java.time.OffsetDateTime;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import pegbed.model.Day;
import pegbed.model.DayEvent;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Visit;

/** What a tap on a line's button notes. */
public final class DayTaps {
    /** What can be tapped on a line, in the order of the buttons. */
    public static final List<DayEvent.Kind> KINDS =
            List.of(DayEvent.Kind.START, DayEvent.Kind.FISH, DayEvent.Kind.BITE, DayEvent.Kind.FEED);

    private static final int MOST_KINDS_OF_FISH = 6;

    private DayTaps() {}

    /** The kinds of fish that were noted at a peg, the latest first, {@value #MOST_KINDS_OF_FISH} at most. */
    public static List<String> kindsOfFish(Peg peg) {
        Set<String> kinds = new LinkedHashSet<>();
        for (int v = peg.visits().size() - 1; v >= 0; v--) {
            List<DayEvent> events = peg.visits().get(v).day().events();
            for (int i = events.size() - 1; i >= 0 && kinds.size() < MOST_KINDS_OF_FISH; i--) {
                if (events.get(i).kind() == DayEvent.Kind.FISH
                        && !events.get(i).name().isBlank()) {
                    kinds.add(events.get(i).name());
                }
            }
        }
        return List.copyOf(kinds);
    }

    /** What a button says. */
    public static String words(DayEvent.Kind kind) {
        return switch (kind) {
            case START -> "Fish here";
            case FISH -> "Fish";
            case BITE -> "Bite";
            case FEED -> "Feed";
            case STOP -> "Stop";
            case LOST -> "Lost";
            case SNAG -> "Snag";
            case NOTE -> "Note";
        };
    }

    /** What happened on a line; feed has the name and amount of the last on that line, or else on any. */
    public static DayEvent event(Peg peg, DayEvent.Kind kind, Place line, OffsetDateTime now) {
        DayEvent event = DayEvent.of(now.withNano(0), kind, Optional.of(line));
        if (kind != DayEvent.Kind.FEED) {
            return event;
        }
        return lastFeed(peg, fed -> fed.line().filter(line::equals).isPresent())
                .or(() -> lastFeed(peg, fed -> true))
                .map(fed -> event.named(fed.name(), fed.amount()))
                .orElse(event);
    }

    private static Optional<DayEvent> lastFeed(Peg peg, Predicate<DayEvent> which) {
        return peg.visits().stream()
                .flatMap(visit -> visit.day().events().stream())
                .filter(event -> event.kind() == DayEvent.Kind.FEED)
                .filter(which)
                .reduce((first, second) -> second);
    }

    /** Nothing is fished from now on. */
    public static DayEvent stop(OffsetDateTime now) {
        return DayEvent.of(now.withNano(0), DayEvent.Kind.STOP, Optional.empty());
    }

    /** The log of the visit that goes on; nothing where the latest is over. */
    public static Day today(Peg peg, OffsetDateTime now) {
        Visit latest = peg.today();
        return DayEdits.isOver(latest, now) ? Day.NONE : latest.day();
    }
}
