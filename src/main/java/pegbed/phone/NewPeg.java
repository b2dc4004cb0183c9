package pegbed.phone;

import java.util.ArrayList;
import java.util.List;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.PegName;
import pegbed.model.Pole;
import pegbed.model.Units;
import pegbed.notation.Line;
import pegbed.notation.LineBounds;
import pegbed.notation.Notation;

/** A new peg from a few taps: its name, the pole, and each bank as three distances from the seat. */
final class NewPeg {
    /** To the left, straight out, to the right: where the near bank's edge is told. */
    private static final List<String> NEAR = List.of("80L", "0", "80R");

    /** Where the far bank's edge is told. */
    private static final List<String> FAR = List.of("30L", "0", "30R");

    private static final List<Double> NEAR_USUAL = List.of(4.0, 0.7, 4.0);
    private static final List<Double> FAR_USUAL = List.of(14.0, 13.0, 14.0);
    private static final double SHORTEST_POLE_METRES = 1;
    private static final double LONGEST_POLE_METRES = 30;

    private NewPeg() {}

    /** What is asked: for each distance where it is told, and what it is if nobody says otherwise, metres. */
    static JsonText form() {
        return new JsonText()
                .put("near", distances(NEAR_USUAL, "80° left", "straight out", "80° right"))
                .put("far", distances(FAR_USUAL, "30° left", "straight out", "30° right"))
                .put("pole", Pole.USUAL.reachMetres())
                .put("shortestPole", SHORTEST_POLE_METRES)
                .put("longestPole", LONGEST_POLE_METRES)
                .putWords("units", List.of("feet", "centimetres", "metres"));
    }

    private static List<JsonText> distances(List<Double> usual, String... directions) {
        List<JsonText> all = new ArrayList<>();
        for (int i = 0; i < directions.length; i++) {
            all.add(new JsonText().put("direction", directions[i]).put("metres", usual.get(i)));
        }
        return all;
    }

    /** @throws InputException if a distance or the pole can't be */
    static Peg of(Request request) throws InputException {
        double reach = request.number("pole").orElse(Pole.USUAL.reachMetres());
        if (!(reach >= SHORTEST_POLE_METRES && reach <= LONGEST_POLE_METRES)) {
            throw new InputException("The longest pole is " + reach + " m; it must be between 1 and 30 m, such as 16.");
        }
        Peg peg = Peg.EMPTY
                .withName(new PegName(
                        request.words("venue").strip(),
                        request.words("water").strip(),
                        request.words("number").strip()))
                .withUnits(units(request.words("units")))
                .withPole(Pole.USUAL.withReach(reach));
        List<BankPoint> near = bank(peg, "near", request.texts("near"), NEAR);
        List<BankPoint> far = request.texts("far").isEmpty() ? List.of() : bank(peg, "far", request.texts("far"), FAR);
        return peg.withBanks(new Banks(near, far, List.of()));
    }

    private static Units units(String word) {
        return switch (word) {
            case "centimetres" -> new Units(Units.Depth.CENTIMETRES, Units.Distance.SECTIONS);
            case "metres" -> new Units(Units.Depth.METRES, Units.Distance.SECTIONS);
            default -> Units.USUAL;
        };
    }

    private static List<BankPoint> bank(Peg peg, String name, List<String> distances, List<String> directions)
            throws InputException {
        if (distances.size() != directions.size()) {
            throw new InputException(
                    "The " + name + " bank needs three distances: to the left, straight out and to the" + " right.");
        }
        List<BankPoint> points = new ArrayList<>();
        for (int i = 0; i < directions.size(); i++) {
            String typed = distances.get(i).strip() + " " + directions.get(i);
            Line line = Notation.of(peg).parse("edge " + typed);
            LineBounds.refuse(peg, line, typed);
            points.add(((Line.EdgeLine) line).point());
        }
        return points;
    }
}
