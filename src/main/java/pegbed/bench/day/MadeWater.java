package pegbed.bench.day;

/**
 * How fish behave in a made world. The figures are invented; none of them is known to the advice, and its forms differ
 * from those that the advice supposes.
 *
 * @param name in a few words
 * @param fishAnHour median over days of the rate of a line, fish an hour
 * @param daySd how much days differ: standard deviation of the logarithm of the rate
 * @param lineSd how much the lines of a day differ for good, the same
 * @param wanderSd how much a line's rate wanders in the day, the same
 * @param wanderMinutes time constant of that wandering, minutes
 * @param comeAndGo whether fish come and go at once instead of wandering: a line has fish or next to none
 * @param attraction how much feed raises the logarithm of the rate, at most
 * @param taken share of a line's fish that each fish caught takes or scares away
 * @param recoveryMinutes time constant in which a line recovers, minutes
 * @param changeMinutes minutes in which nothing is fished when the line is changed
 */
record MadeWater(
        String name,
        double fishAnHour,
        double daySd,
        double lineSd,
        double wanderSd,
        double wanderMinutes,
        boolean comeAndGo,
        double attraction,
        double taken,
        double recoveryMinutes,
        int changeMinutes) {
    /** The one that is measured first. */
    static final MadeWater USUAL = new MadeWater("usual", 10, 0.5, 0.5, 0.6, 90, false, 0.8, 0.03, 40, 3);

    MadeWater rate(String other, double fish) {
        return new MadeWater(
                other,
                fish,
                daySd,
                lineSd,
                wanderSd,
                wanderMinutes,
                comeAndGo,
                attraction,
                taken,
                recoveryMinutes,
                changeMinutes);
    }

    MadeWater wander(String other, double sd, double minutes) {
        return new MadeWater(
                other,
                fishAnHour,
                daySd,
                lineSd,
                sd,
                minutes,
                comeAndGo,
                attraction,
                taken,
                recoveryMinutes,
                changeMinutes);
    }

    MadeWater coming(String other) {
        return new MadeWater(
                other,
                fishAnHour,
                daySd,
                lineSd,
                wanderSd,
                wanderMinutes,
                true,
                attraction,
                taken,
                recoveryMinutes,
                changeMinutes);
    }

    MadeWater feed(String other, double drawn) {
        return new MadeWater(
                other,
                fishAnHour,
                daySd,
                lineSd,
                wanderSd,
                wanderMinutes,
                comeAndGo,
                drawn,
                taken,
                recoveryMinutes,
                changeMinutes);
    }

    MadeWater taking(String other, double share) {
        return new MadeWater(
                other,
                fishAnHour,
                daySd,
                lineSd,
                wanderSd,
                wanderMinutes,
                comeAndGo,
                attraction,
                share,
                recoveryMinutes,
                changeMinutes);
    }

    MadeWater changing(String other, int minutes) {
        return new MadeWater(
                other,
                fishAnHour,
                daySd,
                lineSd,
                wanderSd,
                wanderMinutes,
                comeAndGo,
                attraction,
                taken,
                recoveryMinutes,
                minutes);
    }
}
