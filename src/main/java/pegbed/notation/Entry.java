package pegbed.notation;

import java.util.ArrayList;
import java.util.List;
import pegbed.geometry.BankOrder;
import pegbed.geometry.Shapes;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.Hazard;
import pegbed.model.Peg;

/** What a typed line makes of a peg. */
public final class Entry {
    /** Without any bank yet, an edge further out than this is the far bank's, metres (empirical). */
    private static final double NEAR_METRES = 4;

    private Entry() {}

    /** The peg with the line's reading at today's visit, its edge in the bank it lies at, or its snag among the hazards. */
    public static Peg in(Peg peg, Line line) {
        if (line instanceof Line.ReadingLine reading) {
            return peg.withReading(reading.reading());
        }
        if (line instanceof Line.EdgeLine edge) {
            return peg.withBanks(withEdge(peg.banks(), edge.point()));
        }
        List<Hazard> hazards = new ArrayList<>(peg.hazards());
        hazards.add(((Line.SnagLine) line).hazard());
        return peg.withHazards(hazards);
    }

    private static Banks withEdge(Banks banks, BankPoint edge) {
        double near = distance(banks.near(), edge, false);
        double far = distance(banks.far(), edge, false);
        int island = -1;
        double islandDistance = Double.POSITIVE_INFINITY;
        for (int i = 0; i < banks.islands().size(); i++) {
            double d = distance(banks.islands().get(i), edge, true);
            if (d < islandDistance) {
                islandDistance = d;
                island = i;
            }
        }
        if (islandDistance < Math.min(near, far)) {
            List<List<BankPoint>> islands = new ArrayList<>(banks.islands());
            islands.set(island, BankOrder.with(islands.get(island), edge, true));
            return new Banks(banks.near(), banks.far(), islands);
        }
        boolean nearer = near == far ? edge.place().distanceMetres() < NEAR_METRES : near < far;
        if (banks.far().isEmpty() && edge.place().distanceMetres() >= NEAR_METRES && near > NEAR_METRES) {
            nearer = false;
        }
        return nearer
                ? new Banks(BankOrder.with(banks.near(), edge, false), banks.far(), banks.islands())
                : new Banks(banks.near(), BankOrder.with(banks.far(), edge, false), banks.islands());
    }

    private static double distance(List<BankPoint> bank, BankPoint edge, boolean ring) {
        if (bank.isEmpty()) {
            return Double.POSITIVE_INFINITY;
        }
        if (bank.size() == 1) {
            return bank.get(0).place().distanceTo(edge.place());
        }
        return Shapes.line(bank, ring).distance(Shapes.FACTORY.createPoint(Shapes.coordinate(edge.place())));
    }
}
