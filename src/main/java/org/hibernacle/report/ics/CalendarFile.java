package org.hibernacle.report.ics;

import java.io.IOException;
import java.io.OutputStream;
import java.io.StringWriter;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import net.fortuna.ical4j.data.CalendarOutputter;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.ComponentList;
import net.fortuna.ical4j.model.ParameterList;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.PropertyList;
import net.fortuna.ical4j.model.component.VAlarm;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.parameter.Language;
import net.fortuna.ical4j.model.parameter.Related;
import net.fortuna.ical4j.model.parameter.Value;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.Name;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.Sequence;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Trigger;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.immutable.ImmutableAction;
import net.fortuna.ical4j.model.property.immutable.ImmutableCalScale;
import net.fortuna.ical4j.model.property.immutable.ImmutableStatus;
import net.fortuna.ical4j.model.property.immutable.ImmutableTransp;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;
import org.hibernacle.report.Agenda;

/**
 * The agenda as an iCalendar file (RFC 5545).
 *
 * <p>Every entry is an event of a whole day that keeps nobody busy. Tasks are events too and not
 * {@code VTODO}: the calendars of phones show events. There is no {@code METHOD}, since the file
 * invites nobody: with one, RFC 5546 asks for the address of an organizer.
 *
 * <p>Equal agendas give equal bytes, whatever the machine's language, zone and clock.
 */
public final class CalendarFile {
  private static final String PRODUCT = "-//Hibernacle//Season plan//EN";

  private static final ParameterList FROM_MIDNIGHT = new ParameterList(List.of(Related.START));

  private final ParameterList language;
  private final DtStamp dated;
  private final Agenda agenda;

  private CalendarFile(Agenda agenda) {
    this.agenda = agenda;
    language = new ParameterList(List.of(new Language(agenda.language().toLanguageTag())));
    Instant midnight = agenda.dated().atStartOfDay(ZoneOffset.UTC).toInstant();
    // Grows with the number, so that of two files of one day the later one is told by either.
    dated = new DtStamp(midnight.plusSeconds(agenda.revision()));
  }

  /** Writes the agenda; the stream stays open. */
  public static void write(Agenda agenda, OutputStream out) throws IOException {
    StringWriter unfolded = new StringWriter();
    new CalendarOutputter(true, Integer.MAX_VALUE)
        .output(new CalendarFile(agenda).calendar(), unfolded);
    out.write(FoldedLines.of(unfolded.toString()));
  }

  private Calendar calendar() {
    return new Calendar(
        new PropertyList(
            List.of(
                new ProdId(PRODUCT),
                ImmutableVersion.VERSION_2_0,
                ImmutableCalScale.GREGORIAN,
                new Name(language, agenda.name()),
                new Description(language, agenda.text()))),
        new ComponentList<>(agenda.entries().stream().map(this::event).toList()));
  }

  private VEvent event(Agenda.Entry entry) {
    ParameterList wholeDay = new ParameterList(List.of(Value.DATE));
    List<Property> properties =
        new ArrayList<>(
            List.of(
                new Uid(entry.id().toString()),
                dated,
                new Sequence(agenda.revision()),
                new DtStart<>(wholeDay, entry.day()),
                new DtEnd<>(wholeDay, entry.day().plusDays(1)),
                new Summary(language, entry.title()),
                new Description(language, entry.text()),
                ImmutableTransp.TRANSPARENT));
    if (entry.dropped()) {
      properties.add(ImmutableStatus.VEVENT_CANCELLED);
    }
    return new VEvent(
        new PropertyList(properties),
        new ComponentList<>(entry.alarm().stream().map(a -> alarm(a, entry.title())).toList()));
  }

  private VAlarm alarm(Duration when, String title) {
    return new VAlarm(
        new PropertyList(
            List.of(
                ImmutableAction.DISPLAY,
                new Trigger(FROM_MIDNIGHT, when),
                new Description(language, title))));
  }
}
