package sternwright.app.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** No text of a page stands in its template, every text that is asked for is there, and every text can be formatted. */
class PageWordsTest {
    private static final Path TEMPLATES = Path.of("src/main/jte/web");
    private static final Path CODE = Path.of("src/main/java/sternwright/app/web");
    private static final Path WORDS = Path.of("src/main/resources/sternwright/app/web/words");

    private static final Pattern LETTERS = Pattern.compile("\\p{L}{2,}");
    private static final Pattern SPOKEN =
            Pattern.compile("\\s(?:aria-label|title|alt|placeholder|data-label|content)=\"([^\"]*)\"");
    private static final Pattern KEY = Pattern.compile("\"((?:[a-z-]+)\\.[A-Za-z0-9.-]+)\"");

    @Test
    void noTextStandsInATemplate() throws IOException {
        List<String> found = new ArrayList<>();
        for (Path file : files(TEMPLATES, ".jte")) {
            String text = visible(Files.readString(file));
            text.lines()
                    .map(String::strip)
                    .filter(l -> LETTERS.matcher(l).find())
                    .forEach(l -> found.add(file + ": " + l));
        }
        assertEquals(List.of(), found, "texts belong into " + WORDS);
    }

    /** What a reader would see of a template: without its commands, its expressions and its tags. */
    static String visible(String template) {
        String plain = template.replaceAll("(?s)<%--.*?--%>", "")
                .replaceAll("(?m)^@(import|param).*$", "")
                .replaceAll("<meta name=\"[a-z-]+\" content=('|\")[^'>]*('|\")>", "");
        plain = withoutBraces(plain.replace("$unsafe{", "${"));
        StringBuilder spoken = new StringBuilder();
        Matcher attributes = SPOKEN.matcher(plain);
        while (attributes.find()) {
            spoken.append('\n').append(attributes.group(1));
        }
        plain = withoutCommands(plain);
        return plain.replaceAll("(?s)<[^>]*>", "\n") + spoken;
    }

    private static String withoutBraces(String text) {
        StringBuilder out = new StringBuilder();
        int depth = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean opens = (c == '$' || c == '!') && i + 1 < text.length() && text.charAt(i + 1) == '{';
            if (opens || depth > 0 && c == '{') {
                depth++;
                i += opens ? 1 : 0;
            } else if (depth > 0 && c == '}') {
                depth--;
            } else if (depth == 0) {
                out.append(c);
            }
        }
        return out.toString();
    }

    private static String withoutCommands(String text) {
        StringBuilder out = new StringBuilder();
        Matcher command = Pattern.compile("@(template\\.[\\w.-]+|elseif|if|for|else|endif|endfor|raw|endraw)")
                .matcher(text);
        int at = 0;
        while (command.find(at)) {
            out.append(text, at, command.start());
            at = command.end();
            if (at < text.length() && text.charAt(at) == '(') {
                at = afterBracket(text, at, out);
            }
        }
        return out.append(text.substring(at)).toString();
    }

    /** Leaves a command's bracket; what stands in content blocks between grave accents is looked at again. */
    private static int afterBracket(String text, int from, StringBuilder out) {
        int depth = 0;
        for (int i = from; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '@' && i + 1 < text.length() && text.charAt(i + 1) == '`') {
                int end = blockEnd(text, i + 2);
                out.append(withoutCommands(text.substring(i + 2, end)));
                i = end;
            } else if (c == '(') {
                depth++;
            } else if (c == ')' && --depth == 0) {
                return i + 1;
            }
        }
        return text.length();
    }

    private static int blockEnd(String text, int from) {
        int depth = 1;
        for (int i = from; i < text.length(); i++) {
            if (text.charAt(i) == '`') {
                boolean opens = text.charAt(i - 1) == '@';
                depth += opens ? 1 : -1;
                if (depth == 0) {
                    return i;
                }
            }
        }
        return text.length();
    }

    @Test
    void theScanFindsATextThatWasPutIn() {
        String template =
                "@param Page page\n@template.web.layout(page = page, content = @`\n<h1>${page.say(\"a.b\")}</h1>"
                        + "@if(x.y(1))<p title=\"Seen\">Written here</p>@endif`)";
        assertEquals(
                List.of("Written here", "Seen"),
                visible(template)
                        .lines()
                        .map(String::strip)
                        .filter(l -> !l.isEmpty())
                        .toList());
    }

    @Test
    void everyTextThatIsAskedForIsThere() throws IOException {
        TreeSet<String> missing = new TreeSet<>();
        Properties all = all();
        List<Path> places = new ArrayList<>(files(TEMPLATES, ".jte"));
        places.addAll(files(CODE, ".java"));
        for (Path file : places) {
            Matcher asked = Pattern.compile(
                            "(?:say|go|Missing)\\(\\s*(?:\"[^\"]*\",\\s*)?" + KEY.pattern() + "\\s*[,)]")
                    .matcher(Files.readString(file));
            while (asked.find()) {
                if (!all.containsKey(asked.group(1))) {
                    missing.add(asked.group(1) + " in " + file.getFileName());
                }
            }
        }
        assertEquals(new TreeSet<>(), missing);
    }

    @Test
    void everyTextCanBeFormatted() throws IOException {
        for (Path file : files(WORDS, ".properties")) {
            Properties texts = read(file);
            String name = file.getFileName().toString().replace(".properties", "");
            for (String key : texts.stringPropertyNames()) {
                String text = texts.getProperty(key);
                assertEquals(name, key.substring(0, key.indexOf('.')), key + " stands in the wrong file");
                assertFalse(text.contains("'"), key + ": use \u2019, the straight one is a command to the formatter");
                assertFalse(
                        new MessageFormat(text, Locale.UK)
                                .format(new Object[] {2, 3, 4, 5, 6, 7, 8, 9})
                                .isBlank(),
                        key);
            }
        }
    }

    private static Properties all() throws IOException {
        Properties all = new Properties();
        for (Path file : files(WORDS, ".properties")) {
            all.putAll(read(file));
        }
        return all;
    }

    private static Properties read(Path file) {
        Properties texts = new Properties();
        try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            texts.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return texts;
    }

    private static List<Path> files(Path root, String ending) throws IOException {
        try (Stream<Path> files = Files.walk(root)) {
            return files.filter(f -> f.toString().endsWith(ending)).sorted().toList();
        }
    }
}
