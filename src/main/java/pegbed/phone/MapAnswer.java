package pegbed.phone;

import java.util.Optional;
import pegbed.findings.Findings;
import pegbed.findings.PegMap;
import pegbed.guidance.NextReading;
import pegbed.model.Peg;
import pegbed.wording.FindingWords;
import pegbed.wording.GuidanceWords;
import pegbed.wording.MapWords;
import pegbed.wording.Quantities;

/** What is said of the bottom at once, and where to plumb next. */
final class MapAnswer {
    private MapAnswer() {}

    /** @param current whether the map is of the peg as it stands */
    static JsonText of(PhonePeg phone, boolean current) {
        JsonText answer = new JsonText().put("shown", current);
        Optional<PhonePeg.Shown> shown = phone.shown();
        if (shown.isEmpty()) {
            return answer;
        }
        PegMap map = shown.get().map();
        Findings findings = shown.get().findings();
        answer.put("provisional", !shown.get().inFull())
                .put("placeAlone", shown.get().placeAlone());
        if (!shown.get().placeAlone()) {
            answer.put("deepest", card(FindingWords.of(map.peg()).deepestCard(findings.deepest())))
                    .put("few", FindingWords.fewReadings(map.bottom().soundings()));
        }
        return answer.put("neighbours", MapWords.neighbours(map)).put("question", phone.question());
    }

    static JsonText card(FindingWords.Card card) {
        return new JsonText()
                .put("title", card.title())
                .put("where", card.where())
                .put("what", card.what());
    }

    static JsonText of(Peg peg, NextReading next) {
        GuidanceWords words = GuidanceWords.of(peg);
        return new JsonText()
                .put("where", words.where(next))
                .put("aim", Quantities.of(peg).aim(next.place()))
                .put("why", words.why(next))
                .put("line", words.line(next))
                .put("stop", next.stop())
                .put("x", next.place().xMetres())
                .put("y", next.place().yMetres());
    }
}
