package pegbed.notation;

/**
 * A mark that a direction is sighted on, and how far beside it.
 *
 * @param mark the mark's name
 * @param offset how far beside it, 0 or more; 0 at the mark itself
 * @param unit of the offset
 * @param toLeft whether it is to the left of the mark as seen from the seat
 */
public record Aim(String mark, double offset, Unit unit, boolean toLeft) {
    /** How an offset is counted. */
    public enum Unit {
        /** There is no offset. */
        NONE,
        /** Along the far bank. */
        METRES,
        /** As seen from the seat. */
        DEGREES
    }
}
