package bagclock.ovens.solver;

import bagclock.core.oven.Batch;
import bagclock.core.oven.Problem;
import bagclock.core.oven.Sketch;
import com.fasterxml.jackson.annotation.JsonAutoDetect;
import com.fasterxml.jackson.annotation.PropertyAccessor;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What goes between the two processes: one line of JSON for the task, one for each report. */
final class Wire {
    static final ObjectMapper JSON = JsonMapper.builder()
            .visibility(PropertyAccessor.ALL, JsonAutoDetect.Visibility.NONE)
            .visibility(PropertyAccessor.FIELD, JsonAutoDetect.Visibility.ANY)
            .build();

    private Wire() {}

    /**
     * What to search.
     *
     * @param sketch a plan to start from
     * @param millis how long
     */
    @SuppressWarnings("ArrayRecordComponent") // crosses a process, compared by nobody
    record Task(Problem problem, int[][][] sketch, long millis, int workers, int seed) {}

    /**
     * What is known so far.
     *
     * @param sketch the best plan so far
     * @param late bound of the first stage; null: none; likewise the others
     * @param isLast whether the search is over
     */
    @SuppressWarnings("ArrayRecordComponent") // crosses a process, compared by nobody
    record Report(
            int[][][] sketch,
            @Nullable Long late,
            @Nullable Long ovenMinutes,
            @Nullable Long runs,
            boolean isLast) {}

    /** By oven and run: the temperature, then the lots. */
    static int[][][] rows(Sketch sketch) {
        return sketch.ovens().stream()
                .map(batches -> batches.stream().map(Wire::row).toArray(int[][]::new))
                .toArray(int[][][]::new);
    }

    private static int[] row(Batch batch) {
        int[] lots = batch.lots();
        int[] row = new int[lots.length + 1];
        row[0] = batch.temperature();
        System.arraycopy(lots, 0, row, 1, lots.length);
        return row;
    }

    static Sketch sketch(Problem problem, int[][][] rows) {
        List<List<Batch>> ovens = new ArrayList<>();
        for (int oven = 0; oven < rows.length; oven++) {
            List<Batch> batches = new ArrayList<>();
            for (int[] row : rows[oven]) {
                int[] lots = Arrays.copyOfRange(row, 1, row.length);
                batches.add(Batch.of(problem, oven, row[0], lots));
            }
            ovens.add(batches);
        }
        return new Sketch(ovens);
    }
}
