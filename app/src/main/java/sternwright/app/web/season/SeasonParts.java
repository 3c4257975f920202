package sternwright.app.web.season;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.season.board.SeasonBoards;
import sternwright.app.desk.season.board.TriedMoves;

/** What is worked out behind the pages of the season; it ends with the program. */
@Configuration(proxyBeanMethods = false)
public class SeasonParts {
    @Bean
    static SeasonBoards seasonBoards(OpenYard yard) {
        return new SeasonBoards(yard, System::nanoTime);
    }

    @Bean
    static TriedMoves triedMoves(OpenYard yard, SeasonBoards boards) {
        return new TriedMoves(yard, boards, System::nanoTime);
    }
}
