#include "qml/print/tick_grid.h"

#include <QtCore/QDateTime>
#include <QtCore/QLocale>
#include <QtGui/QPainter>
#include <algorithm>
#include <map>

#include "core/schedule/occasions.h"
#include "core/time/local_day.h"
#include "qml/print/record_words.h"
#include "qml/print/sheet_language.h"

namespace newel::print {
namespace {

class GridBlock : public PaperBlock {
 public:
  GridBlock(TickWeek week, double points) : m_week(std::move(week)), m_points(points) {}

  double layOut(QPaintDevice& device, double width) override {
    m_width = width;
    m_unit = m_points * device.logicalDpiY() / 72.0;
    m_first = width * 0.36;
    const QFontMetricsF metrics(paperFont(m_points * 0.9), &device);
    m_rows.clear();
    m_head = std::max(m_unit * 2.2, 2 * metrics.lineSpacing());
    // Of the words themselves: Arabic comes from a font whose lines are higher than the first one's.
    const double usual = m_head;
    for (const QString& day : m_week.days) {
      const double words = metrics.boundingRect(QRectF(0, 0, 1e6, 1e6), 0, day).height();
      if (words > usual + 1) m_head = std::max(m_head, words + m_unit * 0.3);
    }
    double height = m_unit * 2 + m_head;
    for (const auto& row : m_week.rows) {
      const QString words = row.note.isEmpty() ? row.title : row.title + QLatin1Char('\n') + row.note;
      const QRectF rect =
          metrics.boundingRect(QRectF(0, 0, m_first - m_unit * 0.6, 1e6), Qt::TextWordWrap, words);
      m_rows.push_back(std::max(rect.height() + m_unit * 0.7, m_unit * 2.2));
      height += m_rows.back();
    }
    return height + m_unit;
  }

  void paint(QPainter& painter, double from, double) override {
    painter.translate(0, -from);
    painter.setLayoutDirection(m_right_to_left ? Qt::RightToLeft : Qt::LeftToRight);
    painter.setPen(QPen(Qt::black, m_unit * 0.06));
    painter.setFont(paperFont(m_points));
    QFont bold = paperFont(m_points);
    bold.setBold(true);
    painter.setFont(bold);
    painter.drawText(QRectF(0, 0, m_width, m_unit * 2), atStart(Qt::AlignVCenter), m_week.title);
    painter.setFont(paperFont(m_points * 0.9));
    double y = m_unit * 2;
    const double cell = (m_width - m_first) / 7;
    for (int day = 0; day < 7; ++day) {
      painter.drawText(mirrored(QRectF(m_first + day * cell, y, cell, m_head)), Qt::AlignCenter,
                       m_week.days[day]);
    }
    y += m_head;
    for (std::size_t i = 0; i < m_week.rows.size(); ++i) {
      paintRow(painter, m_week.rows[i], y, m_rows[i], cell);
      y += m_rows[i];
    }
    painter.drawLine(QPointF(0, y), QPointF(m_width, y));
  }

  double cutBefore(double from, double at) const override {
    double cut = m_unit * 2 + m_head;
    double best = from;
    for (const double row : m_rows) {
      cut += row;
      if (cut <= at) best = std::max(best, cut);
    }
    return best > from ? best : at;
  }

 private:
  // In a language that reads from the right the whole table does.
  QRectF mirrored(QRectF rect) const {
    if (m_right_to_left) rect.moveLeft(m_width - rect.right());
    return rect;
  }
  int atStart(int flags) const {
    return flags | Qt::AlignAbsolute | (m_right_to_left ? Qt::AlignRight : Qt::AlignLeft);
  }

