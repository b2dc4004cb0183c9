package pegbed.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How fast fish come on a line at present, or would if it were fished.
 *
 * @param line which
 * @param fishAnHour fish an hour
 * @param kilogramsAnHour weight an hour, kilograms; empty while no fish of the day was weighed
 * @param told whether enough is known to be shown: it was fished {@link #LEAST_MINUTES} today, or on an earlier visit
 */
public record LineRate(LineHistory line, Estimate fishAnHour, Optional<Estimate> kilogramsAnHour, boolean told) {
    /** A line that was fished for less has no rate worth showing, minutes (our choice). */
    public static final double LEAST_MINUTES = 10;

    /**
     * The rates of a day's lines, in the order of the lines.
     *
     * @param histories its lines
     * @param prior what earlier visits say, or {@link RatePrior#VAGUE}
     */
    public static List<LineRate> of(LineHistories histories, RatePrior prior) {
        DayModel model = DayModel.of(histories, prior);
        Optional<FishWeight> weight = FishWeight.of(histories.lines());
        List<LineRate> rates = new ArrayList<>();
        for (int i = 0; i < histories.lines().size(); i++) {
            LineHistory line = histories.lines().get(i);
            GammaMixture rate = model.rate(i);
            rates.add(new LineRate(
                    line,
                    Estimate.of(rate),
                    weight.map(known -> Estimate.of(rate.matched().timesIndependent(known.meanOn(line)))),
                    line.fishedMinutes() >= LEAST_MINUTES
                            || prior.at(line.place()).isPresent()));
        }
        return rates;
    }
}
