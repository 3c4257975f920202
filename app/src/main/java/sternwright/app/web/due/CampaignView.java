package sternwright.app.web.due;

import java.util.List;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Pager;
import sternwright.app.web.page.State;

/**
 * What the page of a campaign shows.
 *
 * @param fields what the campaign is about
 * @param wrong what must be put right
 * @param asked whether anything was asked
 * @param lines the parts of the stretch
 * @param pager which stretch
 * @param boats how many boats it reaches
 * @param question the question as it stands in an address, for the sheet and the letters
 * @param by the field for the day of the answer
 * @param kept what was asked, name and value, for the form of the letters
 */
public record CampaignView(
        List<Field> fields,
        List<String> wrong,
        boolean asked,
        List<Line> lines,
        Pager pager,
        int boats,
        String question,
        Field by,
        List<Field.Choice> kept) {
    /** Copies the lists. */
    public CampaignView {
        fields = List.copyOf(fields);
        wrong = List.copyOf(wrong);
        lines = List.copyOf(lines);
        kept = List.copyOf(kept);
    }

    /**
     * A part of the campaign.
     *
     * @param boatId the boat
     * @param boat her name
     * @param owner whose she is
     * @param part the part
     * @param work the work
     * @param age how old it is, or that it is not known
     * @param due the day it falls due
     * @param state how it stands
     */
    public record Line(
            String boatId, String boat, String owner, String part, String work, String age, String due, State state) {}
}
