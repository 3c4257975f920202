package sternwright.app.web.page;

import jakarta.annotation.security.PermitAll;
import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;

/** What a person sees when something is wrong: what, and what to do. Never a stack trace. */
@Controller
@PermitAll
@ControllerAdvice
public class ErrorPages implements ErrorController {
    private static final Logger LOG = LoggerFactory.getLogger(ErrorPages.class);

    private final org.springframework.beans.factory.ObjectProvider<PageFrame> frame;

    ErrorPages(org.springframework.beans.factory.ObjectProvider<PageFrame> frame) {
        this.frame = frame;
    }

    /**
     * What the page of an error shows.
     *
     * @param status the number browsers know
     * @param key which words say it
     * @param path where it happened
     */
    public record View(int status, String key, String path) {}

    /**
     * What the page of problems shows.
     *
     * @param problems every problem of what came in or of the yard's files
     */
    public record Refused(List<Problem> problems) {}

    @RequestMapping("/error")
    ModelAndView show(Page page, HttpServletRequest request) {
        Object code = request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE);
        int status = code instanceof Integer number ? number : HttpStatus.NOT_FOUND.value();
        if (status >= HttpStatus.INTERNAL_SERVER_ERROR.value()) {
            LOG.error(
                    "{} could not be answered: status {}",
                    request.getAttribute(RequestDispatcher.ERROR_REQUEST_URI),
                    status);
        }
        Object path = request.getAttribute(RequestDispatcher.ERROR_REQUEST_URI);
        String key = page.words().find("error." + status + ".title").isPresent() ? "error." + status : "error.other";
        ModelAndView shown =
                page.show(Section.NONE, "page/error", new View(status, key, path == null ? "" : path.toString()));
        shown.setStatus(HttpStatus.valueOf(status));
        return shown;
    }

    /** What came in cannot be used, or the yard's files cannot be read: every problem is listed. */
    @ExceptionHandler(BadInput.class)
    ModelAndView refused(BadInput bad, HttpServletRequest request) {
        ModelAndView shown =
                new Page(request, frame.getObject()).show(Section.NONE, "page/refused", new Refused(bad.problems()));
        shown.setStatus(HttpStatus.UNPROCESSABLE_CONTENT);
        return shown;
    }
}
