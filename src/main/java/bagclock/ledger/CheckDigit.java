package bagclock.ledger;

import java.util.regex.Pattern;

/**
 * The last digit of a tag that the site drew: ISO/IEC 7064, MOD 11,10. One wrong digit is always noticed. A digit, since
 * some letters come out wrong where scanner and computer disagree about the keyboard.
 */
public final class CheckDigit {
    /** What every drawn tag begins with. */
    public static final String PREFIX = "R";

    private static final Pattern DRAWN = Pattern.compile(PREFIX + "\\d{5,18}");
    private static final int TEN = 10;
    private static final int ELEVEN = 11;

    private CheckDigit() {}

    /** The tag of a number, with its check digit: 1001 gives {@code R10014}. */
    static String tag(long number) {
        String digits = Long.toString(number);
        return PREFIX + digits + of(digits);
    }

    /** The check digit of a text of digits, 0 to 9. */
    static int of(String digits) {
        int product = TEN;
        for (int i = 0; i < digits.length(); i++) {
            int sum = (product + digits.charAt(i) - '0') % TEN;
            product = (sum == 0 ? TEN : sum) * 2 % ELEVEN;
        }
        return (ELEVEN - product) % TEN;
    }

    /** Whether a code looks like a drawn tag of which a digit is wrong. */
    public static boolean isMisread(String code) {
        if (!DRAWN.matcher(code).matches()) {
            return false;
        }
        int last = code.length() - 1;
        return of(code.substring(PREFIX.length(), last)) != code.charAt(last) - '0';
    }
}
