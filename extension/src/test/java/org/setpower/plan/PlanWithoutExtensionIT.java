package org.setpower.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.lang.XComponent;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setpower.addin.SharedOffice;
import org.setpower.office.Office;
import org.setpower.plan.register.RegisterPlan;

/** A sheet of a plan where the extension is missing: nothing old passes for calculated. */
@ExtendWith(SharedOffice.class)
class PlanWithoutExtensionIT {
  @TempDir Path folder;

  @Test
  void look(Office office) throws Exception {
    PlanDocument plan = PlanDocument.of(office, RegisterPlan.MODEL, 4, 8);
    plan.type("project", "asOf", 1, 46_428).type("types", "type", 1, "P1");
    plan.type("types", "chemistry", 1, "Li-ion");
    plan.type("batteries", "serial", 1, "P1-01").type("batteries", "type", 1, "P1");
    plan.type("batteries", "condition", 1, "fine").type("batteries", "energy", 1, 98);
    System.out.println(plan.status() + "|" + plan.shown("batteries", "verdict", 1));
    Path ods = folder.resolve("a.ods");
    Path xlsx = folder.resolve("a.xlsx");
    office.store(plan.document(), "calc8", ods);
    office.store(plan.document(), "Calc MS Excel 2007 XML", xlsx);
    plan.close();
    try (Office without = Office.start()) {
      for (Path file : new Path[] {ods, xlsx}) {
        XComponent document = without.open(file);
        PlanDocument opened = plan.in(document);
        for (int i = 0; i < 3; i++) {
          System.out.println(file.getFileName() + " " + i + " status " + opened.status()
            + " | verdict " + opened.shown("batteries", "verdict", 1)
            + " | reasons " + opened.shown("batteries", "reasons", 1)
            + " | missing " + opened.tab("batteries").shown(PlanDocument.MISSING)
            + " | notice " + opened.tab("batteries").shown(PlanDocument.NOTICE));
          if (i == 0) opened.type("batteries", "energy", 1, 97);
          if (i == 1) opened.tab("batteries").calculate();
        }
        opened.close();
      }
    }
    for (Path file : new Path[] {ods, xlsx}) {
      PlanDocument opened = plan.in(office.open(file));
          System.out.println("with " + file.getFileName() + " status " + opened.status()
            + " | verdict " + opened.shown("batteries", "verdict", 1)
            + " | missing " + opened.tab("batteries").shown(PlanDocument.MISSING));
          opened.type("batteries", "condition", 1, "swollen");
          System.out.println("with " + file.getFileName() + " status " + opened.status()
            + " | verdict " + opened.shown("batteries", "verdict", 1));
      opened.close();
    }
  }
}
