package pegbed.bench.day;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import pegbed.day.LineHistories;
import pegbed.day.LineHistory;
import pegbed.day.LineOdds;
import pegbed.day.RatePrior;
import pegbed.model.DayEvent;

/** A habit of choosing lines. */
interface Angler {
    /** The line to fish from this minute on. */
    int line(MadeDay day);

    /** Fishes a day to its end; how many fish came. */
    static int catches(Angler angler, MadeDay day) {
        while (!day.over()) {
            day.fish(angler.line(day));
            day.pass();
        }
        return day.caught();
    }

    /** A quarter of an hour on each line, then on that which gave most. */
    static Angler bestOfFirstHour() {
        return new Angler() {
            private int best = -1;

            @Override
            public int line(MadeDay day) {
                if (day.minute() < 60) {
                    return day.minute() / 15;
                }
                if (best < 0) {
                    int[] fish = new int[MadeDay.LINES];
                    for (DayEvent event : day.log().events()) {
                        if (event.kind() == DayEvent.Kind.FISH) {
                            fish[MadeDay.places().indexOf(event.line().orElseThrow())] += event.count();
                        }
                    }
                    best = IntStream.range(0, fish.length)
                            .boxed()
                            .max(Comparator.comparingInt(i -> fish[i]))
                            .orElseThrow();
                }
                return best;
            }
        };
    }

    /** Half an hour on each line in turn. */
    static Angler everyHalfHour() {
        return day -> day.minute() / 30 % MadeDay.LINES;
    }

    /** Always on one line. */
    static Angler firstLine() {
        return day -> 0;
    }

    /**
     * Knows every line's present rate, and goes where it would give more if it stayed so for a while.
     *
     * @param minutes how long that while is
     */
    static Angler knowing(int minutes) {
        return day -> {
            int best = Math.max(0, day.line());
            double most = day.rate(best) * minutes;
            for (int i = 0; i < MadeDay.LINES; i++) {
                double gain = day.rate(i)
                        * (minutes - (day.line() < 0 ? 0 : day.water().changeMinutes()));
                if (i != day.line() && gain > most) {
                    best = i;
                    most = gain;
                }
            }
            return best;
        };
    }

    /** Looks every five minutes, and goes to the line that is named. */
    static Angler advised() {
        return day -> {
            if (day.line() < 0) {
                return 0;
            }
            if (!day.fishing() || day.minute() % 5 != 0) {
                return day.line();
            }
            return odds(day)
                    .named()
                    .map(other -> other.line().number().orElseThrow() - 1)
                    .orElse(day.line());
        };
    }

    static LineOdds odds(MadeDay day) {
        return LineOdds.of(histories(day), RatePrior.VAGUE, LineOdds.CHANGE_MINUTES);
    }

    static LineHistories histories(MadeDay day) {
        Instant now = day.time().toInstant();
        return LineHistories.of(day.log(), MadeDay.places(), now);
    }

    /** The number of a line, from 0. */
    static int index(LineHistory line) {
        return line.number().orElseThrow() - 1;
    }

    static List<Integer> all() {
        return IntStream.range(0, MadeDay.LINES).boxed().toList();
    }
}
