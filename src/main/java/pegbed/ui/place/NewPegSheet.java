package pegbed.ui.place;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.PegName;
import pegbed.model.Pole;
import pegbed.notation.Line;
import pegbed.notation.LineBounds;
import pegbed.notation.Notation;
import pegbed.ui.controls.Controls;

/** A new peg in two minutes: what it is called, the pole, and where the banks are. */
public final class NewPegSheet {
    /** Wide enough for the joints of a usual pole. */
    private static final int JOINTS_COLUMNS = 22;

    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");

    private final VBox content = new VBox(10);
    private final TextField venue = field("new-venue", "Venue", "");
    private final TextField water = field("new-water", "Water", "");
    private final TextField number = field("new-number", "Peg", "");
    private final TextField joints = field("new-joints", "Pole joints in metres", "");
    private final TextField nearLeft = field("near-left", "Near bank to the left", "4 80L");
    private final TextField nearRight = field("near-right", "Near bank to the right", "4 80R");
    private final CheckBox hasFar = new CheckBox("There is a far bank within reach");
    private final TextField farLeft = field("far-left", "Far bank to the left", "14 30L");
    private final TextField farOut = field("far-out", "Far bank straight out", "13 0");
    private final TextField farRight = field("far-right", "Far bank to the right", "14 30R");
    private final List<TextField> fields =
            List.of(venue, water, number, joints, nearLeft, nearRight, farLeft, farOut, farRight);
    private final Label error = Controls.wrapped("error-words");

    /** @param pole of the peg that is open: a person's pole stays the same */
    public NewPegSheet(Pole pole) {
        joints.setText(String.join(
                ", ",
                pole.jointMetres().stream()
                        .map(joint -> String.format(Locale.ROOT, "%s", joint).replaceAll("\\.0$", ""))
                        .toList()));
        joints.setPrefColumnCount(JOINTS_COLUMNS);
        hasFar.setId("has-far");
        hasFar.setSelected(true);
        for (TextField far : List.of(farLeft, farOut, farRight)) {
            far.disableProperty().bind(hasFar.selectedProperty().not());
        }
        GridPane grid = new GridPane();
        grid.getStyleClass().add("form");
        grid.addRow(0, Controls.named("Venue", venue), venue, Controls.named("Water", water), water);
        grid.addRow(1, Controls.named("Peg", number), number, Controls.named("Pole joints, m", joints), joints);
        grid.addRow(
                2,
                Controls.named("Near bank, left", nearLeft),
                nearLeft,
                Controls.named("right", nearRight),
                nearRight);
        grid.add(hasFar, 1, 3, 3, 1);
        grid.addRow(4, Controls.named("Far bank, left", farLeft), farLeft, Controls.named("right", farRight), farRight);
        grid.addRow(5, Controls.named("straight out", farOut), farOut);
        Label help = Controls.wrapped("quiet");
        help.setText("A bank is told as distance and direction from your seat to the water's edge: 14 30L is 14 m out,"
                + " 30 degrees left. A field that is left empty takes its grey example. Rough is good enough; all of it can"
                + " be moved on the map later.");
        content.getChildren().addAll(help, grid, error);
        error.setId("new-error");
        error.setManaged(false);
        for (int i = 0; i < fields.size(); i++) {
            List<TextField> after = fields.subList(i + 1, fields.size());
            fields.get(i).addEventFilter(KeyEvent.KEY_PRESSED, event -> goOn(event, after));
        }
    }

    /** Enter goes to the next field; in the last it is left to the sheet's first button. */
    private static void goOn(KeyEvent event, List<TextField> after) {
        if (event.getCode() == KeyCode.ENTER) {
            after.stream().filter(field -> !field.isDisabled()).findFirst().ifPresent(field -> {
                field.requestFocus();
                event.consume();
            });
        }
    }

    /** Puts the cursor into the first field. */
    public void focus() {
        venue.requestFocus();
    }

    public Node content() {
        return content;
    }

    public List<Button> buttons(Runnable begin, Runnable cancel) {
        return List.of(
                Controls.button("begin-peg", "Begin this peg", begin), Controls.button("cancel-peg", "Cancel", cancel));
    }

    /** The peg as typed; what is wrong is said and marked on the sheet, and then there is none. */
    public Optional<Peg> peg() {
        fields.forEach(field -> field.pseudoClassStateChanged(WRONG, false));
        try {
            Peg named = Peg.EMPTY
                    .withName(new PegName(
                            venue.getText().strip(),
                            water.getText().strip(),
                            number.getText().strip()))
                    .withPole(read(joints, PlaceViewModel::pole));
            List<BankPoint> near = points(named, nearLeft, nearRight);
            List<BankPoint> far = hasFar.isSelected() ? points(named, farLeft, farOut, farRight) : List.of();
            return Optional.of(named.withBanks(new Banks(near, far, List.of())));
        } catch (InputException e) {
            error.setText(e.getMessage());
            error.setManaged(true);
            return Optional.empty();
        }
    }

    private static List<BankPoint> points(Peg peg, TextField... fields) throws InputException {
        List<BankPoint> points = new ArrayList<>();
        for (TextField field : fields) {
            points.add(read(field, typed -> {
                Line line = Notation.of(peg).parse("edge " + typed);
                LineBounds.refuse(peg, line, typed);
                return ((Line.EdgeLine) line).point();
            }));
        }
        return points;
    }

    /** Makes something of what stands in a field. */
    private interface Reader<T> {
        T read(String typed) throws InputException;
    }

    /** What a field, or its example where it is empty, says; a field that can't be read is marked. */
    private static <T> T read(TextField field, Reader<T> reader) throws InputException {
        try {
            return reader.read(field.getText().isBlank() ? field.getPromptText() : field.getText());
        } catch (InputException e) {
            field.pseudoClassStateChanged(WRONG, true);
            field.requestFocus();
            throw e;
        }
    }

    private static TextField field(String id, String name, String usual) {
        TextField field = Controls.field(id, name, 11);
        field.setPromptText(usual);
        return field;
    }
}
