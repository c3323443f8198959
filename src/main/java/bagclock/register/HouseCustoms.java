package bagclock.register;

/**
 * What a site chooses that decides no answer.
 *
 * @param item label of an item
 * @param bag label of a bag that the site closed
 * @param sheet of the codes of places and actions
 * @param code on labels and on that sheet
 * @param wallShown whether the wall display answers without a sign-in
 */
public record HouseCustoms(PrintSize item, PrintSize bag, PrintSize sheet, LabelCode code, boolean wallShown) {
    /** What counts as long as nobody has decided. */
    public static final HouseCustoms USUAL =
            new HouseCustoms(PrintSize.W70_H36, PrintSize.W100_H50, PrintSize.A4, LabelCode.MATRIX, true);
}
