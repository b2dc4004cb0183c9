package pegbed.report.paint;

import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import pegbed.report.drawing.Colour;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Fill;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Ink;
import pegbed.report.drawing.Item;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Pen;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.Stroke;
import pegbed.report.drawing.Text;
import pegbed.report.drawing.Theme;
import pegbed.report.drawing.View;

/**
 * Writes a drawing as SVG 1.1: one group for each layer, text as text, no ids, no script, nothing from elsewhere. The
 * same drawing gives the same bytes. One user unit is a point of the drawing's view.
 *
 * <p>What a person typed is written as character data, in which the XML writer escapes what would be markup; signs that
 * XML 1.0 has no place for are left out.
 */
public final class SvgWriter {
    private static final String NAMESPACE = "http://www.w3.org/2000/svg";
    private static final String FAMILY = "'DejaVu Sans', Verdana, sans-serif";
    private static final double CENTS = 100;

    private final XMLStreamWriter xml;
    private final Theme theme;
    private final View view;

    private SvgWriter(XMLStreamWriter xml, Theme theme, View view) {
        this.xml = xml;
        this.theme = theme;
        this.view = view;
    }

    /**
     * A whole SVG file, UTF-8.
     *
     * @param title what the picture is called for those who can't see it
     * @param pixelsPerPoint how large it is shown by default
     */
    public static byte[] write(Drawing drawing, Theme theme, String title, double pixelsPerPoint) {
        String body = element(drawing, theme, title, pixelsPerPoint);
        return ("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + body + "\n").getBytes(StandardCharsets.UTF_8);
    }

    /** The {@code svg} element alone, for a page of HTML. */
    public static String element(Drawing drawing, Theme theme, String title, double pixelsPerPoint) {
        StringWriter out = new StringWriter();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out);
            new SvgWriter(xml, theme, drawing.view()).write(drawing, title, pixelsPerPoint);
            xml.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException("Writing to memory can't fail.", e);
        }
        return out.toString();
    }

    private void write(Drawing drawing, String title, double pixelsPerPoint) throws XMLStreamException {
        xml.setDefaultNamespace(NAMESPACE);
        xml.writeStartElement("svg");
        xml.writeDefaultNamespace(NAMESPACE);
        xml.writeAttribute("width", number(view.widthPoints() * pixelsPerPoint));
        xml.writeAttribute("height", number(view.heightPoints() * pixelsPerPoint));
        xml.writeAttribute("viewBox", "0 0 " + number(view.widthPoints()) + " " + number(view.heightPoints()));
        xml.writeAttribute("role", "img");
        xml.writeAttribute("aria-label", allowed(title));
        xml.writeAttribute("font-family", FAMILY);
        xml.writeAttribute("stroke-linecap", "round");
        xml.writeAttribute("stroke-linejoin", "round");
        xml.writeAttribute("fill", "none");
        xml.writeStartElement("title");
        xml.writeCharacters(allowed(title));
        xml.writeEndElement();
        xml.writeEmptyElement("rect");
        xml.writeAttribute("width", number(view.widthPoints()));
        xml.writeAttribute("height", number(view.heightPoints()));
        paint("fill", theme.fill(Role.SHEET, 0, 1));
        Layer open = null;
        for (Item item : drawing.items()) {
            if (item.layer() != open) {
                if (open != null) {
                    xml.writeEndElement();
                }
                open = item.layer();
                xml.writeCharacters("\n");
                xml.writeStartElement("g");
                xml.writeAttribute("class", name(open));
            }
            xml.writeCharacters("\n");
            write(item);
        }
        if (open != null) {
            xml.writeEndElement();
        }
        xml.writeEndElement();
        xml.flush();
    }

    private static String name(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private void write(Item item) throws XMLStreamException {
        if (item instanceof Fill fill) {
            xml.writeEmptyElement("path");
            xml.writeAttribute("class", name(fill.role()));
            xml.writeAttribute("fill-rule", "evenodd");
            paint("fill", theme.fill(fill.role(), fill.step(), fill.steps()));
            xml.writeAttribute("d", path(fill.shape(), fill.frame()));
        } else if (item instanceof Stroke stroke) {
            xml.writeEmptyElement("path");
            xml.writeAttribute("class", name(stroke.role()));
            pen(theme.pen(stroke.role()));
            xml.writeAttribute("d", path(stroke.lines(), stroke.frame()));
        } else if (item instanceof Text text && !text.words().isBlank()) {
            write(text);
        }
    }

    private void write(Text text) throws XMLStreamException {
        Coordinate at = place(new Coordinate(text.x(), text.y()), text.frame());
        Ink ink = theme.ink(text.role());
        Lettering lettering = text.lettering();
        xml.writeStartElement("text");
        xml.writeAttribute("class", name(text.role()));
        xml.writeAttribute("x", number(at.x));
        xml.writeAttribute("y", number(at.y));
        if (text.turnDegrees() != 0) {
            xml.writeAttribute(
                    "transform",
                    "rotate(" + number(text.turnDegrees()) + " " + number(at.x) + " " + number(at.y) + ")");
        }
        if (text.align() != Text.Align.START) {
            xml.writeAttribute("text-anchor", name(text.align()));
        }
        xml.writeAttribute("font-size", number(lettering.sizePoints()));
        if (lettering.bold()) {
            xml.writeAttribute("font-weight", "bold");
        }
        if (lettering.italic()) {
            xml.writeAttribute("font-style", "italic");
        }
        if (ink.halo().isPresent()) {
            pen(ink.halo().get());
            xml.writeAttribute("paint-order", "stroke");
        }
        paint("fill", ink.colour());
        xml.writeCharacters(allowed(text.words()));
        xml.writeEndElement();
    }

    private void pen(Pen pen) throws XMLStreamException {
        paint("stroke", pen.colour());
        xml.writeAttribute("stroke-width", number(pen.widthPoints()));
        List<Double> dashes = pen.dashPoints();
        if (!dashes.isEmpty()) {
            xml.writeAttribute(
                    "stroke-dasharray", dashes.stream().map(SvgWriter::number).collect(Collectors.joining(" ")));
        }
    }

    private void paint(String what, Colour colour) throws XMLStreamException {
        xml.writeAttribute(what, colour.hex());
        if (colour.opacity() < 1) {
            xml.writeAttribute(what + "-opacity", number(colour.opacity()));
        }
    }

    private String path(Geometry shape, Frame frame) {
        StringBuilder path = new StringBuilder();
        for (int i = 0; i < shape.getNumGeometries(); i++) {
            Geometry part = shape.getGeometryN(i);
            if (part instanceof Polygon polygon) {
                path(path, polygon.getExteriorRing(), frame);
                for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
                    path(path, polygon.getInteriorRingN(hole), frame);
                }
            } else if (part instanceof LineString line) {
                path(path, line, frame);
            }
        }
        return path.toString();
    }

    private void path(StringBuilder path, LineString line, Frame frame) {
        CoordinateSequence places = line.getCoordinateSequence();
        boolean closed = line.isClosed() && places.size() > 2;
        int count = closed ? places.size() - 1 : places.size();
        for (int i = 0; i < count; i++) {
            Coordinate at = place(places.getCoordinate(i), frame);
            path.append(i == 0 ? "M" : i == 1 ? "L" : " ")
                    .append(number(at.x))
                    .append(' ')
                    .append(number(at.y));
        }
        if (closed) {
            path.append('Z');
        }
    }

    /** In points of the sheet, the same as {@link View#toSheet} gives. */
    private Coordinate place(Coordinate at, Frame frame) {
        if (frame instanceof Frame.Water) {
            return new Coordinate(view.x(at.x), view.y(at.y));
        }
        if (frame instanceof Frame.At about) {
            return new Coordinate(view.x(about.xMetres()) + at.x, view.y(about.yMetres()) + at.y);
        }
        return at;
    }

    /** To a hundredth, without needless zeros. */
    private static String number(double value) {
        double cents = Math.rint(value * CENTS);
        return BigDecimal.valueOf((long) cents, 2)
                .setScale(2, RoundingMode.UNNECESSARY)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** Without what XML 1.0 (production 2, Char) doesn't allow. */
    private static String allowed(String words) {
        return words.codePoints()
                .filter(sign -> sign == 0x9
                        || sign == 0xA
                        || sign == 0xD
                        || (sign >= 0x20 && sign <= 0xD7FF)
                        || (sign >= 0xE000 && sign <= 0xFFFD)
                        || sign >= 0x10000)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }
}
