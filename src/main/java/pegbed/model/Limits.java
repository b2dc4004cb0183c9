package pegbed.model;

import java.util.OptionalDouble;

/**
 * How far the angler's own water goes along the bank.
 *
 * @param leftMetres x of the left limit, metres (negative to the left of the seat)
 * @param rightMetres x of the right limit, metres
 */
public record Limits(OptionalDouble leftMetres, OptionalDouble rightMetres) {
    public static final Limits NONE = new Limits(OptionalDouble.empty(), OptionalDouble.empty());

    public Limits {
        if (leftMetres.isPresent()
                && rightMetres.isPresent()
                && leftMetres.getAsDouble() >= rightMetres.getAsDouble()) {
            throw new IllegalArgumentException("The left limit must lie to the left of the right limit.");
        }
    }
}
