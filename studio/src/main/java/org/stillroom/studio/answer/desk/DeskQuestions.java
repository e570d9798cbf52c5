package org.stillroom.studio.answer.desk;

import java.util.List;
import java.util.Optional;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.usecase.MatchOils;

/** The questions at the desk, in the order in which they are shown. */
public final class DeskQuestions {
    private DeskQuestions() {}

    /** Returns the question which oils come nearest, with those of a shelf besides the ones that are named. */
    public static DeskQuestion matching(List<MatchOils.Bottle> shelf, Grounds grounds) {
        return new MatchQuestion(shelf, grounds);
    }

    /** Returns them as they are asked where there is no studio. */
    public static List<DeskQuestion> all() {
        return all(Grounds.SHIPPED);
    }

    /** Returns the one of a name, in a studio that judges on these grounds. */
    public static Optional<DeskQuestion> named(String name, Grounds grounds) {
        return all(grounds).stream()
                .filter(question -> question.name().equals(name))
                .findFirst();
    }

    private static List<DeskQuestion> all(Grounds grounds) {
        return List.of(
                new LiquidQuestion(),
                new StrengthQuestion(),
                new DensityQuestion(),
                new ReduceQuestion(),
                new BlendQuestion(),
                new FortifyQuestion(),
                new SyrupQuestion(),
                new AcidQuestion(),
                new DropsQuestion(grounds),
                new MaterialsQuestion(grounds),
                new MacerateQuestion(grounds),
                new ExtractQuestion(),
                new CombineQuestion(),
                new LadderQuestion(),
                new StillQuestion(),
                new MatchQuestion(List.of(), grounds),
                new CalibrateQuestion(),
                new ReadingsQuestion(null),
                new ResidueQuestion(),
                new CorrectQuestion(null));
    }
}
