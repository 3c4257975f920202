package sternwright.app.web.page;

/**
 * What stands over every page.
 *
 * @param name the yard's name
 * @param invented whether it is a yard to try the program on
 */
public record YardSign(String name, boolean invented) {}
