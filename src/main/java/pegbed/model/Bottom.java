package pegbed.model;

import java.util.Locale;

/** What the plummet felt. */
public enum Bottom {
    UNKNOWN,
    FIRM,
    GRAVEL,
    CLAY,
    SILT,
    WEED,
    LEAVES,
    SNAG;

    /** The word that a person types and that the peg file holds. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether the plummet sinks in or rides high, so that the depth is less sure than on firm ground. */
    public boolean soft() {
        return this == SILT || this == WEED || this == LEAVES;
    }
}
