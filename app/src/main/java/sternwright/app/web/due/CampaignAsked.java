package sternwright.app.web.due;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import sternwright.app.desk.campaign.Campaign;
import sternwright.app.web.page.Page;

/**
 * A campaign as it was asked for.
 *
 * @param campaign the campaign, null as long as none is asked for or something is wrong
 * @param wrong what must be put right, in sentences
 */
record CampaignAsked(@Nullable Campaign campaign, List<String> wrong) {
    static final List<String> NAMES = List.of("rule", "years", "hours", "name");
    private static final int LONGEST = 80;

    static CampaignAsked of(Page page, Map<String, String> typed) {
        String rule = typed.getOrDefault("rule", "").strip();
        if (NAMES.stream().allMatch(n -> typed.getOrDefault(n, "").isBlank())) {
            return new CampaignAsked(null, List.of());
        }
        List<String> wrong = new ArrayList<>();
        if (rule.isEmpty()) {
            wrong.add(page.say("due.campaign.wrong.rule"));
        }
        Double years = figure(page, typed.getOrDefault("years", ""), "years", 100, wrong);
        Double hours = figure(page, typed.getOrDefault("hours", ""), "hours", 100_000, wrong);
        if (!wrong.isEmpty()) {
            return new CampaignAsked(null, wrong);
        }
        String name = typed.getOrDefault("name", "").strip();
        return new CampaignAsked(
                new Campaign(
                        name.length() > LONGEST ? name.substring(0, LONGEST) : name,
                        rule,
                        null,
                        years == null ? null : (int) Math.round(years * 12),
                        hours),
                List.of());
    }

    private static @Nullable Double figure(Page page, String typed, String name, double most, List<String> wrong) {
        String text = typed.strip().replace(',', '.');
        if (text.isEmpty()) {
            return null;
        }
        if (text.matches("[0-9]{1,6}(\\.[0-9]{1,3})?") && Double.parseDouble(text) <= most) {
            return Double.valueOf(text);
        }
        wrong.add(page.say("due.campaign.wrong." + name, most));
        return null;
    }
}
