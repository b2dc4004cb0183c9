package pegbed.phone;

import java.util.ArrayList;
import java.util.List;
import pegbed.model.InputException;
import pegbed.visits.LevelAnswer;
import pegbed.wording.LevelWords;

/** How today's water stands, and which readings would tell it better. */
final class VisitAnswer {
    private VisitAnswer() {}

    static JsonText of(PhonePeg phone) throws InputException {
        LevelWords words = new LevelWords(phone.peg());
        LevelAnswer answer = LevelAnswer.of(phone.map());
        List<JsonText> checks = new ArrayList<>();
        for (LevelAnswer.CheckReading check : answer.checks()) {
            checks.add(new JsonText()
                    .put("what", words.check(check))
                    .put("why", words.why(check))
                    .put("x", check.place().xMetres())
                    .put("y", check.place().yMetres()));
        }
        return new JsonText()
                .put("level", words.today(answer))
                .putWords(
                        "changes", answer.changes().stream().map(words::change).toList())
                .put("checks", checks);
    }
}
