package bagclock.core.oven;

import bagclock.core.quantity.Celsius;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads instances of the oven scheduling problem (Lackner, Mrkvicka, Musliu, Walkiewicz, Winter, Constraints 28(2) 2023)
 * as shops: one time unit is a minute, an attribute is a temperature, a shift is what lies between times out of service.
 */
public final class BenchmarkFiles {
    private static final Instant NOW = ShopDraws.NOW;
    private static final Pattern FIELD = Pattern.compile("(\\w+)\\s*=\\s*(.*?);", Pattern.DOTALL);
    private static final Pattern NUMBER = Pattern.compile("-?\\d+");
    private static final Instant FAR = NOW.plus(Duration.ofMinutes(Problem.NEVER - 1L));

    private final Map<String, String> fields = new HashMap<>();

    private BenchmarkFiles(String text) {
        Matcher field = FIELD.matcher(text);
        while (field.find()) {
            fields.put(field.group(1), field.group(2));
        }
    }

    /** The shop of a file, and the constant that its objective is divided by. */
    public record Instance(Shop shop, long constant) {}

    /** Reads a file. */
    public static Instance read(Path file) throws IOException {
        BenchmarkFiles reader = new BenchmarkFiles(Files.readString(file));
        return new Instance(
                reader.shop(), reader.numbers("upper_bound_integer_objective").get(0));
    }

    private List<Integer> numbers(String name) {
        return numbersIn(fields.get(name));
    }

    private static List<Integer> numbersIn(String text) {
        List<Integer> numbers = new ArrayList<>();
        Matcher number = NUMBER.matcher(text);
        while (number.find()) {
            numbers.add(Integer.valueOf(number.group()));
        }
        return numbers;
    }

    private int number(String name) {
        return numbers(name).get(0);
    }

    private Shop shop() {
        int ovens = number("nMachines");
        int attributes = number("nAttributes");
        List<Oven> all = new ArrayList<>();
        ChangeOvers changes = changes(attributes);
        for (int i = 0; i < ovens; i++) {
            int state = numbers("initState").get(i);
            all.add(new Oven(
                    "M" + (i + 1),
                    new Celsius(0),
                    new Celsius(100),
                    numbers("MaxCap").get(i),
                    Optional.empty(),
                    new Oven.Habits(
                            Duration.ZERO, Duration.ZERO, changes, Optional.of(new Celsius(state)), outOfService(i))));
        }
        Aim aim = new Aim(
                0,
                number("mult_factor_finished_toolate"),
                number("mult_factor_total_runtime"),
                number("mult_factor_total_setupcosts"),
                false);
        return new Shop(NOW, all, lots(), List.of(), new Shop.Customs(List.of(), Optional.empty(), aim));
    }

    private ChangeOvers changes(int attributes) {
        List<Integer> times = numbers("SetupTimes");
        List<Integer> costs = numbers("SetupCosts");
        Map<ChangeOvers.Pair, ChangeOvers.Change> special = new HashMap<>();
        for (int from = 0; from <= attributes; from++) {
            for (int to = 0; to < attributes; to++) {
                int at = from * attributes + to;
                special.put(
                        new ChangeOvers.Pair(Optional.of(new Celsius(from)), new Celsius(to + 1)),
                        new ChangeOvers.Change(Duration.ofMinutes(times.get(at)), costs.get(at)));
            }
        }
        return new ChangeOvers(ChangeOvers.NONE, ChangeOvers.NONE, special);
    }

    private List<Span> outOfService(int oven) {
        int shifts = number("nShifts");
        List<Integer> starts = numbers("ShiftStartTimes");
        List<Integer> ends = numbers("ShiftEndTimes");
        List<Span> out = new ArrayList<>();
        Instant free = NOW.minus(Duration.ofDays(400));
        for (int i = 0; i < shifts; i++) {
            int start = starts.get(oven * shifts + i);
            int end = ends.get(oven * shifts + i);
            if (start < end) {
                Instant opens = NOW.plus(Duration.ofMinutes(start));
                if (free.isBefore(opens)) {
                    out.add(new Span(free, opens));
                }
                free = NOW.plus(Duration.ofMinutes(end));
            }
        }
        out.add(new Span(free, FAR));
        return out;
    }

    private List<Lot> lots() {
        List<Lot> lots = new ArrayList<>();
        Matcher eligible = Pattern.compile("\\{([^}]*)}").matcher(fields.get("EligibleMachines"));
        for (int i = 0; i < number("nJobs") && eligible.find(); i++) {
            Set<String> ovens = new TreeSet<>();
            numbersIn(eligible.group(1)).forEach(oven -> ovens.add("M" + oven));
            Programme programme = new Programme(
                    new Celsius(numbers("Attribute").get(i)),
                    Duration.ofMinutes(numbers("MinTime").get(i)),
                    Duration.ofMinutes(numbers("MaxTime").get(i)),
                    Optional.empty());
            Lot.Wish wish = new Lot.Wish(
                    NOW.plus(Duration.ofMinutes(numbers("EarliestStart").get(i))),
                    Optional.of(NOW.plus(Duration.ofMinutes(numbers("LatestEnd").get(i)))),
                    1);
            lots.add(new Lot("J" + (i + 1), numbers("JobSize").get(i), List.of(programme), ovens, wish));
        }
        return lots;
    }
}
