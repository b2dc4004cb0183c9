package pegbed.wording;

import java.util.Optional;
import pegbed.findings.DoubtSummary;
import pegbed.findings.PegMap;
import pegbed.model.Decimals;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.surface.FittedBottom;
import pegbed.surface.posterior.ReadingCheck;
import pegbed.surface.prior.NeighbourInfluence;

/** How well a map is known, which readings contradict it, and what it has from other pegs, in the person's words. */
public final class MapWords {
    private final Quantities quantities;

    private MapWords(Peg peg) {
        quantities = Quantities.of(peg);
    }

    /** The words at a peg. */
    public static MapWords of(Peg peg) {
        return new MapWords(peg);
    }

    /** A place under the pointer: distance, direction and clock. */
    public String place(Place place) {
        return place(quantities.distance(place.distanceMetres()), place);
    }

    /** The same with a distance as it is printed elsewhere. */
    public String place(String distance, Place place) {
        double angle = place.angleDegrees();
        return distance + ", " + quantities.direction(angle) + ", " + quantities.clock(angle);
    }

    /** A depth with its standard deviation: {@code 4 ft 2 in give or take 3 in}. */
    public String depth(double metres, double sdMetres) {
        return quantities.depth(metres) + " give or take " + quantities.depth(sdMetres);
    }

    /** The same in short: {@code 4 ft 2 in ± 3 in}. */
    public String shortDepth(double metres, double sdMetres) {
        return quantities.depth(metres) + " ± " + quantities.doubt(sdMetres);
    }

    /** How well the bottom is known as a whole, two sentences. */
    public String doubt(DoubtSummary doubt) {
        String yardstick = doubt.order()
                .map(order -> " By the uncertainty table of IHO S-44 that would meet " + order.title()
                        + " (a yardstick: this is no survey).")
                .orElse(" That is coarser than any order of IHO S-44.");
        return "Depth is known to " + quantities.depthToHalfInch(doubt.medianSdMetres())
                + " (one standard deviation) over half of the water in front; "
                + Decimals.text(100 * doubt.guessShare(), 0) + " % of it is a guess." + yardstick;
    }

    /** A reading that the others contradict, with what to do. */
    public String suspicious(ReadingCheck check) {
        return contradicted(check) + ". Take it again if you can.";
    }

    /** A reading that the others contradict, with the doubt of what they expect. */
    public String suspiciousWithDoubt(ReadingCheck check) {
        return contradicted(check) + " ± " + quantities.doubt(check.expectedSdMetres()) + " there.";
    }

    private String contradicted(ReadingCheck check) {
        return "Reading " + (check.sounding() + 1) + " says " + quantities.depth(check.readMetres())
                + "; the others expect " + quantities.depth(Math.max(0, check.expectedMetres()));
    }

    /** How far a reading lies from what the others expect, without what to do. */
    public String questioned(ReadingCheck check) {
        double expected = Math.max(0, check.expectedMetres());
        return "That is " + quantities.depth(Math.abs(check.readMetres() - expected))
                + (check.readMetres() > expected ? " deeper" : " shallower")
                + " than the other readings expect there, give or take " + quantities.depth(check.expectedSdMetres())
                + ".";
    }

    /** The same beside the reading itself, with what to do. */
    public String suspiciousHere(ReadingCheck check) {
        return "The readings about it expect " + quantities.depth(Math.max(0, check.expectedMetres()))
                + " here, give or take " + quantities.depth(check.expectedSdMetres()) + "; "
                + quantities.depth(check.readMetres()) + " was read. Plumb it again or delete it.";
    }

    /** A reading that was just typed and that the others contradict: by how much, and what to do. */
    public String suspiciousAsTyped(ReadingCheck check) {
        double expected = Math.max(0, check.expectedMetres());
        return contradicted(check) + ", give or take " + quantities.depth(check.expectedSdMetres()) + ": it is "
                + quantities.depth(Math.abs(check.readMetres() - expected))
                + (check.readMetres() > expected ? " deeper" : " shallower")
                + " than that. It was added; if it was typed wrongly, delete it in the window, else plumb it again.";
    }

    /** What a map has from other pegs, one sentence; empty where it stands by itself. */
    public static Optional<String> neighbours(PegMap map) {
        return neighbours(map.bottom(), map.peg());
    }

    /** What the bottom of a peg has from other pegs, one sentence; empty where it stands by itself. */
    public static Optional<String> neighbours(FittedBottom bottom, Peg peg) {
        return bottom.lesson().map(influence -> neighbours(influence, peg));
    }

    private static String neighbours(NeighbourInfluence influence, Peg peg) {
        String others = influence.pegs() + " other " + (influence.pegs() == 1 ? "peg" : "pegs") + " of "
                + peg.name().water();
        return influence.heeded()
                ? "Started from " + others + "."
                : "By its readings this peg is unlike the " + others + ", which count for little.";
    }
}
