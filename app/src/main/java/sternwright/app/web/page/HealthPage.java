package sternwright.app.web.page;

import jakarta.annotation.security.PermitAll;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** Says to a watching program whether this one works; nothing about how. */
@RestController
@PermitAll
class HealthPage {
    private final JdbcClient jdbc;

    HealthPage(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @GetMapping(path = "/health", produces = "text/plain")
    ResponseEntity<String> health() {
        try {
            jdbc.sql("select 1").query(Integer.class).single();
            return ResponseEntity.ok().cacheControl(CacheControl.noStore()).body("up\n");
        } catch (org.springframework.dao.DataAccessException e) {
            return ResponseEntity.status(HttpStatus.SERVICE_UNAVAILABLE).body("down\n");
        }
    }
}
