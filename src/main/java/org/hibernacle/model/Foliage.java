package org.hibernacle.model;

/** What leaves a plant carries through its winter. */
public enum Foliage {
  EVERGREEN,
  SEMI_EVERGREEN,
  DECIDUOUS
}
