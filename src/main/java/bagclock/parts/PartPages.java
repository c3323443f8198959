package bagclock.parts;

import bagclock.core.standard.Standard;
import bagclock.platform.Choice;
import bagclock.platform.Field;
import bagclock.platform.Heading;
import bagclock.platform.Names;
import bagclock.register.PartType;
import bagclock.register.Versioned;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts the list of part types, and one of them, into words. */
final class PartPages {
    private final PartWords words;
    private final Names names;

    PartPages(PartWords words, Names names) {
        this.words = words;
        this.names = names;
    }

    static String href(String number) {
        return "/parts/type?number=" + URLEncoder.encode(number, StandardCharsets.UTF_8);
    }

    PartsPage list(ListForm asked, PartsStore.Found found, String done) {
        List<Choice> levels = new ArrayList<>(words.levels("parts.level.any"));
        levels.add(Choice.of(ListForm.UNKNOWN, words.text("parts.not-known")));
        boolean more = (long) (asked.page() + 1) * ListForm.PAGE_SIZE < found.total();
        return new PartsPage(
                words.text("parts.title"),
                words.text("parts.lead", found.total()),
                done,
                Field.of("text", words.text("parts.search"), asked.text()),
                Field.of("level", words.label(Column.LEVEL), asked.level()),
                levels,
                headings(asked),
                found.types().stream().map(this::row).toList(),
                asked.onPage(0).href("/parts/export"),
                asked.page() > 0 ? asked.onPage(asked.page() - 1).href("/parts") : "",
                more ? asked.onPage(asked.page() + 1).href("/parts") : "");
    }

    private List<Heading> headings(ListForm asked) {
        return Arrays.stream(ListForm.Sort.values())
                .map(sort -> new Heading(
                        words.text("parts.sort." + sort.name()),
                        asked.sortedBy(sort).href("/parts"),
                        sort != asked.sort() ? null : asked.descending() ? "descending" : "ascending"))
                .toList();
    }

    private PartsPage.Row row(Versioned<PartType> versioned) {
        PartType type = versioned.fact();
        return new PartsPage.Row(
                type.number(),
                href(type.number()),
                type.maker(),
                words.texts().at(versioned.version().recordedAt()),
                words.texts().machine(versioned.version().recordedAt()),
                type.description(),
                words.ratings(type),
                words.texts().part(type.part().body().kind()));
    }

    PartPage one(
            List<Versioned<PartType>> versions,
            Versioned<PartType> now,
            Standard standard,
            PartsStore.Items items,
            String done) {
        PartType type = now.fact();
        long hidden = items.total() - items.first().size();
        return new PartPage(
                type.number(),
                type.description(),
                done,
                "/parts/change?number=" + URLEncoder.encode(type.number(), StandardCharsets.UTF_8),
                Doubts.about(type, standard).stream().map(words::doubt).toList(),
                groups(type),
                items.first().stream().map(this::item).toList(),
                hidden > 0 ? words.text("parts.items.more", hidden) : "",
                "/items?text=" + URLEncoder.encode(type.number(), StandardCharsets.UTF_8),
                versions(versions));
    }

    private List<PartPage.Group> groups(PartType type) {
        Map<Column, String> texts = PartWriting.of(type);
        return Arrays.stream(FormGroup.values())
                .map(group -> new PartPage.Group(
                        words.text("parts.group." + group.name()),
                        group.columns().stream()
                                .flatMap(column -> fact(column, texts.getOrDefault(column, "")).stream())
                                .toList()))
                .filter(group -> !group.facts().isEmpty())
                .toList();
    }

    /** A fact that the rules need is said to be unknown; one that a maker need not give is left out. */
    private Optional<PartPage.Fact> fact(Column column, String text) {
        if (!text.isEmpty()) {
            return Optional.of(new PartPage.Fact(words.name(column), words.shown(column, text)));
        }
        return FormGroup.MATTERS.contains(column)
                ? Optional.of(new PartPage.Fact(words.name(column), List.of(words.text("parts.not-known"))))
                : Optional.empty();
    }

    private PartPage.Item item(PartsStore.ItemLine item) {
        String place = Optional.ofNullable(item.board())
                .or(() -> Optional.ofNullable(item.placeCode()))
                .orElse("");
        return new PartPage.Item(
                item.tag(),
                "/items/" + item.tag(),
                Long.toString(item.quantity()),
                words.text("parts.where." + item.whereabouts(), place));
    }

    private List<PartPage.Version> versions(List<Versioned<PartType>> versions) {
        List<PartPage.Version> lines = new ArrayList<>();
        for (int i = 0; i < versions.size(); i++) {
            Versioned<PartType> one = versions.get(i);
            String what = i + 1 == versions.size()
                    ? words.text("parts.version.first")
                    : words.labels(Changed.between(versions.get(i + 1).fact(), one.fact()));
            lines.add(new PartPage.Version(
                    Integer.toString(one.version().number()),
                    words.texts().at(one.version().recordedAt()),
                    words.texts().machine(one.version().recordedAt()),
                    names.of(one.version().who()),
                    what.isEmpty() ? words.text("parts.version.same") : what));
        }
        return lines;
    }
}
