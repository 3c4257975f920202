package sternwright.app.desk.campaign;

import java.util.LinkedHashMap;
import java.util.Map;
import sternwright.app.desk.derived.OfYard;
import sternwright.app.desk.open.OpenYard;

/** The campaigns that were asked for last, kept while the yard stays as it is: a list, its sheet and its letters are one. */
public final class CampaignsOfYard {
    private static final int KEPT = 8;

    private final OpenYard yard;
    private final OfYard<Lists> lists;

    /** The last few lists. */
    private static final class Lists {
        private final Map<Campaign, CampaignList> known = new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1;

            @Override
            protected boolean removeEldestEntry(Map.Entry<Campaign, CampaignList> eldest) {
                return size() > KEPT;
            }
        };

        synchronized CampaignList of(Campaign campaign, OpenYard yard) {
            CampaignList before = known.get(campaign);
            if (before != null) {
                return before;
            }
            CampaignList made = CampaignList.of(campaign, yard.dues(), yard.files(), yard.today());
            known.put(campaign, made);
            return made;
        }
    }

    /**
     * Ready to be asked; nothing is worked out yet.
     *
     * @param yard the yard
     */
    public CampaignsOfYard(OpenYard yard) {
        this.yard = yard;
        this.lists = new OfYard<>(yard, y -> new Lists());
    }

    /**
     * The list of a campaign.
     *
     * @param campaign what is asked
     * @return its lines, one a part
     */
    public CampaignList of(Campaign campaign) {
        return lists.get().of(campaign, yard);
    }
}
