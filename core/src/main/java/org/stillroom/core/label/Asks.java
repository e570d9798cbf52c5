package org.stillroom.core.label;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.label.Asked.Is;
import org.stillroom.core.label.GoneIn.Tells;
import org.stillroom.core.reference.Table;

/** Questions of names that lines of a recipe answer, each in one of three ways: ruled out, met, not known. What is not recognised neither meets nor rules out. */
enum Asks {
    /** Something of it is in the drink. */
    HOLDS("holds") {
        @Override
        Shown judge(Asked asked, List<GoneIn> all) {
            List<GoneIn> meant = all.stream()
                    .filter(one -> is(asked, one, Tells.PLANTS) == Is.MEANT)
                    .toList();
            if (meant.stream().anyMatch(one -> one.tells().contains(Tells.PLANTS))) {
                return asked.met();
            }
            boolean open = all.stream().anyMatch(one -> is(asked, one, Tells.PLANTS) == Is.OPEN);
            return meant.isEmpty() && !open ? asked.lacking(true) : asked.notKnown();
        }
    },
    /** Something in the drink flavours it. */
    FLAVOURED("flavoured") {
        @Override
        Shown judge(Asked asked, List<GoneIn> all) {
            List<GoneIn> counted = all.stream()
                    .filter(one -> !asked.leftOut().contains(one.kind()))
                    .filter(one -> !one.tells().contains(Tells.NO_FLAVOUR))
                    .toList();
            if (counted.isEmpty()) {
                return asked.lacking(false);
            }
            return counted.stream()
                            .anyMatch(
                                    one -> !one.plantsBeside().apply(List.of()).isEmpty())
                    ? asked.met()
                    : asked.notKnown();
        }
    },
    /** Nothing else flavours it. */
    FLAVOURED_ALONE_BY("flavoured alone by") {
        @Override
        Shown judge(Asked asked, List<GoneIn> all) {
            List<GoneIn> others =
                    all.stream().filter(one -> isOther(asked, one)).toList();
            if (!others.isEmpty()) {
                return asked.ruledOut(
                        "It is flavoured with " + asked.what() + " alone, and " + Asked.told(others)
                                + " is in it: leave that out.",
                        others,
                        false);
            }
            return all.stream().allMatch(one -> isShown(asked, one)) ? asked.met() : asked.notKnown();
        }

        private boolean isOther(Asked asked, GoneIn one) {
            boolean named = one.named().test(asked.allWords());
            if (!named && one.named().test(asked.but())) {
                return true;
            }
            return !asked.leftOut().contains(one.kind())
                    && !one.plantsBeside().apply(asked.allWords()).isEmpty();
        }

        private boolean isShown(Asked asked, GoneIn one) {
            boolean named = one.named().test(asked.allWords());
            return one.tells().contains(Tells.NO_FLAVOUR)
                    || (named && one.tells().contains(Tells.PLANTS));
        }
    },
    /** So much of its alcohol comes of it. */
    ALCOHOL_OF("alcohol of") {
        @Override
        Shown judge(Asked asked, List<GoneIn> all) {
            return share(asked, all, GoneIn::alcohol, "alcohol");
        }
    },
    /** So much of its volume is of it. */
    VOLUME_OF("volume of") {
        @Override
        Shown judge(Asked asked, List<GoneIn> all) {
            return share(asked, all, GoneIn::volume, "volume");
        }
    },
    /** Nothing of it is in the drink; what is not named can be in it all the same, so that this is never shown. */
    WITHOUT("without") {
        @Override
        Shown judge(Asked asked, List<GoneIn> all) {
            List<GoneIn> meant = all.stream()
                    .filter(one -> is(asked, one, Tells.PLANTS) == Is.MEANT)
                    .toList();
            return meant.isEmpty()
                    ? asked.notKnown()
                    : asked.ruledOut(
                            "It goes without " + asked.what() + ", and " + Asked.told(meant)
                                    + " is in it: leave that out.",
                            meant,
                            false);
        }
    };

    /** What binary fractions add is not counted, parts of one. */
    private static final double ROUNDING = 1e-6;

    private final String label;

    Asks(String label) {
        this.label = label;
    }

