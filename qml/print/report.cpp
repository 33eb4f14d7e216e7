#include "qml/print/report.h"

#include <algorithm>
#include <map>
#include <set>

#include "core/progress/adherence.h"
#include "core/progress/trend.h"
#include "core/review/review.h"
#include "core/time/local_day.h"
#include "qml/print/paper.h"
#include "qml/print/record_words.h"
#include "qml/print/report_extras.h"
#include "qml/print/sheet_html.h"
#include "qml/print/sheet_language.h"

namespace newel::print {
namespace {

// Lowest and highest of what was rated: "3", "2 to 5", "not rated".
class Range {
 public:
  void add(std::uint32_t value) {
    m_low = std::min(m_low, value);
    m_high = std::max(m_high, value);
  }
  QString words() const {
    if (m_low > m_high) return sheetWords("Report", "not rated");
    return m_low == m_high ? QString::number(m_low) : sheetWords("Report", "%1 to %2").arg(m_low).arg(m_high);
  }

 private:
  std::uint32_t m_low = 100;
  std::uint32_t m_high = 0;
};

class Report {
 public:
  Report(const ReportInput& input, const Catalogue& catalogue, const RuleBook& rules,
         const Adherence& adherence)
      : m_input(input), m_catalogue(catalogue), m_rules(rules), m_adherence(adherence) {
    for (const auto& practice : input.practices) {
      const auto day = parseLocalDay(practice.local_day());
      if (day.ok() && *day >= input.first && *day <= input.last) m_practices.push_back(&practice);
    }
    std::sort(m_practices.begin(), m_practices.end(),
              [](const v1::Practice* left, const v1::Practice* right) {
                return std::make_pair(left->local_day(), toTime(left->started_at())) <
                       std::make_pair(right->local_day(), toTime(right->started_at()));
              });
    for (const auto& programme : input.programmes) {
      for (const auto& entry : programme.entries()) m_exercise_of[entry.id()] = entry.exercise_id();
    }
  }

  QString html() const {
    return headPart() + adherencePart() + weeksPart() + dosePart() + painPart() +
           measuresPart(m_input, language()) + wearPart(m_input) + practicesPart() + eventsPart() +
           holdsPart() + changesPart();
  }

 private:
  const std::string& language() const { return m_input.language; }

  QString titleOfEntry(const std::string& entry_id) const {
    const auto found = m_exercise_of.find(entry_id);
    return found == m_exercise_of.end() ? sheetWords("Report", "an earlier exercise")
                                        : titleOf(m_catalogue, found->second, language());
  }

  // Numbers whose days touch the period; each counts until the next one begins.
  std::vector<const v1::Programme*> programmesOfPeriod() const {
    std::vector<const v1::Programme*> touching;
    for (std::size_t i = 0; i < m_input.programmes.size(); ++i) {
      const auto from = parseLocalDay(m_input.programmes[i].effective_day());
      const auto to = parseLocalDay(m_input.programmes[i].end_day());
      if (!from.ok() || !to.ok()) continue;
      absl::CivilDay until = *to;
      if (i + 1 < m_input.programmes.size()) {
        const auto next = parseLocalDay(m_input.programmes[i + 1].effective_day());
        if (next.ok()) until = std::min(until, *next - 1);
      }
      if (*from <= m_input.last && until >= m_input.first) touching.push_back(&m_input.programmes[i]);
    }
    return touching;
  }

