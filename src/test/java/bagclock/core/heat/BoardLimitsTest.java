package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.heat.BoardQuestion.Fate;
import bagclock.core.heat.BoardQuestion.Location;
import bagclock.core.quantity.Celsius;
import bagclock.core.standard.BodyKind;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a board bears in a bake. That packages made for soldering bear 125 C: J-STD-033D, table 4-1 (S7). */
class BoardLimitsTest {
    private static final PartUnderTest LEVEL_3 = PartUnderTest.level("3");

    private static BoardUnderTest board(double bears) {
        return new BoardUnderTest()
                .bears(bears)
                .with("U1", LEVEL_3, Story.of(LEVEL_3))
                .with("U2", PartUnderTest.level("3").maxBakeC(105), Story.of(LEVEL_3));
    }

    private static BoardLimits limits(BoardUnderTest board) {
        return BoardLimits.of(board.question(1, Optional.empty()));
    }

    @Test
    void thePartsAreNamedTheWeakestFirst() {
        BoardLimits limits = limits(board(120));

        assertThat(limits.board()).contains(new Celsius(120));
        assertThat(limits.parts().firstKey()).isEqualTo(new Celsius(105));
        assertThat(limits.parts().values()).containsExactly(List.of("U2"), List.of("U1"));
    }

    /** The weakest of board and parts decides; exactly its limit is borne. */
    @ParameterizedTest
    @CsvSource({"120, 105, true", "120, 105.5, false", "90, 90, true", "90, 91, false"})
    void theWeakestDecides(double bears, double celsius, boolean borne) {
        assertThat(limits(board(bears)).bear(new Celsius(celsius))).isEqualTo(borne);
    }

    @Test
    void whatIsNotKnownBearsNothing() {
        assertThat(limits(board(120).bears(Optional.empty())).bear(new Celsius(40)))
                .isFalse();
        PartUnderTest connector = PartUnderTest.level("3").kind(BodyKind.CONNECTOR);
        BoardLimits limits = limits(board(120).with("J1", connector, Story.of(connector)));
        assertThat(limits.unknown()).containsExactly("J1");
        assertThat(limits.bear(new Celsius(40))).isFalse();
    }

    @Test
    void whatIsTakenOffFirstOrNotYetOnItDoesNotCount() {
        Location off = new Location(
                "U3", PartUnderTest.level("3").maxBakeC(60).get(), List.of(), Optional.empty(), Fate.STAYS, true, 0);
        BoardUnderTest board = board(120)
                .with(off)
                .with("U4", PartUnderTest.level("3").maxBakeC(50), Story.of(LEVEL_3), Fate.PLACED, Optional.empty());

        assertThat(limits(board).bear(new Celsius(105))).isTrue();
    }
}