  void paintRow(QPainter& painter, const TickRow& row, double y, double height, double cell) const {
    painter.drawLine(QPointF(0, y), QPointF(m_width, y));
    const QString words = row.note.isEmpty() ? row.title : row.title + QLatin1Char('\n') + row.note;
    painter.drawText(mirrored(QRectF(0, y, m_first - m_unit * 0.6, height)),
                     atStart(Qt::AlignVCenter | Qt::TextWordWrap), words);
    for (int day = 0; day < 7; ++day) {
      const QRectF room = mirrored(QRectF(m_first + day * cell, y, cell, height));
      const int boxes = std::abs(row.boxes[day]);
      if (boxes == 0) {
        painter.drawText(room, Qt::AlignCenter, QStringLiteral("–"));
        continue;
      }
      const double side = std::min(m_unit * 1.3, cell / (boxes + 0.6));
      double x = room.center().x() - (boxes * side + (boxes - 1) * side * 0.25) / 2;
      for (int box = 0; box < boxes; ++box) {
        painter.drawRect(QRectF(x, room.center().y() - side / 2, side, side));
        x += side * 1.25;
      }
    }
  }

  TickWeek m_week;
  bool m_right_to_left = sheetReadsRightToLeft();
  double m_points;
  double m_width = 0;
  double m_unit = 0;
  double m_first = 0;
  double m_head = 0;  // days above the boxes, two lines
  std::vector<double> m_rows;
};

QString dayHead(absl::CivilDay day) {
  const QDate date(static_cast<int>(day.year()), day.month(), day.day());
  return plainDigits(sheetLocale().toString(date, QStringLiteral("ddd")) + QLatin1Char('\n') +
                     sheetLocale().toString(date, QStringLiteral("d MMM")));
}

TickRow emptyRow(const v1::Entry& entry, const Catalogue& catalogue, const std::string& language) {
  TickRow row;
  row.title = titleOf(catalogue, entry.exercise_id(), language);
  if (entry.schedule().rhythm_case() == v1::Schedule::kTimesPerWeek &&
      entry.schedule().times_per_week() < 7) {
    const auto days = static_cast<int>(entry.schedule().times_per_week());
    row.note = sheetWords("TickGrid", "any %n day(s)", nullptr, days);
  }
  return row;
}

}  // namespace

absl::StatusOr<std::vector<TickWeek>> tickWeeks(const v1::Programme& programme, const Catalogue& catalogue,
                                                const std::string& language, int most) {
  const auto first = parseLocalDay(programme.effective_day());
  if (!first.ok()) return first.status();
  const auto last = parseLocalDay(programme.end_day());
  if (!last.ok()) return last.status();
  std::vector<TickWeek> weeks;
  for (absl::CivilDay monday = mondayOf(*first); monday <= *last && static_cast<int>(weeks.size()) < most;
       monday += 7) {
    const auto occasions = occasionsOf(programme, monday, monday + 6);
    if (!occasions.ok()) return occasions.status();
    TickWeek week;
    week.title = sheetWords("TickGrid", "Week of %1").arg(dayWords(monday));
    for (int day = 0; day < 7; ++day) week.days[day] = dayHead(monday + day);
    std::map<std::string, std::size_t> row_of;
    for (const auto& entry : programme.entries()) {
      row_of[entry.id()] = week.rows.size();
      week.rows.push_back(emptyRow(entry, catalogue, language));
    }
    for (const auto& occasion : *occasions) {
      TickRow& row = week.rows[row_of[occasion.ref.entry_id()]];
      if (occasion.state == OccasionState::Excused) continue;
      const auto day = parseLocalDay(occasion.ref.local_day());
      if (!day.ok()) return day.status();
      if (!occasion.any_day_of_week) row.boxes[*day - monday] += 1;
    }
    // Any day of the week counts: a box on every day that the programme covers.
    for (const auto& entry : programme.entries()) {
      if (entry.schedule().rhythm_case() != v1::Schedule::kTimesPerWeek) continue;
      TickRow& row = week.rows[row_of[entry.id()]];
      for (int day = 0; day < 7; ++day) {
        if (monday + day >= *first && monday + day <= *last)
          row.boxes[day] = -entry.schedule().windows_size();
      }
    }
    weeks.push_back(std::move(week));
  }
  return weeks;
}

std::unique_ptr<PaperBlock> tickBlock(TickWeek week, double points) {
  return std::make_unique<GridBlock>(std::move(week), points);
}

}  // namespace newel::print
