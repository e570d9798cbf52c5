package org.stillroom.core.reference;

/**
 * Every document, table and estimate that a figure can rest on; docs/sources.md lists the same ones in full.
 *
 * <p>The standing says how it came to us, not how good it is.
 */
public enum Source {
    OIML_R22("OIML R 22, International alcoholometric tables, 1975", Standing.READ),
    ICUMSA_SPS4(
            "Bubník, Kadlec, Urban, Bruhns: Sugar Technologists Manual, density of sucrose solutions (ICUMSA SPS-4)",
            Standing.SECONDARY),
    CRC_SOLUTIONS(
            "CRC Handbook of Chemistry and Physics, 102nd ed., Concentrative properties of aqueous solutions",
            Standing.SECONDARY),
    SUCROSE_SOLUBILITY(
            "CRC Handbook of Chemistry and Physics (an older edition), Solubility of sucrose in water",
            Standing.SECONDARY),
    MALIC_MAKER("Density of malic acid solutions at 20 °C, an acid maker's data sheet", Standing.SECONDARY),
    ICUMSA_REFRACTION("ICUMSA refractive index table of sucrose solutions, polynomial fit", Standing.SECONDARY),
    NBS_BRIX("NBS Circular 440, degrees Brix from specific gravity 20/20, polynomial fit", Standing.SECONDARY),
    CFR_27_30("27 CFR part 30, Gauging Manual", Standing.READ),
    USP_ALCOHOLOMETRIC("USP 29, Alcoholometric Table", Standing.READ),
    MELINDER("Melinder: Properties of Secondary Working Fluids, ethyl alcohol and water", Standing.SECONDARY),
    LARKIN_1975(
            "Larkin: Thermodynamic properties of aqueous non-electrolyte mixtures, J. Chem. Thermodynamics 7, 1975",
            Standing.FROM_MEMORY),
    PERRY("Perry's Chemical Engineers' Handbook, 8th ed., tables 2-153 and 13-4", Standing.SECONDARY),
    EU_1169_2011("Regulation (EU) No 1169/2011, Annex XIV, energy conversion factors", Standing.READ),
    ATOMIC_WEIGHTS("IUPAC standard atomic weights", Standing.READ),
    SOLUBILITY_IN_ALCOHOL(
            "Sucrose in aqueous alcohol at 14 °C, after Scheibler and Schrefeld as tabulated by Seidell",
            Standing.FROM_MEMORY),
    GLASS_EXPANSION("Cubic expansion of soda-lime glass, 25e-6 per °C", Standing.FROM_MEMORY),
    BOROSILICATE_EXPANSION("Cubic expansion of borosilicate glass 3.3, 9.9e-6 per °C", Standing.FROM_MEMORY),
    SURFACE_TENSION(
            "Vazquez, Alvarez, Navaza: Surface tension of alcohol and water, J. Chem. Eng. Data 40, 1995, with USP dropper",
            Standing.FROM_MEMORY),
    AQSOLDB(
            "Sorkun, Khetan, Er: AqSolDB, a curated reference set of aqueous solubility, Scientific Data 6, 2019",
            Standing.SECONDARY),
    SRC_LOGP("Syracuse Research Corporation: experimental octanol-water partition coefficients", Standing.SECONDARY),
    CRC_ORGANIC("CRC Handbook of Chemistry and Physics, Physical constants of organic compounds", Standing.SECONDARY),
    ASTM_E1272("ASTM E1272-02, Laboratory Glass Graduated Cylinders, table 1", Standing.READ),
    USUAL_TOLERANCES("Usual errors of scales, syringes, jiggers, spoons and cups", Standing.FROM_MEMORY),
    VOLUME_MODEL("Stillroom's volume model, docs/how-it-works/volume.md", Standing.OWN),
    DOUBT_TABLE("Stillroom's doubt of the volume model, docs/how-it-works/doubt.md", Standing.OWN),
    FREEZING_SUM("Stillroom's sum of freezing point depressions, docs/how-it-works/cold-and-heat.md", Standing.OWN),
    REFRACTION_SUM(
            "Stillroom's sum of refractions (Lorentz and Lorenz), docs/how-it-works/refraction.md", Standing.OWN),
    CLARITY_MODEL("Stillroom's forecast of clouding by oils, docs/how-it-works/clarity.md", Standing.OWN),
    MILLARD_2002(
            "Millard, Alvarez-Núñez, Yalkowsky: Solubilization by cosolvents, Int. J. Pharm. 245, 2002",
            Standing.FROM_MEMORY),
    JAIN_2001(
            "Jain, Yalkowsky: Estimation of the aqueous solubility of organic nonelectrolytes, J. Pharm. Sci. 90, 2001",
            Standing.FROM_MEMORY),
    SCHOLTEN_2008(
            "Scholten, van der Linden, This: The life of an anise-flavored alcoholic beverage, Langmuir 24, 2008",
            Standing.SECONDARY),
    OIL_COMPOSITIONS("Usual compositions of essential oils", Standing.FROM_MEMORY),
    EU_1334_2008("Regulation (EC) No 1334/2008 on flavourings, Annexes III and IV", Standing.READ),
    EU_872_2012("Regulation (EU) No 872/2012, list of flavouring substances", Standing.READ),
    EU_1169_LABEL("Regulation (EU) No 1169/2011, Articles 16 and 21, Annexes II, III, X and XII", Standing.READ),
    EU_1169_RECALLED(
            "Regulation (EU) No 1169/2011, Annex II, what of soya and cereals it exempts as refined",
            Standing.FROM_MEMORY),
    EU_2019_787("Regulation (EU) 2019/787, Articles 2, 4, 5 and Annex I", Standing.READ),
    EU_2019_787_RECALLED("Regulation (EU) 2019/787, Annex I, recalled in part", Standing.FROM_MEMORY),
    EU_2007_45("Directive 2007/45/EC, Annex", Standing.READ),
    CFR_21_LISTS("21 CFR 172.510, 182.10, 182.20, 182.40, 182.50, 182.60 and 184, lines read", Standing.READ),
    CFR_21_LISTS_RECALLED("21 CFR 172.510, 182.10, 182.20, 182.60 and 184, lines recalled", Standing.FROM_MEMORY),
    CFR_21_LIMITS(
            "21 CFR 172.510, 172.575, 172.780, 184.1005 to 184.1021, 184.1408, 189.110, 189.113, 189.130 and TTB Industry Circular"
                    + " 2007-5",
            Standing.READ),
    CFR_21_189_180("21 CFR 189.180, safrole", Standing.FROM_MEMORY),
    US_ALLERGENS(
            "The nine major food allergens of the USA: FALCPA of 2004, FASTER Act of 2021, FDA guidance of January 2025",
            Standing.FROM_MEMORY),
    CFR_27_SPIRITS("27 CFR 5.1, 5.150, 5.203 and 19.356", Standing.READ),
    CFR_27_RECALLED("27 CFR 5.150(b), 5.151, 5.63 and 16.21", Standing.FROM_MEMORY),
    INTAKE_GUIDANCE(
            "Intake guidance by EFSA, JECFA, EMA, SCF, BfR and single papers, named with year in the row",
            Standing.READ),
    INTAKE_RECALLED("Intake guidance by the bodies named in the row, recalled", Standing.FROM_MEMORY),
    OIL_DENSITIES("Densities of essential oils by standards and pharmacopoeias, named in the row", Standing.SECONDARY),
    OIL_DENSITIES_RECALLED(
            "Densities of essential oils by standards, pharmacopoeias and trade, recalled", Standing.FROM_MEMORY),
    OIL_RANGES(
            "Ranges of constituents of oils and plants: EU regulations, pharmacopoeia and trade figures, basis in the row",
            Standing.SECONDARY),
    OIL_RANGES_RECALLED(
            "Ranges of constituents of oils and plants, recalled; oil contents of dried plants", Standing.FROM_MEMORY),
    NOT_FOR_DRINKING("Materials that are not for drinking, with the text that says so", Standing.SECONDARY),
    NOT_FOR_DRINKING_RECALLED(
            "Materials and plants that are not for drinking, general knowledge", Standing.FROM_MEMORY),
    HANDLING_CAUTIONS("Cautions of kitchens, workshops and poison centres, general knowledge", Standing.FROM_MEMORY),
    FLASH_POINTS("Flash points of ethanol with water, a secondary table, closed cup", Standing.SECONDARY),
    STANDARD_DRINKS("Standard drinks and low-risk guidance by country", Standing.FROM_MEMORY),
    NORRISH_1966(
            "Norrish: equation for the relative humidity over confectionery syrups, J. Food Technol. 1, 1966, with the product of Ross 1975",
            Standing.FROM_MEMORY),
    DISSOCIATION(
            "CRC Handbook of Chemistry and Physics, Dissociation constants of organic acids and bases",
            Standing.FROM_MEMORY),
    DELLE(
            "Units of Delle, after Amerine and Kunkee: Yeast stability tests on dessert wines, Vitis 5, 1965",
            Standing.FROM_MEMORY),
    GROWTH_LIMITS(
            "Bounds of growth by pH, water activity and strength, after 21 CFR 114.3 and textbooks of food microbiology",
            Standing.FROM_MEMORY),
    USDA_SR("USDA National Nutrient Database for Standard Reference, abbreviated file", Standing.SECONDARY),
    RETAINED("Liquid that a marc holds, from yields of tinctures", Standing.OWN),
    STEEPING("Rates of extraction, from the times after which handbooks stop", Standing.OWN),
    STEEPING_SAMPLES("Your own samples, fitted by least squares to an extraction of first order", Standing.OWN),
    EXTRACTION_PRACTICE("Handbook rules of strength for macerating", Standing.FROM_MEMORY),
    VAPOUR_LIQUID("Activity of ethanol and water by NRTL, from an open collection of parameters", Standing.SECONDARY),
    RAYLEIGH("Rayleigh: On the distillation of binary mixtures, Phil. Mag. 4, 1902", Standing.FROM_MEMORY),
    STILL_CAUTIONS("Usual cautions about stills", Standing.COMMON_PRACTICE),
    ODOUR_THRESHOLDS("Odour thresholds from textbooks and compilations", Standing.SECONDARY),
    ETHANOL_ON_THRESHOLDS(
            "Lu and others: effect of ethanol on the thresholds of 40 compounds of a grain spirit, abstract",
            Standing.SECONDARY),
    RULE_OF_THUMB("Rule of thumb, named where it is used in docs/how-it-works", Standing.OWN),
    TRADE("Common practice of the trade", Standing.COMMON_PRACTICE),
    BALANCE("Conservation of mass", Standing.OWN);

    private final String title;
    private final Standing standing;

    Source(String title, Standing standing) {
        this.title = title;
        this.standing = standing;
    }

    public String title() {
        return title;
    }

    public Standing standing() {
        return standing;
    }
}
