package sternwright.app.web.visits;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.proving.AgreedPlans;
import sternwright.app.desk.proving.ProvedPlans;

/** The plans of a running program; they end with it. */
@Configuration(proxyBeanMethods = false)
public class PlanRuns {
    @Bean
    static ProvedPlans provedPlans() {
        return new ProvedPlans();
    }

    @Bean
    static AgreedPlans agreedPlans(OpenYard yard, ProvedPlans plans) {
        return new AgreedPlans(yard, plans);
    }
}
