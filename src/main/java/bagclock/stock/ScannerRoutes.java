package bagclock.stock;

import bagclock.platform.Entered;
import bagclock.platform.Pages;
import bagclock.platform.Visit;
import bagclock.platform.Workstation;
import bagclock.scan.CharacterMap;
import bagclock.scan.Decoder;
import bagclock.scan.TestCode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The page that shows what a scanner sends, and learns what this workstation's scanner means by it. */
final class ScannerRoutes {
    private static final String PATH = "/stock/scanner";
    private static final String ARRIVED = "arrived";

    /** Stands where an accent waits for its letter. */
    private static final String ACCENT = "\u25cc";

    private final Pages pages;
    private final Words words;

    ScannerRoutes(Pages pages, Words words) {
        this.pages = pages;
        this.words = words;
    }

    void register(RoutesConfig routes) {
        routes.get(PATH, this::check, ActRoutes.WORKERS);
        routes.post(PATH + "/keep", this::keep, ActRoutes.WORKERS);
        routes.post(PATH + "/forget", this::forget, ActRoutes.WORKERS);
    }

    private void check(Context ctx) {
        String code = asked(ctx, "code");
        String bars = Stream.concat(asked(ctx, "bars").lines(), Stream.of(Decoder.visible(code)))
                .filter(TestCode::isBar)
                .collect(Collectors.joining("\n"));
        pages.show(ctx, page(ctx, code, asked(ctx, "keys").strip(), bars));
    }

    private static String asked(Context ctx, String name) {
        return Optional.ofNullable(ctx.queryParam(name)).orElse("");
    }

    /** Learns again from what arrived, so that nothing but a whole test code is ever kept. */
    private void keep(Context ctx) {
        String arrived = Entered.of(ctx, words.texts()).text(ARRIVED);
        Optional<TestCode.Learnt> learnt = keepable(TestCode.learn(arrived));
        if (learnt.isEmpty()) {
            pages.refuse(ctx, page(ctx, arrived, "", ""));
            return;
        }
        Workstation.keep(ctx, learnt.get().map().text());
        ctx.redirect(PATH, HttpStatus.SEE_OTHER);
    }

    private static Optional<TestCode.Learnt> keepable(Optional<TestCode.Learnt> learnt) {
        return learnt.filter(one -> one.lost().isEmpty() && !one.isClean());
    }

    private void forget(Context ctx) {
        Workstation.forget(ctx);
        ctx.redirect(PATH, HttpStatus.SEE_OTHER);
    }

    private ScannerPage page(Context ctx, String code, String keys, String bars) {
        String arrived = Decoder.visible(code);
        boolean isBar = TestCode.isBar(arrived);
        Optional<TestCode.Learnt> learnt = TestCode.learn(isBar ? bars : code);
        Map<Character, Character> kept =
                CharacterMap.parse(Visit.of(ctx).scannerMap()).meant();
        return new ScannerPage(
                words.text("stock.scanner"),
                arrived.replaceAll("\\p{Co}", ACCENT),
                keys,
                bars,
                learnt.map(this::told).orElseGet(() -> told(code, bars)),
                keepable(learnt).map(one -> isBar ? bars : arrived).orElse(""),
                kept.isEmpty() ? "" : pairs(kept));
    }

    /** Of something from which nothing can be learnt yet. */
    private List<String> told(String code, String bars) {
        if (code.isEmpty()) {
            return List.of();
        } else if (TestCode.isBar(code)) {
            String missing =
                    TestCode.missingBars(bars).stream().map(String::valueOf).collect(Collectors.joining(", "));
            return List.of(words.text("stock.scanner.bars", missing));
        }
        return TestCode.isInCapsLock(code) ? List.of(words.text("stock.scanner.caps")) : doubts(code);
    }

    private List<String> doubts(String code) {
        return Decoder.read(code).flags().stream()
                .map(flag -> words.text("stock.flag." + flag.name()))
                .toList();
    }

    private List<String> told(TestCode.Learnt learnt) {
        List<String> told = new ArrayList<>();
        String pairs = pairs(learnt.map().meant());
        if (!pairs.isEmpty()) {
            told.add(words.text("stock.scanner.others", pairs));
        }
        if (!learnt.doubtful().isEmpty()) {
            told.add(words.text("stock.scanner.doubtful", spaced(learnt.doubtful())));
        }
        if (!learnt.lost().isEmpty()) {
            told.add(words.text("stock.scanner.lost", spaced(learnt.lost())));
        }
        if (learnt.isWithoutControls()) {
            told.add(words.text("stock.scanner.controls"));
        }
        return told;
    }

    private static String spaced(String characters) {
        return characters.chars().mapToObj(Character::toString).collect(Collectors.joining(" "));
    }

    private String pairs(Map<Character, Character> meant) {
        return new TreeMap<>(meant)
                .entrySet().stream()
                        .filter(pair -> pair.getValue() != CharacterMap.DOUBTFUL)
                        .map(pair -> words.text("stock.scanner.pair", shown(pair.getKey()), pair.getValue()))
                        .collect(Collectors.joining(", "));
    }

    private String shown(char arrived) {
        return Character.getType(arrived) == Character.PRIVATE_USE
                ? words.text("stock.scanner.accent")
                : String.valueOf(arrived);
    }
}
