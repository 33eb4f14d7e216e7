#include "qml/home/course_extras.h"

#include <QtCore/QCoreApplication>
#include <QtCore/QLocale>
#include <algorithm>
#include <cmath>
#include <map>

#include "core/schedule/wear_plan.h"
#include "core/time/local_day.h"
#include "qml/home/phrasing.h"
#include "qml/home/place_words.h"
#include "qml/home/wear_words.h"

namespace newel::home {
namespace {

// Dots further apart than this are not joined: nobody knows what lay between.
constexpr absl::civil_diff_t kJoinedDays = 3;

class CourseExtras {
  Q_DECLARE_TR_FUNCTIONS(CourseExtras)

 public:
  static QString worn(int days, int most_min, int red, int harmed) {
    QString words =
        tr("Worn on %Ln day(s), at most %1 in a day.", nullptr, days).arg(spanOfTimeWords(most_min));
    if (harmed > 0) {
      words += QStringLiteral(" ") + tr("The skin was hurt: %L1.").arg(harmed);
    } else {
      words += QStringLiteral(" ") + (red > 0 ? tr("Red skin: %L1.").arg(red) : tr("No red skin."));
    }
    return words;
  }

  static QString unit(const v1::MeasureKind& kind, double value) {
    const QString number = QLocale().toString(value, 'f', static_cast<int>(kind.decimals()));
    if (kind.unit() == "s") return tr("%1 seconds").arg(number);
    if (kind.unit() == "m") return tr("%1 metres").arg(number);
    if (kind.unit() == "m/s") return tr("%1 metres a second").arg(number);
    if (kind.unit() == "%") return tr("%1 %").arg(number);
    return tr("%1 points").arg(number);
  }

  static QString taken(const v1::MeasureKind& kind, const std::vector<const v1::Measure*>& values) {
    const auto said = [&](const v1::Measure& measure) {
      const auto day = parseLocalDay(measure.local_day());
      return tr("%1 on %2", "a value, a day")
          .arg(measuredWords(kind, measure.value()), day.ok() ? dayWords(*day) : QString());
    };
    QString words = tr("Last: %1.").arg(said(*values.back()));
    if (values.size() > 1)
      words += QStringLiteral(" ") + tr("Before: %1.").arg(said(*values[values.size() - 2]));
    return words;
  }

  static QString due(absl::CivilDay day, absl::CivilDay today) {
    return day < today
               ? tr("Your clinic wanted to measure this by %1.").arg(dayWords(day))
               : tr("Your clinic will measure this by %1. You need not do it at home.").arg(dayWords(day));
  }

  static QString ways(const v1::MeasureKind& kind) {
    return kind.better() == v1::MEASURE_DIRECTION_LOWER_IS_BETTER
               ? tr("Less is better. What a change means for you, your therapist can say.")
               : tr("More is better. What a change means for you, your therapist can say.");
  }

  static QString sided(const v1::MeasureKind& kind, const std::string& language, v1::Side side) {
    QString name = text(measureWords(kind, language).name());
    if (side == v1::SIDE_LEFT) return tr("%1, left leg").arg(name);
    if (side == v1::SIDE_RIGHT) return tr("%1, right leg").arg(name);
    return name;
  }
};

bool isHurt(const v1::WearBlock& block) {
  return std::any_of(block.check().signs().begin(), block.check().signs().end(), isSignOfHarm);
}

bool isRed(const v1::WearBlock& block) {
  return std::any_of(block.check().signs().begin(), block.check().signs().end(),
                     [](int sign) { return sign == v1::SKIN_SIGN_RED; });
}

// The values and their days on a scale that begins and ends at whole numbers.
void addChart(QVariantMap& row, const std::vector<const v1::Measure*>& values) {
  double low = values.front()->value();
  double high = low;
  for (const v1::Measure* measure : values) {
    low = std::min(low, measure->value());
    high = std::max(high, measure->value());
  }
  const double room = std::max(1.0, (high - low) * 0.2);
  row["least"] = std::max(0.0, std::floor(low - room));
  row["most"] =
      row["least"].toDouble() + 2 * std::ceil((std::ceil(high + room) - row["least"].toDouble()) / 2);
  const double from = absl::ToDoubleSeconds(toTime(values.front()->taken_at()) - absl::UnixEpoch());
  const double to = absl::ToDoubleSeconds(toTime(values.back()->taken_at()) - absl::UnixEpoch());
  QVariantList points;
  for (const v1::Measure* measure : values) {
    const double at = absl::ToDoubleSeconds(toTime(measure->taken_at()) - absl::UnixEpoch());
    points << QVariantMap{{"at", to > from ? (at - from) / (to - from) : 0.5},
                          {"value", measure->value()},
                          {"joined", !points.isEmpty()}};
  }
  row["points"] = points;
}

}  // namespace

QString measuredWords(const v1::MeasureKind& kind, double value) { return CourseExtras::unit(kind, value); }

WornCourse wornCourse(const std::vector<v1::WearBlock>& blocks, absl::CivilDay first, int days) {
  std::map<absl::CivilDay, int> minutes;
  int red = 0;
  int harmed = 0;
  for (const v1::WearBlock& block : blocks) {
    const auto day = parseLocalDay(block.local_day());
    if (!day.ok() || *day < first || *day >= first + days || !block.has_taken_off_at()) continue;
    minutes[*day] += static_cast<int>(wornMinutes(block));
    if (isHurt(block)) {
      ++harmed;
    } else if (isRed(block)) {
      ++red;
    }
  }
  WornCourse course;
  if (minutes.empty()) return course;
  int most = 0;
  std::optional<absl::CivilDay> before;
  for (const auto& [day, worn] : minutes) {
    most = std::max(most, worn);
    course.points << QVariantMap{{"at", static_cast<double>(day - first) / std::max(1, days - 1)},
                                 {"value", worn / 60.0},
                                 {"joined", before.has_value() && day - *before <= kJoinedDays}};
    before = day;
  }
  course.most = std::max(2.0, 2 * std::ceil(most / 120.0));
  course.words = CourseExtras::worn(static_cast<int>(minutes.size()), most, red, harmed);
  return course;
}

QVariantList measureRows(const std::vector<v1::Measure>& measures, const std::vector<MeasureDue>& wanted,
                         const MeasureTable& table, const std::string& language, absl::CivilDay today) {
  QVariantList rows;
  for (const v1::MeasureKind& kind : table.kinds()) {
    std::map<v1::Side, std::vector<const v1::Measure*>> by_side;
    for (const v1::Measure& measure : measures) {
      if (measure.kind() == kind.id() && !measure.withdrawn()) by_side[measure.side()].push_back(&measure);
    }
    QString due;
    for (const MeasureDue& one : wanted) {
      if (one.kind_id != kind.id()) continue;
      due = CourseExtras::due(one.due, today);
      if (by_side.empty()) by_side[v1::SIDE_UNSPECIFIED] = {};
    }
    for (auto& [side, values] : by_side) {
      QVariantMap row{{"title", CourseExtras::sided(kind, language, side)},
                      {"words", due},
                      {"ends", QString()},
                      {"points", QVariantList()},
                      {"least", 0.0},
                      {"most", 10.0}};
      if (!values.empty()) {
        const QString taken = CourseExtras::taken(kind, values);
        row["words"] = due.isEmpty() ? taken : taken + QStringLiteral("\n") + due;
        row["ends"] = CourseExtras::ways(kind);
        addChart(row, values);
      }
      rows << row;
    }
  }
  return rows;
}

}  // namespace newel::home
