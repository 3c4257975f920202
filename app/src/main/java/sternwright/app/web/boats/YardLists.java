package sternwright.app.web.boats;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import sternwright.app.desk.campaign.CampaignsOfYard;
import sternwright.app.desk.derived.SeasonOfYard;
import sternwright.app.desk.find.BoatsOfYard;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.protect.KeptReports;

/** What many pages look into; one for all of them. */
@Configuration(proxyBeanMethods = false)
public class YardLists {
    @Bean
    static BoatsOfYard boatsOfYard(OpenYard yard) {
        return new BoatsOfYard(yard);
    }

    @Bean
    static CampaignsOfYard campaignsOfYard(OpenYard yard) {
        return new CampaignsOfYard(yard);
    }

    @Bean
    static SeasonOfYard seasonOfYard(OpenYard yard) {
        return new SeasonOfYard(yard);
    }

    @Bean
    static KeptReports keptReports() {
        return new KeptReports();
    }
}
