package growingon.load;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.classmate.ResolvedType;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.github.victools.jsonschema.generator.FieldScope;
import com.github.victools.jsonschema.generator.Option;
import com.github.victools.jsonschema.generator.OptionPreset;
import com.github.victools.jsonschema.generator.SchemaGenerator;
import com.github.victools.jsonschema.generator.SchemaGeneratorConfig;
import com.github.victools.jsonschema.generator.SchemaGeneratorConfigBuilder;
import com.github.victools.jsonschema.generator.SchemaVersion;
import com.github.victools.jsonschema.generator.TypeContext;
import growingon.load.cell.Cell;
import growingon.load.settings.PlanShape;
import growingon.load.source.JsonShape;
import growingon.load.source.Key;
import growingon.load.source.NumberOrByName;
import growingon.load.table.NurseryShape;
import growingon.load.table.species.SpeciesShape;
import growingon.nursery.species.Curve;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The JSON Schemas (Draft 2020-12) are made from the shapes that the reader checks files against,
 * and are kept with the sources, so that an editor can complete and check a file.
 */
class SchemaTest {
  private static final String AGAIN = "mvn -q test -Dtest=SchemaTest -Dschemas.write=true";

  private static final Map<String, Class<? extends Record>> SHAPES =
      Map.of("plan", PlanShape.class, "nursery", NurseryShape.class, "species", SpeciesShape.class);

  @ParameterizedTest
  @ValueSource(strings = {"plan", "nursery", "species"})
  void committedSchema_isThatOfTheCode(String name) throws IOException {
    Path file = Path.of("src/main/resources/schemas", name + ".schema.json");
    String made = schema(SHAPES.get(name));
    if (Boolean.getBoolean("schemas.write")) {
      Files.createDirectories(file.getParent());
      Files.writeString(file, made);
    }
    assertThat(file).as("make the schemas again with: " + AGAIN).exists();
    assertThat(Files.readString(file))
        .as("the schema is stale; make it again with: " + AGAIN)
        .isEqualTo(made);
  }

  @ParameterizedTest
  @ValueSource(strings = {"plan", "nursery", "species"})
  void schema_hasEveryKeyOfItsShape(String name) throws JsonProcessingException {
    JsonNode schema = new ObjectMapper().readTree(schema(SHAPES.get(name)));

    assertThat(schema.get("$schema").asText())
        .isEqualTo("https://json-schema.org/draft/2020-12/schema");
    assertThat(schema.get("additionalProperties").asBoolean(true)).isFalse();
    assertThat(schema.get("properties").fieldNames())
        .toIterable()
        .containsExactlyInAnyOrderElementsOf(JsonShape.keys(SHAPES.get(name)).keySet());
  }

  private static String schema(Class<?> shape) throws JsonProcessingException {
    JsonNode schema = new SchemaGenerator(config()).generateSchema(shape);
    return new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsString(schema) + "\n";
  }

  private static SchemaGeneratorConfig config() {
    SchemaGeneratorConfigBuilder builder =
        new SchemaGeneratorConfigBuilder(SchemaVersion.DRAFT_2020_12, OptionPreset.PLAIN_JSON)
            .with(
                Option.FORBIDDEN_ADDITIONAL_PROPERTIES_BY_DEFAULT,
                Option.MAP_VALUES_AS_ADDITIONAL_PROPERTIES,
                Option.INLINE_ALL_SCHEMAS);
    builder
        .forFields()
        .withPropertyNameOverrideResolver(field -> key(field).map(Key::value).orElse(null))
        .withDescriptionResolver(field -> key(field).map(key -> says(field, key)).orElse(null))
        .withTargetTypeOverridesResolver(SchemaTest::sorts)
        .withRequiredCheck(field -> key(field).map(Key::needed).orElse(false))
        .withEnumResolver(
            field ->
                isLaw(field)
                    ? Stream.of(Curve.Law.values()).map(Curve.Law::toString).toList()
                    : key(field)
                        .filter(key -> key.words().length > 0)
                        .map(key -> Arrays.asList(key.words()))
                        .orElse(null))
        .withInstanceAttributeOverride((node, field, context) -> limit(node, field));
    return builder.build();
  }

  private static boolean isLaw(FieldScope field) {
    return field.getDeclaredType().getErasedType() == Curve.Law.class;
  }

  /** What a key is; of a growth law the equations of all there are. */
  private static String says(FieldScope field, Key key) {
    return isLaw(field)
        ? Stream.of(Curve.Law.values())
            .map(law -> law + " " + law.equation())
            .collect(Collectors.joining("; "))
        : key.says();
  }

  /** A word for a law; a number, or an object of numbers, where a value may be either. */
  private static List<ResolvedType> sorts(FieldScope field) {
    TypeContext types = field.getContext();
    if (isLaw(field)) {
      return List.of(types.resolve(String.class));
    }
    return field.getType().getErasedType() == NumberOrByName.class
        ? List.of(types.resolve(Double.class), types.resolve(Map.class, String.class, Double.class))
        : null;
  }

  private static Optional<Key> key(FieldScope field) {
    return Optional.ofNullable(field.getAnnotation(Key.class));
  }

  /** Least and greatest numbers; those of a list or map hold for each of its values. */
  private static void limit(ObjectNode node, FieldScope field) {
    key(field)
        .filter(key -> !field.isFakeContainerItemScope())
        .ifPresent(
            key -> {
              if (key.items() > 0) {
                node.put("minItems", key.items()).put("maxItems", key.items());
              }
              ObjectNode numbers = numbers(node);
              if (Double.isFinite(key.least())) {
                numbers.put("minimum", plain(key.least()));
              }
              if (Double.isFinite(key.most())) {
                numbers.put("maximum", plain(key.most()));
              }
            });
  }

  private static BigDecimal plain(double limit) {
    return new BigDecimal(Cell.Number.plain(limit));
  }

  private static ObjectNode numbers(ObjectNode node) {
    if (node.get("items") instanceof ObjectNode items) {
      return items;
    }
    return node.get("additionalProperties") instanceof ObjectNode values ? values : node;
  }
}
