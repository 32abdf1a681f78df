package org.setpower.plan.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;

/** Where an issue is: as many names as a cell shows, and how many rows more. */
class IssuesTest {
  private static String where(String... names) {
    Issues issues = new Issues();
    for (String name : names) {
      issues.add("Lines", name, List.of(Finding.of(CommonFinding.NO_IDENTITY)));
    }
    return issues.rows(5).get(0).where().toString();
  }

  @Test
  void short_names_stand_there_up_to_eight() {
    assertThat(where("B10", "B2")).isEqualTo("Lines: B2, B10");
    assertThat(where("1", "2", "3", "4", "5", "6", "7", "8", "9", "10"))
        .isEqualTo("Lines: 1, 2, 3, 4, 5, 6, 7, 8, … (+2)");
  }

  /** A cell of three lines: what it cannot show is counted, not cut. */
  @Test
  void long_names_are_counted_where_they_would_be_cut() {
    String[] names = new String[8];
    for (int i = 0; i < names.length; i++) {
      names[i] = (char) ('a' + i) + ": electrician for the connection";
    }
    assertThat(where(names)).isEqualTo("Lines: " + names[0] + ", … (+7)");
    assertThat(where("x".repeat(200), "y")).endsWith("x, … (+1)");
  }
}
