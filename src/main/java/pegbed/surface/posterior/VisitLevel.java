package pegbed.surface.posterior;

/**
 * How the water of one visit, usually the one that is shown, stands to that of another.
 *
 * @param visit index of the other visit, 0 for the first
 * @param higherMetres how much higher the water stands than at the other visit, metres; negative if lower
 * @param sdMetres standard deviation of that, metres, 0 for a visit against itself
 * @param readings how many readings of the other visit the bottom is fitted to
 */
public record VisitLevel(int visit, double higherMetres, double sdMetres, int readings) {}
