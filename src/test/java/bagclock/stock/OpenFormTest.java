package bagclock.stock;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.exposure.Air;
import bagclock.desk.Command;
import bagclock.desk.OpeningAir;
import bagclock.platform.Entered;
import bagclock.platform.Messages;
import bagclock.platform.Texts;
import bagclock.register.KnownPlace;
import java.time.Instant;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Opening a bag where the air is above the site's own limit. */
class OpenFormTest {
    private static final Command.Header HEADER =
            new Command.Header("clerk", Instant.parse("2026-03-12T14:20:00Z"), "key");

    private final Words words = new Words(new Texts(ZoneId.of("UTC"), Messages.load()));
    private final OpenForm form = new OpenForm();

    private Optional<Command> read(Map<String, String> more) {
        Map<String, String> values = new HashMap<>(Map.of("bag", "sound", "spot10", "dry"));
        values.putAll(more);
        return form.read(Entered.of(values, words.texts()), HEADER, "R-1");
    }

    @Test
    void aPlaceAboveItsLimitIsNamedBesideItsName() {
        OpeningAir.Above above = new OpeningAir.Above(Air.of(24, 61), Air.of(27, 55));
        List<KnownPlace> places = List.of(
                new KnownPlace.FloorZone("LINE", "Line", true, Optional.empty(), Optional.empty()),
                new KnownPlace.FloorZone("BENCH", "Bench", true, Optional.empty(), Optional.empty()));
        Offer offer = new Offer(places, List.of(), List.of(), Optional.empty(), Map.of("BENCH", above));

        assertThat(offer.openingZones(words))
                .extracting(choice -> choice.note().contains("Do not open bags here now"))
                .containsExactly(false, true);
        assertThat(form.inputs(Entered.of(Map.of(), words.texts()), offer, words))
                .anyMatch(input -> input.field().name().equals("whyAnyway"));
    }

    @Test
    void openingThereAllTheSameNeedsAReasonWhichIsKept() {
        assertThat(read(Map.of("place", "LINE", "closed", "BENCH"))).isPresent();
        assertThat(read(Map.of("place", "BENCH", "closed", "BENCH"))).isEmpty();
        Optional<Command> anyway = read(Map.of("place", "BENCH", "closed", "BENCH", "whyAnyway", "line stands"));
        assertThat(anyway)
                .get()
                .isInstanceOfSatisfying(
                        Command.Open.class, open -> assertThat(open.whyAnyway()).contains("line stands"));
    }
}
