package sternwright.app.api;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.TypeMismatchException;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.dao.DataAccessException;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import org.springframework.web.context.request.WebRequest;
import org.springframework.web.servlet.mvc.method.annotation.ResponseEntityExceptionHandler;
import sternwright.app.desk.derived.Busy;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.KnownNames;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.shelf.EditConflict;
import sternwright.app.store.StoreRefused;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.exc.MismatchedInputException;
import tools.jackson.databind.exc.UnrecognizedPropertyException;

/** Answers what cannot be done as problem details (RFC 9457): what, where, what was expected, what to do. */
@RestControllerAdvice(basePackages = "sternwright.app.api")
@Order(Ordered.HIGHEST_PRECEDENCE)
public class ApiProblems extends ResponseEntityExceptionHandler {
    private static final Logger LOG = LoggerFactory.getLogger(ApiProblems.class);

    /** Somebody else changed the text since it was read. */
    @ExceptionHandler(EditConflict.class)
    ProblemDetail conflict(EditConflict conflict) {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(
                HttpStatus.PRECONDITION_FAILED,
                conflict.name() + " was changed since you read it. Read it again and repeat your change on it.");
        conflict.theirs().ifPresent(t -> problem.setProperty("version", t.version()));
        conflict.theirs().ifPresent(t -> problem.setProperty("changed-by", t.by()));
        return problem;
    }

    /** What was read and worked on is not what stands there now. */
    @ExceptionHandler(OtherVersion.class)
    ProblemDetail other(OtherVersion other) {
        return ProblemDetail.forStatusAndDetail(
                HttpStatus.PRECONDITION_FAILED,
                other.getMessage() + " is not what you read any more. Read it again and repeat your change on it.");
    }

    /** What came in cannot be used. */
    @ExceptionHandler(BadInput.class)
    ProblemDetail refused(BadInput bad) {
        return listed(HttpStatus.UNPROCESSABLE_CONTENT, bad.problems());
    }

    /** What the address names is not there. */
    @ExceptionHandler(NotThere.class)
    ProblemDetail missing(NotThere missing) {
        return ProblemDetail.forStatusAndDetail(HttpStatus.NOT_FOUND, String.valueOf(missing.getMessage()));
    }

    /** The yard's store refuses: its disk is full, or it cannot be reached. Nothing was written. */
    @ExceptionHandler({StoreRefused.class, DataAccessException.class})
    ProblemDetail refused(Exception trouble) {
        LOG.error("a request of another program could not be answered", trouble);
        return StoreRefused.full(trouble)
                ? ProblemDetail.forStatusAndDetail(
                        HttpStatus.INSUFFICIENT_STORAGE,
                        "The disk of the program has no room left. Nothing was written. Make room and do it again.")
                : ProblemDetail.forStatusAndDetail(
                        HttpStatus.SERVICE_UNAVAILABLE,
                        "The yard's store cannot be reached now. Nothing was written. Try again in a minute.");
    }

    /** So much is being made that this would only wait. */
    @ExceptionHandler(Busy.class)
    ResponseEntity<ProblemDetail> busy(Busy busy) {
        ProblemDetail later = ProblemDetail.forStatusAndDetail(
                HttpStatus.SERVICE_UNAVAILABLE,
                "It is being worked out, or much is for others just now. Try again in " + Busy.AGAIN_S + " seconds.");
        return ResponseEntity.status(HttpStatus.SERVICE_UNAVAILABLE)
                .header(HttpHeaders.RETRY_AFTER, Integer.toString(Busy.AGAIN_S))
                .body(later);
    }

    /** The guard answers it. */
    @ExceptionHandler(AccessDeniedException.class)
    void denied(AccessDeniedException denied) {
        throw denied;
    }

    /** A fault of the program: told in the log with its cause, and to the asker without it. */
    @ExceptionHandler(RuntimeException.class)
    ProblemDetail fault(RuntimeException fault) {
        LOG.error("a request of another program could not be answered", fault);
        return ProblemDetail.forStatusAndDetail(
                HttpStatus.INTERNAL_SERVER_ERROR, "The program made a mistake; its log says which.");
    }

    @Override
    protected @Nullable ResponseEntity<Object> handleTypeMismatch(
            TypeMismatchException wrong, HttpHeaders headers, HttpStatusCode status, WebRequest request) {
        Problem problem = new Problem(
                Objects.requireNonNullElse(wrong.getPropertyName(), "address"),
                0,
                "",
                "found \"" + wrong.getValue() + "\"",
                Expected.of(wrong.getRequiredType()),
                "");
        HttpStatus told = HttpStatus.UNPROCESSABLE_CONTENT;
        return new ResponseEntity<>(listed(told, List.of(problem)), headers, told);
    }

    @Override
    protected @Nullable ResponseEntity<Object> handleHttpMessageNotReadable(
            HttpMessageNotReadableException unread, HttpHeaders headers, HttpStatusCode status, WebRequest request) {
        Throwable cause = unread.getCause();
        Problem problem = cause instanceof JacksonException json
                ? problem(json)
                : new Problem("body", 0, "", "it cannot be read", "JSON", "");
        return new ResponseEntity<>(listed(HttpStatus.BAD_REQUEST, List.of(problem)), headers, HttpStatus.BAD_REQUEST);
    }

    private static Problem problem(JacksonException json) {
        String field = json.getPath().stream()
                .map(p -> p.getPropertyName() == null ? Integer.toString(p.getIndex()) : p.getPropertyName())
                .reduce((a, b) -> a + "." + b)
                .orElse("");
        int line =
                json.getLocation() == null ? 0 : Math.max(0, json.getLocation().getLineNr());
        if (json instanceof UnrecognizedPropertyException unknown) {
            List<String> known =
                    unknown.getKnownPropertyIds().stream().map(String::valueOf).toList();
            return new Problem(
                    "body", line, field, "unknown field", "", KnownNames.advice(unknown.getPropertyName(), known));
        }
        if (json instanceof MismatchedInputException wrong && wrong.getTargetType() != null) {
            return new Problem("body", line, field, "this cannot be taken", Expected.of(wrong.getTargetType()), "");
        }
        return new Problem("body", line, field, "this is not JSON", "JSON, RFC 8259", "");
    }

    private static ProblemDetail listed(HttpStatus status, List<Problem> problems) {
        String detail =
                problems.size() == 1 ? problems.get(0).text() : problems.size() + " problems; nothing was changed.";
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(status, detail);
        problem.setProperty("problems", problems);
        return problem;
    }
}
