package bagclock.core.oven;

import bagclock.core.quantity.Celsius;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The best plan by trying every grouping, order and half hour. Shares nothing with the engines: it reads the shop, and
 * steps through time.
 */
final class Exhaustive {
    private static final int HORIZON = 2_000;

    private final Shop shop;
    private final List<Lot> lots;
    private final List<List<Group>> ovens = new ArrayList<>();
    private final boolean[] attended;
    private final boolean[][] service;
    private Score best = new Score(Long.MAX_VALUE, 0, 0, 0);

    private record Group(Celsius temperature, List<Lot> lots) {}

    private record Taken(int start, int end, Celsius temperature) {}

    private Exhaustive(Shop shop) {
        this.shop = shop;
        this.lots = shop.free();
        this.attended = new boolean[HORIZON];
        this.service = new boolean[shop.ovens().size()][HORIZON];
        for (int t = 0; t < HORIZON; t++) {
            Instant at = ShopDraws.at(t);
            List<Span> spans = shop.customs().attended();
            attended[t] = spans.isEmpty()
                    || at.isAfter(spans.get(spans.size() - 1).endExclusive())
                    || spans.stream().anyMatch(span -> span.reaches(at));
            for (int o = 0; o < shop.ovens().size(); o++) {
                service[o][t] = shop.ovens().get(o).habits().outOfService().stream()
                        .noneMatch(span -> !at.isBefore(span.startInclusive()) && at.isBefore(span.endExclusive()));
            }
        }
        shop.ovens().forEach(oven -> ovens.add(new ArrayList<>()));
    }

    /** The best score; ends are not counted. */
    static Score best(Shop shop) {
        Exhaustive search = new Exhaustive(shop);
        search.place(0);
        return search.best;
    }

    private void place(int next) {
        if (next == lots.size()) {
            value();
            return;
        }
        Lot lot = lots.get(next);
        for (int o = 0; o < ovens.size(); o++) {
            Oven oven = shop.ovens().get(o);
            List<Group> groups = ovens.get(o);
            for (Group group : List.copyOf(groups)) {
                int load = group.lots().stream().mapToInt(Lot::positions).sum();
                if (load + lot.positions() <= oven.positions()
                        && programme(lot, oven, group.temperature()).isPresent()) {
                    group.lots().add(lot);
                    place(next + 1);
                    group.lots().remove(lot);
                }
            }
            for (Celsius temperature : lot.programmes().stream()
                    .map(Programme::temperature)
                    .distinct()
                    .toList()) {
                if (programme(lot, oven, temperature).isEmpty()) {
                    continue;
                }
                for (int at = 0; at <= groups.size(); at++) {
                    groups.add(at, new Group(temperature, new ArrayList<>(List.of(lot))));
                    place(next + 1);
                    groups.remove(at);
                }
            }
        }
    }

    private static Optional<Programme> programme(Lot lot, Oven oven, Celsius temperature) {
        if (!lot.mayGoTo(oven)) {
            return Optional.empty();
        }
        return lot.programmes().stream()
                .filter(one -> one.temperature().equals(temperature) && one.fits(oven))
                .min(Comparator.comparing(Programme::least));
    }

    private static int steps(Duration time) {
        return (int) (time.toMinutes() / 30);
    }

    private static int steps(Instant at) {
        return (int) (Duration.between(ShopDraws.NOW, at).toMinutes() / 30);
    }

    private void value() {
        long late = 0;
        long minutes = 0;
        long runs = 0;
        for (int o = 0; o < ovens.size(); o++) {
            Oven oven = shop.ovens().get(o);
            List<Taken> taken = new ArrayList<>();
            shop.frozen().stream()
                    .filter(run -> run.oven().equals(oven.code()))
                    .forEach(run -> taken.add(new Taken(steps(run.startAt()), steps(run.endAt()), run.temperature())));
            int from = 0;
            for (Group group : ovens.get(o)) {
                int least = 0;
                int most = HORIZON;
                int ready = from;
                for (Lot lot : group.lots()) {
                    Programme programme =
                            programme(lot, oven, group.temperature()).orElseThrow();
                    least = Math.max(least, steps(programme.least()));
                    most = Math.min(most, steps(programme.most()));
                    ready = Math.max(ready, steps(lot.wish().readyFrom()));
                }
                int warm = steps(oven.habits().heatUp()) + steps(oven.habits().coolDown());
                Taken mine = firstTime(o, taken, ready, new int[] {least + warm, most + warm}, group.temperature());
                if (mine == null) {
                    return;
                }
                taken.add(mine);
                from = mine.end();
                minutes += 30L * (least + warm);
                runs++;
                for (Lot lot : group.lots()) {
                    int out = mine.end();
                    int over =
                            lot.wish().neededBy().map(due -> out - steps(due)).orElse(0);
                    late += 30L * lot.wish().weight() * Math.max(0, over);
                }
            }
        }
        Score score = new Score(late, minutes, runs, 0);
        best = score.compareTo(best) < 0 ? score : best;
    }

    private Taken firstTime(int o, List<Taken> taken, int from, int[] leastAndMost, Celsius temperature) {
        for (int start = from; start + leastAndMost[1] < HORIZON; start++) {
            if (!attended[start]) {
                continue;
            }
            int end = start + leastAndMost[0];
            while (end < HORIZON && !attended[end]) {
                end++;
            }
            if (end < HORIZON && end - start <= leastAndMost[1] && isFree(o, taken, start, end, temperature)) {
                return new Taken(start, end, temperature);
            }
        }
        return null;
    }

    private boolean isFree(int o, List<Taken> taken, int start, int end, Celsius temperature) {
        Oven oven = shop.ovens().get(o);
        Optional<Taken> before =
                taken.stream().filter(run -> run.start() <= start).max(Comparator.comparingInt(Taken::start));
        int change = change(
                oven, before.map(Taken::temperature).or(() -> oven.habits().last()), temperature);
        int earliest = before.map(Taken::end).orElse(0);
        if (start - change < earliest) {
            return false;
        }
        for (Taken run : taken) {
            if (run.start() > start && end + change(oven, Optional.of(temperature), run.temperature()) > run.start()) {
                return false;
            }
        }
        for (int t = start - change; t < end; t++) {
            if (!service[o][t]) {
                return false;
            }
        }
        return true;
    }

    private static int change(Oven oven, Optional<Celsius> from, Celsius to) {
        return steps(oven.habits().changes().between(from, to).time());
    }
}
