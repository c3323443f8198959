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
public record HouseCustoms(LabelSize item, LabelSize bag, SheetSize sheet, LabelCode code, boolean wallShown) {
    /** What counts as long as nobody has decided. */
    public static final HouseCustoms USUAL =
            new HouseCustoms(LabelSize.W70_H36, LabelSize.W100_H50, SheetSize.A4, LabelCode.MATRIX, true);
}
