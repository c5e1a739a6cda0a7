package org.hibernacle.report.pdf;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.ResourceBundle.Control;

/** The words of the paper itself; all others come from the report. */
final class Labels {
  private final ResourceBundle words;
  private final Locale language;

  Labels(Locale language) {
    this.language = language;
    // No fallback: the machine's own language must not leak into the file.
    words =
        ResourceBundle.getBundle(
            "org.hibernacle.report.pdf.labels",
            language,
            Control.getNoFallbackControl(Control.FORMAT_PROPERTIES));
  }

  /** The label of that key with its arguments filled in. */
  String of(String key, Object... arguments) {
    return new MessageFormat(words.getString(key), language).format(arguments);
  }
}
