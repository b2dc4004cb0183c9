package pegbed.storage.table;

import java.io.Reader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.InputException;
import pegbed.model.Place;
import pegbed.storage.peg.Fields;

/**
 * Banks as a table with the columns {@code bank,x_m,y_m}. Bank is {@code near}, {@code far} or {@code island}, with the
 * points along each in order. A second island is {@code island2} and so on, or {@code island} again after rows of
 * something else. A ring whose last point repeats its first is the same ring without it.
 *
 * @param banks two near points at least; no far ones, or two at least; islands of three at least
 * @param ignoredColumns columns that were passed over
 */
public record BanksTable(Banks banks, List<String> ignoredColumns) {
    private static final String EXAMPLE = "bank,x_m,y_m";

    public BanksTable {
        ignoredColumns = List.copyOf(ignoredColumns);
    }

    /**
     * Reads a table of banks.
     *
     * @throws InputException with file, line and column of the first thing that is wrong
     */
    public static BanksTable read(Path path) throws InputException {
        return from(Table.read(path, EXAMPLE));
    }

    /**
     * Reads a table of banks from text.
     *
     * @param name what to call the text in sentences
     */
    public static BanksTable read(Reader reader, String name) throws InputException {
        return from(Table.read(reader, name, EXAMPLE));
    }

    private static BanksTable from(Table table) throws InputException {
        Column bank = table.needed("bank");
        Column x = table.length("x");
        Column y = table.length("y");
        List<BankPoint> near = new ArrayList<>();
        List<BankPoint> far = new ArrayList<>();
        Map<String, List<BankPoint>> islands = new LinkedHashMap<>();
        String before = "";
        int runs = 0;
        for (Table.Row row : table.rows()) {
            String word = bank.words(row).strip().toLowerCase(Locale.ROOT);
            if (word.equals("island") && !before.equals(word)) {
                runs++;
            }
            List<BankPoint> points = switch (word) {
                case "near" -> near;
                case "far" -> far;
                case "island" -> islands.computeIfAbsent("run " + runs, key -> new ArrayList<>());
                default -> {
                    if (!word.matches("island[ _]?\\d{1,6}")) {
                        throw bank.bad(
                                row,
                                word.isEmpty()
                                        ? "the bank is missing"
                                        : "\"" + Fields.shortened(word, 40) + "\" is no bank",
                                "near, far, island or island2");
                    }
                    yield islands.computeIfAbsent(word, key -> new ArrayList<>());
                }
            };
            Place place = PointsTable.place(x, y, row);
            points.add(BankPoint.at(place.xMetres(), place.yMetres()));
            before = word;
        }
        List<List<BankPoint>> rings =
                islands.values().stream().map(BanksTable::opened).toList();
        check(table.name(), near, far, rings);
        return new BanksTable(new Banks(near, far, rings), table.ignoredColumns());
    }

    private static List<BankPoint> opened(List<BankPoint> ring) {
        int last = ring.size() - 1;
        return last > 0 && ring.get(0).equals(ring.get(last)) ? ring.subList(0, last) : ring;
    }

    private static void check(String name, List<BankPoint> near, List<BankPoint> far, List<List<BankPoint>> rings)
            throws InputException {
        if (near.size() < 2) {
            throw new InputException(name + " has " + count(near)
                    + " of the near bank, which needs two at least, such as" + " near,-5,0 and near,5,0.");
        }
        if (far.size() == 1) {
            throw new InputException(
                    name + " has one point of the far bank, which needs two at least, such as far,-5,13"
                            + " and far,5,13, or none on a pond.");
        }
        for (List<BankPoint> ring : rings) {
            if (ring.size() < 3) {
                throw new InputException(name + " has an island of " + count(ring)
                        + ", which needs three at least, such as" + " island,0,6 and island,1,7 and island,-1,7.");
            }
        }
    }

    private static String count(List<BankPoint> points) {
        return switch (points.size()) {
            case 0 -> "no point";
            case 1 -> "one point";
            default -> points.size() + " points";
        };
    }
}
