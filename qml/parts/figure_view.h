// The drawn body on the screen. While its source's clock runs and it can be seen it follows it, at most 60
// pictures a second; else it paints when something changes and costs nothing. A picture that would be the
// same is not painted again. UI thread only (paint() may run on the render thread while the UI thread waits).
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QAbstractAnimation>
#include <QtCore/QPointer>

#include "qml/paint/drawing_painter.h"
#include "qml/parts/figure_source.h"
#include "qml/parts/themed_item.h"

namespace newel::parts {

class FigureView : public newel::parts::ThemedItem {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(newel::parts::FigureSource* source READ source WRITE setSource NOTIFY sourceChanged)
  // From 0: that still picture. -1: what the source's clock says.
  Q_PROPERTY(int still READ still WRITE setStill NOTIFY stillChanged)
  // Pictures follow the clock just now.
  Q_PROPERTY(bool running READ running NOTIFY runningChanged)

 public:
  explicit FigureView(QQuickItem* parent = nullptr);
  ~FigureView() override;

  FigureSource* source() const { return m_source; }
  void setSource(FigureSource* source);
  int still() const { return m_still; }
  void setStill(int still);
  bool running() const { return m_pace.state() == QAbstractAnimation::Running; }
  void paint(QPainter* painter) override;
  // Pictures painted so far.
  int painted() const { return m_painted; }

 signals:
  void sourceChanged();
  void stillChanged();
  void runningChanged();

 protected:
  void componentComplete() override;
  void itemChange(ItemChange change, const ItemChangeData& data) override;

 private:
  // Ticks with the screen, as every animation does.
  class Pace : public QAbstractAnimation {
   public:
    explicit Pace(FigureView& view) : m_view(view) {}
    int duration() const override { return -1; }

   protected:
    void updateCurrentTime(int) override { m_view.tick(); }

   private:
    FigureView& m_view;
  };

  void tick();
  void settle();  // starts or stops following
  Moment moment() const;
  bool shows() const { return m_source != nullptr && m_source->there(); }
  void watch(QQuickWindow* window);

  QPointer<FigureSource> m_source;
  int m_still = -1;
  Pace m_pace;
  QMetaObject::Connection m_window_seen;
  Moment m_shown;
  bool m_has_shown = false;
  int m_painted = 0;
  paint::DrawingPainter m_painter;
};

}  // namespace newel::parts
