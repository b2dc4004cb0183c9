package pegbed.lake;

import java.util.stream.IntStream;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.SoundingLog;
import pegbed.surface.BottomModel;
import pegbed.surface.prior.Hyperparameters;

/**
 * From the log of a whole water to its bottom, for up to millions of soundings: the open-water model of
 * {@link BottomModel} with each place conditioned on the soundings around it instead of on all. The method is derived
 * in {@code docs/method.md}.
 */
public final class LakeModel {
    private LakeModel() {}

    /**
     * Fits the bottom of a whole water.
     *
     * @throws InputException if the log is empty
     */
    public static LakeBottom fit(SoundingLog log, Monitor monitor) throws InputException {
        if (log.size() == 0) {
            throw new InputException("There are no soundings; a log needs one at least.");
        }
        LakeSoundings soundings = LakeBlockAveraging.of(log, monitor);
        monitor.progress(0.2);
        Neighbourhoods near = new Neighbourhoods(soundings);
        LakeLearning learning = new LakeLearning(soundings, near);
        boolean learns = soundings.count >= BottomModel.LEARNS_FROM;
        double[] logs = learning.logMedians();
        double[] placing = IntStream.range(0, soundings.count)
                .mapToDouble(soundings::firstPlacing)
                .toArray();
        // As the exact model: learn, look how the bottom falls, learn again, look again.
        logs = learns ? learning.learned(logs, placing, Outliers.NONE, monitor) : logs;
        LakeField field = field(soundings, near, learning, logs, placing, Outliers.NONE);
        field = LocalResiduals.first(field, monitor);
        monitor.progress(0.5);
        logs = learns ? learning.learned(logs, field.placing(), field.outstanding(), monitor) : logs;
        field = field(soundings, near, learning, logs, field.placing(), field.outstanding());
        monitor.progress(0.7);
        field = LocalResiduals.looked(field, monitor);
        monitor.progress(1);
        return new LakeBottom(field, learns);
    }

    private static LakeField field(
            LakeSoundings soundings,
            Neighbourhoods near,
            LakeLearning learning,
            double[] logs,
            double[] placing,
            Outliers outstanding) {
        Hyperparameters hyper = Hyperparameters.ofLogs(learning.priors().variables(), logs);
        return new LakeField(
                soundings,
                near,
                hyper,
                new RadialCovariance(hyper, soundings.scale),
                learning.mean(hyper, placing, outstanding),
                placing,
                outstanding);
    }
}
