package org.setpower.addin;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.beans.PropertyValue;
import com.sun.star.container.XHierarchicalNameAccess;
import com.sun.star.container.XNameAccess;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.sheet.FunctionArgument;
import com.sun.star.uno.UnoRuntime;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.setpower.office.Office;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.Parameter;
import org.setpower.registry.groups.FunctionRegistry;
import org.setpower.registry.text.FunctionTexts;
import org.setpower.text.MessageCatalog;

/** What the function wizard knows is what the catalogue declares. */
@ExtendWith(SharedOffice.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RegistrationIT {
  private XNameAccess descriptions;

  @BeforeAll
  void ask(Office office) {
    descriptions = office.service(XNameAccess.class, "com.sun.star.sheet.FunctionDescriptions");
  }

  /** In the office of the tests, whose language is American English. */
  @Test
  void the_wizard_shows_every_function_with_its_parameters() throws com.sun.star.uno.Exception {
    FunctionTexts american = FunctionTexts.into("en-US");
    for (FunctionSpec f : FunctionRegistry.all()) {
      assertThat(descriptions.hasByName(f.name())).as(f.name()).isTrue();
      Map<String, Object> shown =
          Arrays.stream((PropertyValue[]) descriptions.getByName(f.name()))
              .collect(Collectors.toMap(p -> p.Name, p -> p.Value));
      assertThat(shown.get("Description")).isEqualTo(american.sentence(f));
      FunctionArgument[] arguments =
          shown.get("Arguments") instanceof FunctionArgument[] some
              ? some
              : new FunctionArgument[0];
      assertThat(Arrays.stream(arguments).map(a -> a.Name))
          .as(f.name())
          .containsExactlyElementsOf(names(f, Parameter::name));
      assertThat(Arrays.stream(arguments).map(a -> a.Description))
          .as(f.name())
          .containsExactlyElementsOf(names(f, american::description));
    }
  }

  @ParameterizedTest
  @MethodSource("languages")
  void descriptions_come_in_other_languages_and_names_do_not(String language, Office office)
      throws com.sun.star.uno.Exception {
    FunctionTexts translation = FunctionTexts.into(language);
    XHierarchicalNameAccess addIn = addIn(office, language);
    for (FunctionSpec f : FunctionRegistry.all()) {
      String node = "AddInFunctions/" + f.methodName();
      assertThat(addIn.getByHierarchicalName(node + "/DisplayName")).isEqualTo(f.name());
      assertThat(addIn.getByHierarchicalName(node + "/Description"))
          .isEqualTo(translation.sentence(f));
      XNameAccess parameters =
          UnoRuntime.queryInterface(
              XNameAccess.class, addIn.getByHierarchicalName(node + "/Parameters"));
      assertThat(parameters.getElementNames()).hasSize(f.parameters().size());
      for (Parameter<?> p : f.parameters()) {
        String name = camelCase(p.name());
        XNameAccess parameter =
            UnoRuntime.queryInterface(XNameAccess.class, parameters.getByName(name));
        assertThat(parameter.getByName("DisplayName")).isEqualTo(p.name());
        assertThat(parameter.getByName("Description")).isEqualTo(translation.description(p));
      }
    }
  }

  static Stream<String> languages() {
    return Stream.concat(MessageCatalog.files().stream(), Stream.of("en-GB"));
  }

  /** An office whose language has no texts of ours reads the American ones. */
  @Test
  void any_other_office_reads_american_english(Office office) throws com.sun.star.uno.Exception {
    FunctionTexts american = FunctionTexts.into("en-US");
    XHierarchicalNameAccess addIn = addIn(office, "it");
    for (FunctionSpec f : FunctionRegistry.all()) {
      assertThat(addIn.getByHierarchicalName("AddInFunctions/" + f.methodName() + "/Description"))
          .isEqualTo(american.sentence(f));
    }
  }

  /** The registration as an office in this language reads it. */
  private static XHierarchicalNameAccess addIn(Office office, String language)
      throws com.sun.star.uno.Exception {
    XMultiServiceFactory provider =
        office.service(
            XMultiServiceFactory.class, "com.sun.star.configuration.ConfigurationProvider");
    Object access =
        provider.createInstanceWithArguments(
            "com.sun.star.configuration.ConfigurationAccess",
            new Object[] {
              value("nodepath", "/org.openoffice.Office.CalcAddIns/AddInInfo"),
              value("locale", language)
            });
    XNameAccess all = UnoRuntime.queryInterface(XNameAccess.class, access);
    return UnoRuntime.queryInterface(
        XHierarchicalNameAccess.class, all.getByName("org.setpower.Functions"));
  }

  private static PropertyValue value(String name, Object value) {
    PropertyValue property = new PropertyValue();
    property.Name = name;
    property.Value = value;
    return property;
  }

  private static String camelCase(String name) {
    return Pattern.compile("_(.)")
        .matcher(name)
        .replaceAll(m -> m.group(1).toUpperCase(Locale.ROOT));
  }

  private static java.util.List<String> names(FunctionSpec f, Function<Parameter<?>, String> what) {
    return f.parameters().stream().map(what).toList();
  }
}
