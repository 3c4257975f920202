/**
 * Paper: job cards and estimates as one HTML file each and as PDF.
 *
 * <p>Comes in: {@link sternwright.job.JobCard} and {@link sternwright.job.estimate.Estimate}. Goes out: text of a self-contained
 * page (styles, fonts and drawing inside it) and the bytes of a tagged PDF. Pages are JTE templates compiled with the program
 * ({@code src/main/jte}); the PDF is laid out from the same page by openhtmltopdf. Numbers, money, dates and units are worded
 * in one place, {@link sternwright.app.paper.Figures}. Nothing here computes or decides.
 *
 * <p>Typeface: Source Serif 4, SIL Open Font License 1.1, unchanged; its licence lies beside the font files.
 */
@NullMarked
package sternwright.app.paper;

import org.jspecify.annotations.NullMarked;
