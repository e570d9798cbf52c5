package org.stillroom.studio.web.safety;

import io.javalin.http.HttpStatus;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.safety.Safety;
import org.stillroom.studio.answer.desk.LabelAsked;
import org.stillroom.studio.answer.desk.Objections;
import org.stillroom.studio.answer.desk.Part;
import org.stillroom.studio.answer.desk.SafetyAsked;
import org.stillroom.studio.answer.desk.WrongInput;
import org.stillroom.studio.sheet.LabelSheet;
import org.stillroom.studio.sheet.Saying;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.Impossible;
import org.stillroom.studio.usecase.TellLabel;
import org.stillroom.studio.usecase.WorkedPlan;
import org.stillroom.studio.usecase.compose.ComposeRecipe;
import org.stillroom.studio.usecase.compose.StageShelf;
import org.stillroom.studio.usecase.compose.WorkOnRecipe;
import org.stillroom.studio.usecase.shelf.MakersGrounds;
import org.stillroom.studio.usecase.shelf.MakersOunce;
import org.stillroom.studio.usecase.shelf.MakersServing;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Room;
import org.stillroom.studio.web.frame.Visit;
import org.stillroom.studio.web.tables.AskedField;
import org.stillroom.studio.web.tables.Labels;
import org.stillroom.studio.wording.Words;

/** What is in the drink of a recipe, and its label. Recipes lead here, not the navigation. */
public final class SafetyRoom implements Room {
    private static final String COMPOSE = "compose";

    /** Who drinks and where, which is remembered for all recipes. */
    private static final List<Part> WHO = SafetyAsked.PARTS.stream()
            .filter(part -> MakersServing.TYPED.contains(part.name()))
            .toList();

    /** What is known of the very drink, which is not remembered: it holds for no other. */
    private static final List<Part> OF_DRINK = SafetyAsked.PARTS.stream()
            .filter(part -> !MakersServing.TYPED.contains(part.name()))
            .toList();

    /** What a label before anything is bottled is asked by: the question, and how large it is. */
    private static final List<Part> LABEL = Stream.concat(
                    LabelAsked.PARTS.stream(),
                    Stream.of(new Part(
                            "size",
                            "width and height of a label in mm, such as 90x60",
                            LabelSheet.USUAL.text(),
                            Part.Form.TEXT)))
            .toList();

    private final Store store;

    public SafetyRoom(Store store) {
        this.store = store;
    }

    @Override
    public String key() {
        return "safety";
    }

    @Override
    public String path() {
        return "/safety";
    }

    @Override
    public String state(Words words) {
        return "";
    }

    @Override
    public boolean isInNavigation() {
        return false;
    }

    @Override
    public void routes(Doors doors) {
        doors.get(path(), visit -> visit.context().redirect("/compose", HttpStatus.SEE_OTHER))
                .get("/safety/{recipe}", visit -> safety(visit, MakersServing.typed(store.settings()), List.of()))
                .post("/safety/{recipe}", this::settle)
                .get("/label/{recipe}", this::label)
                .get("/label/{recipe}/label.svg", this::svg)
                .get("/label/{recipe}/labels.pdf", this::pdf);
    }

    /** A recipe as it stands in Compose, with its plan, or null as long as there is none. */
    private record Stands(String title, @Nullable WorkedPlan worked) {}

    private Stands open(Visit visit) {
        OunceMeaning ounce = MakersOunce.of(store.settings());
        WorkOnRecipe.Work work = new WorkOnRecipe(store.recipes(), ounce).open(visit.part("recipe"));
        WorkedPlan worked = new ComposeRecipe(new StageShelf(store.recipes(), ounce), ounce, MakersGrounds.of(store))
                .answer(work.form())
                .worked();
        boolean makes = worked != null && worked.plan().liquid().total() > 0.0;
        return new Stands(work.title(), makes ? worked : null);
    }

