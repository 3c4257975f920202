package sternwright.app.truth;

import java.util.LinkedHashMap;
import java.util.Map;
import sternwright.app.files.kind.BerthsShape;
import sternwright.app.files.kind.BoatShape;
import sternwright.app.files.kind.CatalogueShape;
import sternwright.app.files.kind.ProgrammeShape;
import sternwright.app.files.kind.ResourcesShape;
import sternwright.app.files.kind.YardShape;
import sternwright.app.files.shape.Block;

/** The kinds of file that have a published schema. */
enum Published {
    YARD("yard", "yard.yaml", YardShape.YARD),
    BERTHS("berths", "berths.yaml", BerthsShape.BERTHS),
    BOAT("boat", "boats/ID.yaml", BoatShape.BOAT),
    PROGRAMME("programme", "programmes/*.yaml", ProgrammeShape.PROGRAMME),
    CATALOGUE("catalogue", "catalogue.yaml", CatalogueShape.CATALOGUE),
    RESOURCES("resources", "resources.yaml", ResourcesShape.RESOURCES);

    final String id;
    final String file;
    final Block<?> shape;

    Published(String id, String file, Block<?> shape) {
        this.id = id;
        this.file = file;
        this.shape = shape;
    }

    Map<String, Object> schema() {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("$id", "urn:sternwright:schema:" + id);
        schema.put("title", file);
        schema.putAll(shape.schema());
        return schema;
    }
}
