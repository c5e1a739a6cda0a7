package org.hibernacle.planning;

/** Where there is room for one plant, and when there are hands to carry it. */
interface Openings extends StaySearch.OpenRule {
  /** Whether the plant can still be carried on that night's day. */
  boolean handsFree(int night);

  /** Room and hands without end. */
  Openings ALL =
      new Openings() {
        @Override
        public boolean open(int place, int night) {
          return true;
        }

        @Override
        public boolean handsFree(int night) {
          return true;
        }
      };
}
