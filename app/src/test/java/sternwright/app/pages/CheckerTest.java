package sternwright.app.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import sternwright.app.account.Role;

/** The checker finds what it is there to find: a page that is known to be good, with a fault put in. */
class CheckerTest extends PageTest {
    @Test
    void aFaultThatWasPutInIsFound() {
        as(Role.SURVEYOR, page -> {
            open(page, "/boats");
            assertEquals(java.util.List.of(), faults(page));
            page.evaluate("() => document.querySelector('label[for=find]').removeAttribute('for')");
            assertTrue(
                    faults(page).stream().anyMatch(f -> f.startsWith("label")),
                    faults(page).toString());
        });
    }

    @Test
    void aPageWiderThanThePhoneIsFound() {
        as(Role.SURVEYOR, Screen.PHONE_LIGHT, page -> {
            open(page, "/boats");
            page.evaluate("() => { const p = document.querySelector('h1'); p.textContent = 'x'.repeat(10);"
                    + " p.setAttribute('width', ''); p.animate([{minWidth: '900px'}, {minWidth: '900px'}],"
                    + " {duration: 1e6}); }");
            org.junit.jupiter.api.Assertions.assertThrows(
                    AssertionError.class, () -> look(page, "seeded-too-wide", Screen.PHONE_LIGHT));
        });
    }
}
