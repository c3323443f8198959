package bagclock.scan;

/**
 * Keyboard layouts into which a scanner set to US keys may type. The tables give, for each US key in order, the
 * character that the layout puts there; after the maps of the xkeyboard-config project.
 */
enum Layout {
    GERMAN("^1234567890ß´ü+#öä,.-°!\"§$%&/()=?`Ü*'ÖÄ;:_", "yzYZ", "zyZY"),
    FRENCH("²&é\"'(-è_çà)=^$*mù;:!~1234567890°+¨£µM%./§", "aqzwAQZWmM", "qawzQAWZ,?"),
    ITALIAN("\\1234567890'ìè+ùòà,.-|!\"£$%&/()=?^é*§ç°;:_", "", ""),
    BRITISH("`1234567890-=[]#;',./¬!\"£$%^&*()_+{}~:@<>?", "", "");

    private static final class Us {
        static final String KEYS = "`1234567890-=[]\\;',./~!@#$%^&*()_+{}|:\"<>?";
    }

    private final String typed;
    private final String meant;

    Layout(String keys, String usLetters, String letters) {
        this.typed = keys + letters;
        this.meant = Us.KEYS + usLetters;
    }

    /** What was meant by what arrived; controls stay. */
    String mend(String arrived) {
        return mapped(arrived, typed, meant);
    }

    /** What arrives for what is meant. */
    String type(String text) {
        return mapped(text, meant, typed);
    }

    private static String mapped(String text, String from, String to) {
        StringBuilder out = new StringBuilder();
        text.chars().forEach(c -> out.append(from.indexOf(c) < 0 ? (char) c : to.charAt(from.indexOf(c))));
        return out.toString();
    }
}
