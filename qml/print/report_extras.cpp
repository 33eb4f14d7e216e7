#include "qml/print/report_extras.h"

#include <algorithm>
#include <map>
#include <set>

#include "core/progress/measure_table.h"
#include "core/schedule/occasions.h"
#include "core/schedule/wear_plan.h"
#include "core/time/local_day.h"
#include "qml/print/record_words.h"
#include "qml/print/sheet_html.h"
#include "qml/print/sheet_language.h"
#include "qml/print/wear_lines.h"

namespace newel::print {
namespace {

bool within(const ReportInput& input, const std::string& local_day) {
  const auto day = parseLocalDay(local_day);
  return day.ok() && *day >= input.first && *day <= input.last;
}

struct Series {
  const v1::MeasureKind* kind = nullptr;
  v1::Side side = v1::SIDE_UNSPECIFIED;
  std::vector<const v1::Measure*> values;  // by when they were taken
};

std::vector<Series> seriesOf(const ReportInput& input) {
  std::vector<Series> all;
  for (const v1::MeasureKind& kind : MeasureTable::builtIn().kinds()) {
    for (const v1::Side side : {v1::SIDE_UNSPECIFIED, v1::SIDE_LEFT, v1::SIDE_RIGHT}) {
      Series one{&kind, side, {}};
      for (const auto& measure : input.measures) {
        const auto day = parseLocalDay(measure.local_day());
        if (measure.kind() == kind.id() && measure.side() == side && !measure.withdrawn() && day.ok() &&
            *day <= input.last)
          one.values.push_back(&measure);
      }
      std::stable_sort(one.values.begin(), one.values.end(), [](const auto* a, const auto* b) {
        return toTime(a->taken_at()) < toTime(b->taken_at());
      });
      if (!one.values.empty()) all.push_back(std::move(one));
    }
  }
  return all;
}

QString valueCell(const v1::MeasureKind& kind, const v1::Measure& measure) {
  return sheetWords("Report", "%1, %2")
      .arg(measuredWords(kind, measure.value()), dayWords(measure.local_day()));
}

// The studies that the verdict rests on, the widest error of each.
QStringList errorLines(const QString& title, const v1::MeasureKind& kind, const MeasuredChange& change) {
  QStringList lines;
  for (const JudgedError& judged : change.known) {
    lines << sheetWords("Report", "%1: smallest detectable change (90 %) %2, in %3. %4")
                 .arg(title, measuredWords(kind, judged.detectable.high),
                      text(judged.error.stated->population()), text(judged.error.stated->source().text()));
  }
  return lines;
}

struct WornWeek {
  std::set<std::string> days;
  std::uint32_t minutes = 0;
};

}  // namespace

QString verdictWords(const MeasuredChange& change) {
  switch (change.answer) {
    case Beyond::Yes:
      return change.better ? sheetWords("Report", "better, beyond error")
                           : sheetWords("Report", "worse, beyond error");
    case Beyond::No:
      return sheetWords("Report", "within error: no change can be told");
    case Beyond::CannotTell:
      break;
  }
  return change.doubt == Doubt::NoErrorKnown ? sheetWords("Report", "no published error to judge it by")
                                             : sheetWords("Report", "the studies differ: cannot be told");
}

QString measuredWords(const v1::MeasureKind& kind, double value) {
  const QString number = sheetLocale().toString(value, 'f', static_cast<int>(kind.decimals()));
  return kind.unit() == "{score}" ? sheetWords("Report", "%1 points").arg(number)
                                  : QStringLiteral("%1 %2").arg(number, text(kind.unit()));
}

QString measuresPart(const ReportInput& input, const std::string& language) {
  QString html = head(sheetWords("Report", "Outcome measures"));
  QList<QStringList> rows;
  QStringList errors;
  for (const Series& series : seriesOf(input)) {
    const v1::MeasureKind& kind = *series.kind;
    QString title = text(measureWords(kind, language).name());
    if (series.side != v1::SIDE_UNSPECIFIED) title += QStringLiteral(", ") + words(series.side);
    const v1::Measure& first = *series.values.front();
    const v1::Measure& last = *series.values.back();
    if (series.values.size() < 2) {
      rows << QStringList{title, valueCell(kind, first), QStringLiteral("–"),
                          sheetWords("Report", "taken once: nothing to compare")};
      continue;
    }
    const MeasuredChange change = changedBeyondError(kind, first.value(), last.value(), Sureness::Ninety);
    rows << QStringList{title, valueCell(kind, first), valueCell(kind, last),
                        sheetWords("Report", "%1: %2")
                            .arg((change.difference > 0 ? QStringLiteral("+") : QString()) +
                                     measuredWords(kind, change.difference),
                                 verdictWords(change))};
    errors << errorLines(title, kind, change);
  }
  if (rows.isEmpty())
    return html + plain(sheetWords("Report", "None was taken up to the end of this period."));
  html += table({sheetWords("Report", "Measure"), sheetWords("Report", "First"), sheetWords("Report", "Last"),
                 sheetWords("Report", "Change")},
                rows);
  for (const QString& line : errors) html += QStringLiteral("<p class=\"soft\">%1</p>").arg(safe(line));
  return html;
}

QString wearPart(const ReportInput& input) {
  v1::WearPlan plan;
  plan.set_redness_min(input.redness_min);
  for (const auto& programme : input.programmes)
    if (programme.has_wear_plan()) plan = programme.wear_plan();
  std::map<absl::CivilDay, WornWeek> weeks;
  QStringList skin;
  for (const auto& block : input.wear_blocks) {
    if (!within(input, block.local_day())) continue;
    WornWeek& week = weeks[mondayOf(*parseLocalDay(block.local_day()))];
    week.days.insert(block.local_day());
    if (block.has_taken_off_at()) week.minutes += wornMinutes(block);
    const SkinVerdict verdict = skinVerdict(block, plan);
    if (verdict == SkinVerdict::Clear) continue;
    skin << sheetWords("Report", "%1: %2")
                .arg(dayWords(block.local_day()), wearWords(block, verdict, input.zone));
  }
  QString html = head(sheetWords("Report", "Wearing time and skin"));
  if (weeks.empty()) return html + plain(sheetWords("Report", "No wearing time was told in this period."));
  QList<QStringList> rows;
  for (const auto& [monday, week] : weeks) {
    const auto days = static_cast<std::uint32_t>(week.days.size());
    rows << QStringList{dayWords(monday), QString::number(days),
                        sheetWords("Report", "%1 min").arg(week.minutes / days)};
  }
  html += table({sheetWords("Report", "Week of"), sheetWords("Report", "Days worn"),
                 sheetWords("Report", "Minutes on those days, mean")},
                rows);
  return html + bullets(sheetWords("Report", "Where the skin was not clear"), skin);
}

}  // namespace newel::print
