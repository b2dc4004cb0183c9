package pegbed.ui.visits;

import java.util.function.Consumer;
import javafx.scene.control.Label;
import pegbed.model.Place;
import pegbed.ui.controls.Card;
import pegbed.ui.controls.Controls;

/** A place where the bottom has changed; taking it points at it on the map. */
final class ChangedCard extends Card {
    ChangedCard(VisitsViewModel.Changed changed, Consumer<Place> show) {
        this(Controls.wrapped("plain"), changed, show);
    }

    private ChangedCard(Label words, VisitsViewModel.Changed changed, Consumer<Place> show) {
        super(words);
        words.setText(changed.words());
        name("±", changed.words());
        onTaken(() -> show.accept(changed.place()));
    }
}
