package org.setpower.addin;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.beans.PropertyValue;
import com.sun.star.container.XNameAccess;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.uno.UnoRuntime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.office.Office;

/** The tests run in the office they are meant for. */
@ExtendWith(SharedOffice.class)
class OfficeVersionIT {
  /** The start of the version that is asked for; 7.4 is the oldest that we support. */
  private static final String EXPECTED = System.getProperty("setpower.office.version", "");

  @Test
  void it_is_the_office_that_is_asked_for(Office office) throws com.sun.star.uno.Exception {
    String version = version(office);
    assertThat(version).startsWith(EXPECTED);
    assertThat(Double.parseDouble(version.replaceAll("^(\\d+\\.\\d+).*", "$1")))
        .isGreaterThanOrEqualTo(7.4);
  }

  private static String version(Office office) throws com.sun.star.uno.Exception {
    PropertyValue path = new PropertyValue();
    path.Name = "nodepath";
    path.Value = "/org.openoffice.Setup/Product";
    Object node =
        office
            .service(XMultiServiceFactory.class, "com.sun.star.configuration.ConfigurationProvider")
            .createInstanceWithArguments(
                "com.sun.star.configuration.ConfigurationAccess", new Object[] {path});
    return (String)
        UnoRuntime.queryInterface(XNameAccess.class, node).getByName("ooSetupVersionAboutBox");
  }
}
