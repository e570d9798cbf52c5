package org.stillroom.studio.answer.desk;

import java.util.List;

/** The questions at the desk, in the order in which they are shown. */
public final class DeskQuestions {
    private DeskQuestions() {}

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
                new MacerateQuestion(),
                new StillQuestion(),
                new MatchQuestion(),
                new ReadingsQuestion(),
                new ResidueQuestion(),
                new CorrectQuestion());
    }
}
