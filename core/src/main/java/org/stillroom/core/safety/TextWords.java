package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.stillroom.core.aroma.CommonNames;

/**
 * What makers write in sentences, as words: small letters, umlauts and accents spelt out, and where a clause ends.
 *
 * <p>A word keeps a minus before its number, so that −18 °C is not 18 °C.
 */
final class TextWords {
    /** How far before a thing "no" or "ohne" still denies it, in words of the same clause. */
    private static final int THING_DENIED_WITHIN = 3;

    private static final Set<String> DENYING_THINGS = Set.of(
            "no", "non", "without", "avoid", "instead", "kein", "keine", "keinen", "keinem", "keiner", "ohne", "statt",
            "anstatt");

    /** How far before it "never" or "nicht" denies that something is done. */
    private static final int DEED_DENIED_WITHIN = 5;

    /** How far behind "tastes like" a thing is still what something tastes like. */
    private static final int SPOKEN_OF_WITHIN = 2;

    private static final Set<String> DENYING_DEEDS =
            Set.of("not", "never", "don't", "cannot", "nicht", "nie", "niemals");

    /** What follows "not" where only how long or how hot is denied, or that it is left out. */
    private static final Set<String> QUALIFYING = Set.of(
            "too",
            "only",
            "just",
            "more",
            "longer",
            "above",
            "over",
            "hotter",
            "forget",
            "omit",
            "skip",
            "miss",
            "zu",
            "nur",
            "mehr",
            "laenger",
            "ueber",
            "heisser",
            "vergessen",
            "weglassen");

    private final List<Word> words = new ArrayList<>();
    private int clause;

    private record Word(String text, int clause) {}

    /** Where something stands: the words from {@code first} up to but not including {@code end}. */
    record Place(int first, int end) {
        boolean isWithin(Place other, int words) {
            return first - other.end() <= words && other.first() - end <= words;
        }

        boolean overlaps(Place other) {
            return first < other.end() && other.first() < end;
        }
    }

    private TextWords() {}

    static TextWords of(String text) {
        TextWords read = new TextWords();
        StringBuilder word = new StringBuilder();
        String plain = text.toLowerCase(Locale.ROOT);
        for (int i = 0; i < plain.length(); i++) {
            read.take(plain, i, word);
        }
        read.end(word);
        return read;
    }

    private void take(String text, int at, StringBuilder word) {
        char c = text.charAt(at);
        boolean digitNext = at + 1 < text.length() && Character.isDigit(text.charAt(at + 1));
        boolean minus = (c == '-' || c == '−' || c == '–') && digitNext && word.length() == 0;
        boolean inNumber = (c == '.' || c == ',') && digitNext && endsInDigit(word);
        boolean apostrophe = (c == '\'' || c == '’') && word.length() > 0;
        if (Character.isLetterOrDigit(c) || apostrophe) {
            word.append(spelt(c));
        } else if (minus) {
            word.append('-');
        } else if (inNumber) {
            word.append('.');
        } else {
            end(word);
            if (".,;:!?()\n".indexOf(c) >= 0) {
                clause++;
            }
        }
    }

    private static boolean endsInDigit(StringBuilder word) {
        return word.length() > 0 && Character.isDigit(word.charAt(word.length() - 1));
    }

    private static String spelt(char c) {
        return switch (c) {
            case 'ä' -> "ae";
            case 'ö' -> "oe";
            case 'ü' -> "ue";
            case 'ß' -> "ss";
            case 'é', 'è', 'ê' -> "e";
            case 'à', 'â' -> "a";
            case 'ô' -> "o";
            case 'î' -> "i";
            case '’' -> "'";
            default -> String.valueOf(c);
        };
    }

    private void end(StringBuilder word) {
        if (word.length() > 0) {
            words.add(new Word(word.toString(), clause));
            word.setLength(0);
        }
    }

    /** Returns names in the plain form of {@link Words} as phrases to look for. */
    static List<Phrase> phrases(List<String> names) {
        return names.stream().map(Phrase::of).toList();
    }

    /** Returns whether a text says one of the phrases as it was written, in English, or by a botanical name. */
    static boolean says(String text, List<Phrase> phrases) {
        return of(text).says(phrases)
                || CommonNames.readings(text).stream()
                        .anyMatch(reading -> of(reading).says(phrases));
    }

    /** Returns whether one of the phrases stands in it and is not denied. */
    boolean says(List<Phrase> phrases) {
        return phrases.stream().anyMatch(phrase -> !places(phrase).isEmpty());
    }

    /** Returns where a phrase stands and is not denied. */
    List<Place> places(Phrase phrase) {
        return everyPlace(phrase).stream()
                .filter(place -> !isDenied(place.first()))
                .toList();
    }

    int length() {
        return words.size();
    }

