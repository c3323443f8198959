package bagclock.tables;

import bagclock.core.standard.Cell;
import bagclock.core.standard.CellKey;
import bagclock.core.standard.Citation;
import bagclock.core.standard.Standard;
import bagclock.core.standard.Status;
import bagclock.core.standard.Table;
import bagclock.desk.Decided;
import bagclock.platform.Entered;
import bagclock.platform.Messages;
import bagclock.platform.Names;
import bagclock.platform.Texts;
import bagclock.register.ComparedCell;
import bagclock.register.Versioned;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Puts tables into words. */
final class TablePages {
    private static final int MOST_WAITING = 12;

    private final CellValues values;
    private final Messages messages;
    private final Texts texts;
    private final Names names;

    TablePages(CellValues values, Texts texts, Names names) {
        this.values = values;
        this.messages = texts.messages();
        this.texts = texts;
        this.names = names;
    }

    static String href(Table table) {
        return "/tables/" + table.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Optional<Table> table(String path) {
        return Arrays.stream(Table.values())
                .filter(table -> href(table).equals("/tables/" + path))
                .findFirst();
    }

    private static String href(CellKey key) {
        return href(key.table()) + "/cell?row=" + URLEncoder.encode(key.row(), StandardCharsets.UTF_8) + "&column="
                + URLEncoder.encode(key.column(), StandardCharsets.UTF_8);
    }

    /** Row and column; a table of one column names none. */
    static String label(CellKey key) {
        return key.column().isEmpty() ? key.row() : key.row() + ", " + key.column();
    }

    private String name(Table table) {
        return messages.text("tables.name." + table.name());
    }

    TablesPage all(Standard standard, Decided decided, String done) {
        String words = decided.cells().isEmpty()
                ? messages.text("tables.decided.none")
                : messages.text("tables.decided", decided.cells().size(), decided.answers());
        List<TablesPage.Waiting> waiting = standard.cells().stream()
                .map(Cell::key)
                .filter(decided.cells()::contains)
                .limit(MOST_WAITING)
                .map(key -> new TablesPage.Waiting(name(key.table()) + ": " + label(key), href(key)))
                .toList();
        return new TablesPage(
                messages.text("tables.title"),
                done,
                words,
                waiting,
                Arrays.stream(Table.values())
                        .map(table -> line(table, standard))
                        .toList());
    }

    private TablesPage.Line line(Table table, Standard standard) {
        List<Cell> cells =
                standard.cells().stream().filter(cell -> cell.table() == table).toList();
        long confirmed = cells.stream()
                .filter(cell -> is(cell, Status.SITE) && isAsShipped(cell))
                .count();
        Citation first = cells.get(0).citation();
        return new TablesPage.Line(
                name(table),
                href(table),
                first.document() + ", " + first.table(),
                Integer.toString(cells.size()),
                count(cells, Status.SEEN),
                count(cells, Status.MEMORY),
                Long.toString(confirmed),
                Long.toString(
                        cells.stream().filter(cell -> is(cell, Status.SITE)).count() - confirmed));
    }

    private static String count(List<Cell> cells, Status status) {
        return Long.toString(cells.stream().filter(cell -> is(cell, status)).count());
    }

    private static boolean is(Cell cell, Status status) {
        return cell.citation().status() == status;
    }

    private boolean isAsShipped(Cell cell) {
        return cell.value().equals(values.shipped(cell.key()));
    }

    private String status(Cell cell) {
        boolean corrected = is(cell, Status.SITE) && !isAsShipped(cell);
        return messages.text(
                corrected
                        ? "tables.status.corrected"
                        : "tables.status." + cell.citation().status().code());
    }

    /** One table, to be read. */
    SheetPage sheet(Layout layout, String done) {
        return sheet(layout, done, Optional.empty(), Optional.empty());
    }

    /** One grid of a table, to be compared. */
    SheetPage comparing(Layout layout, int grid, Entered entered, int basedOn, String refusal) {
        Layout one = new Layout(layout.table(), List.of(layout.grids().get(grid)));
        SheetPage.Form form = new SheetPage.Form(
                href(layout.table()) + "/compare",
                basedOn,
                refusal,
                Integer.toString(grid),
                entered.field(ComparisonForm.BY, messages.text("tables.by")),
                entered.field(ComparisonForm.ON, messages.text("tables.on")),
                entered.field(ComparisonForm.COPY, messages.text("tables.copy"), messages.text("tables.copy.hint")));
        return sheet(one, "", Optional.of(form), Optional.of(entered));
    }

    private SheetPage sheet(Layout layout, String done, Optional<SheetPage.Form> form, Optional<Entered> entered) {
        Citation first =
                layout.grids().get(0).rows().get(0).cells().get(0).cell().citation();
        List<SheetPage.Grid> grids = new ArrayList<>();
        for (int i = 0; i < layout.grids().size(); i++) {
            grids.add(grid(layout.grids().get(i), href(layout.table()) + "/compare?grid=" + i, entered));
        }
        return new SheetPage(
                name(layout.table()),
                href(layout.table()),
                first.document() + ", " + first.table(),
                messages.text("tables.unit." + layout.table().name()),
                done,
                layout.cells().stream()
                        .flatMap(cell -> doubts(cell, layout.cells()).stream())
                        .distinct()
                        .toList(),
                grids,
                form);
    }

    /** Where a corrected cell contradicts a neighbour. */
    private List<String> doubts(Cell cell, List<Cell> all) {
        boolean corrected = is(cell, Status.SITE) && !isAsShipped(cell);
        if (!corrected) {
            return List.of();
        }
        return Stream.concat(
                        LifeDoubts.of(cell, all).stream()
                                .map(doubt -> doubt(doubt.by(), doubt.longer(), doubt.milder())),
                        BakeDoubts.of(cell, all).stream()
                                .map(doubt -> doubt(doubt.by(), doubt.shorter(), doubt.easier())))
                .toList();
    }

    private String doubt(Enum<?> by, Cell one, Cell other) {
        return messages.text(
                "tables.doubt." + by.name(), label(one.key()), one.value(), label(other.key()), other.value());
    }

    private SheetPage.Grid grid(Layout.Grid grid, String compare, Optional<Entered> entered) {
        List<SheetPage.Row> rows = new ArrayList<>();
        for (int i = 0; i < grid.rows().size(); i++) {
            Layout.Row row = grid.rows().get(i);
            rows.add(new SheetPage.Row(
                    row.name(),
                    ComparisonForm.rowTick(i),
                    row.cells().stream().map(placed -> cell(placed, entered)).toList()));
        }
        List<String> columns = grid.columns().stream()
                .map(column -> column.isEmpty() ? messages.text("tables.only-column") : column)
                .toList();
        return new SheetPage.Grid(grid.name(), compare, columns, rows);
    }

    private SheetPage.Cell cell(Layout.Placed placed, Optional<Entered> entered) {
        Cell cell = placed.cell();
        String number = Integer.toString(placed.number());
        Optional<Entered> touched = entered.filter(form -> isTouched(form, number));
        return new SheetPage.Cell(
                number,
                href(cell.key()),
                cell.value(),
                status(cell),
                cell.citation().status().code(),
                cell.value(),
                touched.map(form -> form.text(ComparisonForm.value(number))).orElse(cell.value()),
                touched.filter(form -> form.isChecked(ComparisonForm.tick(number)))
                        .isPresent(),
                label(cell.key()),
                entered.map(form -> form.error(ComparisonForm.value(number))).orElse(""));
    }

    private static boolean isTouched(Entered form, String number) {
        String text = form.text(ComparisonForm.value(number));
        boolean altered = !text.equals(form.text(ComparisonForm.was(number)));
        return altered || form.isChecked(ComparisonForm.tick(number));
    }

    /** One cell with its history. */
    CellPage cell(Layout layout, Layout.Placed placed, List<Versioned<ComparedCell>> history, int basedOn) {
        Cell cell = placed.cell();
        Citation citation = cell.citation();
        return new CellPage(
                label(cell.key()),
                name(cell.table()),
                href(cell.table()),
                citation.document() + ", " + citation.table(),
                cell.value(),
                values.shipped(cell.key()),
                status(cell),
                citation.sources(),
                doubts(cell, layout.cells()),
                history.stream().map(this::comparison).toList(),
                is(cell, Status.SITE),
                href(cell.table()) + "/take-back",
                Integer.toString(placed.number()),
                basedOn);
    }

    private CellPage.Comparison comparison(Versioned<ComparedCell> one) {
        ComparedCell cell = one.fact();
        return new CellPage.Comparison(
                Integer.toString(one.version().number()),
                cell.value().orElseGet(() -> messages.text("tables.taken-back")),
                cell.by(),
                cell.on().toString(),
                cell.copy(),
                messages.text(
                        "tables.entered",
                        names.of(one.version().who()),
                        texts.at(one.version().recordedAt())));
    }
}
