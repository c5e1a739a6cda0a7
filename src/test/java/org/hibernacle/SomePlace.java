package org.hibernacle;

import java.util.OptionalDouble;
import org.hibernacle.model.Light;
import org.hibernacle.model.Place;
import org.hibernacle.model.Place.Cover;
import org.hibernacle.model.Place.Sun;
import org.hibernacle.model.Place.Wind;
import org.hibernacle.model.PlaceKind;

/** An invented place: the defaults of its kind, and what a test changes about it. */
public final class SomePlace {
  private final PlaceKind kind;
  private String name;
  private Sun sun = Sun.FULL;
  private Wind wind = Wind.SHELTERED;
  private Cover cover = Cover.NONE;
  private double coverDepthCm;
  private Light light;
  private OptionalDouble lowestHeldC = OptionalDouble.empty();
  private OptionalDouble highestHeldC = OptionalDouble.empty();
  private OptionalDouble holdsDownToC = OptionalDouble.empty();
  private double warmerByK;
  private double lagHours;
  private boolean vents;

  private SomePlace(PlaceKind kind) {
    this.kind = kind;
    name = kind.name();
    light = kind.defaultLight();
    warmerByK = kind.defaultWarmerByK();
    lagHours = kind.defaultLagHours();
  }

  /** A sheltered place without cover, heater or vents. */
  public static SomePlace of(PlaceKind kind) {
    return new SomePlace(kind);
  }

  public SomePlace named(String newName) {
    name = newName;
    return this;
  }

  public SomePlace sun(Sun newSun) {
    sun = newSun;
    return this;
  }

  /** Open to wind. */
  public SomePlace open() {
    wind = Wind.OPEN;
    return this;
  }

  public SomePlace fleece() {
    cover = Cover.FLEECE;
    return this;
  }

  public SomePlace mulch(double depthCm) {
    cover = Cover.MULCH;
    coverDepthCm = depthCm;
    return this;
  }

  public SomePlace light(Light newLight) {
    light = newLight;
    return this;
  }

  public SomePlace lowestHeld(double lowestC) {
    lowestHeldC = OptionalDouble.of(lowestC);
    return this;
  }

  public SomePlace highestHeld(double highestC) {
    highestHeldC = OptionalDouble.of(highestC);
    return this;
  }

  public SomePlace holdsDownTo(double outsideC) {
    holdsDownToC = OptionalDouble.of(outsideC);
    return this;
  }

  public SomePlace warmerBy(double byK) {
    warmerByK = byK;
    return this;
  }

  public SomePlace lag(double hours) {
    lagHours = hours;
    return this;
  }

  public SomePlace vented() {
    vents = true;
    return this;
  }

  /** The place. */
  public Place place() {
    return new Place(
        name,
        kind,
        OptionalDouble.empty(),
        sun,
        wind,
        cover,
        coverDepthCm,
        light,
        lowestHeldC,
        highestHeldC,
        warmerByK,
        lagHours,
        holdsDownToC,
        OptionalDouble.empty(),
        vents,
        "");
  }
}
