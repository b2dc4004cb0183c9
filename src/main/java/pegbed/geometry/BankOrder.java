package pegbed.geometry;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.linearref.LengthIndexedLine;
import pegbed.model.BankPoint;

/** The order of points along a bank. */
public final class BankOrder {
    private BankOrder() {}

    /**
     * The bank with the edge between the two points it projects between, or beyond an end.
     *
     * @param ring whether the last point is joined to the first, as round an island
     */
    public static List<BankPoint> with(List<BankPoint> bank, BankPoint edge, boolean ring) {
        List<BankPoint> longer = new ArrayList<>(bank);
        if (bank.size() < 2) {
            boolean left = !bank.isEmpty()
                    && edge.place().xMetres() < bank.get(0).place().xMetres();
            longer.add(left ? 0 : bank.size(), edge);
            return longer;
        }
        LengthIndexedLine along = new LengthIndexedLine(Shapes.line(bank, ring));
        double place = along.project(Shapes.coordinate(edge.place()));
        double walked = 0;
        int at = place <= 0 ? 0 : bank.size();
        for (int i = 1; i < bank.size() && place > 0; i++) {
            walked += bank.get(i - 1).place().distanceTo(bank.get(i).place());
            if (place < walked) {
                at = i;
                break;
            }
        }
        longer.add(at, edge);
        return longer;
    }
}
