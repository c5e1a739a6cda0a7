package org.hibernacle.model;

/** Light of a place, or the least light a plant wants while stored; darkest first. */
public enum Light {
  DARK,
  LOW,
  BRIGHT
}
