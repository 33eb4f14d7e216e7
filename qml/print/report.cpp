#include "qml/print/report.h"

#include <QtCore/QCoreApplication>
#include <algorithm>
#include <map>
#include <set>

#include "core/progress/adherence.h"
#include "core/review/review.h"
#include "core/time/local_day.h"
#include "qml/print/paper.h"
#include "qml/print/record_words.h"

namespace newel::print {
namespace {

QString say(const char* words) { return QCoreApplication::translate("Report", words); }
QString safe(const QString& text) {
  return text.toHtmlEscaped().replace(QLatin1Char('\n'), QStringLiteral("<br>"));
}

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

QString factRow(const QString& what, const QString& value) {
  return QStringLiteral("<tr><td><b>%1</b></td><td>%2</td></tr>").arg(safe(what), safe(value));
}

QString head(const QString& words) { return QStringLiteral("<h2>%1</h2>").arg(safe(words)); }
QString plain(const QString& words) { return QStringLiteral("<p>%1</p>").arg(safe(words)); }

// Lowest and highest of what was rated: "3", "2 to 5", "not rated".
class Range {
 public:
  void add(std::uint32_t value) {
    m_low = std::min(m_low, value);
    m_high = std::max(m_high, value);
  }
  QString words() const {
    if (m_low > m_high) return say("not rated");
    return m_low == m_high ? QString::number(m_low) : say("%1 to %2").arg(m_low).arg(m_high);
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
    return headPart() + adherencePart() + weeksPart() + dosePart() + practicesPart() + eventsPart() +
           holdsPart() + changesPart();
  }

 private:
  std::string language() const { return m_input.person.language(); }

  QString titleOfEntry(const std::string& entry_id) const {
    const auto found = m_exercise_of.find(entry_id);
    return found == m_exercise_of.end() ? say("an earlier exercise")
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
    QString html = QStringLiteral("<h1>%1</h1><table>").arg(safe(say("Progress report")));
    html += factRow(say("Person"), fullName(m_input.identity));
    if (!m_input.identity.birth_date().empty()) {
      html += factRow(say("Born"), dayWords(m_input.identity.birth_date()));
    }
    html += factRow(say("Limb loss"), limbsWords(m_input.person));
    html += factRow(say("Mobility level"), words(m_input.person.mobility()));
    html += factRow(say("Period"), say("%1 to %2").arg(dayWords(m_input.first), dayWords(m_input.last)));
    QStringList numbers;
    for (const auto* programme : programmesOfPeriod()) {
      numbers << say("number %1 from %2, signed by %3")
                     .arg(programme->number())
                     .arg(dayWords(programme->effective_day()), text(programme->signer_name()));
    }
    html += factRow(say("Programmes"),
                    numbers.isEmpty() ? say("none in this period") : numbers.join(QLatin1Char('\n')));
    html += factRow(say("Data"), dataWords());
    html += factRow(say("Clinic"), text(m_input.clinic.name()));
    html += factRow(say("Made"), say("%1, by %2").arg(dayWords(m_input.today), m_input.made_by));
    return html + QStringLiteral("</table>");
  }

  // Days on which the phone could have told of something, and days with a practice.
  QString dataWords() const {
    const auto days = static_cast<int>(m_input.last - m_input.first) + 1;
    if (!m_input.heard_until) return say("The phone was never heard from: 0 of %1 days have data.").arg(days);
    const int heard = std::clamp(static_cast<int>(*m_input.heard_until - m_input.first) + 1, 0, days);
    std::set<std::string> practised;
    for (const auto* practice : m_practices) practised.insert(practice->local_day());
    return say("%1 of %2 days have data; practice on %3 of them. Phone last heard from on %4.")
        .arg(heard)
        .arg(days)
        .arg(static_cast<int>(practised.size()))
        .arg(dayWords(*m_input.heard_until));
  }

  static QStringList shareCells(const Share& share) {
    return {say("%1 of %2").arg(share.counted).arg(share.due), percentWords(share.capped()),
            percentWords(share.raw()), percentWords(share.doseShare())};
  }

