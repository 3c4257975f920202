package sternwright.app.web.access;

import jakarta.annotation.security.PermitAll;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** May be called without signing in. Its path must also stand in {@link Access#OPEN}. */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.METHOD, ElementType.TYPE})
@PermitAll
public @interface OpenToAnyone {}
