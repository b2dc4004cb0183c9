package pegbed.bench.day;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import pegbed.model.Conditions;
import pegbed.model.Day;
import pegbed.model.DayEvent;
import pegbed.model.Place;

/**
 * A day in a made world, fished minute by minute. A line's rate is level · fish there · (1 + feed's draw) · stock: the
 * logarithm of the fish there is an Ornstein–Uhlenbeck process, or fish come and go; feed draws nothing for six
 * minutes, rises to its whole over nine more and wanes; every fish caught takes a share of the stock, which recovers.
 * What does not hang on the fishing is drawn before it, so that all habits meet the same day.
 */
final class MadeDay {
    static final int LINES = 4;

    /** How long a day lasts, minutes. */
    static final int MINUTES = 300;

    /** Feed's draw is its whole after so long, minutes. */
    private static final int DRAWN_MINUTES = 15;

    private static final int SUNK_MINUTES = 6;
    private static final double WANING_MINUTES = 25;

    /** Feed of the line that is fished every so often, of the others every so often, minutes. */
    private static final int OWN_FEED_MINUTES = 10;

    private static final int OTHER_FEED_MINUTES = 30;

    /** Share of the time in which a line has fish where they come and go, and what is left of the rate else. */
    private static final double PRESENT = 0.4;

    private static final double LEFT = 0.15;

    private static final OffsetDateTime START = OffsetDateTime.parse("2026-06-06T10:00:00+01:00");

    private final MadeWater water;
    private final double[][] there = new double[LINES][MINUTES + 60];
    private final double[][] luck = new double[LINES][MINUTES + 60];
    private final List<List<Integer>> feeds = new ArrayList<>();
    private final double[] stock = {1, 1, 1, 1};
    private final List<DayEvent> events = new ArrayList<>();
    private final int[] caughtIn = new int[MINUTES + 60];

    private int minute;
    private int line = -1;
    private int arriving;
    private int caught;

    MadeDay(MadeWater water, long seed) {
        this.water = water;
        Random random = new Random(seed * 0x9E3779B97F4A7C15L + 12345);
        double day = Math.log(water.fishAnHour()) + water.daySd() * random.nextGaussian();
        for (int i = 0; i < LINES; i++) {
            feeds.add(new ArrayList<>());
            double level = day + water.lineSd() * random.nextGaussian();
            if (water.comeAndGo()) {
                comeAndGo(i, level, random);
            } else {
                wander(i, level, random);
            }
            for (int t = 0; t < luck[i].length; t++) {
                luck[i][t] = random.nextDouble();
            }
        }
    }

    private void wander(int i, double level, Random random) {
        double keep = water.wanderMinutes() > 0 ? Math.exp(-1 / water.wanderMinutes()) : 0;
        double x = random.nextGaussian();
        for (int t = 0; t < there[i].length; t++) {
            there[i][t] = Math.exp(level + water.wanderSd() * x);
            x = keep * x + Math.sqrt(1 - keep * keep) * random.nextGaussian();
        }
    }

    private void comeAndGo(int i, double level, Random random) {
        boolean present = random.nextDouble() < PRESENT;
        for (int t = 0; t < there[i].length; t++) {
            there[i][t] = Math.exp(level) * (present ? 1 / PRESENT : LEFT);
            double leaving = (present ? 1 - PRESENT : PRESENT) / water.wanderMinutes();
            present ^= random.nextDouble() < leaving;
        }
    }

    int minute() {
        return minute;
    }

    /** The line being fished or gone to, -1 before the first. */
    int line() {
        return line;
    }

    int caught() {
        return caught;
    }

    boolean over() {
        return minute >= MINUTES;
    }

    /** Whether the line is fished in this minute, and not only gone to. */
    boolean fishing() {
        return line >= 0 && arriving == 0;
    }

    MadeWater water() {
        return water;
    }

    /** The fish an hour of a line in this minute. */
    double rate(int i) {
        return rate(i, minute, stock[i]);
    }

    private double rate(int i, int at, double left) {
        double draw = 0;
        for (int feed : feeds.get(i)) {
            int age = at - feed;
            double part = age < SUNK_MINUTES
                    ? 0
                    : age < DRAWN_MINUTES
                            ? (double) (age - SUNK_MINUTES) / (DRAWN_MINUTES - SUNK_MINUTES)
                            : Math.exp(-(age - DRAWN_MINUTES) / WANING_MINUTES);
            draw = draw + part - draw * part;
        }
        return there[i][at] * Math.exp(water.attraction() * draw) * left;
    }

    /** Says on which line to fish from now on. */
    void fish(int on) {
        if (on != line) {
            arriving = line < 0 ? 0 : water.changeMinutes();
            line = on;
            if (arriving == 0) {
                note(DayEvent.Kind.START, on, 1);
            }
        }
    }

    /** Lets a minute pass. */
    void pass() {
        for (int i = 0; i < LINES; i++) {
            int every = i == line ? OWN_FEED_MINUTES : OTHER_FEED_MINUTES;
            if (feeds.get(i).isEmpty() || minute - feeds.get(i).get(feeds.get(i).size() - 1) >= every) {
                feeds.get(i).add(minute);
                note(DayEvent.Kind.FEED, i, 1);
            }
            stock[i] += (1 - stock[i]) / water.recoveryMinutes();
        }
        if (arriving > 0) {
            arriving--;
            if (arriving == 0) {
                minute++;
                note(DayEvent.Kind.START, line, 1);
                return;
            }
        } else {
            int fish = poisson(rate(line) / 60, luck[line][minute]);
            if (fish > 0) {
                caught += fish;
                caughtIn[minute] = fish;
                stock[line] *= Math.pow(1 - water.taken(), fish);
                note(DayEvent.Kind.FISH, line, fish);
            }
        }
        minute++;
    }

    /** The fish that a line would give in the minutes to come, if it were fished from a while on. */
    int wouldCatch(int i, int minutes, int lost) {
        double left = stock[i];
        int fish = 0;
        for (int t = minute; t < minute + minutes; t++) {
            left += (1 - left) / water.recoveryMinutes();
            if (t >= minute + lost) {
                int now = poisson(rate(i, t, left) / 60, luck[i][t]);
                fish += now;
                left *= Math.pow(1 - water.taken(), now);
            }
        }
        return fish;
    }

    /** The number of events of a mean below which a share of all draws lies. */
    private static int poisson(double mean, double share) {
        double term = Math.exp(-mean);
        double sum = term;
        int n = 0;
        while (sum < share && n < 100) {
            n++;
            term *= mean / n;
            sum += term;
        }
        return n;
    }

    private void note(DayEvent.Kind kind, int i, int count) {
        DayEvent event = DayEvent.of(time(), kind, Optional.of(places().get(i)));
        events.add(count == 1 ? event : event.with(count, java.util.OptionalDouble.empty()));
    }

    OffsetDateTime time() {
        return START.plusMinutes(minute);
    }

    Day log() {
        return new Day(Conditions.NONE, events);
    }

    static List<Place> places() {
        return List.of(new Place(0, 9), new Place(-3, 13), new Place(5, 2), new Place(-5, 2));
    }
}
