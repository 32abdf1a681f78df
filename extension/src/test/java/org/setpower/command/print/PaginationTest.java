package org.setpower.command.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PaginationTest {
  private static final int ROW = 5;
  private static final int PAGE = 100;

  private final List<Pagination.Stretch> sheet = new ArrayList<>();
  private int row;

  private PaginationTest blank(int rows) {
    row += rows;
    return this;
  }

  private PaginationTest filled(int rows) {
    return filled(rows, false);
  }

  private PaginationTest filled(int rows, boolean begins) {
    return filled(rows, begins, false);
  }

  private PaginationTest filled(int rows, boolean begins, boolean headed) {
    int before = sheet.isEmpty() ? 0 : sheet.get(sheet.size() - 1).last() + 1;
    sheet.add(
        new Pagination.Stretch(
            row, row + rows - 1, row - before, ROW * (row - before), ROW * rows, begins, headed));
    row += rows;
    return this;
  }

  private void gives(Pagination.Part... parts) {
    assertThat(Pagination.of(sheet, PAGE, 0)).containsExactly(parts);
  }

  @Test
  void what_a_page_holds_stays_on_it() {
    filled(4).blank(2).filled(10).gives(new Pagination.Part(0, 15));
  }

  @Test
  void what_would_be_broken_begins_a_page_without_the_blank_rows_above() {
    filled(12).blank(2).filled(10).gives(new Pagination.Part(0, 11), new Pagination.Part(14, 23));
  }

  @Test
  void many_blank_rows_end_a_page() {
    filled(2).blank(13).filled(2).gives(new Pagination.Part(0, 1), new Pagination.Part(15, 16));
  }

  @Test
  void a_list_whose_heading_is_printed_again_begins_below_the_head_of_the_page() {
    filled(10).blank(2).filled(15, false, true).gives(new Pagination.Part(0, 26));
  }

  @Test
  void a_list_longer_than_a_page_runs_on_where_enough_of_it_is_left() {
    filled(4).blank(2).filled(30).gives(new Pagination.Part(0, 35));
  }

  @Test
  void a_list_longer_than_a_page_begins_on_the_next_where_little_is_left() {
    filled(15).blank(2).filled(30).gives(new Pagination.Part(0, 14), new Pagination.Part(17, 46));
  }

  @Test
  void what_follows_a_list_is_counted_from_the_top_of_its_last_page() {
    filled(25).blank(2).filled(10).gives(new Pagination.Part(0, 36));
    filled(10).gives(new Pagination.Part(0, 36), new Pagination.Part(37, 46));
  }

  @Test
  void a_page_begins_where_somebody_said_so() {
    filled(2).blank(2).filled(2, true).gives(new Pagination.Part(0, 1), new Pagination.Part(4, 5));
  }
}
