package pegbed.surface.prior;

/**
 * A kind of bottom for which the model has a prior. The readings decide how much each counts ({@code docs/method.md}).
 */
public enum Structure {
    /** A cut with ledges under its banks, slopes, and a track along the middle. */
    TUB,
    /** A bottom that falls away from the nearest bank. */
    FALL,
    /** Ground whose depths don't depend on the banks, but for the shallow edge. */
    OPEN,
    /** A whole water of which no bank is known. */
    BASIN
}
