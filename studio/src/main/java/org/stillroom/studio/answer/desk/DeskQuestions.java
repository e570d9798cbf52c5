package org.stillroom.studio.answer.desk;

import java.util.List;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.usecase.MatchOils;

/** The questions at the desk, in the order in which they are shown. */
public final class DeskQuestions {
    private DeskQuestions() {}

    /** Returns the question which oils come nearest, with those of a shelf besides the ones that are named. */
    public static DeskQuestion matching(List<MatchOils.Bottle> shelf, Grounds grounds) {
        return new MatchQuestion(shelf, grounds);
    }

    public static List<DeskQuestion> all() {
        return List.of(
                new LiquidQuestion(),
                new StrengthQuestion(),
                new DensityQuestion(),
                new ReduceQuestion(),
                new BlendQuestion(),
                new FortifyQuestion(),
                new SyrupQuestion(),
                new AcidQuestion(),
                new DropsQuestion(),
                new MaterialsQuestion(),
                new MacerateQuestion(),
                new ExtractQuestion(),
                new CombineQuestion(),
                new LadderQuestion(),
                new StillQuestion(),
                new MatchQuestion(List.of(), Grounds.SHIPPED),
                new CalibrateQuestion(),
                new ReadingsQuestion(null),
                new ResidueQuestion(),
                new CorrectQuestion(null));
    }
}
