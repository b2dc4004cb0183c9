package pegbed.phone;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import pegbed.findings.Findings;
import pegbed.findings.FlatSpot;
import pegbed.findings.PegMap;
import pegbed.findings.Spot;
import pegbed.guidance.Guidance;
import pegbed.guidance.NextReading;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.notation.Line;
import pegbed.notation.LineBounds;
import pegbed.notation.Notation;
import pegbed.plan.Plan;
import pegbed.plan.PlannedLine;
import pegbed.plan.Rig;
import pegbed.storage.peg.Fingerprint;
import pegbed.storage.peg.PegReader;
import pegbed.storage.peg.PegWriter;
import pegbed.wording.CardWords;
import pegbed.wording.FindingWords;
import pegbed.wording.GuidanceWords;
import pegbed.wording.PlanWords;
import pegbed.wording.RigWords;
import pegbed.wording.TypedLineWords;

/**
 * All answers to a peg as its file's text gives it: numbers and the sentences made of them. The same class runs in Java
 * and, compiled ahead of time, in a browser; a test compares the two.
 *
 * @param numbers depths and doubts of the grid, then places, depths and odds of what was found, in a fixed order; SI
 *     units and degrees
 * @param words sentences on deepest place, flat spots, lines, rigs and the next reading
 * @param text the peg as it is written to a file
 */
public record PegAnswers(List<Double> numbers, List<String> words, String text) {
    /** The file's bytes are not kept, so nothing is compared with what it held. */
    private static final Fingerprint UNKNOWN = new Fingerprint("");

    public PegAnswers {
        numbers = List.copyOf(numbers);
        words = List.copyOf(words);
    }

    /**
     * Reads a peg file's text and finds all answers.
     *
     * @throws InputException if it is no peg file, or its banks can't be used
     */
    public static PegAnswers of(String text) throws InputException {
        Peg peg = read(text);
        PegMap map = PegMap.of(peg, Monitor.NONE);
        Findings findings = Findings.of(map, OptionalDouble.empty());
        Plan plan = Plan.of(findings, peg.wishes());
        NextReading next = Guidance.next(map);
        return new PegAnswers(numbers(findings, plan, next), words(findings, plan, next), PegWriter.text(peg));
    }

    /**
     * How a typed line was understood, or the sentence that refuses it.
     *
     * @param text of the file of the peg that it is typed for
     * @throws InputException if the text is no peg file
     */
    public static String understood(String text, String typed) throws InputException {
        Peg peg = read(text);
        try {
            Line line = Notation.of(peg).parse(typed);
            LineBounds.refuse(peg, line, typed);
            return TypedLineWords.of(peg).understood(line);
        } catch (InputException refused) {
            return refused.getMessage();
        }
    }

    private static Peg read(String text) throws InputException {
        return PegReader.read("The peg", text.getBytes(StandardCharsets.UTF_8), UNKNOWN)
                .peg();
    }

    private static List<Double> numbers(Findings findings, Plan plan, NextReading next) {
        List<Double> numbers = new ArrayList<>();
        PegMap map = findings.map();
        for (int node = 0; node < map.grid().frame().size(); node++) {
            if (map.grid().isWater(node)) {
                numbers.add(map.grid().depth().at(node));
                numbers.add(map.grid().sd().at(node));
            }
        }
        add(numbers, map.deepest().spot());
        numbers.add(findings.targetMetres());
        for (FlatSpot flat : findings.flats()) {
            add(numbers, flat.spot());
            flat.circle().ifPresent(circle -> {
                numbers.add(circle.xMetres());
                numbers.add(circle.yMetres());
                numbers.add(circle.radiusMetres());
            });
        }
        for (PlannedLine line : plan.lines()) {
            add(numbers, line.candidate().spot().place());
            numbers.add(line.candidate().spot().depthMetres());
            numbers.add(plan.hookToTipMetres(line));
        }
        add(numbers, next.place());
        return numbers;
    }

    private static void add(List<Double> numbers, Spot spot) {
        add(numbers, spot.place());
        numbers.add(spot.depthMetres());
        numbers.add(spot.sdMetres());
        numbers.add(spot.slope());
        numbers.add(spot.pFlat());
    }

    private static void add(List<Double> numbers, Place place) {
        numbers.add(place.xMetres());
        numbers.add(place.yMetres());
    }

    private static List<String> words(Findings findings, Plan plan, NextReading next) {
        Peg peg = findings.map().peg();
        List<String> words = new ArrayList<>();
        FindingWords found = FindingWords.of(peg);
        words.add(found.spot(findings.deepest().spot()));
        words.add(found.deepestArea(findings.deepest()));
        words.add(found.target(findings));
        for (FlatSpot flat : findings.flats()) {
            FindingWords.Card card = found.flatCard(flat);
            words.add(card.title() + "; " + card.where() + "; " + card.what());
        }
        findings.slopes().forEach(slope -> found.slope(slope).ifPresent(words::add));
        PlanWords lines = PlanWords.of(plan);
        for (PlannedLine line : plan.lines()) {
            words.add(lines.where(line) + ": " + lines.distance(line) + ", " + lines.depth(line) + " "
                    + lines.plusMinus(line));
            words.add(lines.why(line));
            words.addAll(lines.checks(line));
            words.addAll(lines.warnings(line));
        }
        RigWords rigs = RigWords.of(peg);
        for (Rig rig : plan.rigs()) {
            words.add(rigs.lines(rig) + ": " + rigs.floatSize(rig) + ", " + CardWords.settings(rigs, rig) + ", "
                    + rigs.hookLength(rig) + "; " + rigs.shotting(rig));
        }
        words.addAll(lines.shortfalls());
        GuidanceWords guidance = GuidanceWords.of(peg);
        words.add(guidance.where(next));
        words.add(guidance.why(next));
        return words;
    }
}
