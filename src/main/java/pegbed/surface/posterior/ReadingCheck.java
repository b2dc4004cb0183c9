package pegbed.surface.posterior;

/**
 * One sounding beside what the model makes of it, at the level of its own visit.
 *
 * @param sounding index in the survey
 * @param residualMetres depth read less the fitted depth there, metres
 * @param expectedMetres what the other soundings expect there (leave-one-out mean, Rasmussen & Williams 2006, eq. 5.12)
 * @param expectedSdMetres standard deviation of a reading about that, metres
 * @param readMetres what was read, metres
 * @param wrongProbability how probable it is that the reading is grossly wrong, 0 to 1
 */
public record ReadingCheck(
        int sounding,
        double residualMetres,
        double expectedMetres,
        double expectedSdMetres,
        double readMetres,
        double wrongProbability) {
    /** The same check of a survey in which so many soundings come before it. */
    public ReadingCheck after(int more) {
        return new ReadingCheck(
                sounding + more, residualMetres, expectedMetres, expectedSdMetres, readMetres, wrongProbability);
    }

    /** How many standard deviations the reading lies from what the others expect; positive if it is deeper. */
    public double standardised() {
        return (readMetres - expectedMetres) / expectedSdMetres;
    }
}
