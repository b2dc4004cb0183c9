package pegbed.ui.map;

import javafx.scene.input.KeyEvent;
import pegbed.model.Place;
import pegbed.report.drawing.Camera;
import pegbed.ui.controls.Keys;

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
        if (Keys.pressed(Keys.Where.MAP, event).filter(this::act).isPresent()) {
            event.consume();
        }
    }

    private boolean act(Keys key) {
        switch (key) {
            case PAN_LEFT -> pane.moved(camera -> camera.pan(PAN_POINTS, 0));
            case PAN_RIGHT -> pane.moved(camera -> camera.pan(-PAN_POINTS, 0));
            case PAN_OUT -> pane.moved(camera -> camera.pan(0, PAN_POINTS));
            case PAN_IN -> pane.moved(camera -> camera.pan(0, -PAN_POINTS));
            case POINT_LEFT -> move(-1, 0);
            case POINT_RIGHT -> move(1, 0);
            case POINT_OUT -> move(0, 1);
            case POINT_IN -> move(0, -1);
            case CLOSER -> pane.moved(camera -> camera.zoomMiddle(ZOOM));
            case FARTHER -> pane.moved(camera -> camera.zoomMiddle(1 / ZOOM));
            case SHOW_ALL -> pane.moved(Camera::showAll);
            case TAKE_NEXT -> model.takeNext(1);
            case TAKE_PREVIOUS -> model.takeNext(-1);
            case USE_POINTER -> pane.useAt(model.pointerProperty().get());
            case PUT_POINT -> model.add(model.pointerProperty().get());
            case DELETE_POINT -> model.deleteSelected();
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
