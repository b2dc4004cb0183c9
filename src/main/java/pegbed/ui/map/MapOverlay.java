package pegbed.ui.map;

import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import pegbed.guidance.NextReading;
import pegbed.model.Place;
import pegbed.report.drawing.Theme;
import pegbed.report.drawing.View;
import pegbed.report.map.NextSign;
import pegbed.ui.profile.ProfileViewModel;

/** What moves with the pointer: its direction and place, the profile's line, and what can be taken hold of. */
final class MapOverlay {
    private final GraphicsContext canvas;
    private final View view;
    private final Color colour;
    private final Theme theme;

    MapOverlay(GraphicsContext canvas, View view, Color colour, Theme theme) {
        this.canvas = canvas;
        this.view = view;
        this.colour = colour;
        this.theme = theme;
    }

    /**
     * Draws it all.
     *
     * @param pointed whether the pointer, or the keys, are on the map: else nobody points at anything
     * @param large whether the next place is at its larger
     */
    void draw(
            MapViewModel model,
            ProfileViewModel profile,
            boolean pointed,
            boolean focused,
            Optional<NextReading> next,
            boolean large) {
        canvas.setStroke(colour);
        canvas.setFill(colour);
        canvas.setLineWidth(1.4);
        if (profile.drawn().isPresent()) {
            line(profile.drawn().get().from(), profile.drawn().get().to());
        } else if (pointed && model.toolProperty().get() == Tool.READ) {
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
        next.ifPresent(reading -> wedges(reading.place(), large ? NextSign.FARTHEST_POINTS : 4));
        Optional<Handle> selected = model.selectedProperty().get();
        for (Handle handle : model.handles()) {
            handle(handle, selected.filter(handle::equals).isPresent());
        }
    }

    /**
     * The next reading: four wedges that point at the place from all sides and come and go. Their form and colour are
     * nobody else's, and what stands at the place stays free.
     */
    private void wedges(Place place, double radius) {
        CanvasPainter.paint(NextSign.at(place, radius, view), view, theme, canvas);
        canvas.setStroke(colour);
        canvas.setFill(colour);
        canvas.setLineWidth(1.4);
        canvas.setLineDashes();
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
