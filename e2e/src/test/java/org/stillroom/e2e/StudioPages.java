package org.stillroom.e2e;

import java.util.List;

/** The pages of the studio that are held to the rules of every page. A room adds its own here. */
final class StudioPages {
    private StudioPages() {}

    /**
     * Returns their paths, such as "/settings".
     *
     * @param recipe id of a saved recipe
     * @param batch id of a batch of which bottles were filled
     * @param hydrometer id of a hydrometer on the shelf that is calibrated
     */
    static List<String> all(String recipe, String batch, String hydrometer) {
        return List.of(
                "/settings",
                "/settings/house-rules",
                "/settings/rules",
                "/history",
                "/nowhere",
                "/shelf",
                "/shelf/put",
                "/shelf/put/essential-oil",
                "/shelf/put/juice",
                "/shelf/table",
                "/shelf/instruments",
                "/shelf/instruments/put/jar",
                "/shelf/instruments/put/hydrometer",
                "/shelf/instruments/" + hydrometer,
                "/shelf/instruments/" + hydrometer + "/calibrate?hydrometer=1.002",
                "/shelf/removed",
                "/shelf/left",
                "/shelf/essence",
                "/shelf/essence?title=Winter&by=mass&oils.0.oil=lemon&oils.0.parts=10&oils.0.drop=20.5%20mg&oils.1.oil=laurel"
                        + "&oils.1.parts=3&oils.1.drop=21.5%20mg&together=0.4%20g%2FL&carrier=96%20%25&dose=5%20ml%2FL"
                        + "&marks=0.1%20ml&batch=1%20L",
                "/shelf/match?want=lime%3D90mg&have=lemon",
                "/tables",
                "/tables/drops",
                "/tables/materials?kind=any",
                "/tables/materials?name=orange",
                "/tables/macerate?example=yes",
                "/tables/calibrate?example=yes",
                "/compose",
                "/compose/new",
                "/compose/" + recipe,
                "/compose/" + recipe + "/versions",
                "/compose/" + recipe + "/what-if",
                "/compose/" + recipe + "/notes",
                "/compose/" + recipe + "/swap?line=0&with=spirit%2063%20%25",
                "/clarity/" + recipe,
                "/clarity/" + recipe + "?temperature=10%20%C2%B0C&with=ice",
                "/clarity/" + recipe + "?other=12%20%25,%205%20g%2FL&glass=8%20%C2%B0C",
                "/haze?seen=fruit&seen=boiled",
                "/safety/" + recipe,
                "/label/" + recipe,
                "/label/" + recipe + "?serving=20%20ml&bottle=500%20ml&fruit-left-in=yes",
                "/make",
                "/make/begin?recipe=" + recipe,
                "/rest",
                "/rest/learned",
                "/rest/batch/" + batch,
                "/rest/batch/" + batch + "/bottle",
                "/rest/batch/" + batch + "/bottle?size1=350ml&count1=4&brim1=356ml&size2=100ml&temperature=16",
                "/rest/batch/" + batch + "/labels?duty=EU%20minimum&size=90x70",
                "/make/batch/" + batch,
                "/rest/recipe/" + recipe,
                "/make/gauge",
                "/make/gauge?batch=" + batch + "&kit=SCALE_AND_FLASK",
                "/make/gauge?hydrometer=SG%201.03&refractometer=25.9Bx&own-hydrometer=" + hydrometer,
                "/make/gauge?density=1.0423g%2Fml&refractometer=31.5Bx&volume=1.95L&to-strength=28%25&with=96%25");
    }
}
