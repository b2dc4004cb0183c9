package pegbed.notation;

import pegbed.geometry.Doubts;
import pegbed.model.Decimals;
import pegbed.model.Hazard;
import pegbed.model.Peg;

/** What a typed line can't mean, although each of its pieces can be read: slips that would spoil the whole peg. */
public final class LineBounds {
    /** Nearer to the seat than this an edge has no direction, metres. */
    private static final double NEAREST_METRES = 0.01;

    /** What is wider is an area with an outline, and no single snag, metres. */
    private static final double WIDEST_SNAG_METRES = 10;

    private LineBounds() {}

    /**
     * Refuses a reading beyond the pole, an edge or a snag at the seat itself, and a snag that would cover the water.
     *
     * @param typed the line as it was typed, for the sentence
     */
    public static void refuse(Peg peg, Line line, String typed) throws NotationException {
        String quoted = NotationException.quoted(typed.strip());
        if (line instanceof Line.ReadingLine reading) {
            double metres = reading.reading().place().distanceMetres();
            double reach = peg.pole().reachMetres();
            if (metres > reach + Doubts.REACH_SLACK_METRES) {
                throw NotationException.saying(
                        typed,
                        quoted + " is " + Decimals.text(metres, 1) + " m out, beyond the pole's "
                                + Decimals.text(reach, 1) + " m; type a distance between 0 and "
                                + Decimals.text(reach, 1) + " m, or give the peg a longer pole first.");
            }
        } else if (line instanceof Line.EdgeLine edge) {
            if (edge.point().place().distanceMetres() < NEAREST_METRES) {
                throw NotationException.saying(
                        typed,
                        quoted + " is an edge at the seat itself; type how far out the water's edge is and in which"
                                + " direction, such as edge 13 20L.");
            }
        } else if (line instanceof Line.SnagLine snag) {
            if (snag.hazard().outline().get(0).distanceMetres() < NEAREST_METRES) {
                throw NotationException.saying(
                        typed,
                        quoted + " is a snag at the seat itself; type how far out it is and in which direction, such as"
                                + " snag 9 20R.");
            }
            refuse(snag.hazard(), typed);
        }
    }

    /** Refuses a snag that would cover the water; an overhead line may keep more away. */
    public static void refuse(Hazard hazard, String typed) throws NotationException {
        if (hazard.kind() == Hazard.Kind.SNAG
                && hazard.outline().size() == 1
                && hazard.radiusMetres() > WIDEST_SNAG_METRES) {
            throw NotationException.saying(
                    typed,
                    NotationException.quoted(typed.strip()) + " is a snag "
                            + Decimals.text(2 * hazard.radiusMetres(), 0) + " m wide; type a radius of "
                            + Decimals.text(WIDEST_SNAG_METRES, 0) + " m at most, such as snag 9 20R 0.5.");
        }
    }
}
