package sternwright.app.web.programmes;

import org.springframework.web.util.UriComponentsBuilder;
import sternwright.app.desk.settings.Overridings;
import sternwright.service.Overriding;

/**
 * A figure of the yard's or a maker's, as it is read.
 *
 * @param work the work
 * @param reach for whom it is
 * @param figures what it says
 * @param source where it comes from
 * @param programme in which programme it stands
 * @param change where it is changed; empty where that is done in its file
 * @param back where it is taken back; empty likewise
 */
public record Own(
        String work, String reach, String figures, String source, String programme, String change, String back) {
    static Own of(RuleText text, Overridings.Written written) {
        Overriding o = written.overriding();
        Overridings.Key key = Overridings.Key.of(o);
        return new Own(
                text.work(o.ruleId()),
                written.forWhoNamesIt() ? text.followers(written.programme()) : text.reach(o.scope(), o.target()),
                text.figures(o),
                o.source().line(),
                written.programme(),
                written.forWhoNamesIt() ? "" : path(key, "figures"),
                written.forWhoNamesIt() ? "" : path(key, "take-back"));
    }

    static String path(Overridings.Key key, String what) {
        UriComponentsBuilder path = UriComponentsBuilder.fromPath("/settings/programmes/{rule}/" + what)
                .queryParam("scope", RuleText.word(key.scope()));
        if (!key.target().isEmpty()) {
            path.queryParam("target", "{target}");
            return path.encode().buildAndExpand(key.ruleId(), key.target()).toUriString();
        }
        return path.encode().buildAndExpand(key.ruleId()).toUriString();
    }
}
