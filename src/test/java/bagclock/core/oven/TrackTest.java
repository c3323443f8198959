package bagclock.core.oven;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.Counts;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a search remembers of an oven against giving all of its runs their times anew. */
class TrackTest {
    static LongStream seeds() {
        return Counts.seeds(200, 5_000);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aChangeCostsWhatAllRunsAnewCost(long seed) {
        Shop shop = new ShopDraws(seed).small(12);
        if (seed % 3 == 0) {
            shop = ShopDraws.withDoors(shop, 1);
        }
        Replan replan = new Replan(shop);
        Found start = replan.fresh();
        Problem problem = seed % 4 == 0
                ? replan.minutes().anchored(replan.minutes().plan(start.sketch()), Duration.ofHours(1))
                : replan.minutes().problem();
        SplittableRandom random = new SplittableRandom(seed);
        Moves moves = new Moves(problem, random);
        Decoder decoder = new Decoder(problem);
        Decoder anew = new Decoder(problem);
        List<Track> tracks = tracks(problem, decoder, start.sketch());
        for (int i = 0; i < 80 && problem.lots().length > 0; i++) {
            Anneal.Move move = moves.draw(tracks);
            if (!move.isNone()) {
                isAsAnew(tracks.get(move.oven()), move.batches(), cost(anew, move.oven(), move.batches()), random);
                take(tracks, move);
            }
        }
        for (int oven = 0; oven < tracks.size(); oven++) {
            Track track = tracks.get(oven);
            double cost = cost(anew, oven, track.batches());
            assertThat(track.cost()).isCloseTo(cost, within(cost));
        }
    }

    private static void isAsAnew(Track track, List<Batch> batches, double cost, SplittableRandom random) {
        double most = cost == Double.MAX_VALUE ? 1e9 : cost * (0.5 + random.nextDouble());
        double limited = track.tryOut(batches, most);
        double whole = track.tryOut(batches, Double.MAX_VALUE);
        if (cost == Double.MAX_VALUE) {
            assertThat(whole).isEqualTo(cost);
        } else {
            assertThat(whole).isCloseTo(cost, within(cost));
            assertThat(limited == Double.MAX_VALUE).as("over the most").isEqualTo(whole > most);
        }
    }

    private static Offset<Double> within(double cost) {
        return Offset.offset(1e-9 * (1 + cost));
    }

    private static double cost(Decoder decoder, int oven, List<Batch> batches) {
        return decoder.place(oven, batches) ? Prices.of(decoder, batches.size()) : Double.MAX_VALUE;
    }

    static List<Track> tracks(Problem problem, Decoder decoder, Sketch sketch) {
        List<Track> tracks = new ArrayList<>();
        for (int oven = 0; oven < sketch.ovens().size(); oven++) {
            Track track = new Track(problem, decoder, oven);
            track.tryOut(sketch.ovens().get(oven), Double.MAX_VALUE);
            track.take();
            tracks.add(track);
        }
        return tracks;
    }

    /** Takes a change if it has a time. */
    static void take(List<Track> tracks, Anneal.Move move) {
        if (move.isNone() || tracks.get(move.oven()).tryOut(move.batches(), Double.MAX_VALUE) == Double.MAX_VALUE) {
            return;
        }
        if (move.second() == Problem.NO) {
            tracks.get(move.oven()).take();
        } else if (tracks.get(move.second()).tryOut(move.secondBatches(), Double.MAX_VALUE) < Double.MAX_VALUE) {
            tracks.get(move.oven()).take();
            tracks.get(move.second()).take();
        }
    }
}
