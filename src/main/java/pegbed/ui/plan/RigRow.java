package pegbed.ui.plan;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableMap;
import pegbed.model.InputException;
import pegbed.model.Reading;
import pegbed.model.RigTemplate;
import pegbed.model.RigTemplate.Ground;
import pegbed.model.Units;
import pegbed.notation.RigLength;
import pegbed.notation.Shotting;

/**
 * A rig template while it is typed: a text for each thing, and the template as far as the texts were right. What nobody
 * changed keeps its exact value, whatever its text rounds.
 */
final class RigRow {
    /** What is typed of a rig. */
    enum Cell {
        NAME("name"),
        UP_TO("up to"),
        FLOAT("float"),
        CARRIES("carries"),
        TIP_TO_BODY("tip to body"),
        HOOK_LENGTH("hook length"),
        SHOTS("shot");

        private final String words;

        Cell(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    private static final String ANY_DEPTH = "any";

    /**
     * Shot may weigh this much more than the float carries before it is said: charts call their weights approximate.
     */
    private static final double OVERLOAD = 1.1;

    private final RigLength lengths;
    private final Shotting shotting;
    private final Map<Cell, StringProperty> texts = new EnumMap<>(Cell.class);
    private final ObservableMap<Cell, String> errors = FXCollections.observableHashMap();
    private final ReadOnlyStringWrapper error = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper weight = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper note = new ReadOnlyStringWrapper("");
    private RigTemplate template;

    RigRow(RigTemplate template, Units.Depth unit) {
        this.template = template;
        lengths = new RigLength(unit);
        shotting = new Shotting(unit);
        for (Cell cell : Cell.values()) {
            texts.put(cell, new SimpleStringProperty(print(cell)));
        }
        refresh();
    }

    /** What stands in a cell. */
    StringProperty text(Cell cell) {
        return texts.get(cell);
    }

    /** For each cell that is wrong, why, one sentence. */
    ObservableMap<Cell, String> errors() {
        return errors;
    }

    /** All that is wrong, a sentence each; empty if nothing. */
    ReadOnlyStringProperty errorProperty() {
        return error.getReadOnlyProperty();
    }

    /** What all the shot weighs. */
    ReadOnlyStringProperty weightProperty() {
        return weight.getReadOnlyProperty();
    }

    /** What is right but odd, one sentence; empty if nothing. */
    ReadOnlyStringProperty noteProperty() {
        return note.getReadOnlyProperty();
    }

    Ground ground() {
        return template.ground();
    }

    void setGround(Ground ground) {
        template = new RigTemplate(
                template.name(),
                template.upToMetres(),
                ground,
                template.floatSize(),
                template.floatGrams(),
                template.tipToBodyMetres(),
                template.hookLengthMetres(),
                template.shots(),
                template.extras());
    }

    /** The template as far as its texts were right when they were looked at. */
    RigTemplate template() {
        return template;
    }

    /** Whether a text stands here that was not taken. */
    boolean hasUntaken() {
        return texts.entrySet().stream()
                .anyMatch(entry -> !entry.getValue().get().equals(print(entry.getKey())));
    }

    /** Takes all that was typed; false if something is wrong, which then stands as it is with its sentence. */
    boolean takeAll() {
        boolean all = true;
        for (Cell cell : Cell.values()) {
            all &= take(cell);
        }
        return all;
    }

    /** Takes what was typed in a cell; false if it is wrong, which then stands as it is with its sentence. */
    boolean take(Cell cell) {
        String typed = texts.get(cell).get();
        try {
            if (!typed.equals(print(cell))) {
                template = with(cell, typed);
                texts.get(cell).set(print(cell));
            }
            errors.remove(cell);
        } catch (InputException e) {
            errors.put(cell, e.getMessage());
        }
        refresh();
        return !errors.containsKey(cell);
    }

    private void refresh() {
        Map<Cell, String> inOrder = new EnumMap<>(Cell.class);
        inOrder.putAll(errors);
        error.set(String.join(" ", inOrder.values()));
        weight.set(grams(template.shotGrams()) + " g");
        note.set(
                template.shotGrams() > template.floatGrams() * OVERLOAD
                        ? "The shot weighs " + grams(template.shotGrams()) + " g, more than the "
                                + grams(template.floatGrams()) + " g that the float carries."
                        : "");
    }

    private String print(Cell cell) {
        return switch (cell) {
            case NAME -> template.name();
            case UP_TO ->
                template.upToMetres() >= Reading.DEEPEST_METRES ? ANY_DEPTH : lengths.print(template.upToMetres());
            case FLOAT -> template.floatSize();
            case CARRIES -> grams(template.floatGrams());
            case TIP_TO_BODY -> lengths.print(template.tipToBodyMetres());
            case HOOK_LENGTH -> lengths.print(template.hookLengthMetres());
            case SHOTS -> shotting.print(template.shots());
        };
    }

    private static String grams(double grams) {
        BigDecimal exact = new BigDecimal(String.format(Locale.ROOT, "%.4f", grams)).stripTrailingZeros();
        return exact.setScale(Math.max(2, exact.scale())).toPlainString();
    }

    private RigTemplate with(Cell cell, String typed) throws InputException {
        return new RigTemplate(
                cell == Cell.NAME ? name(typed) : template.name(),
                cell == Cell.UP_TO ? upTo(typed) : template.upToMetres(),
                template.ground(),
                cell == Cell.FLOAT ? typed.strip() : template.floatSize(),
                cell == Cell.CARRIES ? carries(typed) : template.floatGrams(),
                cell == Cell.TIP_TO_BODY
                        ? lengths.parse(typed, "From the float's tip to the base of its body", 0, 1, 0.065)
                        : template.tipToBodyMetres(),
                cell == Cell.HOOK_LENGTH
                        ? lengths.parse(typed, "The hook length", 0.02, 2, 0.10)
                        : template.hookLengthMetres(),
                cell == Cell.SHOTS ? shotting.parse(typed, template.shots()) : template.shots(),
                template.extras());
    }

    private static String name(String typed) throws InputException {
        if (typed.isBlank()) {
            throw new InputException("A rig needs a name, such as ledge.");
        }
        return typed.strip();
    }

    private double upTo(String typed) throws InputException {
        String words = typed.strip().toLowerCase(Locale.ROOT);
        return words.isEmpty() || words.equals(ANY_DEPTH)
                ? Reading.DEEPEST_METRES
                : lengths.parse(typed, "The depth up to which a rig is used", 0.1, Reading.DEEPEST_METRES, 1.05);
    }

    private static double carries(String typed) throws InputException {
        String number = typed.strip().replaceAll("(?i)\\s*g$", "").replace(',', '.');
        if (number.matches("\\d{1,4}(\\.\\d{0,6})?|\\.\\d{1,6}")) {
            double grams = Double.parseDouble(number);
            if (grams >= 0.01 && grams <= 50) {
                return grams;
            }
        }
        throw new InputException("What the float carries is grams of shot, from 0.01 to 50, such as 0.4; \""
                + typed.strip() + "\" is not.");
    }
}