    boolean areInOneClause(Place one, Place other) {
        return words.get(one.first()).clause() == words.get(other.first()).clause();
    }

    /** Returns its words one after the other without those of the phrases that stand in it and are not denied. */
    String without(List<Phrase> phrases) {
        List<Place> out =
                phrases.stream().flatMap(phrase -> places(phrase).stream()).toList();
        return IntStream.range(0, words.size())
                .filter(at -> out.stream().noneMatch(place -> place.overlaps(new Place(at, at + 1))))
                .mapToObj(at -> words.get(at).text())
                .collect(Collectors.joining(" "));
    }

    private List<Place> everyPlace(Phrase phrase) {
        List<Place> places = new ArrayList<>();
        int length = phrase.words().size();
        for (int i = 0; i + length <= words.size(); i++) {
            if (stands(phrase, i)) {
                places.add(new Place(i, i + length));
            }
        }
        return places;
    }

    /**
     * Returns whether a text names a thing and everywhere denies it or only speaks of it, as in "no tonka" and "tastes like tonka"; in
     * any language in which it is read.
     */
    static boolean isOnlySpokenOf(String text, List<Phrase> names) {
        Set<String> readings = new LinkedHashSet<>(List.of(text));
        readings.addAll(CommonNames.readings(text));
        boolean named = false;
        for (String reading : readings) {
            TextWords words = of(reading);
            List<Place> places = names.stream()
                    .flatMap(name -> words.everyPlace(name).stream())
                    .toList();
            if (places.stream().anyMatch(place -> !words.isDenied(place.first()) && !words.isSpokenOf(place))) {
                return false;
            }
            named |= !places.isEmpty();
        }
        return named;
    }

    private boolean isSpokenOf(Place thing) {
        return WordList.SPOKEN_OF.phrases().stream()
                .flatMap(phrase -> everyPlace(phrase).stream())
                .anyMatch(place -> place.end() <= thing.first()
                        && thing.first() - place.end() <= SPOKEN_OF_WITHIN
                        && areInOneClause(place, thing));
    }

    private boolean stands(Phrase phrase, int at) {
        for (int i = 0; i < phrase.words().size(); i++) {
            Word word = words.get(at + i);
            if (word.clause() != words.get(at).clause()
                    || !phrase.words().get(i).fits(word.text())) {
                return false;
            }
        }
        return true;
    }

    /** Returns whether a word by itself denies what stands behind it, or is the "free" that denies what stands before. */
    static boolean isDenial(String word) {
        return of(word).words.stream()
                .map(Word::text)
                .anyMatch(text -> DENYING_THINGS.contains(text)
                        || DENYING_DEEDS.contains(text)
                        || text.equals("free")
                        || text.equals("frei"));
    }

    private boolean isDenied(int at) {
        for (int i = Math.max(0, at - DEED_DENIED_WITHIN); i < at; i++) {
            Word word = words.get(i);
            boolean thing = at - i <= THING_DENIED_WITHIN && DENYING_THINGS.contains(word.text());
            boolean deed = DENYING_DEEDS.contains(word.text())
                    && !QUALIFYING.contains(words.get(i + 1).text());
            if (word.clause() == words.get(at).clause() && (thing || deed)) {
                return true;
            }
        }
        return false;
    }

    /** One word after the other, each whole, in one or as more than one, or as a part: "heat*", "*topf", "*kristall*"; "*" is any word. */
    record Phrase(List<Stem> words) {
        Phrase {
            words = List.copyOf(words);
        }

        static Phrase of(String written) {
            List<Stem> stems = new ArrayList<>();
            for (String word : written.strip().split(" ", -1)) {
                stems.add(Stem.of(word));
            }
            return new Phrase(stems);
        }
    }

    /** A word, or a part of one. */
    record Stem(String text, boolean openBefore, boolean openBehind) {
        private static final Stem ANY = new Stem("", true, true);

        static Stem of(String written) {
            if (written.equals("*")) {
                return ANY;
            }
            boolean before = written.startsWith("*");
            boolean behind = written.endsWith("*");
            String bare = written.substring(before ? 1 : 0, written.length() - (behind ? 1 : 0));
            StringBuilder spelt = new StringBuilder();
            bare.toLowerCase(Locale.ROOT).chars().forEach(c -> spelt.append(spelt((char) c)));
            if (spelt.length() == 0) {
                throw new IllegalArgumentException("\"" + written + "\" holds no word");
            }
            return new Stem(spelt.toString(), before, behind);
        }

        boolean fits(String word) {
            if (openBefore) {
                return openBehind ? word.contains(text) : word.endsWith(text);
            }
            return openBehind ? word.startsWith(text) : word.equals(text) || word.equals(text + "s");
        }
    }
}