    static Asks of(Table.Row row) {
        for (Asks asks : values()) {
            if (asks.label.equals(row.text("asks"))) {
                return asks;
            }
        }
        throw row.fault("asks", "is no question of names");
    }

    abstract Shown judge(Asked asked, List<GoneIn> all);

    private static Is is(Asked asked, GoneIn one, Tells wanted) {
        return asked.of(one, asked.allWords(), wanted);
    }

    private static Shown share(Asked asked, List<GoneIn> all, Function<GoneIn, Contained.Part> part, String ofWhat) {
        @Nullable Double most = asked.most();
        if (most != null) {
            return atMost(asked, all, part, ofWhat, most);
        }
        @Nullable Double least = asked.least();
        if (least == null) {
            throw new IllegalStateException(asked.what() + " has neither a least nor a most");
        }
        return atLeast(asked, all, part, ofWhat, least);
    }

    private static Shown atMost(
            Asked asked, List<GoneIn> all, Function<GoneIn, Contained.Part> part, String ofWhat, double most) {
        List<GoneIn> meant = all.stream()
                .filter(one -> is(asked, one, Tells.ALCOHOL) == Is.MEANT)
                .toList();
        double sure = sum(meant, one -> part.apply(one).least());
        if (sure > most + ROUNDING) {
            return asked.ruledOut(
                    "At most " + Asked.percent(most) + " % of its " + ofWhat + " may be of " + asked.what() + ", and "
                            + Asked.percent(Math.ceil(1000.0 * sure - ROUNDING) / 1000.0) + " % is ("
                            + Asked.told(meant)
                            + "): take less of that, or more of the rest.",
                    meant,
                    false);
        }
        double possible = sum(
                all,
                one -> is(asked, one, Tells.ALCOHOL) == Is.OTHER
                        ? 0.0
                        : part.apply(one).most());
        return possible <= most + ROUNDING ? asked.met() : asked.notKnown();
    }

    /** One group of its words has to do it alone: rum and brandy together make neither a liqueur of rum nor one of brandy. */
    private static Shown atLeast(
            Asked asked, List<GoneIn> all, Function<GoneIn, Contained.Part> part, String ofWhat, double least) {
        double possible = 0.0;
        double sure = 0.0;
        for (List<String> group : asked.words()) {
            possible = Math.max(
                    possible,
                    sum(
                            all,
                            one -> asked.of(one, group, Tells.ALCOHOL) == Is.OTHER
                                    ? 0.0
                                    : part.apply(one).most()));
            sure = Math.max(
                    sure,
                    sum(
                            all,
                            one -> asked.of(one, group, Tells.ALCOHOL) == Is.MEANT
                                            && one.tells().contains(Tells.ALCOHOL)
                                    ? part.apply(one).least()
                                    : 0.0));
        }
        if (least > 0.0 ? possible < least - ROUNDING : possible <= ROUNDING) {
            List<GoneIn> some = all.stream()
                    .filter(one -> part.apply(one).least() > ROUNDING)
                    .toList();
            List<GoneIn> others = some.stream()
                    .filter(one -> is(asked, one, Tells.ALCOHOL) == Is.OTHER)
                    .toList();
            List<GoneIn> by = others.isEmpty() ? some : others;
            return asked.ruledOut(tooLittle(asked, ofWhat, least, possible, by), by, possible <= ROUNDING);
        }
        return sure > ROUNDING && sure >= least - ROUNDING ? asked.met() : asked.notKnown();
    }

    private static String tooLittle(Asked asked, String ofWhat, double least, double possible, List<GoneIn> by) {
        String wanted = least == 0.0
                ? "Some of its " + ofWhat
                : least == 1.0 ? "All of its " + ofWhat : "At least " + Asked.percent(least) + " % of its " + ofWhat;
        return wanted + " has to be of " + asked.what() + ", and no more than "
                + Asked.percent(Math.floor(1000.0 * possible + ROUNDING) / 1000.0) + " % is, beside " + Asked.told(by)
                + ": take more of the one, less of the rest.";
    }

    private static double sum(List<GoneIn> things, ToDoubleFunction<GoneIn> part) {
        return Math.min(1.0, things.stream().mapToDouble(part).sum());
    }
}
