package pegbed.surface;

/**
 * How the water of the visit that is shown stands to that of another visit.
 *
 * @param visit index of the other visit, 0 for the first
 * @param higherMetres how much higher the water stands at the shown visit, metres; negative if lower
 * @param sdMetres standard deviation of that, metres, 0 for the shown visit itself
 * @param readings how many readings of the other visit the bottom is fitted to
 */
public record VisitLevel(int visit, double higherMetres, double sdMetres, int readings) {}
