package org.stillroom.studio.web.make;

import io.javalin.http.HttpStatus;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.sheet.DaySheet;
import org.stillroom.studio.sheet.Saying;
import org.stillroom.studio.sheet.SheetOptions;
import org.stillroom.studio.store.MissingException;
import org.stillroom.studio.store.Revision;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.PlanRecipe;
import org.stillroom.studio.usecase.WorkedPlan;
import org.stillroom.studio.usecase.make.PrintSheet;
import org.stillroom.studio.usecase.make.ShowMake;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Visit;
import org.stillroom.studio.wording.UnitSystem;
import org.stillroom.studio.wording.Words;

/** The day sheet of a revision, or of a make in its size, to print or as a PDF. */
final class SheetPages {
    private static final Pattern STYLE = Pattern.compile("<style[^>]*>(.*?)</style>", Pattern.DOTALL);

    private final Store store;
    private final ShowMake show;

    SheetPages(Store store, ShowMake show) {
        this.store = store;
        this.show = show;
    }

    void routes(Doors doors) {
        doors.get("/sheet/{recipe}/{revision}", visit -> ofRevision(visit, false))
                .get("/sheet/{recipe}/{revision}/pdf", visit -> ofRevision(visit, true))
                .get("/make/{make}/sheet", visit -> ofMake(visit, false))
                .get("/make/{make}/sheet/pdf", visit -> ofMake(visit, true));
    }

    private void ofRevision(Visit visit, boolean pdf) {
        String number = visit.part("revision");
        Revision revision = (number.matches("\\d{1,9}")
                        ? store.recipes().revision(visit.part("recipe"), Integer.parseInt(number))
                        : Optional.<Revision>empty())
                .orElseThrow(() -> new MissingException(visit.words().say("make.noRevision")));
        answer(visit, new PrintSheet(store).ofRevision(revision, null, Workings.NONE), pdf);
    }

    private void ofMake(Visit visit, boolean pdf) {
        answer(visit, new PrintSheet(store).ofMake(show.answer(visit.part("make")), Workings.NONE), pdf);
    }

    private static void answer(Visit visit, PlanRecipe.Outcome outcome, boolean pdf) {
        @Nullable WorkedPlan plan = outcome instanceof PlanRecipe.Outcome.Worked worked ? worked.plan() : null;
        if (plan == null) {
            Finding first = ((PlanRecipe.Outcome.Refused) outcome).problems().get(0);
            visit.refuse(HttpStatus.UNPROCESSABLE_CONTENT, first.message(), first.remedy());
            return;
        }
        SheetOptions options = options(visit);
        if (pdf) {
            visit.context()
                    .contentType("application/pdf")
                    .header("Content-Disposition", "inline; filename=\"day-sheet.pdf\"")
                    .result(DaySheet.pdf(plan, options));
        } else {
            String page = DaySheet.html(plan, options);
            visit.context().header("Content-Security-Policy", "default-src 'none'; style-src" + hashes(page));
            visit.html(page);
        }
    }

    /** The sheet stands alone with its styles in it; just these are let through, by their hashes (CSP level 2, 4.3.5). */
    private static String hashes(String page) {
        StringBuilder hashes = new StringBuilder();
        Matcher style = STYLE.matcher(page);
        try {
            while (style.find()) {
                byte[] hash = MessageDigest.getInstance("SHA-256")
                        .digest(style.group(1).getBytes(StandardCharsets.UTF_8));
                hashes.append(" 'sha256-")
                        .append(Base64.getEncoder().encodeToString(hash))
                        .append('\'');
            }
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java knows SHA-256", e);
        }
        return hashes.toString();
    }

    private static SheetOptions options(Visit visit) {
        SheetOptions.Paper paper =
                visit.field("paper").equals("letter") ? SheetOptions.Paper.LETTER : SheetOptions.Paper.A4;
        Words words = visit.words();
        return new SheetOptions(
                paper,
                words.units() == UnitSystem.US ? SheetOptions.Units.US : SheetOptions.Units.METRIC,
                new Saying(words.language().tag(), words::toldOrMarked));
    }
}
