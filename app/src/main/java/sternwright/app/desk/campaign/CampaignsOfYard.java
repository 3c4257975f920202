package sternwright.app.desk.campaign;

import sternwright.app.desk.derived.EachOfYard;
import sternwright.app.desk.open.OpenYard;

/** The campaigns that were asked for last, kept while the yard stays as it is: a list, its sheet and its letters are one. */
public final class CampaignsOfYard {
    private static final int KEPT = 8;

    private final OpenYard yard;
    private final EachOfYard<Campaign, CampaignList> lists;

    /**
     * Ready to be asked; nothing is worked out yet.
     *
     * @param yard the yard
     */
    public CampaignsOfYard(OpenYard yard) {
        this.yard = yard;
        this.lists = new EachOfYard<>(yard, KEPT);
    }

    /**
     * The list of a campaign.
     *
     * @param campaign what is asked
     * @return its lines, one a part
     */
    public CampaignList of(Campaign campaign) {
        return lists.of(campaign, () -> CampaignList.of(campaign, yard.dues(), yard.files(), yard.today()));
    }
}
