package pegbed.report.drawing;

/**
 * How the water lies on a sheet. A point is the unit in which letters and pens are measured: about a pixel of an
 * ordinary screen, 1/72 inch on paper. A painter multiplies by its own pixels a point.
 *
 * @param widthPoints width of the sheet, above 0
 * @param heightPoints height of the sheet, above 0
 * @param pointsPerMetre scale of the map, above 0
 * @param leftMetres x at the left edge of the sheet, metres
 * @param topMetres y at the top edge of the sheet, metres
 */
public record View(
        double widthPoints, double heightPoints, double pointsPerMetre, double leftMetres, double topMetres) {
    public View {
        if (!(widthPoints > 0 && heightPoints > 0 && pointsPerMetre > 0)) {
            throw new IllegalArgumentException("A view needs a width, height and scale above 0, not " + widthPoints
                    + ", " + heightPoints + " and " + pointsPerMetre + ".");
        }
    }

    /** Points from the left edge of the sheet. */
    public double x(double xMetres) {
        return (xMetres - leftMetres) * pointsPerMetre;
    }

    /** Points down from the top edge of the sheet. */
    public double y(double yMetres) {
        return (topMetres - yMetres) * pointsPerMetre;
    }

    /** x on the water of a place on the sheet, metres. */
    public double xMetres(double xPoints) {
        return leftMetres + xPoints / pointsPerMetre;
    }

    /** y on the water of a place on the sheet, metres. */
    public double yMetres(double yPoints) {
        return topMetres - yPoints / pointsPerMetre;
    }
}