  QString headPart() const {
    QString html = QStringLiteral("<h1>%1</h1><table>").arg(safe(sheetWords("Report", "Progress report")));
    html += factRow(sheetWords("Report", "Person"), fullName(m_input.identity));
    if (!m_input.identity.birth_date().empty()) {
      html += factRow(sheetWords("Report", "Born"), dayWords(m_input.identity.birth_date()));
    }
    html += factRow(sheetWords("Report", "Limb loss"), limbsWords(m_input.person));
    html += factRow(sheetWords("Report", "Mobility level"), words(m_input.person.mobility()));
    html += factRow(sheetWords("Report", "Period"),
                    sheetWords("Report", "%1 to %2").arg(dayWords(m_input.first), dayWords(m_input.last)));
    QStringList numbers;
    for (const auto* programme : programmesOfPeriod()) {
      numbers << sheetWords("Report", "number %1 from %2, signed by %3")
                     .arg(programme->number())
                     .arg(dayWords(programme->effective_day()), text(programme->signer_name()));
    }
    html += factRow(sheetWords("Report", "Programmes"), numbers.isEmpty()
                                                            ? sheetWords("Report", "none in this period")
                                                            : numbers.join(QLatin1Char('\n')));
    html += factRow(sheetWords("Report", "Data"), dataWords());
    html += factRow(sheetWords("Report", "Clinic"), text(m_input.clinic.name()));
    html += factRow(sheetWords("Report", "Made"),
                    sheetWords("Report", "%1, by %2").arg(dayWords(m_input.today), m_input.made_by));
    return html + QStringLiteral("</table>");
  }

  // Days on which the phone could have told of something, and days with a practice.
  QString dataWords() const {
    const auto days = static_cast<int>(m_input.last - m_input.first) + 1;
    if (!m_input.heard_until)
      return sheetWords("Report", "The phone was never heard from: 0 of %1 days have data.").arg(days);
    const absl::CivilDay from = std::max(m_input.first, m_input.heard_from.value_or(m_input.first));
    const int heard = std::clamp(static_cast<int>(*m_input.heard_until - from) + 1, 0, days);
    std::set<std::string> practised;
    for (const auto* practice : m_practices) practised.insert(practice->local_day());
    return sheetWords("Report",
                      "%1 of %2 days have data; practice on %3 of them. Phone last heard from on %4.")
        .arg(heard)
        .arg(days)
        .arg(static_cast<int>(practised.size()))
        .arg(dayWords(*m_input.heard_until));
  }

  static QStringList shareCells(const Share& share) {
    return {sheetWords("Report", "%1 of %2").arg(share.counted).arg(share.due), percentWords(share.capped()),
            percentWords(share.raw()), percentWords(share.doseShare())};
  }

  QString adherencePart() const {
    QString html = head(sheetWords("Report", "Adherence"));
    QList<QStringList> rows;
    rows << (QStringList{sheetWords("Report", "All")} + shareCells(m_adherence.all));
    for (const auto& [entry_id, share] : m_adherence.by_entry) {
      rows << (QStringList{titleOfEntry(entry_id)} + shareCells(share));
    }
    html += table(
        {sheetWords("Report", "Exercise"), sheetWords("Report", "Done of due"),
         sheetWords("Report", "Adherence"), sheetWords("Report", "With extra"), sheetWords("Report", "Dose")},
        rows);
    std::map<OccasionResult::State, int> states;
    int told_later = 0;
    for (const auto& occasion : m_adherence.occasions) {
      ++states[occasion.state];
      if (occasion.told_later) ++told_later;
    }
    QStringList counts;
    for (const auto& [state, count] : states)
      counts << sheetWords("Report", "%1 %2").arg(count).arg(words(state));
    if (!counts.isEmpty())
      html += plain(sheetWords("Report", "Occasions: %1. Told later instead of timed: %2.")
                        .arg(counts.join(QStringLiteral(", ")))
                        .arg(told_later));
    html +=
        QStringLiteral("<p class=\"soft\">%1 %2</p>")
            .arg(
                safe(adherenceDefinition()),
                safe(sheetWords(
                    "Report",
                    "\"With extra\" counts every occasion done and may pass 100 %. \"Dose\" is what was done "
                    "of what was asked, at most all of it on each occasion.")));
    return html;
  }

