package bagclock.register;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bagclock.platform.ChangedMeanwhile;
import bagclock.platform.OnBothDatabases;
import java.time.Instant;
import org.junit.jupiter.api.Test;

/** What a site chooses beside its rules, by version. */
class HouseCustomsTest extends OnBothDatabases {
    private static final Instant FIRST = Instant.parse("2026-03-02T08:00:00Z");
    private static final Instant SECOND = Instant.parse("2026-03-09T08:00:00Z");
    private static final HouseCustoms SMALL =
            new HouseCustoms(PrintSize.W57_H32, PrintSize.W70_H36, PrintSize.LETTER, LabelCode.LINEAR_300, false);

    private final Register register = new Register();

    private void add(HouseCustoms customs, Instant from, int basedOn) {
        database.withTransaction(tx -> register.add(tx, customs, new Change(from, from, "engineer", basedOn)));
    }

    private HouseCustoms at(Instant moment) {
        return database.read(tx -> register.houseCustoms(tx, moment)).fact();
    }

    @Test
    void theUsualOnesCountUntilSomebodyChooses() {
        assertThat(at(FIRST)).isEqualTo(HouseCustoms.USUAL);
        add(SMALL, SECOND, 0);
        assertThat(at(FIRST)).isEqualTo(HouseCustoms.USUAL);
        assertThat(at(SECOND)).isEqualTo(SMALL);
    }

    @Test
    void aChoiceThatRestsOnAnOlderOneIsRefused() {
        add(SMALL, FIRST, 0);
        assertThatThrownBy(() -> add(HouseCustoms.USUAL, SECOND, 0)).isInstanceOf(ChangedMeanwhile.class);
        add(HouseCustoms.USUAL, SECOND, 1);
        assertThat(at(SECOND)).isEqualTo(HouseCustoms.USUAL);
    }
}
