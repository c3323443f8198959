package bagclock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Answers of the contract, field by field. Figures: J-STD-033D, tables 4-1 and 5-1 (S1, S2, S10). */
class AssessContractTest {
    private static final String PART = """
            "part":{"level":"3","classificationC":260,"leadFree":true,"thicknessMm":1.2,"lengthMm":17,"widthMm":17,
                    "body":"array","stackedDie":false,"blockingPlanes":null,"carrierMaxC":"none"}""";
    private static final String OPENED = """
            "history":[{"at":"2026-03-01T08:00:00+01:00","event":"sealed"},
                       {"at":"2026-03-05T08:00:00+01:00","event":"opened","card":{"5":"dry","10":"dry","60":"dry"},
                        "bag":"sound","zone":"bench"}]""";
    private static final String AIR = "\"climate\":{\"default\":{\"temperatureC\":25,\"rhPercent\":55}}";

    private static String request(String... fields) {
        return "{" + String.join(",", fields) + "}";
    }

    private static String at(String time) {
        return "\"at\":\"" + time + "\"";
    }

    private static List<String> names(JsonNode node) {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    private static List<String> texts(JsonNode list, String field) {
        List<String> texts = new ArrayList<>();
        list.forEach(one -> texts.add(one.get(field).asText()));
        return texts;
    }

    @Test
    void aClearAnswerHasEveryFieldOfTheContract() {
        JsonNode answer = Asked.answer(request(PART, OPENED, AIR, at("2026-03-05T19:30:00Z")));

        assertThat(names(answer))
                .containsExactly(
                        "verdict",
                        "until",
                        "floorLife",
                        "clock",
                        "bakeColumn",
                        "bakes",
                        "reasons",
                        "next",
                        "assumed",
                        "trail");
        assertThat(answer.get("verdict").asText()).isEqualTo("clear");
        assertThat(answer.get("until").asText()).isEqualTo("2026-03-12T07:00:00Z");
        assertThat(answer.get("clock").asText()).isEqualTo("running");
        assertThat(answer.get("bakeColumn").asText()).isEqualTo("within-72h");
        assertThat(answer.get("next")).isEmpty();
    }

    @Test
    void floorLifeIsToldInHours() {
        JsonNode life = Asked.answer(request(PART, OPENED, AIR, at("2026-03-05T19:30:00Z")))
                .get("floorLife");

        assertThat(life.get("totalHours").asDouble()).isEqualTo(168);
        assertThat(life.get("usedHours").asDouble()).isEqualTo(12.5);
        assertThat(life.get("remainingHours").asDouble()).isEqualTo(155.5);
        assertThat(life.get("endsAt").asText()).isEqualTo("2026-03-12T07:00:00Z");
    }

    /** Bakes are always given for a part that has a row, even when clear. */
    @Test
    void theBakesAreGivenEvenWhenClear() {
        JsonNode bakes = Asked.answer(request(PART, OPENED, AIR, at("2026-03-05T19:30:00Z")))
                .get("bakes");

        assertThat(bakes).hasSize(3);
        assertThat(names(bakes.get(0))).containsExactly("temperatureC", "hours", "maxRhPercent", "allowed", "why");
        assertThat(texts(bakes, "temperatureC")).containsExactly("125.0", "90.0", "40.0");
        assertThat(texts(bakes, "hours")).containsExactly("7.0", "23.0", "216.0");
        assertThat(texts(bakes, "maxRhPercent")).containsExactly("null", "5.0", "5.0");
        assertThat(bakes.get(0).get("allowed").asBoolean()).isTrue();
        assertThat(bakes.get(0).get("why").isNull()).isTrue();
    }

    @Test
    void aRefusedBakeSaysWhy() {
        JsonNode bakes = Asked.answer(request(PART.replace("\"none\"", "40"), OPENED, AIR, at("2026-03-05T19:30:00Z")))
                .get("bakes");

        assertThat(bakes.get(0).get("allowed").asBoolean()).isFalse();
        assertThat(bakes.get(0).get("why").asText()).contains("40");
        assertThat(bakes.get(2).get("allowed").asBoolean()).isTrue();
    }

    @Test
    void theTrailAddsUp() {
        JsonNode trail = Asked.answer(request(PART, OPENED, AIR, at("2026-03-05T19:30:00Z")))
                .get("trail");

        assertThat(trail).hasSize(1);
        assertThat(names(trail.get(0)))
                .containsExactly(
                        "from", "to", "where", "zone", "temperatureC", "rhPercent", "floorLifeHours", "usedHours");
        assertThat(trail.get(0).get("where").asText()).isEqualTo("floor");
        assertThat(trail.get(0).get("zone").asText()).isEqualTo("bench");
        assertThat(trail.get(0).get("floorLifeHours").asDouble()).isEqualTo(168);
        assertThat(trail.get(0).get("usedHours").asDouble()).isEqualTo(12.5);
    }

    @Test
    void reasonsNextAndAssumptionsCarryCodesTextsAndSources() {
        JsonNode answer = Asked.answer(request(PART, OPENED, AIR, at("2026-03-20T00:00:00Z")));

        assertThat(answer.get("verdict").asText()).isEqualTo("bake");
        assertThat(answer.get("until").isNull()).isTrue();
        JsonNode reason = answer.get("reasons").get(0);
        assertThat(names(reason)).containsExactly("code", "text", "source", "status");
        assertThat(reason.get("code").asText()).isEqualTo("FLOOR_LIFE_USED");
        assertThat(reason.get("source").asText())
                .contains("J-STD-033D")
                .contains("5-1")
                .contains("S10");
        assertThat(reason.get("status").asText()).isEqualTo("seen");
        JsonNode next = answer.get("next").get(0);
        assertThat(names(next)).containsExactly("code", "text", "role");
        assertThat(next.get("code").asText()).isEqualTo("BAKE");
        JsonNode assumed = answer.get("assumed");
        assertThat(names(assumed.get(0))).containsExactly("fact", "as", "why");
        assertThat(texts(assumed, "fact")).contains("blockingPlanes", "cardReadAt", "bakes", "reflowPasses");
    }

    @Test
    void aHoldOnASealedBagSaysWhatMendsIt() {
        String sealed = "\"history\":[{\"at\":\"2026-03-01T08:00:00Z\",\"event\":\"sealed\"}]";
        JsonNode answer = Asked.answer(request(PART, sealed, AIR, at("2026-03-02T08:00:00Z")));

        assertThat(answer.get("verdict").asText()).isEqualTo("hold");
        assertThat(answer.get("clock").asText()).isEqualTo("sealed");
        assertThat(answer.get("floorLife").get("endsAt").isNull()).isTrue();
        assertThat(answer.get("next").get(0).get("code").asText()).isEqualTo("OPEN_AND_READ_CARD");
        assertThat(answer.get("next").get(0).get("role").asText()).isEqualTo("clerk");
    }

    /** Nothing said at all: unknown level, unknown history. */
    @Test
    void arequestThatSaysNothingIsAHold() {
        JsonNode answer = Asked.answer(request(at("2026-03-02T08:00:00Z")));

        assertThat(answer.get("verdict").asText()).isEqualTo("hold");
        assertThat(answer.get("floorLife").get("totalHours").isNull()).isTrue();
        assertThat(answer.get("floorLife").get("remainingHours").isNull()).isTrue();
        assertThat(answer.get("floorLife").get("usedHours").asDouble()).isZero();
        assertThat(answer.get("bakeColumn").isNull()).isTrue();
        assertThat(answer.get("clock").asText()).isEqualTo("none");
    }

    @Test
    void aFieldOfNullIsAFieldLeftOut() {
        String nulls = """
                {"part":{"level":"3","classificationC":260,"thicknessMm":1.2,"lengthMm":17,"widthMm":17,"body":"array",
                 "stackedDie":false,"leadFree":true,"blockingPlanes":null,"floorLifeHours":null,"floorLifeTable":null,
                 "shelfMonths":null,"makerBakes":null,"useWithinHours":null,"maxBakes":null,"maxBakeC":null,
                 "carrierMaxC":"none","ratings":null},"history":null,"climate":null,"rules":null,"heat":null,
                 "at":"2026-03-05T19:30:00Z","board":null}""";

        assertThat(Asked.answer(nulls).get("verdict").asText()).isEqualTo("bake");
    }

    @Test
    void everyEventOfTheContractIsRead() {
        String history = """
                "history":[
                 {"at":"2026-03-01T00:00:00Z","event":"sealed","shelfMonths":24},
                 {"at":"2026-03-02T00:00:00Z","event":"opened","card":{"10":"dry"},
                  "cardReadAt":"2026-03-02T00:10:00Z","bag":"sound","zone":"bench"},
                 {"at":"2026-03-02T01:00:00Z","event":"to-floor","zone":"store"},
                 {"at":"2026-03-02T02:00:00Z","event":"to-dry-storage","maxRhPercent":5,"zone":null},
                 {"at":"2026-03-02T03:00:00Z","event":"resealed","freshDesiccant":true,"freshCard":true},
                 {"at":"2026-03-02T04:00:00Z","event":"opened","card":{"10":"wet"},"bag":"damaged"},
                 {"at":"2026-03-02T05:00:00Z","event":"bake-started","temperatureC":125,"maxRhPercent":null},
                 {"at":"2026-03-02T15:00:00Z","event":"bake-ended","hoursAtTemperature":9.0},
                 {"at":"2026-03-02T16:00:00Z","event":"heated","peakBodyC":245},
                 {"at":"2026-03-02T16:00:00Z","event":"mounted","zone":"bench"},
                 {"at":"2026-03-02T17:00:00Z","event":"carrier-changed","carrierMaxC":125},
                 {"at":"2026-03-02T18:00:00Z","event":"removed","zone":"bench"},
                 {"at":"2026-03-02T19:00:00Z","event":"wetted"},
                 {"at":"2026-03-02T20:00:00Z","event":"unknown-exposure"}]""";
        JsonNode answer = Asked.answer(request(PART, history, AIR, at("2026-03-03T00:00:00Z")));

        assertThat(texts(answer.get("reasons"), "code")).contains("PART_WETTED");
        assertThat(answer.get("trail").get(0).get("from").asText()).isEqualTo("2026-03-02T19:00:00Z");
        assertThat(answer.get("floorLife").get("usedHours").asDouble()).isEqualTo(168);
    }

    /** A dew point stands in place of the humidity: 20 C at 10 C dew point is 52.6 %RH (WMO No. 8). */
    @ParameterizedTest
    @CsvSource({"10, 168", "14, 48"})
    void aDewPointStandsInPlaceOfTheHumidity(double dew, double lifeHours) {
        String climate = """
                "climate":{"readings":[
                  {"zone":"bench","at":"2026-03-05T07:00:00Z","temperatureC":20.5,"dewPointC":%s},
                  {"zone":"bench","at":"2026-03-05T08:00:00Z","temperatureC":20.5,"dewPointC":%s}]}""".formatted(dew, dew);
        JsonNode answer = Asked.answer(
                request(PART.replace("\"array\"", "\"leadless\""), OPENED, climate, at("2026-03-05T08:00:00Z")));

        assertThat(answer.get("trail").get(0).get("floorLifeHours").asDouble()).isEqualTo(lifeHours);
    }

    @Test
    void theSitesRulesAreRead() {
        String rules = "\"rules\":{\"useDrierThan60\":true,\"maxReadingGapHours\":1,\"excursionMinutes\":30}";
        String climate = """
                "climate":{"default":{"temperatureC":25,"rhPercent":70},"readings":[
                  {"zone":"bench","at":"2026-03-05T07:00:00Z","temperatureC":25,"rhPercent":50}]}""";
        JsonNode answer = Asked.answer(
                request(PART.replace("\"array\"", "\"leadless\""), OPENED, climate, rules, at("2026-03-05T09:00:00Z")));

        assertThat(answer.get("trail")).hasSize(2);
        assertThat(answer.get("floorLife").get("usedHours").asDouble()).isEqualTo(1 + 3.5);
    }

    /** The maker's rules are read: his bake, his table beside it or not, his life, his counts. */
    @Test
    void theMakersRulesAreRead() {
        String part = """
                "part":{"level":"3","classificationC":260,"thicknessMm":1.2,"body":"module","carrierMaxC":60,
                 "floorLifeHours":24,"makerBakes":[{"temperatureC":60,"hours":72,"maxRhPercent":5,"carrierMaxC":60}],
                 "tableToo":false,"useWithinHours":24,"maxBakes":2,"maxBakeC":60,"bakedHoursOver90C":1.5,"bakes":1,
                 "reflowPasses":1,"maxReflowPasses":2,"shelfMonths":24}""";
        JsonNode answer = Asked.answer(request(part, OPENED, AIR, at("2026-03-07T08:00:00Z")));

        assertThat(answer.get("verdict").asText()).isEqualTo("bake");
        assertThat(answer.get("bakeColumn").asText()).isEqualTo("maker");
        assertThat(answer.get("bakes")).hasSize(1);
        assertThat(answer.get("bakes").get(0).get("allowed").asBoolean()).isTrue();
        assertThat(answer.get("floorLife").get("totalHours").asDouble()).isEqualTo(24);
    }

    @Test
    void anArrayOfRequestsIsAnsweredInOrder() {
        String first = request(PART, OPENED, AIR, at("2026-03-05T19:30:00Z"));
        String second = request(PART, OPENED, AIR, at("2026-03-20T00:00:00Z"));
        JsonNode answers = Asked.answer("[" + first + "," + second + "]");

        assertThat(answers.isArray()).isTrue();
        assertThat(texts(answers, "verdict")).containsExactly("clear", "bake");
        assertThat(Asked.answer("[]")).isEmpty();
    }

    @Test
    void aHeatAndItsMomentMayStandTogetherIfEqual() {
        String heat = """
                "heat":{"at":"2026-03-05T20:30:00+01:00","minutes":10.5,"peakBodyC":245,"purpose":"placement",
                 "local":false}""";
        JsonNode answer = Asked.answer(request(PART, OPENED, AIR, heat, at("2026-03-05T19:30:00Z")));

        assertThat(answer.get("verdict").asText()).isEqualTo("clear");
        assertThat(answer.get("floorLife").get("usedHours").asDouble()).isEqualTo(12.5);
    }

    @Test
    void twoRatingsAreRead() {
        String ratings = PART.replace(
                "\"level\":\"3\",\"classificationC\":260",
                "\"ratings\":[{\"level\":\"2\",\"peakC\":240},{\"level\":\"3\",\"peakC\":260}]");
        String heat = "\"heat\":{\"at\":\"2026-03-05T19:30:00Z\",\"peakBodyC\":240,\"purpose\":\"placement\"}";

        assertThat(Asked.answer(request(ratings, OPENED, AIR, heat))
                        .get("floorLife")
                        .get("totalHours")
                        .asDouble())
                .isEqualTo(8760);
    }

    @Test
    void aBoardIsAnsweredAsAWholeAndForEachLocation() {
        String board = """
                {"board":{"maxBakeC":105,"ownBake":null,"coated":false,"useWithinHours":12,"history":[],
                  "parts":[{"location":"U7",%s,%s,"peakBodyC":245,"fate":"removed-scrap","offFirst":false,
                            "replacements":0},
                           {"location":"U8",%s,%s,"peakBodyC":null,"fate":"stays"}]},
                 "heat":{"at":"2026-03-20T00:00:00Z","minutes":10,"purpose":"placement","local":true},%s}""".formatted(PART, OPENED, PART, OPENED, AIR);
        JsonNode answer = Asked.answer(board);

        assertThat(answer.get("verdict").asText()).isEqualTo("bake");
        assertThat(texts(answer.get("parts"), "location")).containsExactly("U7", "U8");
        assertThat(texts(answer.get("parts"), "verdict")).containsExactly("clear", "bake");
        assertThat(answer.get("bakes").get(0).get("allowed").asBoolean()).isFalse();
        assertThat(answer.get("bakes").get(1).get("allowed").asBoolean()).isTrue();
    }
}