  QString weeksPart() const {
    QList<QStringList> rows;
    for (const auto& [monday, share] : m_adherence.by_week) {
      rows << QStringList{dayWords(monday),
                          sheetWords("Report", "%1 of %2").arg(share.counted).arg(share.due),
                          percentWords(share.capped()), percentWords(share.doseShare())};
    }
    if (rows.isEmpty()) return {};
    return head(sheetWords("Report", "Week by week")) +
           table({sheetWords("Report", "Week of"), sheetWords("Report", "Done of due"),
                  sheetWords("Report", "Adherence"), sheetWords("Report", "Dose")},
                 rows);
  }

  QString dosePart() const {
    struct Sum {
      std::uint32_t asked = 0, done = 0;
      std::int64_t held_ms = 0;
      Range before, after, effort;
      int times = 0;
      int voided = 0;
    };
    std::map<std::string, Sum> sums;
    for (const auto* practice : m_practices) {
      for (const auto& entry : practice->entries()) {
        Sum& sum = sums[entry.occasion().entry_id()];
        ++sum.times;
        sum.asked += entry.asked().repetitions();
        sum.done += entry.done().repetitions();
        sum.held_ms += entry.done().hold_ms();
        sum.voided += static_cast<int>(entry.voided_holds());
        if (const auto before = painBefore(*practice, entry)) sum.before.add(*before);
        if (entry.has_pain_after_0_10()) sum.after.add(entry.pain_after_0_10());
        if (entry.has_effort_0_10()) sum.effort.add(entry.effort_0_10());
      }
    }
    QString html = head(sheetWords("Report", "Dose, pain and effort"));
    if (sums.empty()) return html + plain(sheetWords("Report", "No practice was reported in this period."));
    QList<QStringList> rows;
    for (const auto& [entry_id, sum] : sums) {
      rows << QStringList{titleOfEntry(entry_id),
                          QString::number(sum.times),
                          sheetWords("Report", "%1 of %2").arg(sum.done).arg(sum.asked),
                          heldWords(sum.held_ms),
                          sum.before.words(),
                          sum.after.words(),
                          sum.effort.words()};
    }
    return html +
           table({sheetWords("Report", "Exercise"), sheetWords("Report", "Practised"),
                  sheetWords("Report", "Repetitions done of asked"), sheetWords("Report", "Held"),
                  sheetWords("Report", "Pain before, 0 to 10"), sheetWords("Report", "Pain after, 0 to 10"),
                  sheetWords("Report", "Effort, 0 to 10")},
                 rows);
  }

  // Which way it goes, by the whole record's rule and beside its definition.
  QString painPart() const {
    std::vector<v1::Practice> practices;
    for (const auto* practice : m_practices) practices.push_back(*practice);
    const PainCourse course = painCourse(practices, "");
    if (course.ratings.empty()) return {};
    QString html = head(sheetWords("Report", "Pain over the period"));
    QStringList ratings;
    for (const auto& rating : course.ratings) ratings << QString::number(rating.pain_0_10);
    html += plain(sheetWords("Report", "After each practice, the highest of its ratings, 0 to 10: %1.")
                      .arg(ratings.join(QStringLiteral(", "))));
    if (course.slope_per_week)
      html += plain(sheetWords("Report", "%1 points a week (Theil-Sen slope).")
                        .arg(sheetLocale().toString(*course.slope_per_week, 'f', 1)));
    if (course.change) {
      const bool enough = course.change->by_points || course.change->by_percent;
      html += plain((enough ? sheetWords("Report",
                                         "The last three ratings against the three before: %1 points, a "
                                         "change that counts (2 points or 30 %).")
                            : sheetWords("Report",
                                         "The last three ratings against the three before: %1 points, less "
                                         "than counts as a change (2 points or 30 %)."))
                        .arg(sheetLocale().toString(course.change->points, 'f', 1)));
    }
    return html;
  }

