package sternwright.app.web.access;

import jakarta.annotation.security.RolesAllowed;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** May be called by everybody who writes something down on board: manager, office and technician. */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.METHOD, ElementType.TYPE})
@RolesAllowed({"MANAGER", "OFFICE", "TECHNICIAN"})
public @interface ForCrew {}
