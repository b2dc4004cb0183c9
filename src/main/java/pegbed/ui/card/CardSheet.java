package pegbed.ui.card;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.print.PageLayout;
import javafx.print.PageOrientation;
import javafx.print.Paper;
import javafx.print.Printer;
import javafx.print.PrinterJob;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import pegbed.ui.controls.Controls;
import pegbed.ui.controls.FileChoice;

/** The card that is taken to the peg: looked at, saved as a file, or printed. */
public final class CardSheet {
    private static final double SHOWN_WIDTH = 560;
    /** As high for its width as A5 paper, so that nothing moves when the picture comes. */
    private static final double SHOWN_HEIGHT = SHOWN_WIDTH * 210 / 148;

    private final CardViewModel model;
    private final FileChoice files;
    private final Optional<Path> folder;
    private final ChoiceBox<Printer> printers = new ChoiceBox<>();
    private final Label message;

    /**
     * A sheet with the card.
     *
     * @param folder where to begin looking for a place to save it, if known
     */
    public CardSheet(CardViewModel model, FileChoice files, Optional<Path> folder) {
        this.model = model;
        this.files = files;
        this.folder = folder;
        message = Controls.message("card-message", "plain", model.messageProperty());
        printers.setId("card-printer");
        printers.setAccessibleText("Printer");
        printers.setConverter(Controls.chosenBy(Printer::getName));
        model.printersProperty().addListener((property, before, now) -> now.ifPresent(this::offer));
        Controls.shownWhile(printers, Bindings.isNotEmpty(printers.getItems()));
    }

    private void offer(CardViewModel.Printers found) {
        printers.getItems().setAll(found.all());
        printers.setValue(found.usual().orElse(null));
    }

    public Node content() {
        return new VBox(8, printers, new StackPane(paper(), picture()));
    }

    /** What was done last; stands above the buttons, where one has just pressed. */
    public List<Label> said() {
        return List.of(message);
    }

    private Node paper() {
        Label words = new Label("Drawing the card …");
        words.setId("card-drawing");
        words.getStyleClass().add("quiet");
        words.setMinSize(SHOWN_WIDTH, SHOWN_HEIGHT);
        words.setAlignment(Pos.CENTER);
        Controls.shownWhile(words, model.drawingProperty());
        return words;
    }

    private Node picture() {
        ImageView view = new ImageView();
        view.setId("card-picture");
        view.setPreserveRatio(true);
        view.setSmooth(true);
        view.setFitWidth(SHOWN_WIDTH);
        view.setAccessibleText("The card: lines, rigs, map and cautions, as in the Lines panel");
        view.imageProperty().bind(model.pictureProperty().map(drawn -> drawn.orElse(null)));
        Controls.shownWhile(view, view.imageProperty().isNotNull());
        return view;
    }

    public List<Button> buttons(Runnable close) {
        return List.of(
                Controls.button("card-save", "Save card", "As PDF, PNG, SVG, or HTML for a phone", this::save),
                Controls.button("card-print", "Print", "On A5 paper", this::print),
                Controls.button("card-close", "Close", close));
    }

    private void save() {
        files.toSaveCard(model.suggestedName(), folder).ifPresent(model::save);
    }

    private void print() {
        Optional<Image> picture = model.pictureProperty().get();
        Optional<CardViewModel.Printers> known = model.printersProperty().get();
        if (picture.isEmpty() || known.isEmpty()) {
            model.show("The card or the printers are not there yet; press again in a moment.");
            return;
        }
        Optional<String> hindrance =
                CardViewModel.hindrance(System.getProperty("os.name", ""), CardViewModel.LINUX_SPOOLER);
        if (hindrance.isPresent()) {
            model.show(hindrance.get());
            return;
        }
        PrinterJob job = printers.getValue() == null ? null : PrinterJob.createPrinterJob(printers.getValue());
        if (job == null) {
            model.show("No printer is set up on this computer; save the card as a PDF and print that elsewhere.");
            return;
        }
        // Where the system has a dialog of its own it asks; on Linux the choice above is all there is.
        if (!job.showPrintDialog(message.getScene().getWindow())) {
            job.cancelJob();
            return;
        }
        job.getJobSettings().setJobName(model.suggestedName());
        PageLayout page = job.getPrinter()
                .createPageLayout(Paper.A5, PageOrientation.PORTRAIT, Printer.MarginType.HARDWARE_MINIMUM);
        ImageView sheet = new ImageView(picture.get());
        sheet.setPreserveRatio(true);
        sheet.setFitWidth(page.getPrintableWidth());
        sheet.setFitHeight(page.getPrintableHeight());
        boolean printed = job.printPage(page, sheet) && job.endJob();
        model.show(printed ? "Sent to the printer." : "The printer did not take the card; save it as a PDF instead.");
    }
}
