package sternwright.app.desk.season.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class RunCourseTest {
    @Test
    void whatSaysNothingNewIsLeftOutAndTheRestComesBackAsWritten() {
        RunCourse course = RunCourse.of(null)
                .with(new RunCourse.Point(0.5, 1600, 400))
                .with(new RunCourse.Point(1, 1600, 400))
                .with(new RunCourse.Point(1.5, 1500.25, 410));
        assertEquals(2, course.points().size());
        assertEquals(course, RunCourse.of(course.text()));
    }

    @Test
    void aLongCourseIsThinnedAndKeepsItsEnds() {
        RunCourse course = RunCourse.of("");
        for (int i = 0; i < 5000; i++) {
            course = course.with(new RunCourse.Point(i, 10_000 - i, 100));
        }
        assertTrue(
                course.points().size() <= RunCourse.MOST,
                "points " + course.points().size());
        assertEquals(0, course.points().get(0).spentS());
        assertEquals(4999, course.points().get(course.points().size() - 1).spentS());
    }
}
