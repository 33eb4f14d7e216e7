#include "qml/print/sheet_html.h"

#include <algorithm>

#include "qml/print/sheet_language.h"

namespace newel::print {

namespace {

// Nothing in it is written from the right.
bool readsFromTheLeftOnly(const QString& text) {
  return std::none_of(text.begin(), text.end(), [](QChar one) {
    return one.direction() == QChar::DirR || one.direction() == QChar::DirAL;
  });
}

// On a sheet that reads from the right, what is in another language keeps its own order: its full stop stands
// at its own end (Unicode Standard Annex 9, isolates).
QString inItsOwnOrder(const QString& text) {
  if (!sheetReadsRightToLeft() || text.isEmpty() || !readsFromTheLeftOnly(text)) return text;
  return QChar(0x2066) + text + QChar(0x2069);
}

}  // namespace

QString safe(const QString& text) {
  QStringList lines;
  for (const QString& line : text.split(QLatin1Char('\n'))) lines << inItsOwnOrder(line).toHtmlEscaped();
  return lines.join(QStringLiteral("<br>"));
}

QString head(const QString& words) { return QStringLiteral("<h2>%1</h2>").arg(safe(words)); }
QString plain(const QString& words) { return QStringLiteral("<p>%1</p>").arg(safe(words)); }

QString lined(const QStringList& lines, const QString& none) {
  if (lines.isEmpty()) return plain(none);
  QString html = QStringLiteral("<ul>");
  for (const QString& line : lines) html += QStringLiteral("<li>%1</li>").arg(safe(line));
  return html + QStringLiteral("</ul>");
}

// Text documents lay columns from the left in every language.
QString factRow(const QString& what, const QString& value) {
  const QString form = sheetReadsRightToLeft()
                           ? QStringLiteral("<tr><td>%2</td><td width=\"22%\"><b>%1</b></td></tr>")
                           : QStringLiteral("<tr><td><b>%1</b></td><td>%2</td></tr>");
  return form.arg(safe(what), safe(value));
}

QString factTable(const QString& rows) {
  return (sheetReadsRightToLeft() ? QStringLiteral("<table width=\"100%\">") : QStringLiteral("<table>")) +
         rows + QStringLiteral("</table>");
}

QString joined(const QStringList& parts) { return parts.join(sheetWords("RecordWords", ", ")); }

QString table(const QStringList& heads, const QList<QStringList>& rows) {
  QString html = QStringLiteral(
      "<table class=\"lines\" width=\"100%\" border=\"1\" cellspacing=\"0\" "
      "style=\"border-style:solid; border-color:#000000;\"><tr>");
  for (const QString& head : heads) html += QStringLiteral("<th>%1</th>").arg(safe(head));
  html += QStringLiteral("</tr>");
  for (const QStringList& row : rows) {
    html += QStringLiteral("<tr>");
    for (const QString& cell : row) html += QStringLiteral("<td>%1</td>").arg(safe(cell));
    html += QStringLiteral("</tr>");
  }
  return html + QStringLiteral("</table>");
}

QString bullets(const QString& head, const QStringList& lines) {
  if (lines.isEmpty()) return {};
  QString html = QStringLiteral("<h3>%1</h3><ul>").arg(safe(head));
  for (const QString& line : lines) html += QStringLiteral("<li>%1</li>").arg(safe(line));
  return html + QStringLiteral("</ul>");
}

QString boxed(const QString& html) {
  return QStringLiteral(
             "<table class=\"box\" width=\"100%\" border=\"1\" cellspacing=\"0\" "
             "style=\"border-style:solid; border-color:#000000;\"><tr><td>%1</td></tr></table>")
      .arg(html);
}

}  // namespace newel::print
