package org.stillroom.core.ingredient;

/** The kinds of ingredient; what each needs to be known by is said in docs/recipe-file.md. */
public enum Kind {
    SPIRIT("spirit"),
    WINE("wine"),
    LIQUEUR("liqueur"),
    ESSENTIAL_OIL("essential oil"),
    ESSENCE("essence"),
    TINCTURE("tincture"),
    MACERATE("macerate"),
    DISTILLATE("distillate"),
    HYDROSOL("hydrosol"),
    SUGAR("sugar"),
    SYRUP("syrup"),
    HONEY("honey"),
    JUICE("juice"),
    FRESH_PLANT("fresh plant"),
    DRIED_PLANT("dried plant"),
    ACID("acid"),
    SALT("salt"),
    GLYCEROL("glycerol"),
    DAIRY("dairy"),
    EGG("egg"),
    WATER("water"),
    OTHER("other");

    private final String label;

    Kind(String label) {
        this.label = label;
    }

    /** Returns whether plants can have stood in it, so that a ratio of plant is told of it. */
    public boolean isOfPlants() {
        return switch (this) {
            case LIQUEUR, ESSENCE, TINCTURE, MACERATE, DISTILLATE, HYDROSOL, WINE, SYRUP, JUICE, HONEY, DAIRY -> true;
            case OTHER -> true;
            case SPIRIT, ESSENTIAL_OIL, SUGAR, FRESH_PLANT, DRIED_PLANT, ACID, SALT, GLYCEROL, EGG, WATER -> false;
        };
    }

    /** Returns the name as people write it in a recipe file. */
    public String label() {
        return label;
    }
}
