package org.setpower.addin;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.beans.PropertyValue;
import com.sun.star.container.XNameAccess;
import com.sun.star.sheet.FunctionArgument;
import java.util.Arrays;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.office.Office;
import org.setpower.sheet.Catalogue;
import org.setpower.sheet.FunctionSpec;
import org.setpower.sheet.Parameter;

/** What the function wizard knows is what the catalogue declares. */
@ExtendWith(SharedOffice.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RegistrationIT {
  private XNameAccess descriptions;

  @BeforeAll
  void ask(Office office) {
    descriptions = office.service(XNameAccess.class, "com.sun.star.sheet.FunctionDescriptions");
  }

  @Test
  void the_wizard_shows_every_function_with_its_parameters() throws com.sun.star.uno.Exception {
    for (FunctionSpec f : Catalogue.all()) {
      assertThat(descriptions.hasByName(f.name())).as(f.name()).isTrue();
      Map<String, Object> shown =
          Arrays.stream((PropertyValue[]) descriptions.getByName(f.name()))
              .collect(Collectors.toMap(p -> p.Name, p -> p.Value));
      assertThat(shown.get("Description")).isEqualTo(f.sentence());
      FunctionArgument[] arguments =
          shown.get("Arguments") instanceof FunctionArgument[] some
              ? some
              : new FunctionArgument[0];
      assertThat(Arrays.stream(arguments).map(a -> a.Name))
          .as(f.name())
          .containsExactlyElementsOf(names(f, Parameter::name));
      assertThat(Arrays.stream(arguments).map(a -> a.Description))
          .as(f.name())
          .containsExactlyElementsOf(names(f, Parameter::description));
    }
  }

  private static java.util.List<String> names(FunctionSpec f, Function<Parameter<?>, String> what) {
    return f.parameters().stream().map(what).toList();
  }
}
