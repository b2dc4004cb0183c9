package pegbed.ui.map;

import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import pegbed.guidance.NextReading;
import pegbed.model.Place;
import pegbed.report.drawing.View;
import pegbed.ui.profile.ProfileViewModel;

/** What moves with the pointer: its direction and place, the profile's line, and what can be taken hold of. */
final class MapOverlay {
    private final GraphicsContext canvas;
    private final View view;
    private final Color colour;

    MapOverlay(GraphicsContext canvas, View view, Color colour) {
        this.canvas = canvas;
        this.view = view;
        this.colour = colour;
    }

    void draw(
            MapViewModel model, ProfileViewModel profile, boolean focused, Optional<NextReading> next, boolean large) {
        canvas.setStroke(colour);
        canvas.setFill(colour);
        canvas.setLineWidth(1.4);
        if (profile.drawn().isPresent()) {
            line(profile.drawn().get().from(), profile.drawn().get().to());
        } else if (model.toolProperty().get() == Tool.READ) {
            Place pointer = model.pointerProperty().get();
            canvas.setLineDashes(6, 5);
            line(new Place(0, 0), pointer);
            canvas.setLineDashes();
        }
        if (model.toolProperty().get() == Tool.READ) {
            cross(model.pointerProperty().get(), focused ? 11 : 7);
        } else if (focused) {
            cross(model.pointerProperty().get(), 7);
        }
        next.ifPresent(reading -> ring(reading.place(), large ? 13 : 9));
        Optional<Handle> selected = model.selectedProperty().get();
        for (Handle handle : model.handles()) {
            handle(handle, selected.filter(handle::equals).isPresent());
        }
    }

    /** The next reading: a double ring that grows and shrinks, so that it differs from all that stands still. */
    private void ring(Place place, double radius) {
        double x = view.x(place.xMetres());
        double y = view.y(place.yMetres());
        canvas.setLineWidth(2.4);
        canvas.strokeOval(x - radius, y - radius, 2 * radius, 2 * radius);
        canvas.strokeOval(x - 4, y - 4, 8, 8);
        canvas.setLineWidth(1.4);
    }

    private void line(Place from, Place to) {
        canvas.strokeLine(view.x(from.xMetres()), view.y(from.yMetres()), view.x(to.xMetres()), view.y(to.yMetres()));
    }

    private void cross(Place place, double size) {
        double x = view.x(place.xMetres());
        double y = view.y(place.yMetres());
        canvas.strokeLine(x - size, y, x + size, y);
        canvas.strokeLine(x, y - size, x, y + size);
    }

    private void handle(Handle handle, boolean held) {
        double x = view.x(handle.place().xMetres());
        double y = view.y(handle.place().yMetres());
        double r = held ? 9 : 6;
        canvas.setFill(held ? colour : Color.WHITE);
        canvas.fillOval(x - r, y - r, 2 * r, 2 * r);
        canvas.setLineWidth(held ? 3 : 2);
        canvas.strokeOval(x - r, y - r, 2 * r, 2 * r);
    }
}
