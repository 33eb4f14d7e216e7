#include "qml/parts/day_mark.h"

#include <QtGui/QPainter>
#include <algorithm>

#include "core/progress/adherence.h"

namespace newel::parts {
namespace {

using State = OccasionResult::State;

}  // namespace

void DayMark::setStates(const QVariantList& states) {
  if (m_states == states) return;
  m_states = states;
  emit statesChanged();
  update();
}

void DayMark::paint(QPainter* painter) {
  painter->setRenderHint(QPainter::Antialiasing);
  const auto count = std::max<qsizetype>(1, m_states.size());
  const double part = height() / static_cast<double>(count);
  for (qsizetype i = 0; i < m_states.size(); ++i) {
    const double side = std::min({part - 4, width() - 4, m_most});
    const QPointF middle(width() / 2, part * (static_cast<double>(i) + 0.5));
    paintOne(*painter, QRectF(middle.x() - side / 2, middle.y() - side / 2, side, side), m_states[i].toInt());
  }
}

void DayMark::paintOne(QPainter& painter, const QRectF& room, int state) const {
  const double thick = std::max(1.5, room.width() / 11);
  const QPen line(theme().ink(), thick);
  painter.setPen(line);
  painter.setBrush(Qt::NoBrush);
  switch (static_cast<State>(state)) {
    case State::Done:
      painter.fillRect(room, theme().rail());
      break;
    case State::Part:
      painter.fillRect(QRectF(room.left(), room.center().y(), room.width(), room.height() / 2),
                       theme().rail());
      painter.setPen(QPen(theme().rail(), thick));
      painter.drawRect(room);
      break;
    case State::NotDone:
      painter.drawRect(room);
      painter.drawLine(room.bottomLeft(), room.topRight());
      break;
    case State::Excused:
      painter.drawLine(QPointF(room.left(), room.center().y()), QPointF(room.right(), room.center().y()));
      break;
    case State::Coming:
      painter.setPen(QPen(theme().soft(), thick));
      painter.drawEllipse(room.center(), room.width() * 0.19, room.width() * 0.19);
      break;
    case State::NoData: {
      painter.setPen(Qt::NoPen);
      painter.setBrush(theme().soft());
      for (int dot = 0; dot < 3; ++dot) {
        painter.drawEllipse(QPointF(room.center().x(), room.top() + room.height() * (0.15 + 0.35 * dot)),
                            room.width() / 10, room.width() / 10);
      }
      break;
    }
  }
}

}  // namespace newel::parts
