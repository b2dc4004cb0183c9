package pegbed.exchange;

/**
 * How a layer is drawn elsewhere.
 *
 * @param shape of its things
 * @param colour of lines and points, RGB as six hexadecimal digits
 * @param fill of areas and points, the same
 * @param opacity of the fill, 0 to 1
 * @param width of lines, or size of points, pixels
 */
record LayerStyle(Layer.Shape shape, String colour, String fill, double opacity, double width) {
    static LayerStyle of(Layer layer) {
        return switch (layer.name()) {
            case "seat" -> new LayerStyle(layer.shape(), "202020", "202020", 1, 9);
            case "water" -> new LayerStyle(layer.shape(), "4a6f8a", "d7e6f0", 0.6, 1);
            case "contours" -> new LayerStyle(layer.shape(), "23527a", "23527a", 1, 0.8);
            case "guess" -> new LayerStyle(layer.shape(), "808080", "ffffff", 0.5, 0.5);
            case "banks" -> new LayerStyle(layer.shape(), "5b4a30", "5b4a30", 1, 2);
            case "readings" -> new LayerStyle(layer.shape(), "202020", "ffffff", 1, 5);
            case "flats" -> new LayerStyle(layer.shape(), "8a5a00", "e5b85c", 0.5, 1);
            case "lines" -> new LayerStyle(layer.shape(), "7a0019", "c8102e", 1, 8);
            case "hazards" -> new LayerStyle(layer.shape(), "b00000", "ff7040", 0.4, 1.5);
            default -> new LayerStyle(layer.shape(), "303030", "909090", 1, 6);
        };
    }

    /** As Styled Layer Descriptor 1.1 (OGC 05-078r4) with Symbology Encoding 1.1 (OGC 05-077r4). */
    String text(String name) {
        String stroke = "<se:Stroke><se:SvgParameter name=\"stroke\">#" + colour
                + "</se:SvgParameter><se:SvgParameter name=\"stroke-width\">"
                + (shape == Layer.Shape.POINT ? 1 : width) + "</se:SvgParameter></se:Stroke>";
        String filled = "<se:Fill><se:SvgParameter name=\"fill\">#" + fill
                + "</se:SvgParameter><se:SvgParameter name=\"fill-opacity\">" + opacity
                + "</se:SvgParameter></se:Fill>";
        String symbol = switch (shape) {
            case POINT ->
                "<se:PointSymbolizer><se:Graphic><se:Mark><se:WellKnownName>circle</se:WellKnownName>" + filled + stroke
                        + "</se:Mark><se:Size>" + width + "</se:Size></se:Graphic></se:PointSymbolizer>";
            case LINESTRING -> "<se:LineSymbolizer>" + stroke + "</se:LineSymbolizer>";
            case MULTIPOLYGON -> "<se:PolygonSymbolizer>" + filled + stroke + "</se:PolygonSymbolizer>";
        };
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?><StyledLayerDescriptor xmlns=\"http://www.opengis.net/sld\""
                + " xmlns:se=\"http://www.opengis.net/se\" version=\"1.1.0\"><NamedLayer><se:Name>" + name
                + "</se:Name><UserStyle><se:FeatureTypeStyle><se:Rule>" + symbol
                + "</se:Rule></se:FeatureTypeStyle></UserStyle></NamedLayer></StyledLayerDescriptor>";
    }
}
