package sternwright.app.web.page;

import jakarta.annotation.security.PermitAll;
import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.dao.DataAccessException;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.multipart.MaxUploadSizeExceededException;
import org.springframework.web.multipart.MultipartException;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.desk.derived.Busy;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.store.StoreRefused;

/** What a person sees when something is wrong: what, and what to do. Never a stack trace. */
@Controller
@PermitAll
@ControllerAdvice
public class ErrorPages implements ErrorController {
    private static final Logger LOG = LoggerFactory.getLogger(ErrorPages.class);
    private static final long TWO_MINUTES_S = 120;

    private final org.springframework.beans.factory.ObjectProvider<PageFrame> frame;

    ErrorPages(org.springframework.beans.factory.ObjectProvider<PageFrame> frame) {
        this.frame = frame;
    }

    /**
     * What the page of an error shows.
     *
     * @param status the number browsers know
     * @param key which words say it
     * @param pause how long to wait before trying again, in words; empty if waiting does not help
     */
    public record View(int status, String key, String pause) {}

    /**
     * What the page of problems shows.
     *
     * @param problems every problem of what came in or of the yard's files
     */
    public record Refused(List<Problem> problems) {}

    @RequestMapping("/error")
    Object show(Page page, HttpServletRequest request, HttpServletResponse response) {
        Object code = request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE);
        int status = code instanceof Integer number ? number : HttpStatus.NOT_FOUND.value();
        if (status >= HttpStatus.INTERNAL_SERVER_ERROR.value()) {
            LOG.error(
                    "{} could not be answered: status {}",
                    withoutSecrets(request.getAttribute(RequestDispatcher.ERROR_REQUEST_URI)),
                    status);
        }
        return forProgram(request)
                ? ProblemDetail.forStatusAndDetail(HttpStatus.valueOf(status), page.say(key(page, status) + ".lead"))
                : shown(page, status, response);
    }

    private static boolean forProgram(HttpServletRequest request) {
        String path = String.valueOf(request.getAttribute(RequestDispatcher.ERROR_REQUEST_URI));
        return path.startsWith("/api/") || path.startsWith("/calendar/");
    }

    private static String key(Page page, int status) {
        return page.words().find("error." + status + ".title").isPresent() ? "error." + status : "error.other";
    }

    private static ModelAndView shown(Page page, int status, HttpServletResponse response) {
        ModelAndView shown =
                page.show(Section.NONE, "page/error", new View(status, key(page, status), pause(page, response)));
        shown.setStatus(HttpStatus.valueOf(status));
        return shown;
    }

    private static String pause(Page page, HttpServletResponse response) {
        String said = response.getHeader(HttpHeaders.RETRY_AFTER);
        if (said == null || !said.matches("\\d{1,6}")) {
            return "";
        }
        long seconds = Long.parseLong(said);
        return seconds < TWO_MINUTES_S
                ? page.say("error.wait.seconds", seconds)
                : page.say("error.wait.minutes", (seconds + 59) / 60);
    }

    /** An address without what must not stand in a log: the secrets of links and calendars. */
    static String withoutSecrets(@Nullable Object path) {
        return String.valueOf(path).replaceAll("^/(password|estimate|calendar)/[^/]+", "/$1/…");
    }

    /** The yard's store refuses: its disk is full, or it cannot be reached. Nothing was written. */
    @ExceptionHandler({StoreRefused.class, DataAccessException.class})
    ModelAndView refused(Exception trouble, HttpServletRequest request, HttpServletResponse response) {
        LOG.error("{} could not be answered", withoutSecrets(request.getRequestURI()), trouble);
        HttpStatus status =
                StoreRefused.full(trouble) ? HttpStatus.INSUFFICIENT_STORAGE : HttpStatus.SERVICE_UNAVAILABLE;
        return shown(new Page(request, frame.getObject()), status.value(), response);
    }

    /** So much is being made that this would only wait. */
    @ExceptionHandler(Busy.class)
    ModelAndView busy(Busy busy, HttpServletRequest request, HttpServletResponse response) {
        response.setHeader(HttpHeaders.RETRY_AFTER, Integer.toString(Busy.AGAIN_S));
        return shown(new Page(request, frame.getObject()), HttpStatus.SERVICE_UNAVAILABLE.value(), response);
    }

    /** A form that should carry a file came without one, torn, or too large. */
    @ExceptionHandler(MultipartException.class)
    ModelAndView torn(MultipartException torn, HttpServletRequest request, HttpServletResponse response) {
        HttpStatus status =
                torn instanceof MaxUploadSizeExceededException ? HttpStatus.CONTENT_TOO_LARGE : HttpStatus.BAD_REQUEST;
        return shown(new Page(request, frame.getObject()), status.value(), response);
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
