package pegbed.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class LogRatesTest {
    private static final Wandering WANDERING = new Wandering(40, 0.6);

    private static LogRates before() {
        return new LogRates(WANDERING, RatePrior.VAGUE, Logs.PLANNED);
    }

    private static LogRates.At fresh(int line, double minutes) {
        return new LogRates.At(line, minutes, 0, 0);
    }

    @Test
    void theMeanBeforeTheDayIsThePriors() {
        assertEquals(20, before().rate(fresh(0, 0)).mean(), 1e-9);
        assertEquals(20, before().rate(fresh(1, 25)).mean(), 1e-9);
    }

    @Test
    void aBlankLineLowersTheOthersLess() {
        LogRates rates = before();
        for (int minute = 0; minute < 30; minute++) {
            rates.learn(fresh(0, 0), 1.0 / 60, 0);
        }
        double own = rates.rate(fresh(0, 0)).mean();
        double other = rates.rate(fresh(1, 0)).mean();
        assertTrue(own < 0.5 * other && other < 20, own + " " + other);
    }

    @Test
    void whatWasLearnedFadesWithItsHalfLife() {
        LogRates rates = before();
        for (int minute = 0; minute < 30; minute++) {
            rates.learn(fresh(0, 0), 1.0 / 60, 1);
        }
        double now = rates.rate(fresh(0, 0)).log();
        double later = rates.rate(fresh(0, 40)).log();
        double muchLater = rates.rate(fresh(0, 4000)).log();
        assertEquals(0.5, (later - muchLater) / (now - muchLater), 1e-9);
        assertTrue(rates.rate(fresh(0, 40)).variance() > rates.rate(fresh(0, 0)).variance());
    }

    @Test
    void lookingAheadIsLettingTimePass() {
        LogRates rates = before();
        rates.learn(fresh(0, 0), 0.5, 9);
        LogNormal ahead = rates.rate(fresh(0, 25));
        double covariance = rates.covariance(fresh(0, 5), fresh(0, 25));
        rates.pass(5);
        assertEquals(covariance, rates.covariance(fresh(0, 0), fresh(0, 20)), 1e-12);
        rates.pass(20);
        assertEquals(ahead.log(), rates.rate(fresh(0, 0)).log(), 1e-12);
        assertEquals(ahead.variance(), rates.rate(fresh(0, 0)).variance(), 1e-12);
    }

    @Test
    void aFedLineThatFishesBetterTeachesThatFeedDraws() {
        LogRates drawn = before();
        LogRates not = before();
        for (int minute = 0; minute < 40; minute++) {
            drawn.learn(fresh(0, 0), 1.0 / 60, 0);
            drawn.learn(new LogRates.At(0, 0, 1, 0), 1.0 / 60, 1);
            not.learn(fresh(0, 0), 1.0 / 60, 1);
            not.learn(new LogRates.At(0, 0, 1, 0), 1.0 / 60, 0);
        }
        assertTrue(gain(drawn) > gain(not) + 0.5, gain(drawn) + " " + gain(not));
    }

    private static double gain(LogRates rates) {
        return rates.rate(new LogRates.At(1, 0, 1, 0)).log()
                - rates.rate(fresh(1, 0)).log();
    }
}
