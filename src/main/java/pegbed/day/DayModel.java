package pegbed.day;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import pegbed.model.DayEvent;

/**
 * The rates of a day's lines under every {@link Response}, each weighted by how well it foretold the day's fish minute
 * by minute. Within one the base rate of a line has a gamma distribution: the fish and minutes of the line, all fading
 * (Raj & Kalyani 2017, arXiv:1707.09727: the counts fade, the prior stays), on a prior whose mean is the day's rate
 * over the other lines (empirical Bayes). The weights follow Bayes' rule (Bayesian model averaging: Hoeting et al.
 * 1999, Statistical Science 14:382–417).
 */
final class DayModel {
    /** What lies further back has no weight left, minutes. */
    private static final int LONGEST_MINUTES = 24 * 60;

    private static final double HOURS_A_MINUTE = 1.0 / 60;

    private final RatePrior prior;
    private final List<LineHistory> lines;
    private final LineCondition[] conditions;
    private final double[] factors;
    private final double[] shapes;
    private final double[] logWeights = new double[Response.ALL.size()];
    private final double[][] fish;
    private final double[][] hours;
    private final double[] dayRates = new double[Response.ALL.size()];

    private DayModel(List<LineHistory> lines, RatePrior prior) {
        this.prior = prior;
        this.lines = lines;
        int n = lines.size();
        conditions = new LineCondition[n];
        factors = new double[n];
        shapes = new double[n];
        for (int i = 0; i < n; i++) {
            conditions[i] = new LineCondition();
            factors[i] = prior.factor(lines.get(i).place());
            shapes[i] = prior.shape(lines.get(i).place());
        }
        fish = new double[Response.ALL.size()][n];
        hours = new double[Response.ALL.size()][n];
        Arrays.fill(dayRates, prior.day().mean());
    }

    /** What the day says up to now. */
    static DayModel of(LineHistories histories, RatePrior prior) {
        DayModel model = new DayModel(histories.lines(), prior);
        Instant first = histories.lines().stream()
                .flatMap(line -> firsts(line).stream())
                .min(Instant::compareTo)
                .orElse(histories.now());
        double since = Math.min(LONGEST_MINUTES, Spell.minutesBetween(first, histories.now()));
        int minutes = (int) Math.ceil(since);
        Instant start = histories.now().minusSeconds(60L * minutes);
        List<LineMinutes> all = histories.lines().stream()
                .map(line -> LineMinutes.of(line, start, minutes))
                .toList();
        for (int minute = 0; minute < minutes; minute++) {
            model.pass(all, minute);
        }
        return model;
    }

    private static List<Instant> firsts(LineHistory line) {
        List<Instant> firsts = new ArrayList<>();
        line.events().stream()
                .map(event -> event.time().toInstant())
                .findFirst()
                .ifPresent(firsts::add);
        line.spells().stream().map(Spell::start).findFirst().ifPresent(firsts::add);
        return firsts;
    }

    /** What happened on a line in each minute of a time. */
    private record LineMinutes(double[] share, int[] fish, int[] feeds) {
        static LineMinutes of(LineHistory line, Instant start, int minutes) {
            double[] share = new double[minutes];
            for (Spell spell : line.spells()) {
                double from = Math.max(0, Spell.minutesBetween(start, spell.start()));
                double to = Math.min(minutes, Spell.minutesBetween(start, spell.end()));
                for (int m = (int) from; m < to; m++) {
                    share[m] += Math.max(0, Math.min(to, m + 1) - Math.max(from, m));
                }
            }
            int[] fish = new int[minutes];
            int[] feeds = new int[minutes];
            for (DayEvent event : line.events()) {
                int m = Math.min(minutes - 1, (int)
                        Math.floor(Spell.minutesBetween(start, event.time().toInstant())));
                if (m < 0) {
                    continue;
                }
                if (event.kind() == DayEvent.Kind.FISH) {
                    fish[m] += event.count();
                } else if (event.kind() == DayEvent.Kind.FEED) {
                    feeds[m]++;
                }
            }
            return new LineMinutes(share, fish, feeds);
        }
    }

