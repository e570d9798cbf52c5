package org.stillroom.studio.web.make;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.gauging.Guide;
import org.stillroom.core.gauging.Kit;
import org.stillroom.core.gauging.Method;
import org.stillroom.core.gauging.Poured;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.answer.desk.Manner;
import org.stillroom.studio.answer.desk.ReadingsQuestion;
import org.stillroom.studio.answer.desk.WrongInput;
import org.stillroom.studio.web.frame.FieldNames;
import org.stillroom.studio.web.frame.Visit;
import org.stillroom.studio.wording.Words;

/**
 * What is to be known before anything is measured: which readings would serve, how sure they would make it, and what they cost.
 *
 * @param words of the reader
 * @param batch id of the batch whose vessel it is, or empty
 * @param vessel which of its vessels, or empty
 * @param texts what was typed about the liquid, by part of the question; of a batch nothing need be
 * @param have what the maker can do
 * @param found what would serve, or null while nothing is known of the liquid
 * @param problems with what was typed
 */
public record GuideView(
        Words words,
        String batch,
        String vessel,
        Map<String, String> texts,
        List<Method> have,
        ReadingsQuestion.@Nullable Found found,
        List<Finding> problems) {
    /** The fields about the liquid: parts of the question behind this. */
    public static final List<String> ABOUT =
            List.of(ReadingsQuestion.STRENGTH, ReadingsQuestion.SUGAR, ReadingsQuestion.VOLUME);

    private static final String PREFIX = "about-";
    /** What a kitchen mostly has. */
    private static final List<Method> KITCHEN =
            List.of(Method.FLASK, Method.REFRACTOMETER, Method.HYDROMETER, Method.RESIDUE, Method.WHOLE_BATCH);

    private static final int CHOICES = 4;

    public GuideView {
        have = List.copyOf(have);
        problems = List.copyOf(problems);
    }

    /** Complaints find the fields of this form, which stand beside those of the readings. */
    private static final Manner FIELDS = new Manner() {
        @Override
        public String name(String part) {
            return PREFIX + part;
        }

        @Override
        public String write(List<Given> given) {
            return FieldNames.PLAIN.write(given);
        }
    };

    static GuideView of(Visit visit, String batch, String vessel, @Nullable Poured poured) {
        Map<String, String> texts = new LinkedHashMap<>();
        ABOUT.forEach(part -> texts.put(part, visit.field(PREFIX + part).strip()));
        List<Method> have = have(visit);
        GuideView blank = new GuideView(visit.words(), batch, vessel, texts, have, null, List.of());
        return poured == null
                        && texts.getOrDefault(ReadingsQuestion.STRENGTH, "").isEmpty()
                ? blank
                : blank.asking(poured);
    }

    private static List<Method> have(Visit visit) {
        String kit = visit.field("kit");
        for (Kit each : Kit.values()) {
            if (each.name().equals(kit)) {
                return each.methods();
            }
        }
        List<Method> ticked = Arrays.stream(Method.values())
                .filter(method -> !visit.field("can-" + method.name()).isEmpty())
                .toList();
        return ticked.isEmpty() ? KITCHEN : ticked;
    }

    private GuideView asking(@Nullable Poured poured) {
        Map<String, List<String>> typed = new LinkedHashMap<>();
        texts.forEach((part, text) -> {
            if (!text.isEmpty()) {
                typed.put(part, List.of(text));
            }
        });
        typed.put(ReadingsQuestion.HAVE, have.stream().map(Method::label).toList());
        try {
            return new GuideView(
                    words, batch, vessel, texts, have, new ReadingsQuestion(poured).found(typed, FIELDS), List.of());
        } catch (WrongInput wrong) {
            return new GuideView(words, batch, vessel, texts, have, null, wrong.findings());
        }
    }

    /** Returns the name of a field about the liquid. */
    public static String field(String part) {
        return PREFIX + part;
    }

    /** Returns what is wrong with a field. */
    public List<Finding> problems(String part) {
        return problems.stream()
                .filter(problem -> problem.where().equals(field(part)))
                .toList();
    }

    public boolean can(Method method) {
        return have.contains(method);
    }

    /** Returns whether somebody has said what can be done. */
    public boolean isChosen() {
        return !have.equals(KITCHEN);
    }

    /** Returns the address that asks the same with a ready choice. */
    public String address(Kit kit) {
        StringBuilder address = new StringBuilder("/make/gauge?kit=").append(kit.name());
        if (!batch.isEmpty()) {
            address.append("&batch=").append(batch);
            address.append("&vessel=").append(URLEncoder.encode(vessel, StandardCharsets.UTF_8));
        }
        texts.forEach((part, text) -> {
            if (!text.isEmpty()) {
                address.append('&')
                        .append(field(part))
                        .append('=')
                        .append(URLEncoder.encode(text, StandardCharsets.UTF_8));
            }
        });
        return address.append("#h-before").toString();
    }

    /** A way to measure, or several, and what is to be known of it. */
    public record Row(String name, String says) {}

    /** Returns the choices that serve best. */
    public List<Row> choices() {
        return found == null
                ? List.of()
                : found.advice().choices().stream()
                        .limit(CHOICES)
                        .map(this::row)
                        .toList();
    }

    private Row row(Guide.Choice choice) {
        Volume volume = found == null ? null : found.batch();
        boolean dear = choice.isDear(volume == null ? null : volume.millilitres());
        return new Row(name(choice.methods()), doubt(choice) + (dear ? " " + words.say("make.gauge.dear") : ""));
    }

    private String name(List<Method> methods) {
        return String.join(
                " + ",
                methods.stream()
                        .map(method -> words.say("make.gauge.method." + method.name()))
                        .toList());
    }

    private String doubt(Guide.Choice choice) {
        return words.say(
                "make.gauge.choice",
                words.halfWidth(choice.strength(), 1),
                words.halfWidth(choice.sugar(), 0),
                words.number(choice.sampleMillilitres(), 0),
                words.number(choice.lostMillilitres(), 0));
    }

    /** Returns what all that can be done would tell together, or empty where that says no more than the choices. */
    public String together() {
        return found == null || have.size() < 3
                ? ""
                : found.advice().together().map(this::doubt).orElse("");
    }

    /** Returns what is known without measuring, or empty where it is not known what was poured. */
    public String before() {
        return found == null
                ? ""
                : found.advice()
                        .before()
                        .map(known -> words.say(
                                "make.gauge.pouredAlone",
                                words.halfWidth(known.strength(), 1),
                                words.halfWidth(known.sugar(), 0)))
                        .orElse("");
    }

    private String takes(Method method) {
        double sample = method.sampleMillilitres();
        return sample == 0.0
                ? words.say("make.gauge.takesNone")
                : words.say(
                        "make.gauge.takes",
                        words.number(sample, sample < 1.0 ? 1 : 0),
                        words.say("make.gauge.sample." + method.sample().name()));
    }

    /** Returns what is to be known of each way to measure. */
    public List<Row> methods() {
        return have.stream()
                .map(method -> new Row(
                        words.say("make.gauge.method." + method.name()),
                        words.say(
                                "make.gauge.how",
                                words.say("make.gauge.means." + method.name()),
                                takes(method),
                                words.say("make.gauge.conditions." + method.name()),
                                words.say("make.gauge.trap." + method.name()))))
                .toList();
    }
}
