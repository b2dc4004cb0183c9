package pegbed.ui.fishing;

import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import pegbed.model.DayEvent;
import pegbed.session.DayTaps;
import pegbed.ui.controls.Controls;
import pegbed.ui.fishing.FishingViewModel.FishingLine;

/** The buttons of one line: each notes what happened there, now. */
public final class LineTaps extends HBox {
    /**
     * @param line the line
     * @param id what the buttons' ids begin with
     * @param number of the line, behind their ids
     */
    public LineTaps(FishingViewModel model, FishingLine line, String id, int number) {
        getStyleClass().add("row");
        for (DayEvent.Kind kind : DayTaps.KINDS) {
            Button tap = Controls.button(
                    id + "-" + kind.word() + "-" + number, DayTaps.words(kind), () -> model.note(kind, line.place()));
            tap.setAccessibleText(DayTaps.words(kind) + ", " + line.title());
            tap.setMaxWidth(Double.MAX_VALUE);
            HBox.setHgrow(tap, Priority.ALWAYS);
            getChildren().add(tap);
        }
        show(line);
    }

    /** The line has gone on: what is fished already can't be begun. */
    public void show(FishingLine line) {
        getChildren().get(DayTaps.KINDS.indexOf(DayEvent.Kind.START)).setDisable(line.fished());
    }
}
