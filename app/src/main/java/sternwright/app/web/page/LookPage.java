package sternwright.app.web.page;

import jakarta.annotation.security.PermitAll;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Duration;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseCookie;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** Chooses light or dark for a browser and comes back to the page it was chosen on. */
@Controller
@PermitAll
class LookPage {
    @PostMapping("/look")
    ModelAndView choose(
            Page page,
            HttpServletRequest request,
            HttpServletResponse response,
            @RequestParam("look") String look,
            @RequestParam(name = "back", defaultValue = "/") String back) {
        ResponseCookie cookie = ResponseCookie.from(Look.COOKIE, Look.of(look).word())
                .path("/")
                .maxAge(Duration.ofDays(365))
                .httpOnly(true)
                .secure(request.isSecure())
                .sameSite("Lax")
                .build();
        response.addHeader(HttpHeaders.SET_COOKIE, cookie.toString());
        return page.go(own(back), "");
    }

    /** Only a path of this program: nobody is led elsewhere by a form. */
    private static String own(String back) {
        return back.matches("/[\\w/.~%-]*") && !back.startsWith("//") ? back : "/";
    }
}
