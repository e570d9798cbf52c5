package org.stillroom.studio.wording;

import java.util.LinkedHashMap;
import java.util.Map;

/** Recipes each with something wrong, by what is wrong with them. */
final class BadRecipes {
    private BadRecipes() {}

    static Map<String, String> all() {
        Map<String, String> all = new LinkedHashMap<>();
        all.put(
                "too weak a spirit",
                recipe(
                        "{volume: 1 L, strength: 45 %, sugar: 200 g/L}",
                        "{name: weak spirit, kind: spirit, strength: 40 %}",
                        "{use: weak spirit, amount: free}, {use: white sugar, amount: free}, {use: water, amount: free}"));
        all.put(
                "too little of it",
                recipe(
                        "{volume: 2 L, strength: 30 %, sugar: 250 g/L, acidity: 4 g/L}",
                        "{name: plum brandy, kind: spirit, strength: 42.5 %, at hand: 300 ml}",
                        "{use: plum brandy, amount: all}, {use: white sugar, amount: free}, {use: water, amount: free}"));
        all.put(
                "cloudy, of an unknown oil, too strongly dosed",
                recipe(
                        "{volume: 1 L, strength: 25 %, sugar: 180 g/L}",
                        "{name: lemon oil, kind: essential oil}, {name: moon oil, kind: essential oil}",
                        "{use: lemon oil, amount: 3 ml}, {use: moon oil, amount: 12 drops}, {use: spirit 96 %, amount: free},"
                                + " {use: white sugar, amount: free}, {use: water, amount: free}"));
        all.put(
                "poisonous",
                recipe(
                        "{volume: 1 L, strength: 35 %, sugar: 100 g/L}",
                        "{name: yew tips, kind: fresh plant, contains: {water: 60 %}}, {name: wormwood oil, kind: essential oil},"
                                + " {name: tonka bean, kind: dried plant}, {name: elderberries, kind: fresh plant,"
                                + " contains: {water: 80 %}}",
                        "{use: yew tips, amount: 20 g}, {use: wormwood oil, amount: 0.2 g}, {use: tonka bean, amount: 5 g},"
                                + " {use: elderberries, amount: 200 g}, {use: spirit 96 %, amount: free},"
                                + " {use: white sugar, amount: free}, {use: water, amount: free}"));
        all.put(
                "ferments and does not keep",
                recipe(
                        "{volume: 1 L, strength: 9 %, sugar: 90 g/L}",
                        "{name: red wine, kind: wine, strength: 12 %, sugar: 4 g/L}, {name: heather honey, kind: honey},"
                                + " {name: cream, kind: dairy}",
                        "{use: red wine, amount: 300 ml}, {use: heather honey, amount: 60 g}, {use: cream, amount: 100 g},"
                                + " {use: spirit 96 %, amount: free}, {use: white sugar, amount: free}, {use: water, amount: free}"));
        all.put(
                "said too little of everything",
                recipe(
                        "{strength: 28 %}",
                        "{name: bay tincture, kind: tincture}, {name: pear syrup, kind: syrup}, {name: fresh mint, kind: fresh plant},"
                                + " {name: something, kind: other}, {name: sour, kind: acid}",
                        "{use: bay tincture, amount: 30 ml}, {use: pear syrup, amount: 1 cup}, {use: fresh mint, amount: 5 g},"
                                + " {use: something, amount: 10 g}, {use: sour, amount: 2 g}, {use: water, amount: free}"));
        all.put(
                "crystallises in a vessel too small",
                recipe(
                        "{volume: 1 L, strength: 40 %, sugar: 480 g/L}",
                        "",
                        "{use: spirit 96 %, amount: free}, {use: white sugar, amount: free}, {use: water, amount: make up}",
                        "vessel: 800 ml\nroom: 27 °C\nmeasures: [{name: jug, kind: cylinder, holds: 500 ml}]\n"));
        all.put(
                "does not fit its measures",
                recipe(
                        "{volume: 250 ml, strength: 30 %, sugar: 100 g/L}",
                        "{name: caraway essence, kind: essence, strength: 80 %, contains: {oil: 50 g/L}}",
                        "{use: caraway essence, amount: 0.04 ml}, {use: spirit 96 %, amount: 1 1/3 cups},"
                                + " {use: white sugar, amount: free}, {use: water, amount: free}",
                        "measures: [{name: jigger, kind: jigger}, {name: cup, kind: cup}, {name: scale, kind: scale}]\n"));
        all.put(
                "nothing open, beside its target",
                recipe(
                        "{volume: 1 L, strength: 28 %, sugar: 180 g/L}",
                        "",
                        "{use: spirit 96 %, amount: 280 ml}, {use: white sugar, amount: 200 g}, {use: water, amount: 600 ml}"));
        all.put(
                "not a drink but an essence",
                recipe(
                        "{volume: 100 ml, strength: 80 %}",
                        "{name: bitter orange oil, kind: essential oil, drop: 20 mg}, {name: bitter almond oil, kind: essential oil}",
                        "{use: bitter orange oil, amount: 4 g}, {use: bitter almond oil, amount: 1 g},"
                                + " {use: spirit 96 %, amount: free}, {use: water, amount: free}"));
        all.put(
                "typed wrongly",
                recipe(
                        "{volume: 1 l and more, strength: 280 %, sugar: 180, acidity: sour}",
                        "{name: spirits, kind: ghost, strength: 40 %}, {name: old brandy, kind: spirit, strength: 42 % at 80 C}",
                        "{use: spirits, amount: 1,500 g}, {use: nobody, amount: 3 dashes}, {use: water, amount: 12 %},"
                                + " {use: white sugar}"));
        all.put(
                "drops of a dropper of one's own",
                recipe(
                        "{volume: 1 L, strength: 40 %}",
                        "{name: lemon oil, kind: essential oil}",
                        "{use: lemon oil, dose: 6 drops/L}, {use: spirit 96 %, amount: free}, {use: water, amount: free}",
                        "measures: [{name: pipette, kind: dropper, drop: 46 mg}]\n"));
        all.put(
                "droppers that cannot be",
                recipe(
                        "{volume: 1 L}",
                        "",
                        "{use: water, amount: make up}",
                        "measures: [{name: a, kind: scale, drop: 46 mg}, {name: b, kind: dropper, drop: 46 g},"
                                + " {name: c, kind: dropper, drop: 46 mg, tolerance: 46 mg}]\n"));
        all.put("nothing in it", "stillroom: 1\ntitle: Nothing\ntarget: {volume: 1 L}\nlines: []\n");
        all.put(
                "steps that hurt",
                recipe(
                        "{volume: 1 L, strength: 55 %, sugar: 20 g/L}",
                        "{name: gentian root, kind: dried plant}, {name: grapefruit peel, kind: fresh plant, contains: {water: 70 %}},"
                                + " {name: milk, kind: dairy}, {name: quassia, kind: dried plant}",
                        "{use: gentian root, amount: 5 g}, {use: grapefruit peel, amount: 40 g}, {use: milk, amount: 50 g},"
                                + " {use: quassia, amount: 1 g}, {use: spirit 96 %, amount: free},"
                                + " {use: white sugar, amount: free}, {use: water, amount: free}",
                        "steps: [Warm it on the stove in a closed jar., Add dry ice., Distil it twice.]\n"));
        return all;
    }

    private static String recipe(String target, String ingredients, String lines) {
        return recipe(target, ingredients, lines, "");
    }

    private static String recipe(String target, String ingredients, String lines, String more) {
        return "stillroom: 1\ntitle: Bad\ntarget: " + target + "\n"
                + (ingredients.isEmpty() ? "" : "ingredients: [" + ingredients + "]\n") + "lines: [" + lines + "]\n"
                + more;
    }
}
