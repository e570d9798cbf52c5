package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.stillroom.core.extraction.Plant;
import org.stillroom.core.extraction.Plants;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.plan.PlannedLine;

/**
 * What an ingredient brings that turns or works in a drink, by its kind or by its words, whichever says it first.
 *
 * <p>Words for what ferments and for milks of plants: general knowledge of kitchens, from memory. They ask for the cold and never
 * clear: what no word tells is not known.
 */
final class Brought {
    /** Whether yeast comes in with an ingredient. */
    enum YeastIn {
        YES,
        NOT_KNOWN,
        /** It was distilled, or is sugar, acid, salt or water by itself. */
        NO
    }

    private static final Set<String> MILK_AND_EGG = Set.of("milk", "egg");

    /** Milks of nuts, cereals and beans, and what the table of allergens calls by other things than milk and egg. */
    private static final List<TextWords.Phrase> PLANT_MILKS =
            TextCaution.phrases("almond milk;almond drink;almond cream;"
                    + "oat milk;oat drink;oat cream;oatmilk;coconut milk;coconut cream;coconut drink;cream of coconut;hazelnut milk;"
                    + "hazelnut drink;walnut milk;nut milk;nut drink;cashew milk;cashew cream;pistachio milk;pistachio cream;"
                    + "macadamia milk;peanut milk;soy milk;soymilk;soya milk;soy drink;soya drink;soy cream;soya cream;rice milk;"
                    + "rice drink;rice cream;hemp milk;pea milk;pea drink;sesame milk;spelt milk;spelt drink;tiger nut milk;plant milk;"
                    + "creamer;horchata;orgeat;advocaat;mandelmilch;mandeldrink;mandelsahne;hafermilch;haferdrink;hafersahne;"
                    + "hafercreme;kokosmilch;kokosnussmilch;kokosdrink;kokossahne;kokoscreme;haselnussmilch;haselnussdrink;walnussmilch;"
                    + "nussmilch;nussdrink;cashewmilch;cashewdrink;pistazienmilch;macadamiamilch;erdnussmilch;sojamilch;sojadrink;"
                    + "sojasahne;reismilch;reisdrink;hanfmilch;hanfdrink;erbsenmilch;erbsendrink;dinkelmilch;dinkeldrink;"
                    + "erdmandelmilch;pflanzenmilch;pflanzendrink;kaffeeweißer");

    /** What ferments or has fermented, and fruit of no said kind or that the table of plants lacks. */
    private static final List<TextWords.Phrase> FERMENTS = TextCaution.phrases(
            "cider;cidre;perry;apfelwein;kombucha;kefir;"
                    + "tepache;tibicos;kvass;kwass;mead;met;beer;*bier;ale;stout;lager;wine;*wein;vermouth;wermut;sherry;port;sekt;"
                    + "prosecco;cava;cremant;champagne;champagner;sake;yeast;*hefe;sourdough;sauerteig;must;*most;juice;*saft;puree;"
                    + "*püree;pulp;*fruchtmark;*beermark;smoothie;compote;*kompott;*apfelmus;*pflaumenmus;jam;*konfitüre;*marmelade;"
                    + "honey;*honig;fruit;frucht;*früchte;obst;*obst;dried fruit;melon;melons;*melone;*melonen;grape;*traube;*trauben;"
                    + "raisin;rosine;rosinen;sultana;sultanas;sultanine*;currant;*johannisbeere*;korinthe*;prune;date;dates;dattel;"
                    + "datteln;boysenberry;boysenberries;loganberry;cloudberry;cloudberries;sea buckthorn;sanddorn*;rowan berries;"
                    + "rose hip;hagebutte*;cornelian cherry;medlar;mirabelle;mirabellen;coconut water;kokoswasser;tamarind;tamarinde*");

    /** Parts that are the flesh of a fruit themselves. */
    private static final Set<String> FLESH = Set.of("berry", "fruit", "flesh", "pulp", "hip", "pod");

    private Brought() {}

    /** Returns whether it is milk, egg or milk of a plant, or is made with such. */
    static boolean isMilkOrEgg(PlannedLine line, Knowledge knowledge) {
        Kind kind = line.ingredient().kind();
        return kind == Kind.DAIRY
                || kind == Kind.EGG
                || TextWords.says(line.words(), PLANT_MILKS)
                || AllergenWords.in(line.words(), knowledge.allergens()).stream()
                        .anyMatch(row ->
                                row.says() == AllergenName.Says.CONTAINS && MILK_AND_EGG.contains(row.allergen()));
    }

    /** Returns whether it brings yeast. What stands above the strength at which yeast stops has none that is known to live. */
    static YeastIn yeast(PlannedLine line) {
        Kind kind = line.ingredient().kind();
        YeastIn named = byName(line.words());
        return switch (kind) {
            case DISTILLATE, ESSENTIAL_OIL -> YeastIn.NO;
            case SPIRIT -> named == YeastIn.YES && Handling.strength(line) < Yeast.STOPS ? YeastIn.YES : YeastIn.NO;
            case SUGAR, ACID, SALT, GLYCEROL -> named == YeastIn.NO ? YeastIn.NO : YeastIn.NOT_KNOWN;
            case WATER -> named;
            case SYRUP -> Sourness.isPlainSyrup(line) ? YeastIn.NO : inMade(line, named);
            case LIQUEUR, ESSENCE, TINCTURE, MACERATE, HYDROSOL, DRIED_PLANT, DAIRY, EGG, OTHER -> inMade(line, named);
            case JUICE, FRESH_PLANT, WINE, HONEY -> YeastIn.YES;
        };
    }

    private static YeastIn inMade(PlannedLine line, YeastIn named) {
        return named == YeastIn.YES && Handling.strength(line) < Yeast.STOPS ? YeastIn.YES : YeastIn.NOT_KNOWN;
    }

    /** Of peel, seeds or leaves of a fruit it is not known. */
    private static YeastIn byName(String words) {
        YeastIn found = YeastIn.NO;
        for (String reading : Words.readings(words)) {
            Words.Named<Plant> named = Words.read(reading, Plants.list(), Brought::names);
            boolean fruit = named.things().stream().anyMatch(Brought::isFruit)
                    || TextWords.of(named.rest()).says(FERMENTS);
            boolean part =
                    NameWords.of(reading).stream().anyMatch(word -> NameWords.isPart(word) && !FLESH.contains(word));
            if (fruit && !part) {
                return YeastIn.YES;
            }
            found = fruit ? YeastIn.NOT_KNOWN : found;
        }
        return found;
    }

    private static boolean isFruit(Plant plant) {
        return plant.sort().key().endsWith("_fruit");
    }

    private static List<String> names(Plant plant) {
        List<String> names = new ArrayList<>(List.of(Words.plain(plant.name())));
        plant.aliases().forEach(alias -> names.add(Words.plain(alias)));
        return names;
    }
}
