/**
 * The general scheduling core: one project of activities with precedence and shared resources, to be finished as early as possible
 * (an engine change, a refit).
 *
 * <p>In comes a {@link sternwright.season.project.Project}; out comes a {@link sternwright.season.project.ProjectPlan} with a lower
 * bound. Activity lists are turned into schedules by the serial scheme (R. Kolisch, Eur. J. Oper. Res. 90, 1996, 320-333), justified to
 * the right and to the left (V. Valls, F. Ballestin, S. Quintanilla, Eur. J. Oper. Res. 165, 2005, 375-386) and crossed and
 * disturbed in a population. Published instances with known best values measure it (R. Kolisch, A. Sprecher, PSPLIB).
 */
@NullMarked
package sternwright.season.project;

import org.jspecify.annotations.NullMarked;