    private static Map<String, String> typed(Visit visit, List<Part> parts) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (Part part : parts) {
            String text = visit.field(part.name()).strip();
            if (!text.isEmpty()) {
                typed.put(part.name(), text);
            }
        }
        return typed;
    }

    private static Map<String, List<String>> asTexts(Map<String, String> typed) {
        return typed.entrySet().stream().collect(Collectors.toMap(Map.Entry::getKey, each -> List.of(each.getValue())));
    }

    private static List<AskedField> fields(List<Part> parts, Map<String, String> typed) {
        return parts.stream()
                .map(part -> new AskedField(part, typed.getOrDefault(part.name(), ""), ""))
                .toList();
    }

    private void settle(Visit visit) {
        Map<String, String> typed = typed(visit, WHO);
        try {
            SafetyAsked asked = SafetyAsked.of(asTexts(typed), Labels.PLAIN, new Objections());
            MakersServing.settle(store.settings(), typed, asked.serving());
            visit.goOn("/safety/" + visit.part("recipe"));
        } catch (WrongInput wrong) {
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
            safety(visit, typed, wrong.findings());
        }
    }

    private void safety(Visit visit, Map<String, String> typed, List<Finding> problems) {
        Stands stands = open(visit);
        WorkedPlan worked = stands.worked();
        Map<String, String> known = typed(visit, OF_DRINK);
        List<Finding> all = new ArrayList<>(problems);
        Safety safety = null;
        try {
            SafetyAsked asked = SafetyAsked.of(asTexts(known), Labels.PLAIN, new Objections());
            safety = worked == null
                    ? null
                    : asked.by(MakersServing.of(store.settings())).answer(worked);
        } catch (WrongInput wrong) {
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
            all.addAll(wrong.findings());
        }
        SafetyView view = new SafetyView(
                visit.part("recipe"),
                stands.title(),
                fields(WHO, typed),
                fields(OF_DRINK, known),
                all,
                safety,
                visit.words());
        visit.page(visit.words().say("safety.title"), COMPOSE)
                .style("tables.css")
                .style("safety.css")
                .show("safety/safety.jte", Map.of("view", view));
    }

    private Map<String, String> labelTyped(Visit visit) {
        Map<String, String> typed = new LinkedHashMap<>(typed(visit, LABEL));
        store.settings().value("serving").ifPresent(serving -> typed.putIfAbsent("serving", serving));
        return typed;
    }

    /** Returns what the question takes of it; the size is of the drawing alone. */
    private static Map<String, String> asked(Map<String, String> typed) {
        Map<String, String> asked = new LinkedHashMap<>(typed);
        asked.remove("size");
        return asked;
    }

    /** What was wrong is told, and the label shown by the rest of what was typed. */
    private void label(Visit visit) {
        Stands stands = open(visit);
        Map<String, String> typed = labelTyped(visit);
        Map<String, String> kept = new LinkedHashMap<>(typed);
        TellLabel.Found found = null;
        List<Finding> problems = List.of();
        try {
            found = told(stands, kept);
        } catch (WrongInput wrong) {
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
            problems = wrong.findings();
            List<String> refused = problems.stream().map(Finding::where).toList();
            kept.keySet().removeIf(part -> refused.contains(Labels.PLAIN.name(part)));
            found = toldOrNone(stands, kept);
        }
        Map<String, Object> model = new HashMap<>();
        model.put(
                "view",
                new LabelView(
                        visit.part("recipe"),
                        stands.title(),
                        fields(LABEL, typed),
                        problems,
                        found,
                        found == null ? null : undrawn(visit, found),
                        query(kept),
                        visit.words()));
        visit.page(visit.words().say("safety.labelTitle"), COMPOSE)
                .style("tables.css")
                .style("safety.css")
                .show("safety/label.jte", model);
    }

    private static TellLabel.@Nullable Found told(Stands stands, Map<String, String> typed) {
        LabelAsked asked = LabelAsked.of(asTexts(asked(typed)), Labels.PLAIN, new Objections());
        return stands.worked() == null ? null : asked.answer(stands.worked());
    }

    private static TellLabel.@Nullable Found toldOrNone(Stands stands, Map<String, String> typed) {
        try {
            return told(stands, typed);
        } catch (WrongInput told) {
            return null;
        }
    }

    /** Returns why it cannot be drawn so, or null. */
    private static @Nullable Impossible undrawn(Visit visit, TellLabel.Found found) {
        try {
            if (found.notForDrinking().isEmpty()) {
                LabelSheet.svg(found, look(visit));
            }
            return null;
        } catch (Impossible cannot) {
            return cannot;
        }
    }

    private static String query(Map<String, String> typed) {
        String asked = typed.entrySet().stream()
                .map(each -> each.getKey() + "=" + URLEncoder.encode(each.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        return asked.isEmpty() ? "" : "?" + asked;
    }

    /** Draws labels. */
    private interface Drawing {
        void of(TellLabel.Found found);
    }

    private void drawn(Visit visit, Drawing drawing) {
        WorkedPlan worked = open(visit).worked();
        try {
            if (worked == null) {
                throw new Impossible("recipe", visit.words().say("safety.noPlan"), "");
            }
            drawing.of(LabelAsked.of(asTexts(asked(labelTyped(visit))), Labels.PLAIN, new Objections())
                    .answer(worked));
        } catch (Impossible cannot) {
            Words words = visit.words();
            visit.refuse(
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    words.told(LabelView.LABEL, cannot.reason()).text(),
                    words.told(LabelView.LABEL, cannot.remedy()).text());
        } catch (WrongInput wrong) {
            Finding first = wrong.findings().get(0);
            visit.refuse(HttpStatus.UNPROCESSABLE_CONTENT, first.message(), first.remedy());
        }
    }

    private void svg(Visit visit) {
        drawn(
                visit,
                found -> visit.context()
                        .contentType("image/svg+xml; charset=utf-8")
                        .header("Content-Security-Policy", "default-src 'none'; style-src 'unsafe-inline'; sandbox")
                        .result(LabelSheet.svg(found, look(visit)).getBytes(StandardCharsets.UTF_8)));
    }

    private void pdf(Visit visit) {
        drawn(
                visit,
                found -> visit.context()
                        .contentType("application/pdf")
                        .header("Content-Disposition", "inline; filename=\"labels.pdf\"")
                        .result(LabelSheet.pdf(found, look(visit))));
    }

    private static LabelSheet.Look look(Visit visit) {
        Words words = visit.words();
        return new LabelSheet.Look(
                visit.field("size").isBlank() ? LabelSheet.USUAL : LabelSheet.Size.of(visit.field("size")),
                new Saying(words.language().tag(), words::toldOrMarked),
                LabelSheet.Cost.LEFT_OUT);
    }
}
