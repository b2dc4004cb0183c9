package pegbed.storage.peg;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import pegbed.model.BankPoint;
import pegbed.model.Bottom;
import pegbed.model.Conditions;
import pegbed.model.Hazard;
import pegbed.model.Mark;
import pegbed.model.Peg;
import pegbed.model.Precision;
import pegbed.model.Reading;
import pegbed.model.Visit;

/**
 * Writes a peg as the JSON of {@code docs/peg-file.md}: members in a fixed order, two spaces of indent, a line for each
 * reading, bank point, mark, hazard and event, a newline at the end. Writing what was read from such a file gives the
 * same bytes.
 */
public final class PegWriter {
    static final String FORMAT = "pegbed-peg";
    static final int VERSION = 1;

    private PegWriter() {}

    /** The bytes of a peg file, UTF-8. */
    public static byte[] bytes(Peg peg) {
        return text(peg).getBytes(StandardCharsets.UTF_8);
    }

    /** The text of a peg file. */
    public static String text(Peg peg) {
        Members members = new Members()
                .text("format", FORMAT)
                .number("version", VERSION)
                .text("venue", peg.name().venue())
                .text("water", peg.name().water())
                .text("number", peg.name().number());
        peg.position()
                .ifPresent(at -> members.number("latitude_deg", at.latitudeDegrees())
                        .number("longitude_deg", at.longitudeDegrees())
                        .number("bearing_deg", at.bearingDegrees())
                        .number("position_accuracy_m", at.accuracyMetres()));
        members.text("depth_unit", word(peg.units().depth()))
                .text("distance_unit", word(peg.units().distance()))
                .numbers("pole_joints_m", peg.pole().jointMetres().stream().mapToDouble(Double::doubleValue))
                .number("left_limit_m", peg.limits().leftMetres())
                .number("right_limit_m", peg.limits().rightMetres())
                .json("near_bank", list(peg.banks().near(), PegWriter::bankPoint, "  "))
                .json("far_bank", list(peg.banks().far(), PegWriter::bankPoint, "  "));
        if (!peg.banks().islands().isEmpty()) {
            members.json(
                    "islands", list(peg.banks().islands(), ring -> list(ring, PegWriter::bankPoint, "    "), "  "));
        }
        if (!peg.marks().isEmpty()) {
            members.json("marks", list(peg.marks(), PegWriter::mark, "  "));
        }
        if (!peg.hazards().isEmpty()) {
            members.json("hazards", list(peg.hazards(), PegWriter::hazard, "  "));
        }
        members.json("wishes", WishesDraft.json(peg.wishes()))
                .json("visits", list(peg.visits(), PegWriter::visit, "  "))
                .extras(peg.extras());
        return withHalfCharactersEscaped(members.onLines("") + "\n");
    }

    /** The word of a unit in the file. */
    public static String word(Enum<?> unit) {
        return unit.name().toLowerCase(Locale.ROOT);
    }

    private static String visit(Visit visit) {
        Members members = new Members()
                .time("start", visit.start())
                .number("board_to_water_m", visit.boardToWaterMetres())
                .flag("afresh", visit.afresh())
                .words("note", visit.note());
        if (!visit.day().conditions().equals(Conditions.NONE)) {
            members.json("conditions", DayElements.json(visit.day().conditions()));
        }
        members.json("readings", list(visit.readings(), PegWriter::reading, "      "));
        if (!visit.day().events().isEmpty()) {
            members.json("events", list(visit.day().events(), DayElements::json, "      "));
        }
        return members.extras(visit.extras()).onLines("    ");
    }

    private static String reading(Reading reading) {
        NumberText.Polar polar = NumberText.polar(reading.place());
        Precision precision = reading.precision();
        return new Members()
                .typed(reading.typed())
                .json("distance_m", polar.distanceMetres())
                .json("angle_deg", polar.angleDegrees())
                .number("depth_m", reading.depthMetres())
                .numberUnless(Precision.PLAIN.sdDistanceMetres(), "sd_distance_m", precision.sdDistanceMetres())
                .numberUnless(Precision.PLAIN.sdAngleDegrees(), "sd_direction_deg", precision.sdAngleDegrees())
                .words(
                        "bottom",
                        reading.bottom() == Bottom.UNKNOWN
                                ? ""
                                : reading.bottom().word())
                .words("note", reading.note())
                .time("time", reading.time())
                .extras(reading.extras())
                .onOneLine();
    }

    private static String bankPoint(BankPoint point) {
        return new Members()
                .typed(point.typed())
                .number("x_m", point.place().xMetres())
                .number("y_m", point.place().yMetres())
                .number("depth_m", point.depthMetres())
                .extras(point.extras())
                .onOneLine();
    }

    private static String mark(Mark mark) {
        NumberText.Polar polar = NumberText.polar(mark.place());
        return new Members()
                .text("name", mark.name())
                .json("distance_m", polar.distanceMetres())
                .json("angle_deg", polar.angleDegrees())
                .extras(mark.extras())
                .onOneLine();
    }

    private static String hazard(Hazard hazard) {
        List<String> points = hazard.outline().stream()
                .map(place -> "[" + NumberText.text(place.xMetres()) + ", " + NumberText.text(place.yMetres()) + "]")
                .toList();
        return new Members()
                .text("kind", hazard.kind().word())
                .typed(hazard.typed())
                .json("outline_m", "[" + String.join(", ", points) + "]")
                .number("radius_m", hazard.radiusMetres())
                .words("note", hazard.note())
                .extras(hazard.extras())
                .onOneLine();
    }

    private static <T> String list(List<T> items, Function<T, String> json, String indent) {
        return Members.list(items.stream().map(json).toList(), indent);
    }

    /** Half of a surrogate pair has no UTF-8; JSON can still say it as an escape. */
    private static String withHalfCharactersEscaped(String text) {
        StringBuilder out = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (Character.isHighSurrogate(c) && i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1))) {
                out.append(c).append(text.charAt(++i));
            } else if (Character.isSurrogate(c)) {
                out.append("\\u" + Integer.toHexString(c).toUpperCase(Locale.ROOT));
            } else {
                out.append(c);
            }
        }
        return out.toString();
    }
}
