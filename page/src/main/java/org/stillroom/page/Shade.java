package org.stillroom.page;

import org.stillroom.core.triangle.HazeShade;
import org.teavm.jso.JSObject;
import org.teavm.jso.JSProperty;
import org.teavm.jso.core.JSObjects;

/** What a page shows of the oils of a liquid: areas to fill, and its own verdict. */
interface Shade extends JSObject {
    @JSProperty
    void setHazy(String path);

    @JSProperty
    void setCloudy(String path);

    @JSProperty
    void setOil(double gramsPerLitre);

    /** "clear", "hazy" or "cloudy". */
    @JSProperty
    void setVerdict(String label);

    /** Least strength at this sugar that is clear, % vol; NaN where none is. */
    @JSProperty
    void setClearFrom(double percent);

    static Shade of(HazeShade shade) {
        Shade page = JSObjects.create();
        page.setHazy(shade.hazy());
        page.setCloudy(shade.cloudy());
        page.setOil(shade.gramsPerLitre());
        page.setVerdict(shade.verdict().label());
        page.setClearFrom(shade.clearFrom().orElse(Double.NaN));
        return page;
    }
}
