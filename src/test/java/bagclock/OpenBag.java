package bagclock;

/** A bag that a clerk received and opened at the line, over HTTP. */
public final class OpenBag {
    private OpenBag() {}

    /** Forty parts of level 3, in the open since 10:00 of 12 March 2026. */
    public static void at(Visitor clerk, String tag) {
        clerk.submit(
                "/stock/receive",
                "/stock/receive",
                "type",
                "SNR-1003",
                "quantity",
                "40",
                "tag",
                tag,
                "origin",
                "pack",
                "sealedAt",
                "2026-02-01T00:00",
                "at",
                "2026-02-03T09:00");
        String path = "/items/" + tag + "/acts/open";
        clerk.submit(
                path,
                path,
                "spot5",
                "dry",
                "spot10",
                "dry",
                "spot60",
                "dry",
                "bag",
                "sound",
                "place",
                "LINE",
                "at",
                "2026-03-12T10:00");
    }
}
