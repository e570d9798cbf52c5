package org.stillroom.studio.shelffile;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** What the columns of a shelf's table may be called, in English and in German; docs/shelf-csv.md lists them. */
final class Headings {
    private static final Pattern BLANKS = Pattern.compile("[\\s_]+");
    private static final Map<String, String> KEYS = new HashMap<>();
    private static final Map<String, String> KINDS = new HashMap<>();

    static {
        LotKeys.ALL.forEach(key -> KEYS.put(key, key));
        also(LotKeys.NAME, "bezeichnung");
        also(LotKeys.KIND, "art");
        also(LotKeys.LABEL, "lot", "los", "charge");
        also(LotKeys.LEFT, "amount left", "at hand", "rest", "bestand", "vorrat");
        also(LotKeys.FULL, "size", "inhalt", "voll");
        also(LotKeys.OPENED, "opened on", "geöffnet", "geöffnet am", "angebrochen");
        also(LotKeys.TARE, "tara", "leergewicht");
        also(LotKeys.PAID, "price paid", "bezahlt");
        also(LotKeys.SUPPLIER, "lieferant");
        also(LotKeys.SET_ASIDE, "weggestellt");
        also(LotKeys.NOTE, "notes", "notiz", "bemerkung");
        also(LotKeys.ANALYSIS, "analyse");
        also(LotKeys.HOLDS, "bottle size", "fasst");
        also(LotKeys.BRIM, "to the brim", "randvoll");
        also("plant", "plants", "pflanze", "pflanzen");
        also("ratio", "verhältnis");
        also("strength", "alcohol", "abv", "stärke", "alkohol", "alkoholgehalt");
        also("tolerance", "toleranz");
        also("sugar", "zucker");
        also("acidity", "säure");
        also("density", "dichte");
        also("drop", "tropfen");
        also("price", "preis");
        also("pack", "packung");
        also("water", "wasser");
        also("sucrose", "saccharose");
        also("glucose", "glukose", "traubenzucker");
        also("fructose", "fruktose", "fruchtzucker");
        also("lactose", "laktose", "milchzucker");
        also("glycerol", "glycerin");
        also("citric", "citronensäure", "zitronensäure");
        also("malic", "äpfelsäure");
        also("tartaric", "weinsäure");
        also("lactic", "milchsäure");
        also("acetic", "essigsäure");
        also("phosphoric", "phosphorsäure");
        also("ascorbic", "ascorbinsäure");
        also("salt", "salz");
        also("other solids", "andere feststoffe");
        also("fat", "fett");
        also("protein", "eiweiß");
        also("oil", "öl");
        also("aroma", "oils", "öle");
        kinds("spirit", "spirituose", "wine", "wein", "liqueur", "likör", "essential oil", "ätherisches öl");
        kinds("essence", "essenz", "tincture", "tinktur", "macerate", "mazerat", "distillate", "destillat");
        kinds("hydrosol", "hydrolat", "sugar", "zucker", "syrup", "sirup", "honey", "honig", "juice", "saft");
        kinds("fresh plant", "frische pflanze", "dried plant", "getrocknete pflanze", "acid", "säure", "salt", "salz");
        kinds("glycerol", "glycerin", "dairy", "milch und rahm", "egg", "ei", "water", "wasser", "other", "anderes");
        kinds("empty bottles", "leere flaschen", "labels and stoppers", "etiketten und verschlüsse");
    }

    private Headings() {}

    private static void also(String key, String... others) {
        for (String other : others) {
            KEYS.put(other, key);
        }
    }

    private static void kinds(String... pairs) {
        for (int i = 0; i < pairs.length; i += 2) {
            KINDS.put(pairs[i + 1], pairs[i]);
        }
    }

    /** Returns the key of a column, or null when it is called like none. */
    static @Nullable String key(String heading) {
        return KEYS.get(plain(heading));
    }

    /** Returns the kind as a recipe file names it; a word that is none comes back as it is. */
    static String kind(String written) {
        return KINDS.getOrDefault(plain(written), written);
    }

    /** Returns all names of a column, its key first, for the documentation. */
    static List<String> names(String key) {
        return KEYS.entrySet().stream()
                .filter(entry -> entry.getValue().equals(key))
                .map(Map.Entry::getKey)
                .sorted((a, b) -> a.equals(key) ? -1 : b.equals(key) ? 1 : a.compareTo(b))
                .toList();
    }

    static String plain(String text) {
        return BLANKS.matcher(text.strip().toLowerCase(Locale.ROOT)).replaceAll(" ");
    }
}
