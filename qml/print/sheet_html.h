// Pieces of HTML that sheets are made of; all text is escaped here. For qml/print alone.
#pragma once

#include <QtCore/QList>
#include <QtCore/QString>
#include <QtCore/QStringList>

namespace newel::print {

QString safe(const QString& text);
QString head(const QString& words);
QString plain(const QString& words);
QString lined(const QStringList& lines, const QString& none);
QString factRow(const QString& what, const QString& value);
// Rows of factRow(), as narrow as they are; from edge to edge where the sheet reads from the right, since
// such a table would stand on the left otherwise.
QString factTable(const QString& rows);
// Parts of one line, joined as the language joins them.
QString joined(const QStringList& parts);
QString table(const QStringList& heads, const QList<QStringList>& rows);
QString bullets(const QString& head, const QStringList& lines);
// A box with a border and no colour: it must read on a grey printer.
QString boxed(const QString& html);

}  // namespace newel::print
