package pegbed.ui;

import java.util.function.Consumer;
import javafx.scene.control.Label;
import pegbed.model.Place;

/** A place where the bottom has changed; taking it points at it on the map. */
final class ChangedCard extends Card {
    ChangedCard(VisitsModel.Changed changed, Consumer<Place> show) {
        this(Controls.wrapped("plain"), changed, show);
    }

    private ChangedCard(Label words, VisitsModel.Changed changed, Consumer<Place> show) {
        super(words);
        words.setText(changed.words());
        name("±", changed.words());
        onTaken(() -> show.accept(changed.place()));
    }
}
