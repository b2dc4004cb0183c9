package pegbed.report.drawing;

import org.locationtech.jts.geom.Envelope;
import pegbed.model.Place;

/** Where on the water the map looks, and how close. Keeps the water in sight. */
public final class Camera {
    private static final double CLOSEST = 8;
    private static final double MARGIN_POINTS = 6;

    private double width = 100;
    private double height = 100;
    private Envelope bounds = new Envelope(-16, 16, -1.2, 17);
    private boolean fitted = true;
    private View view = new View(100, 100, 3, -16, 17);

    public View view() {
        return view;
    }

    /** The sheet has another size. */
    public void size(double widthPoints, double heightPoints) {
        if (widthPoints <= 0 || heightPoints <= 0) {
            return;
        }
        Place middle = middle();
        width = widthPoints;
        height = heightPoints;
        view = fitted ? fit() : about(middle, view.pointsPerMetre());
    }

    /** A picture was made of all there is; the camera looks as it does. */
    public void seen(View all, Envelope metres) {
        bounds = metres;
        if (fitted && all.widthPoints() == width && all.heightPoints() == height) {
            view = all;
        }
    }

    /** Shows all. */
    public void showAll() {
        fitted = true;
        view = fit();
    }

    public boolean showsAll() {
        return fitted;
    }

    /** Moves the picture by so many points. */
    public void pan(double xPoints, double yPoints) {
        Place middle = middle();
        double scale = view.pointsPerMetre();
        fitted = false;
        view = about(new Place(middle.xMetres() - xPoints / scale, middle.yMetres() + yPoints / scale), scale);
    }

    /** Goes closer by a factor, about a point of the sheet that stays where it is. */
    public void zoom(double factor, double xPoints, double yPoints) {
        double min = fit().pointsPerMetre();
        double scale = Math.max(min, Math.min(CLOSEST * min, view.pointsPerMetre() * factor));
        if (scale <= min * 1.001) {
            showAll();
            return;
        }
        double x = view.xMetres(xPoints);
        double y = view.yMetres(yPoints);
        fitted = false;
        view = about(new Place(x + (width / 2 - xPoints) / scale, y - (height / 2 - yPoints) / scale), scale);
    }

    public void zoomMiddle(double factor) {
        zoom(factor, width / 2, height / 2);
    }

    private Place middle() {
        return new Place(view.xMetres(width / 2), view.yMetres(height / 2));
    }

    private View about(Place wanted, double scale) {
        double x = Math.max(bounds.getMinX(), Math.min(bounds.getMaxX(), wanted.xMetres()));
        double y = Math.max(bounds.getMinY(), Math.min(bounds.getMaxY(), wanted.yMetres()));
        return new View(width, height, scale, x - width / 2 / scale, y + height / 2 / scale);
    }

    private View fit() {
        double scale = Math.max(
                1,
                Math.min(
                        (width - 2 * MARGIN_POINTS) / bounds.getWidth(),
                        (height - 2 * MARGIN_POINTS) / bounds.getHeight()));
        Place centre = new Place(bounds.centre().x, bounds.centre().y);
        return new View(
                width, height, scale, centre.xMetres() - width / 2 / scale, centre.yMetres() + height / 2 / scale);
    }
}
