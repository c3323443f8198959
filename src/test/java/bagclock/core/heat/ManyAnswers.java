package bagclock.core.heat;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.LongStream;

/** The answers about many drawn cases, as texts; made by its name, so that another class loader can make it. */
public final class ManyAnswers implements Supplier<List<String>> {
    private static final int CASES = 150;

    @Override
    public List<String> get() {
        return LongStream.range(0, CASES)
                .mapToObj(seed -> new Draws(seed).draw().answer().toString())
                .toList();
    }
}