  QString adherencePart() const {
    QString html = head(say("Adherence"));
    QList<QStringList> rows;
    rows << (QStringList{say("All")} + shareCells(m_adherence.all));
    for (const auto& [entry_id, share] : m_adherence.by_entry) {
      rows << (QStringList{titleOfEntry(entry_id)} + shareCells(share));
    }
    html +=
        table({say("Exercise"), say("Done of due"), say("Adherence"), say("With extra"), say("Dose")}, rows);
    std::map<OccasionResult::State, int> states;
    int told_later = 0;
    for (const auto& occasion : m_adherence.occasions) {
      ++states[occasion.state];
      if (occasion.told_later) ++told_later;
    }
    QStringList counts;
    for (const auto& [state, count] : states) counts << say("%1 %2").arg(count).arg(words(state));
    if (!counts.isEmpty())
      html += plain(say("Occasions: %1. Told later instead of timed: %2.")
                        .arg(counts.join(QStringLiteral(", ")))
                        .arg(told_later));
    html +=
        QStringLiteral("<p class=\"soft\">%1 %2</p>")
            .arg(
                safe(adherenceDefinition()),
                safe(say(
                    "\"With extra\" counts every occasion done and may pass 100 %. \"Dose\" is what was done "
                    "of what was asked, at most all of it on each occasion.")));
    return html;
  }

