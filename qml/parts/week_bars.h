// The rail lying flat: one bar a week. A week without data is dotted, never drawn as nothing done.
#pragma once

#include <QtCore/QVariantList>

#include "qml/parts/themed_item.h"

namespace newel::parts {

class WeekBars : public newel::parts::ThemedItem {
  Q_OBJECT
  QML_ELEMENT
  // Oldest first; each a number 0 to 1 (share done), or null/undefined where nothing is known.
  Q_PROPERTY(QVariantList weeks READ weeks WRITE setWeeks NOTIFY weeksChanged)
  Q_PROPERTY(bool mirrored READ mirrored WRITE setMirrored NOTIFY mirroredChanged)

 public:
  explicit WeekBars(QQuickItem* parent = nullptr);
  QVariantList weeks() const { return m_weeks; }
  void setWeeks(const QVariantList& weeks);
  bool mirrored() const { return m_mirrored; }
  void setMirrored(bool mirrored);
  void paint(QPainter* painter) override;

 signals:
  void weeksChanged();
  void mirroredChanged();

 private:
  QVariantList m_weeks;
  bool m_mirrored = false;
};

}  // namespace newel::parts
