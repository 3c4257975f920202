package sternwright.app.serve;

import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Set;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.EnableAutoConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import sternwright.app.desk.derived.MadeOnce;
import sternwright.app.desk.documents.BoatDocuments;
import sternwright.app.desk.keeping.YardPlace;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.season.board.JudgedRuns;
import sternwright.app.desk.season.board.SeasonBoards;
import sternwright.app.desk.season.board.TriedMoves;
import sternwright.app.desk.season.run.SeasonJobs;
import sternwright.app.store.Store;
import sternwright.app.web.access.FirstStartCode;
import sternwright.app.web.access.KnownHosts;

/** Everything the pages need, put together by Spring. Only {@code sternwright serve} loads it. */
@Configuration(proxyBeanMethods = false)
@EnableAutoConfiguration
@Import(HttpsServing.class)
@ComponentScan({"sternwright.app.account", "sternwright.app.issued", "sternwright.app.web", "sternwright.app.api"})
public class ServeApplication {
    /** The clock; with a day given it stands at that day's noon, so that a demonstration can be repeated. */
    @Bean
    static Clock clock(@Value("${sternwright.today:}") String today) {
        ZoneId zone = ZoneId.systemDefault();
        return today.isEmpty()
                ? Clock.system(zone)
                : Clock.offset(
                        Clock.system(zone),
                        java.time.Duration.between(
                                java.time.Instant.now().atZone(zone),
                                LocalDate.parse(today).atTime(LocalTime.NOON).atZone(zone)));
    }

    @Bean
    static Store store(YardPlace place) {
        return place.store().orElseThrow();
    }

    @Bean
    static OpenYard openYard(YardPlace place, Clock clock) {
        return new OpenYard(place, clock);
    }

    @Bean
    static MadeOnce madeOnce() {
        return new MadeOnce();
    }

    @Bean
    static GivingBack givingBack() {
        return new GivingBack();
    }

    @Bean
    static ReadAhead readAhead(OpenYard yard) {
        return new ReadAhead(yard);
    }

    @Bean(initMethod = "start")
    static SeasonJobs seasonJobs(Store store) {
        return new SeasonJobs(store, SeasonJobs.Pace.USUAL, System::nanoTime);
    }

    @Bean
    static SeasonBoards seasonBoards(OpenYard yard) {
        return new SeasonBoards(yard, System::nanoTime);
    }

    @Bean
    static JudgedRuns judgedRuns(OpenYard yard, SeasonJobs jobs) {
        return new JudgedRuns(yard, jobs);
    }

    @Bean
    static TriedMoves triedMoves(OpenYard yard, SeasonBoards boards) {
        return new TriedMoves(yard, boards, System::nanoTime);
    }

    @Bean
    static BoatDocuments documents(Store store) {
        return new BoatDocuments(store.attachments());
    }

    @Bean
    static KnownHosts knownHosts(@Value("${sternwright.hosts:}") Set<String> names) {
        return new KnownHosts(names);
    }

    @Bean
    static FirstStartCode firstStartCode(@Value("${sternwright.first-start-code:}") String code) {
        return new FirstStartCode(code);
    }
}
