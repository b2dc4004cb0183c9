package pegbed.model;

import java.util.List;

/**
 * The person's pole: how far the tip reaches at the end of each section.
 *
 * @param jointMetres length shipped at the end of each section, metres, rising, each 0.3 to 30
 */
public record Pole(List<Double> jointMetres) {
    /** A 16 m pole (figures from memory: they vary with the maker by 0.3 m). */
    public static final Pole USUAL = new Pole(List.of(2.6, 4.0, 5.5, 7.0, 8.5, 10.0, 11.5, 13.0, 14.5, 16.0));

    public Pole {
        jointMetres = List.copyOf(jointMetres);
        if (jointMetres.isEmpty()) {
            throw new IllegalArgumentException("A pole needs at least one section.");
        }
        double before = 0;
        for (double joint : jointMetres) {
            Check.within(joint, 0.3, 30, "A section's end in metres");
            if (joint <= before) {
                throw new IllegalArgumentException(
                        "The sections of a pole must get longer: " + joint + " m comes after " + before + " m.");
            }
            before = joint;
        }
    }

    /** The longest pole the person owns, metres: nothing beyond it can be fished or plumbed. */
    public double reachMetres() {
        return jointMetres.get(jointMetres.size() - 1);
    }

    /** This pole with another reach: joints beyond it are dropped and the reach itself becomes the last one. */
    public Pole withReach(double reachMetres) {
        List<Double> shorter = new java.util.ArrayList<>(
                jointMetres.stream().filter(joint -> joint < reachMetres - 0.05).toList());
        shorter.add(reachMetres);
        return new Pole(shorter);
    }
}
