package pegbed.bench.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.stream.LongStream;
import pegbed.bench.practice.Tally;
import pegbed.day.Estimate;
import pegbed.day.LineOdds;
import pegbed.day.LineRate;
import pegbed.day.RatePrior;

/** What following a day's odds gives in made worlds, how often its intervals hold, and how true its odds are. */
public final class DayBench {
    private static final int BINS = 10;

    /** Bins with fewer odds are not shown. */
    private static final int LEAST_IN_BIN = 50;

    private static final int LOOK_MINUTES = 10;

    private final long first;
    private final int days;

    private final List<MadeWater> waters;

    private DayBench(long first, int days, List<MadeWater> waters) {
        this.first = first;
        this.days = days;
        this.waters = waters;
    }

    /**
     * The tables in Markdown.
     *
     * @param first number of the first day
     * @param days how many days of each world
     */
    public static String table(long first, int days) {
        return table(first, days, waters());
    }

    /** The tables of some worlds. */
    static String table(long first, int days, List<MadeWater> waters) {
        return new DayBench(first, days, waters).table();
    }

    static List<MadeWater> waters() {
        MadeWater usual = MadeWater.USUAL;
        return List.of(
                usual,
                usual.wander("wanders in half the time", 0.6, 45),
                usual.wander("wanders in twice the time", 0.6, 180),
                usual.wander("wanders half as much", 0.3, 90),
                usual.wander("wanders half as much again", 0.9, 90),
                usual.coming("fish come and go"),
                usual.feed("feed draws nothing", 0),
                usual.feed("feed draws twice as much", 1.6),
                usual.taking("fishing takes nothing", 0),
                usual.taking("fishing takes twice as much", 0.06),
                usual.rate("half the fish", 5),
                usual.rate("twice the fish", 20),
                usual.changing("a change takes 1 min", 1),
                usual.changing("a change takes 6 min", 6));
    }

    /** What was said in a day, and what came of it. */
    private record Said(int fish, int intervals, int held, double[] odds, double[] came, int[] count) {
        static Said nothing() {
            return new Said(0, 0, 0, new double[BINS], new double[BINS], new int[BINS]);
        }

        Said with(Said other) {
            Said sum = new Said(
                    fish + other.fish,
                    intervals + other.intervals,
                    held + other.held,
                    odds.clone(),
                    came.clone(),
                    count.clone());
            for (int b = 0; b < BINS; b++) {
                sum.odds[b] += other.odds[b];
                sum.came[b] += other.came[b];
                sum.count[b] += other.count[b];
            }
            return sum;
        }

        double coverage() {
            return (double) held / intervals;
        }

        double worstBin() {
            double worst = 0;
            for (int b = 0; b < BINS; b++) {
                if (count[b] >= LEAST_IN_BIN) {
                    worst = Math.max(worst, Math.abs(odds[b] - came[b]) / count[b]);
                }
            }
            return worst;
        }
    }

    private record Result(
            MadeWater water, Tally advised, Tally stayed, Tally changed, Tally knowing, Tally sharp, Said said) {
        double ratio(Tally other) {
            return advised.mean() / other.mean();
        }
    }

    private String table() {
        List<Result> results = waters.stream().map(this::result).toList();
        StringBuilder out = new StringBuilder();
        out.append(
                "| world | advised, fish a day | best of the first hour | every 30 min | knows the rates | the same, best horizon"
                        + " | over the first-hour line | over every 30 min | of knowing | of knowing, best horizon | 90 % intervals"
                        + " hold | worst bin of odds |\n|---|---|---|---|---|---|---|---|---|---|---|---|\n");
        for (Result result : results) {
            out.append(String.format(
                    Locale.ROOT,
                    "| %s | %s | %s | %s | %s | %s | %+.0f %% | %+.0f %% | %.0f %% | %.0f %% | %.3f | %.2f |%n",
                    result.water.name(),
                    fish(result.advised),
                    fish(result.stayed),
                    fish(result.changed),
                    fish(result.knowing),
                    fish(result.sharp),
                    100 * (result.ratio(result.stayed) - 1),
                    100 * (result.ratio(result.changed) - 1),
                    100 * result.ratio(result.knowing),
                    100 * result.ratio(result.sharp),
                    result.said.coverage(),
                    result.said.worstBin()));
        }
        out.append("\n| odds said, ")
                .append(results.get(0).water.name())
                .append(" world | how often | what came |\n|---|---|---|\n");
        Said said = results.get(0).said;
        for (int b = 0; b < BINS; b++) {
            if (said.count[b] > 0) {
                out.append(String.format(
                        Locale.ROOT,
                        "| %.2f | %d | %.2f |%n",
                        said.odds[b] / said.count[b],
                        said.count[b],
                        said.came[b] / said.count[b]));
            }
        }
        return out.toString();
    }

