package pegbed.geometry;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbed.model.Decimals;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Reading;
import pegbed.model.Visit;

/** What is odd about the readings of a peg. */
public final class Doubts {
    /** Two readings at one place and visit that differ by more than this can't both be right, metres (1 ft 8 in). */
    public static final double DISAGREE_METRES = 0.5;

    private static final double SAME_PLACE_METRES = 0.01;
    /** So far past the pole's reach a reading is still within it, metres. */
    public static final double REACH_SLACK_METRES = 0.05;

    private static final int MAX_SENTENCES = 10;

    private Doubts() {}

    /**
     * A reading that is kept but marked.
     *
     * @param visit index of its visit
     * @param reading index within the visit
     * @param sentence what is odd about it
     */
    public record Odd(int visit, int reading, String sentence) {}

    /** Readings beyond reach or on land, in order. */
    public static List<Odd> misplaced(Peg peg, PegWater water) {
        List<Odd> odd = new ArrayList<>();
        for (int v = 0; v < peg.visits().size(); v++) {
            List<Reading> readings = peg.visits().get(v).readings();
            for (int i = 0; i < readings.size(); i++) {
                Optional<String> why = misplaced(readings.get(i), water);
                if (why.isPresent()) {
                    odd.add(new Odd(v, i, name(peg, v, i) + why.get()));
                }
            }
        }
        return odd;
    }

    private static Optional<String> misplaced(Reading reading, PegWater water) {
        double r = reading.place().distanceMetres();
        if (r > water.reachMetres() + REACH_SLACK_METRES) {
            return Optional.of(" is " + Decimals.text(r, 1) + " m out, beyond the reach of "
                    + Decimals.text(water.reachMetres(), 1) + " m; it is kept, and marked.");
        }
        if (water.isLand(reading.place().xMetres(), reading.place().yMetres())) {
            return Optional.of(" at " + Decimals.text(r, 1) + " m, "
                    + Decimals.text(reading.place().angleDegrees(), 0)
                    + "° lies on land; it is kept, and marked. Check it, or the bank there.");
        }
        return Optional.empty();
    }

    /**
     * Refuses readings from a table that no pole of the peg reaches.
     *
     * @param readings in the table's order
     * @param remedy how to go on if they are right, as the end of a sentence
     * @throws InputException that names the first
     */
    public static void refuseBeyondPole(Peg peg, List<Reading> readings, String table, String remedy)
            throws InputException {
        double reach = peg.pole().reachMetres();
        for (int i = 0; i < readings.size(); i++) {
            double metres = readings.get(i).place().distanceMetres();
            if (metres > reach + REACH_SLACK_METRES) {
                throw new InputException(table + ": reading " + (i + 1) + " is " + Decimals.text(metres, 1)
                        + " m out, beyond the pole's " + Decimals.text(reach, 1)
                        + " m; give a distance between 0 and " + Decimals.text(reach, 1) + " m, or " + remedy + ".");
            }
        }
    }

    /** The sentences of the first few, and one that says how many more there are. */
    public static List<String> sentences(List<Odd> odd) {
        List<String> sentences = new ArrayList<>(
                odd.stream().limit(MAX_SENTENCES).map(Odd::sentence).toList());
        if (odd.size() > MAX_SENTENCES) {
            sentences.add(
                    "And " + (odd.size() - MAX_SENTENCES) + " more readings beyond reach or on land, kept and marked.");
        }
        return sentences;
    }

    /** The first two readings of one visit at one place that can't both be right, as a sentence. */
    public static Optional<String> contradiction(Peg peg) {
        for (Visit visit : peg.visits()) {
            Map<Cell, List<Integer>> cells = new HashMap<>();
            for (int i = 0; i < visit.readings().size(); i++) {
                Reading reading = visit.readings().get(i);
                long column = Math.round(reading.place().xMetres() / SAME_PLACE_METRES);
                long row = Math.round(reading.place().yMetres() / SAME_PLACE_METRES);
                for (long c = column - 1; c <= column + 1; c++) {
                    for (long r = row - 1; r <= row + 1; r++) {
                        for (int other : cells.getOrDefault(new Cell(c, r), List.of())) {
                            if (contradict(visit.readings().get(other), reading)) {
                                return Optional.of(sentence(visit, other, i));
                            }
                        }
                    }
                }
                cells.computeIfAbsent(new Cell(column, row), c -> new ArrayList<>())
                        .add(i);
            }
        }
        return Optional.empty();
    }

    private record Cell(long column, long row) {}

    private static boolean contradict(Reading a, Reading b) {
        return Math.abs(a.depthMetres() - b.depthMetres()) > DISAGREE_METRES
                && a.place().distanceTo(b.place()) < SAME_PLACE_METRES;
    }

    private static String sentence(Visit visit, int first, int second) {
        Reading a = visit.readings().get(first);
        Reading b = visit.readings().get(second);
        return "Readings " + (first + 1) + " and " + (second + 1) + " are at the same place ("
                + Decimals.text(a.place().distanceMetres(), 2) + " m, "
                + Decimals.text(a.place().angleDegrees(), 1) + "°) but say " + Decimals.text(a.depthMetres(), 2)
                + " m and " + Decimals.text(b.depthMetres(), 2)
                + " m; keep the right one, or say where the other was.";
    }

    /** What a reading is called in sentences: {@code Reading 7}, or {@code Reading 7 of visit 2}. */
    public static String name(Peg peg, int visit, int reading) {
        String name = "Reading " + (reading + 1);
        return peg.visits().size() == 1 ? name : name + " of visit " + (visit + 1);
    }
}