  QString weeksPart() const {
    QList<QStringList> rows;
    for (const auto& [monday, share] : m_adherence.by_week) {
      rows << QStringList{dayWords(monday), say("%1 of %2").arg(share.counted).arg(share.due),
                          percentWords(share.capped()), percentWords(share.doseShare())};
    }
    if (rows.isEmpty()) return {};
    return head(say("Week by week")) +
           table({say("Week of"), say("Done of due"), say("Adherence"), say("Dose")}, rows);
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
        if (entry.has_pain_before_0_10()) sum.before.add(entry.pain_before_0_10());
        if (entry.has_pain_after_0_10()) sum.after.add(entry.pain_after_0_10());
        if (entry.has_effort_0_10()) sum.effort.add(entry.effort_0_10());
      }
    }
    QString html = head(say("Dose, pain and effort"));
    if (sums.empty()) return html + plain(say("No practice was reported in this period."));
    QList<QStringList> rows;
    for (const auto& [entry_id, sum] : sums) {
      rows << QStringList{titleOfEntry(entry_id),
                          QString::number(sum.times),
                          say("%1 of %2").arg(sum.done).arg(sum.asked),
                          say("%1 s").arg(sum.held_ms / 1000),
                          sum.before.words(),
                          sum.after.words(),
                          sum.effort.words()};
    }
    return html + table({say("Exercise"), say("Practised"), say("Repetitions done of asked"), say("Held"),
                         say("Pain before, 0 to 10"), say("Pain after, 0 to 10"), say("Effort, 0 to 10")},
                        rows);
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
                          practice->origin() == v1::ORIGIN_TOLD_LATER ? say("told later") : say("timed"),
                          say("%1 of %2").arg(done).arg(practice->entries_size()),
                          pain.words(),
                          effort.words(),
                          endWords(*practice)};
    }
    return head(say("Practices")) + table({say("Day"), say("How known"), say("Exercises done"),
                                           say("Pain after"), say("Effort"), say("End")},
                                          rows);
  }

  static QString endWords(const v1::Practice& practice) {
    QString ended = words(practice.end());
    if (practice.stop_reason() != v1::STOP_REASON_UNSPECIFIED) {
      ended += QStringLiteral(": ") + words(practice.stop_reason());
    }
    if (practice.resumed() == 1) ended += say("; taken up again once");
    if (practice.resumed() > 1) ended += say("; taken up again %1 times").arg(practice.resumed());
    return ended;
  }

  QString eventsPart() const {
    QStringList lines;
    for (const auto* practice : m_practices) {
      const QString day = dayWords(practice->local_day());
      for (const auto& rule_id : practice->red_flag_rule_ids()) {
        const v1::Rule* rule = m_rules.rule(rule_id);
        QString said = text(rule_id);
        if (rule != nullptr && rule->words().contains("en")) said = text(rule->words().at("en").therapist());
        lines << say("%1: safety rule. %2").arg(day, said);
      }
      if (practice->red_flag_rule_ids().empty() && practice->end() != v1::PRACTICE_END_FINISHED) {
        lines << say("%1: %2.").arg(day, endWords(*practice));
      }
      for (const auto& entry : practice->entries()) {
        if (entry.skipped() == v1::STOP_REASON_UNSPECIFIED) continue;
        QString line = say("%1: %2 left out or stopped: %3.")
                           .arg(day, titleOfEntry(entry.occasion().entry_id()), words(entry.skipped()));
        if (!entry.skipped_words().empty()) line += say(" \"%1\"").arg(text(entry.skipped_words()));
        lines << line;
      }
      if (!practice->note().empty())
        lines << say("%1: the person wrote: \"%2\"").arg(day, text(practice->note()));
      for (const int doubt : practice->doubts()) {
        lines << say("%1: time in doubt: %2.").arg(day, words(static_cast<v1::ClockDoubt>(doubt)));
      }
    }
    return head(say("Stops and events")) + lined(lines, say("None reported in this period."));
  }

  QString holdsPart() const {
    QStringList lines;
    for (const auto& hold : m_input.holds) {
      const absl::Time at = toTime(hold.issued_at());
      const absl::CivilDay day = localDayAt(at, m_input.zone);
      if (day < m_input.first || day > m_input.last) continue;
      const QString when = momentWords(at, m_input.zone);
      if (!hold.lifts_id().empty()) {
        lines << say("%1: hold lifted by %2. %3").arg(when, text(hold.signer_name()), text(hold.reason()));
        continue;
      }
      QStringList titles;
      for (const auto& id : hold.entry_ids()) titles << titleOfEntry(id);
      lines << say("%1: hold by %2 on %3. %4")
                   .arg(when, text(hold.signer_name()),
                        titles.isEmpty() ? say("everything") : titles.join(QStringLiteral(", ")),
                        text(hold.reason()));
    }
    return head(say("Hold orders")) + lined(lines, say("None in this period."));
  }

  QString changesPart() const {
    QString html = head(say("Changes of programme"));
    const std::size_t before = html.size();
    for (std::size_t i = 0; i < m_input.programmes.size(); ++i) {
      const auto& programme = m_input.programmes[i];
      const absl::CivilDay day = localDayAt(toTime(programme.issued_at()), m_input.zone);
      if (day < m_input.first || day > m_input.last) continue;
      html += QStringLiteral("<h3>%1</h3>")
                  .arg(safe(say("Programme %1, signed on %2 by %3")
                                .arg(programme.number())
                                .arg(dayWords(day), text(programme.signer_name()))));
      QStringList lines;
      if (i == 0) {
        lines << say("The first programme, %1 exercises.").arg(programme.entries_size());
      } else {
        for (const auto& change :
             changesBetween(m_input.programmes[i - 1], programme, m_catalogue, language())) {
          lines << text(change);
        }
      }
      for (const auto& entry : programme.entries()) {
        for (const auto& answered : entry.overrides()) {
          lines << say("%1: prescribed although the rules ask for a reason (%2). Reason given: %3")
                       .arg(titleOf(m_catalogue, entry.exercise_id(), language()), text(answered.rule_id()),
                            text(answered.reason()));
        }
      }
      html += lined(lines, say("Nothing that the person does has changed."));
    }
    return html.size() == static_cast<qsizetype>(before) ? html + plain(say("None in this period.")) : html;
  }

  static QString lined(const QStringList& lines, const QString& none) {
    if (lines.isEmpty()) return plain(none);
    QString html = QStringLiteral("<ul>");
    for (const QString& line : lines) html += QStringLiteral("<li>%1</li>").arg(safe(line));
    return html + QStringLiteral("</ul>");
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
  // Never heard from: every day of the period is without data, so the last day heard lies before it.
  const absl::CivilDay heard = input.heard_until.value_or(input.first - 1);
  const auto adherence = adherenceOf(input.programmes, input.practices, input.first, input.last, input.today,
                                     heard, heldDaysOf(input.holds, input.zone));
  if (!adherence.ok()) return adherence.status();
  return Report(input, catalogue, rules, *adherence).html();
}

absl::StatusOr<int> writeReport(const ReportInput& input, const ReportOptions& options,
                                const Catalogue& catalogue, const RuleBook& rules, const QString& file) {
  const auto html = reportHtml(input, catalogue, rules);
  if (!html.ok()) return html.status();
  PaperOptions paper_options;
  paper_options.size = options.size;
  paper_options.body_pt = options.body_pt;
  paper_options.title = say("Progress report");
  paper_options.foot =
      say("%1, %2 to %3. Made from what the phone reported; it does not examine or diagnose.")
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
