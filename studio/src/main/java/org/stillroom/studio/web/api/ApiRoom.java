package org.stillroom.studio.web.api;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import org.stillroom.studio.answer.desk.WrongInput;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Room;
import org.stillroom.studio.web.frame.Visit;
import org.stillroom.studio.wording.Words;

/** Where other programs come in. It has no pages, so that it is not in the navigation. */
public final class ApiRoom implements Room {
    /** Path of everything. */
    static final String ROOT = "/api/v1";

    private final List<Operation> operations;

    public ApiRoom(Store store) {
        RecipeTexts texts = new RecipeTexts(store);
        List<Operation> all = new ArrayList<>(DeskOperations.all(texts::grounds));
        all.addAll(new GaugeOperations(texts, store.instruments()).all());
        all.addAll(new PlanOperations(texts).all());
        all.addAll(new ClarityOperations(texts).all());
        all.addAll(new SafetyOperations(texts).all());
        all.addAll(new FlavourOperations(texts).all());
        all.addAll(new RecipeOperations(store.recipes(), texts).all());
        all.addAll(new LotOperations(store.lots(), texts).all());
        all.addAll(new LeftoverOperations(store, texts).all());
        all.addAll(new InstrumentOperations(store.instruments(), texts).all());
        all.addAll(new HouseRuleOperations(store.rules()).all());
        all.addAll(new RulesOperations(store.rules()).all());
        all.addAll(new MakeOperations(store).all());
        all.addAll(new BatchOperations(store).all());
        all.addAll(new LearnOperations(store).all());
        all.addAll(new HistoryOperations(store).all());
        operations = List.copyOf(all);
    }

    @Override
    public String key() {
        return "api";
    }

    @Override
    public String path() {
        return ROOT + "/openapi.json";
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
        operations.forEach(operation -> register(doors, operation));
        String document = new ApiDocument(operations).json();
        doors.get(path(), visit -> visit.context().contentType(Reply.JSON).result(document));
    }

    private static void register(Doors doors, Operation operation) {
        String path = ROOT + operation.path();
        Doors.Page page = visit -> answer(operation, visit);
        switch (operation.method()) {
            case GET -> doors.get(path, page);
            case POST -> doors.post(path, page);
            case PUT -> doors.put(path, page);
            case DELETE -> doors.delete(path, page);
        }
    }

    private static void answer(Operation operation, Visit visit) throws Exception {
        try {
            send(visit, operation.handler().answer(new Call(visit)), 200);
        } catch (Refused refused) {
            send(visit, Reply.of(refused.fields()), refused.status());
        } catch (WrongInput wrong) {
            send(visit, Reply.of(new Refused(Refused.IMPOSSIBLE, wrong.findings()).fields()), Refused.IMPOSSIBLE);
        } catch (NoSuchElementException missing) {
            Refused refused = Refused.notFound(sentence(missing));
            send(visit, Reply.of(refused.fields()), refused.status());
        } catch (IllegalStateException settled) {
            Refused refused = new Refused(
                    Refused.OVERTAKEN, "settled", "", sentence(settled), "Look at what is there now, and ask anew.");
            send(visit, Reply.of(refused.fields()), refused.status());
        }
    }

    /** Returns what an exception says, as a sentence. */
    private static String sentence(Exception said) {
        String message = said.getMessage() == null ? "it is not there" : said.getMessage();
        String start = message.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + message.substring(1);
        return start.endsWith(".") ? start : start + ".";
    }

    private static void send(Visit visit, Reply reply, int status) {
        reply.headers().forEach((name, value) -> visit.context().header(name, value));
        visit.context()
                .status(status)
                .contentType(reply.type())
                .result(reply.body().getBytes(StandardCharsets.UTF_8));
    }
}
