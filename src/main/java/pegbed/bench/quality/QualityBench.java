package pegbed.bench.quality;

import static pegbed.bench.quality.BenchTable.column;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbed.bench.practice.PracticePeg;
import pegbed.findings.Confidence;
import pegbed.findings.PegMap;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;

/** The quality tables: every method on every practice peg of some folders, for each of some tables of readings. */
public final class QualityBench {
    /** The tables of readings that are usually measured. */
    public static final List<String> READINGS = List.of("fan15", "stagger20", "fan30");

    private static final List<BenchTable.Column> METHODS = List.of(
            column("readings", "readings"),
            column("method", "method"),
            column("depth_rmse_m", "depth RMSE, m"),
            column("slope_rmse", "slope RMSE, m/m"),
            column("coverage_50", "50 % coverage"),
            column("coverage_90", "90 % coverage"),
            column("coverage_99", "99 % coverage"),
            column("near_bank_coverage_90", "90 % coverage within 0.75 m of land"),
            column("crps_m", "CRPS, m"),
            column("log_score", "log score, −ln(1/m)"),
            column("answered", "answered, share of nodes"),
            column("deepest_regret_m", "deepest regret, m"),
            column("flats_right", "flats right"),
            column("flats_strictly_right", "flats strictly right"),
            column("flats_sure_right", "flats: sure right"),
            column("flats_likely_right", "flats: likely right"),
            column("lines_sure_right", "lines: sure right"),
            column("lines_likely_right", "lines: likely right"));

    private static final List<BenchTable.Column> PEGS = List.of(
            column("readings", "readings"),
            column("peg", "peg"),
            column("method", "method"),
            column("depth_rmse_m", "depth RMSE, m"),
            column("slope_rmse", "slope RMSE, m/m"),
            column("coverage_90", "90 % coverage"),
            column("crps_m", "CRPS, m"),
            column("log_score", "log score, −ln(1/m)"),
            column("deepest_regret_m", "deepest regret, m"));

    private QualityBench() {}

    /**
     * Measures every method.
     *
     * @param practice folders of practice pegs
     * @param readings names of tables of readings, such as {@link #READINGS}
     * @param perPeg whether each peg is reported by itself too
     * @throws InputException if a folder has no peg that can be used, or none with a table that was asked for
     */
    public static BenchReport report(List<Path> practice, List<String> readings, boolean perPeg)
            throws IOException, InputException {
        BenchReport report = new BenchReport();
        List<Score> everywhere = new ArrayList<>();
        List<PracticeFolder> folders = PracticeFolder.all(practice);
        for (PracticeFolder folder : folders) {
            report.addLeftOut(folder.refused());
            BenchTable methods = new BenchTable("methods", folder.name(), "Methods, " + folder.name(), METHODS);
            BenchTable pegs = new BenchTable("pegs", folder.name(), "Pegs, " + folder.name(), PEGS);
            List<Score> ofModel = new ArrayList<>();
            for (String table : readings) {
                Map<String, List<Score>> scores = scores(folder, table, report, pegs);
                scores.forEach((method, list) -> methods.row(row(table, method, list)));
                ofModel.addAll(scores.get(Methods.MODEL));
            }
            report.add(methods);
            report.add(Calibration.bins(folder.name(), ofModel));
            report.add(Calibration.words(folder.name(), ofModel));
            if (perPeg) {
                report.add(pegs);
            }
            everywhere.addAll(ofModel);
        }
        if (folders.size() > 1) {
            report.add(Calibration.bins("all folders", everywhere));
            report.add(Calibration.words("all folders", everywhere));
        }
        return report;
    }

    private static Map<String, List<Score>> scores(
            PracticeFolder folder, String table, BenchReport report, BenchTable pegs) throws InputException {
        Map<String, List<Score>> scores = new LinkedHashMap<>();
        Methods.names().forEach(name -> scores.put(name, new ArrayList<>()));
        for (PracticePeg peg : folder.pegs()) {
            Optional<Peg> plumbed = folder.with(peg, table);
            if (plumbed.isEmpty()) {
                report.addLeftOut(List.of(folder.without(peg, table)));
                continue;
            }
            Methods.of(PegMap.of(plumbed.get(), Monitor.NONE)).forEach((method, bottom) -> {
                Score score = Score.of(bottom, peg);
                scores.get(method).add(score);
                pegs.row(pegRow(table, peg.name(), method, score));
            });
        }
        if (scores.get(Methods.MODEL).isEmpty()) {
            throw new InputException("No peg of " + folder.path() + " has a table " + table + ".csv.");
        }
        return scores;
    }

    private static List<Cell> row(String readings, String method, List<Score> scores) {
        List<Outcome> flats = scores.stream().flatMap(s -> s.flats().stream()).toList();
        List<Outcome> words = scores.stream().flatMap(s -> s.words().stream()).toList();
        List<Outcome> lines = Calibration.lines(scores);
        return List.of(
                Cell.words(readings),
                Cell.words(method),
                Cell.number(Score.mean(scores, Score::rmseMetres), 4),
                Cell.number(Score.mean(scores, Score::slopeRmse), 3),
                Cell.number(Score.meanDoubt(scores, Doubt::coverage50), 3),
                Cell.number(Score.meanDoubt(scores, Doubt::coverage90), 3),
                Cell.number(Score.meanDoubt(scores, Doubt::coverage99), 3),
                Cell.number(Score.meanDoubt(scores, Doubt::nearBankCoverage90), 3),
                Cell.number(Score.meanDoubt(scores, Doubt::crpsMetres), 4),
                Cell.number(Score.meanDoubt(scores, Doubt::logScore), 3),
                Cell.number(Score.mean(scores, Score::answered), 3),
                Cell.number(Score.mean(scores, Score::deepestRegretMetres), 3),
                Cell.share(flats, Outcome::right),
                Cell.share(flats, Outcome::strict),
                Cell.kept(words, Confidence.SURE, Outcome::right),
                Cell.kept(words, Confidence.LIKELY, Outcome::right),
                Cell.kept(lines, Confidence.SURE, Outcome::right),
                Cell.kept(lines, Confidence.LIKELY, Outcome::right));
    }

    private static List<Cell> pegRow(String readings, String peg, String method, Score score) {
        List<Score> one = List.of(score);
        return List.of(
                Cell.words(readings),
                Cell.words(peg),
                Cell.words(method),
                Cell.number(score.rmseMetres(), 3),
                Cell.number(score.slopeRmse(), 3),
                Cell.number(Score.meanDoubt(one, Doubt::coverage90), 2),
                Cell.number(Score.meanDoubt(one, Doubt::crpsMetres), 3),
                Cell.number(Score.meanDoubt(one, Doubt::logScore), 2),
                Cell.number(score.deepestRegretMetres(), 3));
    }
}
