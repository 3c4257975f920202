package sternwright.app.web.sign;

import java.util.Locale;
import org.springframework.validation.Errors;
import sternwright.app.account.Passwords;

/** Judges a password that is typed twice. */
final class NewPassword {
    private NewPassword() {}

    /** Notes what is wrong at the fields {@code password} and {@code again}. */
    static void judge(String password, String again, String name, Errors errors) {
        Passwords.refused(password, name)
                .ifPresent(why -> errors.rejectValue(
                        "password",
                        why.name().toLowerCase(Locale.ROOT),
                        new Object[] {Passwords.SHORTEST, Passwords.LONGEST},
                        ""));
        if (!errors.hasFieldErrors("password") && !password.equals(again)) {
            errors.rejectValue("again", "differs");
        }
    }
}
