package sternwright.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sternwright.visit.planned.Named;

/** A work and its part, no thing said twice. */
class NamedTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "renew hoses | hoses and clips | renew hoses",
                "inspect hoses and clips | hoses and clips | inspect hoses and clips",
                "change engine oil and filter | engine, port | change engine oil and filter, port",
                "inspect and weigh anodes | propeller anode | inspect and weigh anodes, propeller anode",
                "inspect mounts | engine mount aft, starboard | inspect mounts, engine mount aft, starboard",
                "recommission and sea trial | engine | recommission and sea trial, engine"
            })
    void thePartIsLeftOutWhereTheWorkNamesIt(String work, String part, String expected) {
        assertEquals(expected, Named.of(work, part));
    }
}
