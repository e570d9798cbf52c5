package org.stillroom.studio.web.shelf;

import io.javalin.http.HttpStatus;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.recipefile.EssenceForm;
import org.stillroom.studio.recipefile.EssenceReader;
import org.stillroom.studio.recipefile.EssenceReading;
import org.stillroom.studio.recipefile.EssenceSheet;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.usecase.Impossible;
import org.stillroom.studio.usecase.essence.PlanEssence;
import org.stillroom.studio.usecase.essence.ShelfOils;
import org.stillroom.studio.usecase.essence.ShelveEssence;
import org.stillroom.studio.usecase.shelf.MakersGrounds;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Visit;

/** An essence of oils of the shelf in whole drops, to be made a recipe or put on the shelf. */
final class EssencePages {
    private static final String PATH = "/shelf/essence";

    /** What the form begins with. */
    private static final Map<String, String> USUAL = Map.of(
            "by", "mass",
            "carrier", "96 %",
            "dose", "5 ml/L",
            "marks", "0.1 ml",
            "batch", "1 L",
            "tolerance", "2 %",
            "batches", "10");

    private final Desk desk;

    EssencePages(Desk desk) {
        this.desk = desk;
    }

    void routes(Doors doors) {
        doors.get(PATH, this::show).post(PATH + "/put", this::put);
    }

    /** What was asked, as far as it could be planned. */
    private record Planned(@Nullable EssenceSheet sheet, PlanEssence.@Nullable Found found, List<Finding> problems) {}

    private void show(Visit visit) {
        EssenceForm form = form(visit.context().queryParamMap());
        boolean asked = !form.fields().isEmpty();
        show(visit, asked ? form : new EssenceForm(USUAL), asked ? planned(form) : new Planned(null, null, List.of()));
    }

    private void show(Visit visit, EssenceForm form, Planned planned) {
        if (!planned.problems().isEmpty()) {
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        EssenceView view = new EssenceView(
                visit.words(), form, new ShelfOils(desk.lots()), planned.sheet(), planned.found(), planned.problems());
        visit.page(visit.words().say("essence.title"), ShelfRoom.KEY)
                .style("shelf.css")
                .show("shelf/essence.jte", Map.of("view", view, "today", today().toString()));
    }

    private static EssenceForm form(Map<String, List<String>> sent) {
        Map<String, String> typed = new LinkedHashMap<>();
        sent.forEach((name, texts) -> {
            if (EssenceView.isField(name) && !texts.isEmpty()) {
                typed.put(name, texts.get(0));
            }
        });
        return new EssenceForm(typed);
    }

    private Planned planned(EssenceForm form) {
        EssenceReading reading = EssenceReader.read(new ShelfOils(desk.lots()).completed(form));
        if (reading instanceof EssenceReading.Refused refused) {
            return new Planned(null, null, refused.problems());
        }
        EssenceSheet sheet = ((EssenceReading.Understood) reading).sheet();
        try {
            return new Planned(
                    sheet, PlanEssence.answer(sheet, MakersGrounds.of(desk.store()), Workings.NONE), List.of());
        } catch (Impossible impossible) {
            Finding finding = Finding.of(
                    "essence-impossible",
                    Severity.STOP,
                    impossible.part(),
                    "cannot be",
                    impossible.reason(),
                    impossible.remedy());
            return new Planned(sheet, null, List.of(finding));
        }
    }

    private void put(Visit visit) {
        EssenceForm form = form(visit.context().formParamMap());
        Planned planned = planned(form);
        PlanEssence.Found found = planned.found();
        PlanEssence.Made choice = found == null || found.isStopped() ? null : chosen(found, visit.field("choice"));
        LocalDate made = day(visit.field("made"));
        if (planned.sheet() == null || found == null || choice == null || made == null) {
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(visit, form, planned);
            return;
        }
        String label = visit.field("label").strip();
        Lot lot = new ShelveEssence(desk.store())
                .answer(planned.sheet(), found, choice, label.isEmpty() ? null : label, made, visit.request());
        visit.goOn("/shelf/lots/" + lot.id() + "?put=yes");
    }

    private static PlanEssence.@Nullable Made chosen(PlanEssence.Found found, String drops) {
        return found.choices().stream()
                .filter(made -> EssenceView.drops(made.choice()).equals(drops))
                .findFirst()
                .orElse(null);
    }

    private static @Nullable LocalDate day(String text) {
        try {
            LocalDate day = LocalDate.parse(text);
            return day.isAfter(today()) ? null : day;
        } catch (DateTimeException notADay) {
            return null;
        }
    }

    private static LocalDate today() {
        return LocalDate.now(ZoneId.systemDefault());
    }
}
