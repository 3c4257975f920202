package sternwright.app.web.boats;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import sternwright.app.desk.find.BoatsOfYard;
import sternwright.app.desk.open.OpenYard;

/** What every list of boats looks into; one for all pages. */
@Configuration(proxyBeanMethods = false)
public class YardLists {
    @Bean
    static BoatsOfYard boatsOfYard(OpenYard yard) {
        return new BoatsOfYard(yard);
    }
}
