package pegbed.phone;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pegbed.findings.Findings;
import pegbed.findings.PegMap;
import pegbed.geometry.Doubts;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.notation.ShortForm;
import pegbed.plan.Plan;
import pegbed.plan.PlannedLine;
import pegbed.wording.CardWords;
import pegbed.wording.Caution;
import pegbed.wording.FindingWords;
import pegbed.wording.LevelWords;
import pegbed.wording.MapWords;
import pegbed.wording.PlanCards;
import pegbed.wording.PlanWords;
import pegbed.wording.Sentences;

/** What was found at the target depth, and the lines and rigs, as cards. */
final class PlanAnswer {
    /** The shallowest target, metres. */
    private static final double SHALLOWEST_METRES = 0.10;

    /** The target goes so deep at least, metres. */
    private static final double LEAST_DEEPEST_METRES = 0.5;

    private static final double TARGET_STEP_METRES = 0.005;

    private PlanAnswer() {}

    static JsonText of(PhonePeg phone) throws InputException {
        Plan plan = phone.plan();
        Findings findings = plan.findings();
        PegMap map = findings.map();
        Peg peg = map.peg();
        FindingWords found = FindingWords.of(peg);
        PlanWords words = PlanWords.of(plan);
        List<JsonText> slopes = new ArrayList<>();
        findings.slopes()
                .forEach(slope -> found.slope(slope)
                        .ifPresent(steep -> slopes.add(new JsonText()
                                .put("title", Sentences.capital(slope.zone().words()))
                                .put("what", steep))));
        return new JsonText()
                .put("target", target(findings))
                .put("deepest", MapAnswer.card(found.deepestCard(findings.deepest())))
                .put(
                        "flats",
                        findings.flats().stream()
                                .map(flat -> MapAnswer.card(found.flatCard(flat)))
                                .toList())
                .put("slopes", slopes)
                .put("lines", lines(plan, words))
                .put("noLines", plan.lines().isEmpty() ? Optional.of(CardWords.NO_LINES) : Optional.empty())
                .put("order", plan.lines().isEmpty() ? Optional.empty() : Optional.of(words.order()))
                .put(
                        "rigs",
                        PlanCards.rigs(plan).stream()
                                .map(rig ->
                                        new JsonText().put("title", rig.title()).put("what", rig.what()))
                                .toList())
                .putWords("shortfalls", words.shortfalls())
                .putWords("notes", notes(map))
                .putWords("warnings", warnings(map))
                .putWords("cautions", Caution.brief());
    }

    private static JsonText target(Findings findings) {
        Peg peg = findings.map().peg();
        double target = findings.targetMetres();
        return new JsonText()
                .put("words", FindingWords.of(peg).target(findings))
                .put("metres", target)
                .put("typed", new ShortForm(peg.units(), peg.pole(), '.').printDepth(target))
                .put("follows", findings.targetFollows())
                .put("least", SHALLOWEST_METRES)
                .put(
                        "most",
                        Math.max(LEAST_DEEPEST_METRES, findings.deepest().spot().depthMetres()))
                .put("step", TARGET_STEP_METRES);
    }

    private static List<JsonText> lines(Plan plan, PlanWords words) {
        List<JsonText> lines = new ArrayList<>();
        List<PlanCards.LineCard> cards = PlanCards.lines(plan);
        for (int i = 0; i < cards.size(); i++) {
            PlanCards.LineCard card = cards.get(i);
            PlannedLine line = plan.lines().get(i);
            lines.add(new JsonText()
                    .put("number", card.number())
                    .put("title", card.title())
                    .put("where", card.where())
                    .put("what", card.what())
                    .put("why", card.why())
                    .put("fixed", card.fixed())
                    .putWords("warnings", words.warnings(line))
                    .put("x", card.place().xMetres())
                    .put("y", card.place().yMetres()));
        }
        return lines;
    }

    /** How far the answers can be relied on, and what they start from. */
    private static List<String> notes(PegMap map) {
        return Stream.of(
                        FindingWords.fewReadings(map.bottom().soundings()),
                        MapWords.neighbours(map),
                        FindingWords.structure(map.bottom()))
                .flatMap(Optional::stream)
                .toList();
    }

    private static List<String> warnings(PegMap map) {
        MapWords words = MapWords.of(map.peg());
        List<String> warnings = new ArrayList<>();
        map.suspicious().forEach(check -> warnings.add(words.suspicious(check)));
        warnings.addAll(LevelWords.changes(map));
        warnings.addAll(Doubts.sentences(Doubts.misplaced(map.peg(), map.water())));
        return warnings;
    }
}
