package pegbed.surface.prior;

/**
 * What kind of bottom a water is taken to have before its readings are looked at. The readings decide between them
 * ({@code docs/method.md}).
 */
public enum Structure {
    /** A cut with ledges under its banks, slopes, and a track along the middle. */
    TUB,
    /** A bottom that falls away from the nearest bank. */
    FALL,
    /** Ground that owes nothing to the banks but its edge. */
    OPEN,
    /** A whole water of which no bank is known. */
    BASIN
}
