package pegbed.bench.quality;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/** The tables of one measurement, and the pegs that it had to leave out. */
public final class BenchReport {
    private final List<BenchTable> tables = new ArrayList<>();
    private final List<LeftOut> leftOut = new ArrayList<>();

    /**
     * A peg that is in no mean.
     *
     * @param folder of the pegs
     * @param peg its name
     * @param reason one sentence
     */
    record LeftOut(String folder, String peg, String reason) {}

    void add(BenchTable table) {
        tables.add(table);
    }

    void addLeftOut(List<LeftOut> pegs) {
        pegs.stream().filter(peg -> !leftOut.contains(peg)).forEach(leftOut::add);
    }

    List<BenchTable> tables() {
        return List.copyOf(tables);
    }

    List<LeftOut> leftOut() {
        return List.copyOf(leftOut);
    }

    /** The tables in Markdown. */
    public String markdown() {
        StringBuilder text = new StringBuilder();
        for (BenchTable table : tables) {
            text.append(table.markdown()).append("\n");
        }
        if (!leftOut.isEmpty()) {
            text.append("Left out of every mean:\n\n");
            for (LeftOut peg : leftOut) {
                text.append("- ")
                        .append(peg.folder())
                        .append(", ")
                        .append(peg.peg())
                        .append(": ")
                        .append(peg.reason())
                        .append("\n");
            }
        }
        return text.toString();
    }

    /** The tables for machines. */
    public ObjectNode json() {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        ArrayNode array = node.putArray("tables");
        tables.forEach(table -> array.add(table.json()));
        ArrayNode left = node.putArray("left_out");
        for (LeftOut peg : leftOut) {
            left.addObject().put("folder", peg.folder()).put("peg", peg.peg()).put("reason", peg.reason());
        }
        return node;
    }
}
