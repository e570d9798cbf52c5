package org.stillroom.studio.web.shelf;

import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import org.stillroom.studio.store.Changing;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.Photos;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.PhotoAnswer;
import org.stillroom.studio.web.frame.Visit;

/** Photos of bottles, as they are taken with a phone. */
final class PhotoPages {
    private final Desk desk;

    PhotoPages(Desk desk) {
        this.desk = desk;
    }

    void routes(Doors doors) {
        doors.post("/shelf/lots/{id}/photo", this::keep).get("/shelf/photos/{id}", this::show);
    }

    private void keep(Visit visit) throws IOException {
        Lot lot = desk.store().lots().lot(visit.part("id")).orElse(null);
        UploadedFile file = visit.context().uploadedFile("photo");
        if (lot == null) {
            visit.notFound();
        } else if (file == null || file.size() == 0) {
            visit.refuse(
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    visit.words().say("shelf.noPhoto"),
                    visit.words().say("shelf.noPhotoRemedy"));
        } else {
            keep(visit, lot, file);
        }
    }

    private void keep(Visit visit, Lot lot, UploadedFile file) throws IOException {
        String id;
        try (InputStream in = file.content()) {
            id = desk.store().photos().keep(in.readNBytes(Photos.MOST_BYTES + 1), visit.request() + "/photo");
        } catch (Photos.NoPhoto none) {
            String message = none.getMessage() == null ? "" : none.getMessage();
            visit.refuse(
                    HttpStatus.UNPROCESSABLE_CONTENT, message, visit.words().say("shelf.noPhotoRemedy"));
            return;
        }
        Changing<Lot> changing =
                desk.store().lots().change(lot.id(), lot.version(), lot.sheet().withPhoto(id), visit.request());
        if (changing instanceof Changing.Overtaken<Lot>) {
            throw new IllegalStateException(visit.words().say("shelf.photoOvertaken"));
        }
        visit.goOn("/shelf/lots/" + lot.id() + "?photo=yes");
    }

    private void show(Visit visit) {
        PhotoAnswer.of(visit, desk.store().photos().photo(visit.part("id")).orElse(null));
    }
}
