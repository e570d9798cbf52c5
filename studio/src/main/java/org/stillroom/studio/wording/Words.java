package org.stillroom.studio.wording;

import java.text.DecimalFormatSymbols;
import java.text.MessageFormat;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.ResourceBundle;
import java.util.regex.Pattern;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.QuantityWords;

/**
 * What a page says: texts of one language, and numbers as its readers write them.
 *
 * <p>The part of a key before its first dot names the bundle: {@code shelf.title} stands in {@code shelf.properties}.
 */
public final class Words {
    private static final String BUNDLES = "org.stillroom.studio.wording.";
    private static final ResourceBundle.Control ENGLISH_ELSE =
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

    /** Longer than a unit. */
    private static final Pattern WORD = Pattern.compile("\\p{L}{3}");

    private final Language language;
    private final UnitSystem units;

    public Words(Language language, UnitSystem units) {
        this.language = language;
        this.units = units;
    }

    public Language language() {
        return language;
    }

    public UnitSystem units() {
        return units;
    }

    /**
     * Returns a text.
     *
     * @param arguments fill {0}, {1} …; hand numbers over as the texts they are to be shown as
     * @throws java.util.MissingResourceException when nobody wrote it
     */
    public String say(String key, Object... arguments) {
        ResourceBundle bundle =
                ResourceBundle.getBundle(BUNDLES + key.substring(0, key.indexOf('.')), language.locale(), ENGLISH_ELSE);
        String text = bundle.getString(key);
        return arguments.length == 0 ? text : new MessageFormat(text, language.locale()).format(arguments);
    }

    /**
     * Returns how many of something there are: by the key, or where there is one of it by the key with ".one" behind it.
     *
     * @param count fills {0}
     * @param others fill {1} …
     */
    public String counted(String key, long count, Object... others) {
        List<Object> arguments = new ArrayList<>(List.of(others));
        arguments.add(0, String.valueOf(count));
        return say(count == 1 ? key + ".one" : key, arguments.toArray());
    }

    /**
     * Returns what the program says in English while it works, such as the message of a finding, in this language where its
     * phrasebook has it, else as it is.
     *
     * @param rule the rule of the finding; its own phrases come before those that any rule may take
     */
    public Spoken told(String rule, String english) {
        return Phrasebook.of(language)
                .flatMap(book -> book.translate(rule, english, this::marked))
                .map(found -> new Spoken(found, language))
                .orElseGet(() -> new Spoken(english, Language.ENGLISH));
    }

    /** Returns the same as a text alone; figures with units at most get the decimal mark of the language. */
    public String toldOrMarked(String rule, String english) {
        Spoken told = told(rule, english);
        boolean bare = told.language() != language && !WORD.matcher(english).find();
        return bare ? marked(english) : told.text();
    }

    /** Returns a number with just so many decimals, with the decimal mark of the language. */
    public String number(double value, int decimals) {
        return marked(QuantityWords.fixed(value, decimals));
    }

    /** Returns a half-width with so many decimals, or with one more where it would read as none. */
    public String halfWidth(double value, int decimals) {
        boolean readsAsNone = value > 0.0 && value < 0.5 * Math.pow(10.0, -decimals);
        return number(value, readsAsNone ? decimals + 1 : decimals);
    }

    /** Returns a number with as many decimals as it needs. */
    public String plain(double value) {
        return marked(QuantityWords.plain(value));
    }

    /** Returns an amount in the units of the reader, such as "330.0 mL". */
    public String amount(Amount amount) {
        return spaced(marked(units == UnitSystem.US ? QuantityWords.us(amount) : QuantityWords.metric(amount)));
    }

    /** Returns a text of the core that holds figures, such as the reading of an instrument, with the decimal mark of the language. */
    public String marked(String figures) {
        char mark = DecimalFormatSymbols.getInstance(language.locale()).getDecimalSeparator();
        return mark == '.' ? figures : figures.replaceAll("(?<=\\d)\\.(?=\\d)", String.valueOf(mark));
    }

    /** Ties a number to its unit. */
    private static String spaced(String amount) {
        return amount.replace(' ', '\u00a0');
    }

    /** Returns a moment as a day and time of the maker's own clock. */
    public String moment(Instant at) {
        return DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
                .withLocale(language.locale())
                .withZone(ZoneId.systemDefault())
                .format(at);
    }

    public String day(LocalDate day) {
        return DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM)
                .withLocale(language.locale())
                .format(day);
    }
}
