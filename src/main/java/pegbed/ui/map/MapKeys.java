package pegbed.ui.map;

import javafx.scene.input.KeyEvent;
import pegbed.model.Place;

/** The map by keyboard. */
final class MapKeys {
    private static final double TURN_DEGREES = 2;
    private static final double STEP_METRES = 0.25;
    private static final double FINE_METRES = 0.1;
    private static final double PAN_POINTS = 40;
    private static final double ZOOM = 1.25;

    private final MapPane pane;
    private final MapViewModel model;

    MapKeys(MapPane pane, MapViewModel model) {
        this.pane = pane;
        this.model = model;
    }

    void press(KeyEvent event) {
        if (event.isAltDown() || event.isMetaDown()) {
            return;
        }
        boolean used = event.isControlDown() ? pan(event) : act(event);
        if (used) {
            event.consume();
        }
    }

    private boolean pan(KeyEvent event) {
        switch (event.getCode()) {
            case LEFT -> pane.moved(camera -> camera.pan(PAN_POINTS, 0));
            case RIGHT -> pane.moved(camera -> camera.pan(-PAN_POINTS, 0));
            case UP -> pane.moved(camera -> camera.pan(0, PAN_POINTS));
            case DOWN -> pane.moved(camera -> camera.pan(0, -PAN_POINTS));
            default -> {
                return false;
            }
        }
        return true;
    }

    private boolean act(KeyEvent event) {
        switch (event.getCode()) {
            case LEFT -> move(-1, 0);
            case RIGHT -> move(1, 0);
            case UP -> move(0, 1);
            case DOWN -> move(0, -1);
            case PLUS, ADD, EQUALS -> pane.moved(camera -> camera.zoomMiddle(ZOOM));
            case MINUS, SUBTRACT -> pane.moved(camera -> camera.zoomMiddle(1 / ZOOM));
            case DIGIT0, NUMPAD0, HOME -> pane.moved(Camera::showAll);
            case PAGE_DOWN -> model.takeNext(1);
            case PAGE_UP -> model.takeNext(-1);
            case ENTER, SPACE -> pane.useAt(model.pointerProperty().get());
            case INSERT -> model.add(model.pointerProperty().get());
            case DELETE, BACK_SPACE -> model.deleteSelected();
            default -> {
                return false;
            }
        }
        return true;
    }

    private void move(int right, int out) {
        if (model.selectedProperty().get().isPresent()) {
            Place at = model.selectedProperty().get().get().place();
            model.moveTo(new Place(at.xMetres() + right * FINE_METRES, at.yMetres() + out * FINE_METRES));
            return;
        }
        Place at = model.pointerProperty().get();
        double distance = Math.max(STEP_METRES, at.distanceMetres() + out * STEP_METRES);
        double angle = Math.max(-89, Math.min(89, at.angleDegrees() + right * TURN_DEGREES));
        model.point(Place.polar(distance, angle));
    }
}
