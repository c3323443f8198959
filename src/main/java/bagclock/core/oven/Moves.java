package bagclock.core.oven;

import bagclock.core.oven.Anneal.Move;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Draws small changes of a sketch; none of them overfills an oven or bakes a lot in a way that it may not. */
final class Moves {
    private static final int TIMELY_PERCENT = 70;

    private final Problem problem;
    private final SplittableRandom random;
    private List<Track> at = List.of();
    private int runs;

    Moves(Problem problem, SplittableRandom random) {
        this.problem = problem;
        this.random = random;
    }

    /** A place in a sketch: a run of an oven. */
    private record Spot(int oven, int index) {}

    /** A change of these runs; {@link Move#NONE} if this draw led nowhere. */
    Move draw(List<Track> ovens) {
        at = ovens;
        runs = 0;
        for (Track track : at) {
            runs += track.batches().size();
        }
        int kind = random.nextInt(problem.recovery() == Problem.NO ? 10 : 11);
        if (kind < 4) {
            return toRun();
        } else if (kind < 6) {
            return toNewRun();
        } else if (kind == 6) {
            return swapLots();
        } else if (kind < 9) {
            return moveRun(kind == 7);
        }
        return kind == 9 ? merge() : toggleDoor();
    }

    private List<Batch> batches(int oven) {
        return at.get(oven).batches();
    }

    private Batch batch(Spot spot) {
        return batches(spot.oven()).get(spot.index());
    }

    private int lotOf(Spot spot) {
        Batch batch = batch(spot);
        return batch.lot(random.nextInt(batch.size()));
    }

    private Spot anyRun() {
        int pick = random.nextInt(runs);
        for (int oven = 0; oven < at.size(); oven++) {
            int size = batches(oven).size();
            if (pick < size) {
                return new Spot(oven, pick);
            }
            pick -= size;
        }
        throw new IllegalStateException("no run");
    }

    /**
     * A place for a lot in an oven; mostly where the oven is between the minute at which the lot is ready and that at
     * which it is needed: elsewhere it hardly ever does good.
     */
    private int place(int oven, int lot) {
        Problem.Piece piece = problem.lots()[lot];
        boolean isTimed = piece.due() < Problem.NEVER && piece.due() > piece.release();
        return isTimed && random.nextInt(100) < TIMELY_PERCENT
                ? at.get(oven).firstEndingFrom(random.nextInt(piece.release(), piece.due() + 1))
                : random.nextInt(batches(oven).size() + 1);
    }

    /** A run for a lot. */
    private Spot runFor(int lot) {
        int oven = random.nextInt(at.size());
        int size = batches(oven).size();
        return size == 0 ? anyRun() : new Spot(oven, Math.min(place(oven, lot), size - 1));
    }

    /** The oven's runs without a lot. */
    private List<Batch> without(Spot spot, int lot) {
        List<Batch> batches = new ArrayList<>(batches(spot.oven()));
        Batch batch = batches.get(spot.index());
        if (batch.size() == 1) {
            batches.remove(spot.index());
        } else {
            batches.set(spot.index(), batch.without(problem, spot.oven(), lot));
        }
        return batches;
    }

    private Move toRun() {
        Spot from = anyRun();
        int lot = lotOf(from);
        Spot to = runFor(lot);
        Batch target = batch(to);
        if (from.equals(to) || !problem.can(lot, to.oven(), target.temperature())) {
            return Move.NONE;
        }
        Batch joined = target.with(problem, to.oven(), lot);
        if (!joined.isSound(problem, to.oven())) {
            return Move.NONE;
        }
        List<Batch> fewer = without(from, lot);
        if (from.oven() == to.oven()) {
            boolean isShifted = fewer.size() < batches(from.oven()).size() && to.index() > from.index();
            fewer.set(isShifted ? to.index() - 1 : to.index(), joined);
            return Move.of(from.oven(), fewer);
        }
        List<Batch> more = new ArrayList<>(batches(to.oven()));
        more.set(to.index(), joined);
        return new Move(from.oven(), fewer, to.oven(), more);
    }