  QString practicesPart() const {
    if (m_practices.empty()) return {};
    QList<QStringList> rows;
    for (const auto* practice : m_practices) {
      int done = 0;
      Range pain, effort;
      for (const auto& entry : practice->entries()) {
        if (entry.done().repetitions() > 0) ++done;
        if (entry.has_pain_after_0_10()) pain.add(entry.pain_after_0_10());
        if (entry.has_effort_0_10()) effort.add(entry.effort_0_10());
      }
      rows << QStringList{dayWords(practice->local_day()),
                          practice->origin() == v1::ORIGIN_TOLD_LATER ? sheetWords("Report", "told later")
                                                                      : sheetWords("Report", "timed"),
                          sheetWords("Report", "%1 of %2").arg(done).arg(practice->entries_size()),
                          pain.words(),
                          effort.words(),
                          endWords(*practice)};
    }
    return head(sheetWords("Report", "Practices")) +
           table({sheetWords("Report", "Day"), sheetWords("Report", "How known"),
                  sheetWords("Report", "Exercises done"), sheetWords("Report", "Pain after"),
                  sheetWords("Report", "Effort"), sheetWords("Report", "End")},
                 rows);
  }

  static QString endWords(const v1::Practice& practice) {
    QString ended = words(practice.end());
    if (practice.stop_reason() != v1::STOP_REASON_UNSPECIFIED) {
      ended += QStringLiteral(": ") + words(practice.stop_reason());
    }
    if (practice.resumed() == 1) ended += sheetWords("Report", "; taken up again once");
    if (practice.resumed() > 1)
      ended += sheetWords("Report", "; taken up again %1 times").arg(practice.resumed());
    return ended;
  }

  QString eventsPart() const {
    QStringList lines;
    for (const auto* practice : m_practices) {
      const QString day = dayWords(practice->local_day());
      for (const auto& rule_id : practice->red_flag_rule_ids()) {
        const std::string spoken = m_rules.therapistWords(rule_id);
        QString said = text(rule_id);
        if (!spoken.empty()) said = text(spoken);
        lines << sheetWords("Report", "%1: safety rule. %2").arg(day, said);
      }
      if (practice->red_flag_rule_ids().empty() && practice->end() != v1::PRACTICE_END_FINISHED) {
        lines << sheetWords("Report", "%1: %2.").arg(day, endWords(*practice));
      }
      for (const auto& entry : practice->entries()) {
        if (entry.skipped() == v1::STOP_REASON_UNSPECIFIED) continue;
        QString line = sheetWords("Report", "%1: %2 left out or stopped: %3.")
                           .arg(day, titleOfEntry(entry.occasion().entry_id()), words(entry.skipped()));
        if (!entry.skipped_words().empty())
          line += sheetWords("Report", " \"%1\"").arg(text(entry.skipped_words()));
        lines << line;
      }
      if (!practice->note().empty())
        lines << sheetWords("Report", "%1: the person wrote: \"%2\"").arg(day, text(practice->note()));
      for (const int doubt : practice->doubts()) {
        lines << sheetWords("Report", "%1: time in doubt: %2.")
                     .arg(day, words(static_cast<v1::ClockDoubt>(doubt)));
      }
    }
    return head(sheetWords("Report", "Stops and events")) +
           lined(lines, sheetWords("Report", "None reported in this period."));
  }

  QString holdsPart() const {
    QStringList lines;
    for (const auto& hold : m_input.holds) {
      const absl::Time at = toTime(hold.issued_at());
      const absl::CivilDay day = localDayAt(at, m_input.zone);
      if (day < m_input.first || day > m_input.last) continue;
      const QString when = momentWords(at, m_input.zone);
      if (!hold.lifts_id().empty()) {
        lines << sheetWords("Report", "%1: hold lifted by %2. %3")
                     .arg(when, text(hold.signer_name()), text(hold.reason()));
        continue;
      }
      QStringList titles;
      for (const auto& id : hold.entry_ids()) titles << titleOfEntry(id);
      lines << sheetWords("Report", "%1: hold by %2 on %3. %4")
                   .arg(when, text(hold.signer_name()),
                        titles.isEmpty() ? sheetWords("Report", "everything")
                                         : titles.join(QStringLiteral(", ")),
                        text(hold.reason()));
    }
    return head(sheetWords("Report", "Hold orders")) +
           lined(lines, sheetWords("Report", "None in this period."));
  }

