package org.setpower.plan.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.setpower.plan.finding.Gate.Candidate;
import org.setpower.plan.finding.Gate.Judged;

class GateTest {
  private enum Key implements FindingKey {
    MINOR(Severity.CHECK),
    HELD(Severity.HOLD),
    BROKEN(Severity.STOP),
    DEADLY(Severity.DANGER);

    private final Severity severity;

    Key(Severity severity) {
      this.severity = severity;
    }

    @Override
    public String key() {
      return name();
    }

    @Override
    public Severity severity() {
      return severity;
    }
  }

  private static Judged<String> judge(boolean accepted, Key... keys) {
    List<Finding> findings = Arrays.stream(keys).map(Finding::of).toList();
    return new Gate<>(List.of(new Candidate<>(1, "a", "A", findings, accepted)), List.of()).row(1);
  }

  @Test
  void the_worst_finding_is_the_verdict() {
    assertThat(judge(false).verdict()).isEqualTo(Verdict.OK);
    assertThat(judge(false, Key.MINOR).verdict()).isEqualTo(Verdict.CHECK);
    assertThat(judge(false, Key.MINOR, Key.BROKEN).verdict()).isEqualTo(Verdict.STOP);
    assertThat(judge(false, Key.MINOR, Key.DEADLY, Key.BROKEN).findings())
        .extracting(Finding::key)
        .containsExactly(Key.DEADLY, Key.BROKEN, Key.MINOR);
  }

  @Test
  void only_ok_and_check_are_fit() {
    assertThat(judge(false).fit()).isTrue();
    assertThat(judge(false, Key.MINOR).fit()).isTrue();
    assertThat(judge(false, Key.HELD).fit()).isFalse();
    assertThat(judge(false, Key.HELD).verdict()).isEqualTo(Verdict.CHECK);
    assertThat(judge(false, Key.BROKEN).fit()).isFalse();
    assertThat(judge(false, Key.DEADLY).fit()).isFalse();
  }

  @Test
  void a_decision_lifts_a_stop_but_no_danger() {
    assertThat(judge(true, Key.BROKEN).fit()).isTrue();
    assertThat(judge(true, Key.BROKEN).verdict()).isEqualTo(Verdict.CHECK);
    assertThat(judge(true, Key.BROKEN, Key.DEADLY).fit()).isFalse();
    assertThat(judge(true, Key.DEADLY).verdict()).isEqualTo(Verdict.STOP);
    assertThat(judge(true, Key.HELD).fit()).isFalse();
  }

  @Test
  void names_must_be_there_and_differ() {
    Gate<String> gate =
        new Gate<>(
            List.of(
                new Candidate<>(1, "a", Identity.of("K 1"), List.of(), true),
                new Candidate<>(2, "b", Identity.of("k1"), List.of(), true),
                new Candidate<>(3, "c", Identity.of("k2"), List.of(), false),
                new Candidate<>(4, "d", Identity.of(null), List.of(), false)),
            List.of());
    assertThat(gate.paper(s -> true).fit()).extracting(Judged::item).containsExactly("c");
    assertThat(gate.paper(s -> true).withheld()).extracting(Judged::row).containsExactly(1, 2, 4);
    assertThat(gate.row(1).findings().get(0).key()).isEqualTo(CommonFinding.DOUBLE_IDENTITY);
    assertThat(gate.row(4).findings().get(0).key()).isEqualTo(CommonFinding.NO_IDENTITY);
  }

  @Test
  void a_rule_out_of_date_stops_every_row() {
    Gate<String> gate =
        new Gate<>(
            List.of(new Candidate<>(1, "a", "A", List.of(), false)),
            List.of(Finding.of(Key.BROKEN)));
    assertThat(gate.row(1).fit()).isFalse();
    assertThat(gate.paper(s -> true).withheld()).hasSize(1);
  }
}