    private void pass(List<LineMinutes> all, int minute) {
        for (int i = 0; i < lines.size(); i++) {
            for (int feed = 0; feed < all.get(i).feeds()[minute]; feed++) {
                conditions[i].feed();
            }
        }
        for (int r = 0; r < Response.ALL.size(); r++) {
            Response response = Response.ALL.get(r);
            double fade = response.fade(1);
            for (int i = 0; i < lines.size(); i++) {
                fish[r][i] *= fade;
                hours[r][i] *= fade;
            }
            for (int i = 0; i < lines.size(); i++) {
                double share = all.get(i).share()[minute];
                int caught = all.get(i).fish()[minute];
                if (share == 0 && caught == 0) {
                    continue;
                }
                double exposure =
                        Math.max(share, 0.5 * Math.min(1, caught)) * HOURS_A_MINUTE * response.factor(conditions[i]);
                GammaDistribution base = base(r, i, 0);
                logWeights[r] += PoissonGamma.logProbability(base, exposure, caught);
                fish[r][i] += caught;
                hours[r][i] += exposure;
            }
            dayRates[r] = day(r, -1).mean();
        }
        for (int i = 0; i < lines.size(); i++) {
            conditions[i].pass(1, Math.min(1, all.get(i).share()[minute]));
        }
    }

    /**
     * The day's rate under one response, one line left out: a line's fish count for it by k/(k + expected fish), since
     * lines differ (the score of a negative binomial of shape k).
     *
     * @param without the line left out, -1 for none
     */
    private GammaDistribution day(int response, int without) {
        GammaDistribution day = prior.day();
        for (int i = 0; i < lines.size(); i++) {
            if (i != without) {
                day = day.learning(fish[response][i], hours[response][i] * factors[i], dayRates[response], shapes[i]);
            }
        }
        return day;
    }

    /** The base rate of a line under one response, fish an hour, some minutes after now. */
    private GammaDistribution base(int response, int line, double minutesAhead) {
        GammaDistribution day = day(response, line);
        GammaDistribution own = new GammaDistribution(shapes[line], shapes[line] / factors[line]);
        GammaDistribution before = day.timesIndependent(own);
        double fade = minutesAhead == 0 ? 1 : Response.ALL.get(response).fade(minutesAhead);
        return new GammaDistribution(
                before.shape() + fade * fish[response][line], before.rate() + fade * hours[response][line]);
    }

    /** How likely each response is. */
    double[] weights() {
        double most = Arrays.stream(logWeights).max().orElseThrow();
        double[] weights =
                Arrays.stream(logWeights).map(log -> Math.exp(log - most)).toArray();
        double sum = Arrays.stream(weights).sum();
        return Arrays.stream(weights).map(weight -> weight / sum).toArray();
    }

    /** The present fish an hour of a line, as if it were fished now. */
    GammaMixture rate(int line) {
        List<GammaDistribution> parts = new ArrayList<>();
        for (int r = 0; r < Response.ALL.size(); r++) {
            parts.add(base(r, line, 0).times(Response.ALL.get(r).factor(conditions[line])));
        }
        return new GammaMixture(weights(), parts);
    }

    /**
     * The expected number of fish in some minutes to come, as if the line were fished in them; given how the response
     * and the base rate are.
     *
     * @param line which
     * @param minutes how long from now, whole minutes
     * @param lost minutes at first in which it is not fished, since one is on the way to it
     */
    GammaMixture ahead(int line, int minutes, int lost) {
        List<GammaDistribution> parts = new ArrayList<>();
        for (int r = 0; r < Response.ALL.size(); r++) {
            Response response = Response.ALL.get(r);
            LineCondition condition = conditions[line].copy();
            double exposure = 0;
            for (int minute = 0; minute < minutes; minute++) {
                boolean fished = minute >= lost;
                exposure += fished ? response.factor(condition) * HOURS_A_MINUTE : 0;
                condition.pass(1, fished ? 1 : 0);
            }
            parts.add(base(r, line, minutes / 2.0).times(exposure));
        }
        return new GammaMixture(weights(), parts);
    }

    /** The fish expected in each of some minutes to come, as if the line were fished in all of them. */
    double[] expected(int line, int minutes) {
        double[] weights = weights();
        double[] expected = new double[minutes];
        for (int r = 0; r < Response.ALL.size(); r++) {
            Response response = Response.ALL.get(r);
            double base = base(r, line, minutes / 2.0).mean() * HOURS_A_MINUTE;
            LineCondition condition = conditions[line].copy();
            for (int minute = 0; minute < minutes; minute++) {
                expected[minute] += weights[r] * base * response.factor(condition);
                condition.pass(1, 1);
            }
        }
        return expected;
    }
}