  QString changesPart() const {
    QString html = head(sheetWords("Report", "Changes of programme"));
    const std::size_t before = html.size();
    for (std::size_t i = 0; i < m_input.programmes.size(); ++i) {
      const auto& programme = m_input.programmes[i];
      const absl::CivilDay day = localDayAt(toTime(programme.issued_at()), m_input.zone);
      if (day < m_input.first || day > m_input.last) continue;
      html += QStringLiteral("<h3>%1</h3>")
                  .arg(safe(sheetWords("Report", "Programme %1, signed on %2 by %3")
                                .arg(programme.number())
                                .arg(dayWords(day), text(programme.signer_name()))));
      if (!programme.changes().empty())
        html += plain(sheetWords("Report", "Told to the person: %1").arg(text(programme.changes())));
      QStringList lines;
      if (i == 0) {
        lines << sheetWords("Report", "The first programme, %1 exercises.").arg(programme.entries_size());
      } else {
        for (const auto& change :
             changesBetween(m_input.programmes[i - 1], programme, m_catalogue, language())) {
          lines << text(change);
        }
      }
      for (const auto& entry : programme.entries()) {
        for (const auto& answered : entry.overrides()) {
          lines << sheetWords("Report",
                              "%1: prescribed although the rules ask for a reason (%2). Reason given: %3")
                       .arg(titleOf(m_catalogue, entry.exercise_id(), language()), text(answered.rule_id()),
                            text(answered.reason()));
        }
      }
      html += lined(lines, sheetWords("Report", "Nothing that the person does has changed."));
    }
    return html.size() == static_cast<qsizetype>(before)
               ? html + plain(sheetWords("Report", "None in this period."))
               : html;
  }

  const ReportInput& m_input;
  const Catalogue& m_catalogue;
  const RuleBook& m_rules;
  const Adherence& m_adherence;
  std::vector<const v1::Practice*> m_practices;
  std::map<std::string, std::string> m_exercise_of;
};

}  // namespace

absl::StatusOr<QString> reportHtml(const ReportInput& input, const Catalogue& catalogue,
                                   const RuleBook& rules) {
  const SheetLanguage language(input.language);
  // Never heard from: every day of the period is without data, so the last day heard lies before it.
  const HeardDays heard(input.heard_from.value_or(absl::CivilDay::min()),
                        input.heard_until.value_or(input.first - 1));
  const auto adherence = adherenceOf(input.programmes, input.practices, input.first, input.last, input.today,
                                     heard, heldDaysOf(input.holds, input.zone));
  if (!adherence.ok()) return adherence.status();
  return Report(input, catalogue, rules, *adherence).html();
}

absl::StatusOr<int> writeReport(const ReportInput& input, const ReportOptions& options,
                                const Catalogue& catalogue, const RuleBook& rules, const QString& file) {
  const SheetLanguage language(input.language);
  const auto html = reportHtml(input, catalogue, rules);
  if (!html.ok()) return html.status();
  PaperOptions paper_options;
  paper_options.size = options.size;
  paper_options.body_pt = options.body_pt;
  paper_options.title = sheetWords("Report", "Progress report");
  paper_options.foot =
      sheetWords("Report",
                 "%1, %2 to %3. Made from what the phone reported; it does not examine or diagnose.")
          .arg(fullName(input.identity), dayWords(input.first), dayWords(input.last));
  Paper paper(paper_options);
  // Each part is a block of its own, so that a heading is never left alone at the foot of a page.
  const QStringList parts = html->split(QStringLiteral("<h2>"));
  for (qsizetype i = 0; i < parts.size(); ++i)
    paper.add(i == 0 ? parts[i] : QStringLiteral("<h2>") + parts[i]);
  const absl::Status status = paper.write(file);
  if (!status.ok()) return status;
  return paper.pages();
}

}  // namespace newel::print
