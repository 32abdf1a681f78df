package org.setpower.addin;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.beans.PropertyValue;
import com.sun.star.container.XNameAccess;
import com.sun.star.sheet.FunctionArgument;
import com.sun.star.uno.AnyConverter;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.office.Office;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.groups.FunctionRegistry;

/**
 * Calc calls an argument of type any optional, whatever its place, and one of any other type
 * required. All of ours are any, so that a refusal can give its reason; the wizard learns what is
 * required from our words.
 */
@ExtendWith(SharedOffice.class)
class OptionalArgumentsIT {
  /** What the wizard knows of a function's arguments: its words by name, and which are optional. */
  private record Known(Map<String, String> words, List<Boolean> optional) {}

  private static Known known(Office office, String name) throws Exception {
    XNameAccess functions =
        office.service(XNameAccess.class, "com.sun.star.sheet.FunctionDescriptions");
    Object value =
        Stream.of((PropertyValue[]) functions.getByName(name))
            .filter(p -> p.Name.equals("Arguments"))
            .map(p -> p.Value)
            .findFirst()
            .orElseThrow();
    FunctionArgument[] arguments =
        AnyConverter.isVoid(value) ? new FunctionArgument[0] : (FunctionArgument[]) value;
    Map<String, String> words = new LinkedHashMap<>();
    Arrays.stream(arguments).forEach(a -> words.put(a.Name, a.Description));
    return new Known(words, Arrays.stream(arguments).map(a -> a.IsOptional).toList());
  }

  /** COMPLEX of the office's own analysis add-in: double, double, any. */
  @Test
  void an_argument_of_another_type_is_required(Office office) throws Exception {
    assertThat(known(office, "COMPLEX").optional()).containsExactly(false, false, true);
  }

  @Test
  void ours_are_all_optional_to_calc_and_say_what_is_required(Office office) throws Exception {
    for (FunctionSpec f : FunctionRegistry.all()) {
      Known known = known(office, f.name());
      assertThat(known.optional()).as(f.name()).doesNotContain(false);
      f.parameters()
          .forEach(
              p ->
                  assertThat(known.words().get(p.name()).contains("; required"))
                      .as(f.name() + " " + p.name())
                      .isEqualTo(!p.isOptional()));
    }
  }

  /** A blank cell comes as 0, also to any: a temperature cannot tell it from 0 °C. */
  @Test
  void a_blank_cell_comes_as_zero(Office office) throws Exception {
    TestSheet sheet = TestSheet.firstOf(office.newSpreadsheet());
    sheet.put("A1", "=PACK.COLD(\"Li-ion\";H9)").put("A2", "=PACK.COLD(\"Li-ion\";0)");
    sheet
        .put("A3", "=SHEET.WHY(\"PACK.COLD\";\"Li-ion\")")
        .put("A4", "=CABLE.DROP(\"12 AWG\";10;;\"DC\")");
    assertThat(sheet.error("A1")).isZero();
    assertThat(sheet.number("A1")).isEqualTo(sheet.number("A2"));
    assertThat(sheet.shown("A3")).isEqualTo("battery_temp is missing");
    assertThat(sheet.error("A4")).isEqualTo(502);
    sheet.close();
  }
}