    private Move toNewRun() {
        Spot from = anyRun();
        int lot = lotOf(from);
        int oven = random.nextInt(problem.ovens().length);
        int temperature = random.nextInt(problem.temperatures());
        if (!problem.can(lot, oven, temperature)) {
            return Move.NONE;
        }
        Batch alone = Batch.of(problem, oven, temperature, lot);
        List<Batch> fewer = without(from, lot);
        List<Batch> more = from.oven() == oven ? fewer : new ArrayList<>(batches(oven));
        more.add(Math.min(place(oven, lot), more.size()), alone);
        return from.oven() == oven ? Move.of(oven, more) : new Move(from.oven(), fewer, oven, more);
    }

    private Move swapLots() {
        Spot one = anyRun();
        int first = lotOf(one);
        Spot other = runFor(first);
        if (one.equals(other)) {
            return Move.NONE;
        }
        int second = lotOf(other);
        if (!problem.can(first, other.oven(), batch(other).temperature())
                || !problem.can(second, one.oven(), batch(one).temperature())) {
            return Move.NONE;
        }
        Batch changedOne = swapped(one, first, second);
        Batch changedOther = swapped(other, second, first);
        if (!changedOne.isSound(problem, one.oven()) || !changedOther.isSound(problem, other.oven())) {
            return Move.NONE;
        }
        List<Batch> runs = new ArrayList<>(batches(one.oven()));
        runs.set(one.index(), changedOne);
        List<Batch> others = one.oven() == other.oven() ? runs : new ArrayList<>(batches(other.oven()));
        others.set(other.index(), changedOther);
        return one.oven() == other.oven()
                ? Move.of(one.oven(), runs)
                : new Move(one.oven(), runs, other.oven(), others);
    }

    private Batch swapped(Spot spot, int out, int in) {
        return batch(spot).with(problem, spot.oven(), in).without(problem, spot.oven(), out);
    }

    /** A whole run to another place in the order, or to another oven or temperature. */
    private Move moveRun(boolean isInSameOven) {
        Spot from = anyRun();
        Batch batch = batch(from);
        List<Batch> fewer = new ArrayList<>(batches(from.oven()));
        fewer.remove(from.index());
        if (isInSameOven) {
            fewer.add(random.nextInt(fewer.size() + 1), batch);
            return Move.of(from.oven(), fewer);
        }
        int oven = random.nextInt(problem.ovens().length);
        int temperature = random.nextInt(problem.temperatures());
        Batch moved = batch.moved(problem, oven, temperature);
        if (!allCan(moved, oven) || !moved.isSound(problem, oven)) {
            return Move.NONE;
        }
        List<Batch> more = oven == from.oven() ? fewer : new ArrayList<>(batches(oven));
        more.add(oven == from.oven() ? from.index() : random.nextInt(more.size() + 1), moved);
        return oven == from.oven() ? Move.of(oven, more) : new Move(from.oven(), fewer, oven, more);
    }

    private boolean allCan(Batch batch, int oven) {
        for (int at = 0; at < batch.size(); at++) {
            if (!problem.can(batch.lot(at), oven, batch.temperature())) {
                return false;
            }
        }
        return true;
    }

    /** Two runs become one. */
    private Move merge() {
        Spot from = anyRun();
        Spot to = anyRun();
        Batch moving = batch(from);
        Batch target = batch(to);
        if (from.equals(to)
                || moving.load() + target.load() > problem.ovens()[to.oven()].capacity()
                || !allCan(moving.moved(problem, to.oven(), target.temperature()), to.oven())) {
            return Move.NONE;
        }
        Batch joined = target;
        for (int i = 0; i < moving.size(); i++) {
            joined = joined.with(problem, to.oven(), moving.lot(i));
        }
        if (!joined.isSound(problem, to.oven())) {
            return Move.NONE;
        }
        List<Batch> more = new ArrayList<>(batches(to.oven()));
        more.set(to.index(), joined);
        if (from.oven() == to.oven()) {
            more.remove(from.index());
            return Move.of(to.oven(), more);
        }
        List<Batch> fewer = new ArrayList<>(batches(from.oven()));
        fewer.remove(from.index());
        return new Move(from.oven(), fewer, to.oven(), more);
    }

    /** A run is opened for lots that leave early or join late, or not any more. */
    private Move toggleDoor() {
        Spot spot = anyRun();
        Batch changed = batch(spot).opened(problem, spot.oven(), !batch(spot).isOpened());
        if (changed.size() < 2 || !changed.isSound(problem, spot.oven())) {
            return Move.NONE;
        }
        List<Batch> batches = new ArrayList<>(batches(spot.oven()));
        batches.set(spot.index(), changed);
        return Move.of(spot.oven(), batches);
    }
}
