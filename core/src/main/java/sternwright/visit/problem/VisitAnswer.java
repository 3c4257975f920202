package sternwright.visit.problem;

/** What the solver says: a plan, or why there is none. */
public sealed interface VisitAnswer permits VisitPlan, VisitRefusal {}
