package org.hibernacle.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hibernacle.input.CsvLayout.Role;

/**
 * Settles which columns make up the date where headings leave it open: "day" may be a date or a
 * part of one, "time" may be both date and time.
 *
 * @param headings of the file
 * @param candidates by role; is changed
 */
record DateColumns(List<CsvHeading> headings, Map<Role, List<Integer>> candidates) {
  void settle() {
    boolean year = candidates.containsKey(Role.YEAR);
    if (candidates.containsKey(Role.DATE)) {
      List<Integer> dates = new ArrayList<>(candidates.getOrDefault(Role.DATE, List.of()));
      boolean split = year && candidates.containsKey(Role.MONTH);
      if (dates.size() > 1 || split) {
        dates.removeIf(i -> headings.get(i).key().equals("day"));
      }
      candidates.put(Role.DATE, dates);
      if (dates.isEmpty()) {
        candidates.remove(Role.DATE);
      }
    }
    if (candidates.containsKey(Role.DATE)) {
      candidates.keySet().removeAll(List.of(Role.YEAR, Role.MONTH, Role.DAY, Role.DAY_OF_YEAR));
    } else if (year && candidates.containsKey(Role.MONTH) && candidates.containsKey(Role.DAY)) {
      candidates.remove(Role.DAY_OF_YEAR);
    } else if (!year) {
      candidates.keySet().removeAll(List.of(Role.MONTH, Role.DAY, Role.DAY_OF_YEAR));
      // A lone column "time" holds date and time.
      List<Integer> time = candidates.remove(Role.TIME);
      if (time != null) {
        candidates.put(Role.DATE, time);
      }
    }
  }
}