    private static String fish(Tally tally) {
        return String.format(Locale.ROOT, "%.1f ± %.1f", tally.mean(), tally.error());
    }

    private Result result(MadeWater water) {
        List<Said> said = LongStream.range(first, first + days)
                .parallel()
                .mapToObj(number -> said(new MadeDay(water, number)))
                .toList();
        Tally sharp = null;
        for (int minutes : new int[] {5, 10, 15, 20, 60}) {
            Tally tally = tally(water, () -> Angler.knowing(minutes));
            sharp = sharp == null || tally.mean() > sharp.mean() ? tally : sharp;
        }
        return new Result(
                water,
                tally(said.stream().map(Said::fish).toList()),
                tally(water, Angler::bestOfFirstHour),
                tally(water, Angler::everyHalfHour),
                tally(water, () -> Angler.knowing(LineOdds.AHEAD_MINUTES)),
                sharp,
                said.stream().reduce(Said.nothing(), Said::with));
    }

    private Tally tally(MadeWater water, Supplier<Angler> angler) {
        return tally(LongStream.range(first, first + days)
                .parallel()
                .mapToObj(number -> Angler.catches(angler.get(), new MadeDay(water, number)))
                .toList());
    }

    private static Tally tally(List<Integer> fishOfDays) {
        Tally tally = new Tally();
        for (int fish : fishOfDays) {
            tally.group();
            tally.add(fish);
        }
        return tally;
    }

    /** Every ten minutes of an advised day once there is something to say: every line's interval, every line's odds. */
    private static Said said(MadeDay day) {
        Said said = Said.nothing();
        Angler angler = Angler.advised();
        List<int[]> intervals = new ArrayList<>();
        while (!day.over()) {
            day.fish(angler.line(day));
            if (day.fishing() && day.minute() > 0 && day.minute() % LOOK_MINUTES == 0) {
                LineOdds odds = Angler.odds(day);
                if (odds.saying() != LineOdds.Saying.TOO_LITTLE) {
                    score(day, odds, said);
                }
                for (LineRate rate : LineRate.of(Angler.histories(day), RatePrior.VAGUE)) {
                    if (rate.told()) {
                        Estimate fish = rate.fishAnHour();
                        double truth = day.rate(Angler.index(rate.line()));
                        intervals.add(new int[] {fish.low() <= truth && truth <= fish.high() ? 1 : 0});
                    }
                }
            }
            day.pass();
        }
        int held = intervals.stream().mapToInt(each -> each[0]).sum();
        return new Said(day.caught(), intervals.size(), held, said.odds, said.came, said.count);
    }

    private static void score(MadeDay day, LineOdds odds, Said said) {
        int here = day.wouldCatch(day.line(), LineOdds.AHEAD_MINUTES, 0);
        for (LineOdds.Other other : odds.others()) {
            int there = day.wouldCatch(
                    Angler.index(other.line()),
                    LineOdds.AHEAD_MINUTES,
                    day.water().changeMinutes());
            int bin = Math.min(BINS - 1, (int) (other.odds() * BINS));
            said.odds[bin] += other.odds();
            said.came[bin] += there > here ? 1 : there == here ? 0.5 : 0;
            said.count[bin]++;
        }
    }
}
