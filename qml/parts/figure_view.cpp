#include "qml/parts/figure_view.h"

#include <QtQuick/QQuickWindow>

namespace newel::parts {

FigureView::FigureView(QQuickItem* parent) : ThemedItem(parent), m_pace(*this) {
  connect(this, &QQuickItem::visibleChanged, this, &FigureView::settle);
  connect(&m_pace, &QAbstractAnimation::stateChanged, this, &FigureView::runningChanged);
}

FigureView::~FigureView() { m_pace.stop(); }

void FigureView::setSource(FigureSource* source) {
  if (m_source == source) return;
  if (m_source != nullptr) m_source->disconnect(this);
  m_source = source;
  if (source != nullptr) {
    connect(source, &FigureSource::changed, this, [this] {
      m_has_shown = false;
      update();
      settle();
    });
    connect(source, &FigureSource::jump, this, &FigureView::tick);
  }
  m_has_shown = false;
  emit sourceChanged();
  update();
  settle();
}

void FigureView::setStill(int still) {
  if (m_still == still) return;
  m_still = still;
  m_has_shown = false;
  emit stillChanged();
  update();
  settle();
}

void FigureView::componentComplete() {
  ThemedItem::componentComplete();
  settle();
}

void FigureView::itemChange(ItemChange change, const ItemChangeData& data) {
  ThemedItem::itemChange(change, data);
  if (change != ItemSceneChange) return;
  watch(data.window);
  settle();
}

// Nobody sees a window that is minimised or not there.
void FigureView::watch(QQuickWindow* window) {
  disconnect(m_window_seen);
  if (window != nullptr)
    m_window_seen = connect(window, &QWindow::visibilityChanged, this, &FigureView::settle);
}

void FigureView::settle() {
  const bool seen = isComponentComplete() && isVisible() && window() != nullptr &&
                    window()->visibility() != QWindow::Hidden && window()->visibility() != QWindow::Minimized;
  const bool run = seen && shows() && m_still < 0 && m_source->moving();
  if (run == running()) return;
  run ? m_pace.start() : m_pace.stop();
}

Moment FigureView::moment() const {
  return m_still >= 0 ? m_source->momentOfStill(m_still) : m_source->momentNow(theme().lessMotion());
}

void FigureView::tick() {
  if (!shows()) return;
  const Moment now = moment();
  if (m_has_shown && now == m_shown) return;
  const bool other_beat =
      now.phase != m_shown.phase || now.scene != m_shown.scene || now.side_a != m_shown.side_a;
  m_shown = now;
  m_has_shown = true;
  update();
  if (other_beat && m_still < 0) emit m_source->wordsChanged();
}

void FigureView::paint(QPainter* painter) {
  if (!shows()) return;
  const Moment now = moment();
  m_shown = now;
  m_has_shown = true;
  ++m_painted;
  m_painter.paint(*painter, m_source->draw(now, theme().dark()), boundingRect());
}

}  // namespace newel::parts
