package pegbed.samples;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import pegbed.model.Conditions;
import pegbed.model.Day;
import pegbed.model.DayEvent;
import pegbed.model.Extras;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Visit;

/**
 * Visits that nobody made: what was fished, fed and caught is drawn from invented rates. The same seed gives the same.
 *
 * @param across the line across, on the ledge
 * @param track the line in the track
 * @param margin the line in the left margin
 * @param shortLine the line in front of the seat
 */
record InventedVisits(Place across, Place track, Place margin, Place shortLine) {
    private static final List<String> STARTS = List.of(
            "2026-04-25T09:10:00+01:00",
            "2026-05-09T08:40:00+01:00",
            "2026-05-23T09:00:00+01:00",
            "2026-06-06T07:50:00+01:00",
            "2026-06-20T08:15:00+01:00",
            "2026-07-04T07:35:00+01:00",
            "2026-07-25T08:05:00+01:00",
            "2026-08-08T08:00:00+01:00",
            "2026-08-29T08:30:00+01:00",
            "2026-09-12T09:05:00+01:00",
            "2026-10-03T09:20:00+01:00",
            "2026-10-24T09:45:00+01:00");

    /** Water on each visit, °C. */
    private static final double[] WATER = {10.5, 13, 14.5, 16, 18, 19.5, 20.5, 20, 18, 16, 13, 10};

    /** From the board down to the water on each visit, metres. */
    private static final double[] BOARD = {0.31, 0.31, 0.305, 0.32, 0.315, 0.31, 0.33, 0.325, 0.315, 0.31, 0.305, 0.30};

    private static final List<String> WINDS =
            List.of("light, south-west", "none", "gusts from the left", "fresh, into the face");
    private static final List<String> FISH = List.of("F1", "F1", "skimmer", "roach");

    /** A line's turn: which line, for how many minutes, with what rate of fish an hour. */
    private record Turn(Place line, int minutes, double fishAnHour) {}

    /** The peg with the first visit fished and eleven more behind it. */
    Peg over(Peg plumbed) {
        List<Visit> visits = new ArrayList<>();
        for (int v = 0; v < STARTS.size(); v++) {
            OffsetDateTime start = OffsetDateTime.parse(STARTS.get(v));
            Visit visit = v == 0
                    ? plumbed.today()
                    : new Visit(
                            Optional.of(start),
                            OptionalDouble.of(BOARD[v]),
                            List.of(),
                            SamplePegs.INVENTED_FISHING,
                            Extras.NONE);
            visits.add(visit.withDay(day(v, start)));
        }
        return plumbed.withVisits(visits);
    }

    static OffsetDateTime firstStart() {
        return OffsetDateTime.parse(STARTS.get(0));
    }

    static OptionalDouble firstBoard() {
        return OptionalDouble.of(BOARD[0]);
    }

    private Day day(int visit, OffsetDateTime start) {
        Random random = new Random(1000 + visit);
        double good = Math.exp(0.25 * random.nextGaussian()) * (WATER[visit] > 12 ? 1 : 0.6);
        // Across does best on most visits, the margin on a few; the track is steady.
        double acrossRate = visit % 6 == 4 ? 5 : 13;
        List<Turn> turns = List.of(
                new Turn(track, 50, 8 * good),
                new Turn(across, 60, acrossRate * good),
                new Turn(shortLine, 30, 6 * good),
                new Turn(across, 40, 0.8 * acrossRate * good),
                new Turn(margin, 45, (visit % 6 == 4 ? 11 : 5) * good));
        List<DayEvent> events = new ArrayList<>();
        // Plumbing and rigs come first.
        int minute = 70;
        for (Place line : List.of(across, margin)) {
            events.add(DayEvent.of(start.plusMinutes(minute), DayEvent.Kind.FEED, Optional.of(line))
                    .named("pellets", "half a pot"));
        }
        for (Turn turn : turns) {
            fish(turn, start.plusMinutes(minute), random, events);
            minute += turn.minutes();
        }
        events.add(DayEvent.of(start.plusMinutes(minute), DayEvent.Kind.STOP, Optional.empty()));
        events.sort(Comparator.comparing(DayEvent::time));
        Conditions conditions = new Conditions(
                OptionalDouble.of(Math.rint(WATER[visit] + 3 * random.nextGaussian())),
                OptionalDouble.of(WATER[visit]),
                WINDS.get(visit % WINDS.size()),
                visit % 3 == 0 ? "tinged green" : "clear to 1 ft",
                Extras.NONE);
        return new Day(conditions, events);
    }

    private static void fish(Turn turn, OffsetDateTime from, Random random, List<DayEvent> events) {
        Optional<Place> line = Optional.of(turn.line());
        events.add(DayEvent.of(from, DayEvent.Kind.START, line));
        for (int minute = 1; minute < turn.minutes(); minute++) {
            OffsetDateTime time = from.plusMinutes(minute);
            if (minute % 10 == 5) {
                events.add(DayEvent.of(time, DayEvent.Kind.FEED, line).named("pellets", "pinch"));
            }
            double chance = random.nextDouble() * 60;
            if (chance < turn.fishAnHour()) {
                String kind = FISH.get(random.nextInt(FISH.size()));
                double kilograms = ("F1".equals(kind) ? 0.55 : 0.2) * Math.exp(0.3 * random.nextGaussian());
                events.add(DayEvent.of(time, DayEvent.Kind.FISH, line)
                        .named(kind, "")
                        .with(1, OptionalDouble.of(Math.round(kilograms * 100) / 100.0)));
            } else if (chance < 1.3 * turn.fishAnHour()) {
                events.add(DayEvent.of(time, DayEvent.Kind.BITE, line));
            } else if (chance < 1.35 * turn.fishAnHour()) {
                events.add(DayEvent.of(time, DayEvent.Kind.LOST, line));
            }
        }
    }
}
