package pegbed.day;

/** How much a line was fished and fed lately, each between 0 and 1; it changes as time is let pass. */
final class LineCondition {
    /** Fishing tires a line, and rest restores it, by all but 1/e in so long, minutes (our choice). */
    static final double REST_MINUTES = 30;

    /** Feed draws fish most after so long, minutes (our choice). */
    static final double FEED_MINUTES = 15;

    private double fished;
    private double sinking;
    private double drawing;

    LineCondition() {}

    /** 0 for a line that is fresh, 1 for one that was fished for hours. */
    double fished() {
        return fished;
    }

    /**
     * What {@link #fished} will be.
     *
     * @param rest minutes in which it is not fished
     * @param then minutes in which it is fished after them
     */
    double fishedAhead(double rest, double then) {
        double begun = fished * Math.exp(-rest / REST_MINUTES);
        return 1 - (1 - begun) * Math.exp(-then / REST_MINUTES);
    }

    /** 0 for a line without feed; 1 − 1/e fifteen minutes after a feed; near 1 after several. */
    double fed() {
        return 1 - Math.exp(-Math.E * drawing);
    }

    /** Feed goes in: its draw is u/τ · e^(1 − u/τ) after u minutes, the response of two equal stages in a row. */
    void feed() {
        sinking++;
    }

    /**
     * Time passes.
     *
     * @param minutes how much
     * @param share of it in which the line was fished, 0 to 1
     */
    void pass(double minutes, double share) {
        double rested = Math.exp(-minutes / REST_MINUTES);
        fished = share + (fished - share) * rested;
        double stage = Math.exp(-minutes / FEED_MINUTES);
        drawing = (drawing + sinking * minutes / FEED_MINUTES) * stage;
        sinking *= stage;
    }
}
