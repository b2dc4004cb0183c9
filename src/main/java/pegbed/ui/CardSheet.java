package pegbed.ui;

import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
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
import javafx.scene.layout.VBox;
import pegbed.analysis.Plan;
import pegbed.model.InputException;
import pegbed.report.card.Card;
import pegbed.report.drawing.Themes;
import pegbed.storage.WholeFile;

/** The card that is taken to the peg: looked at, saved as a file, or printed. */
final class CardSheet {
    private static final double SHOWN_WIDTH = 560;

    private final Plan plan;
    private final FileChoice files;
    private final Image picture;
    private final ChoiceBox<Printer> printers = new ChoiceBox<>();
    private final Label told = Controls.wrapped("plain");

    CardSheet(Plan plan, FileChoice files) {
        this.plan = plan;
        this.files = files;
        picture = new Image(new ByteArrayInputStream(Card.png(plan, Themes.LIGHT)));
        told.setId("card-told");
        printers.setId("card-printer");
        printers.setAccessibleText("Printer");
        printers.getItems().setAll(Printer.getAllPrinters());
        printers.setValue(Printer.getDefaultPrinter());
        printers.setConverter(Controls.chosenBy(Printer::getName));
        Controls.setShown(printers, !printers.getItems().isEmpty());
    }

    Node content() {
        ImageView view = new ImageView(picture);
        view.setId("card-picture");
        view.setPreserveRatio(true);
        view.setSmooth(true);
        view.setFitWidth(SHOWN_WIDTH);
        view.setAccessibleText("The card: lines, rigs, map and cautions, as in the Lines panel");
        return new VBox(8, told, printers, view);
    }

    List<Button> buttons(Runnable close) {
        return List.of(
                Controls.button("card-save", "Save card", "As PDF, PNG, SVG, or HTML for a phone", this::save),
                Controls.button("card-print", "Print", "On A5 paper", this::print),
                Controls.button("card-close", "Close", close));
    }

    private void save() {
        Optional<Path> chosen = files.toSaveCard("card.pdf");
        chosen.ifPresent(path -> {
            try {
                WholeFile.write(path, Card.file(path.getFileName().toString(), plan, Themes.LIGHT));
                told.setText("Saved " + path.getFileName() + ".");
            } catch (InputException e) {
                told.setText(e.getMessage());
            }
        });
    }

    private void print() {
        PrinterJob job = printers.getValue() == null ? null : PrinterJob.createPrinterJob(printers.getValue());
        if (job == null) {
            told.setText("No printer is set up on this computer; save the card as a PDF and print that elsewhere.");
            return;
        }
        // Where the system has a dialog of its own it asks; on Linux the choice above is all there is.
        if (!job.showPrintDialog(told.getScene().getWindow())) {
            job.cancelJob();
            return;
        }
        PageLayout page = job.getPrinter()
                .createPageLayout(Paper.A5, PageOrientation.PORTRAIT, Printer.MarginType.HARDWARE_MINIMUM);
        ImageView sheet = new ImageView(picture);
        sheet.setPreserveRatio(true);
        sheet.setFitWidth(page.getPrintableWidth());
        sheet.setFitHeight(page.getPrintableHeight());
        boolean printed = job.printPage(page, sheet) && job.endJob();
        told.setText(printed ? "Sent to the printer." : "The printer did not take the card; save it as a PDF instead.");
    }
}
