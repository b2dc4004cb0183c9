package pegbed.bench.quality;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A table of figures, for people in Markdown, for machines in JSON. */
final class BenchTable {
    private final String name;
    private final String folder;
    private final String title;
    private final List<Column> columns;
    private final List<List<Cell>> rows = new ArrayList<>();

    /**
     * A column.
     *
     * @param key its name in JSON
     * @param header its heading, with the unit
     */
    record Column(String key, String header) {}

    /**
     * An empty table.
     *
     * @param name what it is, in JSON
     * @param folder of the pegs it is of; "all" for all folders together
     * @param title its heading
     */
    BenchTable(String name, String folder, String title, List<Column> columns) {
        this.name = name;
        this.folder = folder;
        this.title = title;
        this.columns = List.copyOf(columns);
    }

    static Column column(String key, String header) {
        return new Column(key, header);
    }

    void row(List<Cell> cells) {
        if (cells.size() != columns.size()) {
            throw new IllegalArgumentException(
                    "A row of " + cells.size() + " cells does not fit " + columns.size() + " columns.");
        }
        rows.add(List.copyOf(cells));
    }

    List<Column> columns() {
        return columns;
    }

    List<List<Cell>> rows() {
        return List.copyOf(rows);
    }

    String markdown() {
        StringBuilder text = new StringBuilder("### ").append(title).append("\n\n");
        text.append(line(columns.stream().map(Column::header).toList()));
        text.append("|").append("---|".repeat(columns.size())).append("\n");
        for (List<Cell> row : rows) {
            text.append(line(row.stream().map(Cell::text).toList()));
        }
        return text.toString();
    }

    private static String line(List<String> cells) {
        return cells.stream().collect(Collectors.joining(" | ", "| ", " |\n"));
    }

    ObjectNode json() {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("table", name);
        node.put("folder", folder);
        ArrayNode array = node.putArray("rows");
        for (List<Cell> row : rows) {
            ObjectNode cells = array.addObject();
            for (int i = 0; i < columns.size(); i++) {
                cells.set(columns.get(i).key(), row.get(i).json());
            }
        }
        return node;
    }
}
