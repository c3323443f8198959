package bagclock.core.heat;

/** A fact that was not given, and what was taken in its place: never milder than any value it could have. */
public record Assumption(Fact fact, String as) {
    /** The facts that may be missing; the code is the field of the request. */
    public enum Fact {
        LEVEL("level"),
        CLASSIFICATION("classificationC"),
        LEAD_FREE("leadFree"),
        THICKNESS("thicknessMm"),
        EDGES("lengthMm, widthMm"),
        BODY("body"),
        STACKED_DIE("stackedDie"),
        BLOCKING_PLANES("blockingPlanes"),
        CARRIER("carrierMaxC"),
        BAKE_LIMIT("maxBakeC"),
        HISTORY("history"),
        CARD("card"),
        CARD_READ_AT("cardReadAt"),
        BAG("bag"),
        STORAGE_HUMIDITY("maxRhPercent"),
        FRESH_DESICCANT("freshDesiccant"),
        FRESH_CARD("freshCard"),
        OVEN_HUMIDITY("bake maxRhPercent"),
        TIME_AT_TEMPERATURE("hoursAtTemperature"),
        PAST_PEAK("peakBodyC"),
        WORST_CASE("climate.default"),
        HEAT_PEAK("heat.peakBodyC"),
        HEAT_LENGTH("heat.minutes"),
        HEAT_PURPOSE("heat.purpose"),
        HEAT_LOCAL("heat.local"),
        BAKED_HOURS("bakedHoursOver90C"),
        BAKES("bakes"),
        PASSES("reflowPasses"),
        COATED("coated");

        private final String field;

        Fact(String field) {
            this.field = field;
        }

        /** The field of the request. */
        public String field() {
            return field;
        }
    }
}
