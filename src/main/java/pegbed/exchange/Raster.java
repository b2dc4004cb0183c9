package pegbed.exchange;

/**
 * Numbers on a regular grid.
 *
 * @param width columns
 * @param height rows
 * @param bands one number for each pixel and band, row by row from the top; NaN is no value
 * @param names what the bands are
 * @param units their units
 */
record Raster(int width, int height, float[][] bands, String[] names, String[] units) {
    Raster {
        for (float[] band : bands) {
            if (band.length != width * height) {
                throw new IllegalArgumentException("A band needs a number for each pixel.");
            }
        }
    }

    /** The same at half the size: each pixel the mean of those of its four that have a value. */
    Raster halved() {
        int w = (width + 1) / 2;
        int h = (height + 1) / 2;
        float[][] half = new float[bands.length][w * h];
        for (int b = 0; b < bands.length; b++) {
            for (int row = 0; row < h; row++) {
                for (int column = 0; column < w; column++) {
                    half[b][row * w + column] = mean(bands[b], 2 * column, 2 * row);
                }
            }
        }
        return new Raster(w, h, half, names, units);
    }

    private float mean(float[] band, int column, int row) {
        double sum = 0;
        int count = 0;
        for (int r = row; r < Math.min(row + 2, height); r++) {
            for (int c = column; c < Math.min(column + 2, width); c++) {
                float value = band[r * width + c];
                if (!Float.isNaN(value)) {
                    sum += value;
                    count++;
                }
            }
        }
        return count == 0 ? Float.NaN : (float) (sum / count);
    }
}
