#include "qml/home/own_record.h"

#include <QtCore/QCoreApplication>
#include <QtGui/QGuiApplication>
#include <algorithm>

#include "core/library/wording.h"
#include "core/time/local_day.h"
#include "qml/home/course_extras.h"
#include "qml/home/facts_for_pages.h"
#include "qml/home/phrasing.h"
#include "qml/home/wear_words.h"
#include "qml/print/paper.h"

namespace newel::home {
namespace {

constexpr double kBodyPt = 12;  // for whoever has not got their glasses at hand
constexpr qsizetype kRowsATable = 120;

class OwnRecord {
  Q_DECLARE_TR_FUNCTIONS(OwnRecord)

 public:
  explicit OwnRecord(const HomeParts& parts)
      : m_parts(parts),
        m_engine(*parts.engine),
        m_person(m_engine.person().value_or(v1::Person())),
        m_today(todayOf(parts)),
        m_zone(zoneOf(parts)) {}

  QStringList blocks() const {
    QStringList blocks{top()};
    blocks << programmes() << practices() << wear() << measures() << messages() << holdsPart() + restPart();
    const QString direction =
        QGuiApplication::isRightToLeft() ? QStringLiteral("rtl") : QStringLiteral("ltr");
    for (QString& block : blocks) block = QStringLiteral("<div dir=\"%1\">%2</div>").arg(direction, block);
    return blocks;
  }

  QString title() const { return tr("What Newel keeps about %1").arg(text(m_engine.greetingName())); }
  QString foot() const {
    return tr("Written by Newel on %1. What was told later was not timed.").arg(dayWords(m_today));
  }

 private:
  static QString safe(const QString& words) {
    return words.toHtmlEscaped().replace(QLatin1Char('\n'), QStringLiteral("<br>"));
  }
  // Somebody's own words, which may run the other way than the rest.
  static QString own(const std::string& words) {
    return words.empty() ? QString() : QChar(0x2068) + text(words) + QChar(0x2069);
  }
  static QString head(const QString& words) { return QStringLiteral("<h2>%1</h2>").arg(safe(words)); }
  static QString plain(const QString& words) { return QStringLiteral("<p>%1</p>").arg(safe(words)); }
  static QString rowOf(QStringList cells, const char* tag) {
    // Tables are laid out from the left whatever the direction.
    if (QGuiApplication::isRightToLeft()) std::reverse(cells.begin(), cells.end());
    QString html = QStringLiteral("<tr>");
    for (const QString& cell : cells)
      html += QStringLiteral("<%1>%2</%1>").arg(QLatin1String(tag), safe(cell));
    return html + QStringLiteral("</tr>");
  }
  static QString table(const QStringList& heads, const QList<QStringList>& rows) {
    QString html = QStringLiteral(
                       "<table class=\"lines\" width=\"100%\" border=\"1\" cellspacing=\"0\" "
                       "style=\"border-style:solid; border-color:#000000;\">") +
                   rowOf(heads, "th");
    for (const QStringList& row : rows) html += rowOf(row, "td");
    return html + QStringLiteral("</table>");
  }

  QString titleOf(const std::string& exercise_id) const {
    const v1::ExerciseWords* words = wordsOrEnglish(*m_parts.catalogue, exercise_id, m_person.language());
    return words == nullptr ? text(exercise_id) : text(words->title());
  }

  QString top() const {
    QString html = QStringLiteral("<h1>%1</h1>").arg(safe(title()));
    if (const auto card = m_engine.clinic()) {
      html += plain(tr("Your clinic: %1, %2").arg(own(card->name()), own(card->phone())));
    }
    return html + plain(contactWords(m_engine.state(), m_zone, m_today)) +
           plain(
               tr("What is not here: photos and clips, which are in Newel with your programme; and what the "
                  "clinic keeps without this phone."));
  }

  QStringList programmes() const {
    QStringList blocks;
    const std::vector<v1::Programme> programmes = m_engine.programmes();
    for (auto programme = programmes.rbegin(); programme != programmes.rend(); ++programme) {
      QString html = head(tr("Programme %L1").arg(programme->number()));
      html += plain(tr("From %1, %2 to %3")
                        .arg(own(programme->signer_name()), dayOf(programme->effective_day()),
                             dayOf(programme->end_day())));
      for (const std::string& words : {programme->changes(), programme->advice()}) {
        if (!words.empty()) html += plain(own(words));
      }
      QList<QStringList> rows;
      for (const v1::Entry& entry : programme->entries()) {
        rows << QStringList{titleOf(entry.exercise_id()), doseWords(entry.dose()),
                            rhythmWords(entry.schedule()), own(entry.note())};
      }
      blocks << html + table({tr("Exercise"), tr("How much"), tr("When"), tr("From your therapist")}, rows);
    }
    return blocks;
  }

  // A long table in pieces, the first under `heading`: one table of years would be laid out for minutes.
  static QStringList tables(const QString& heading, const QStringList& heads,
                            const QList<QStringList>& rows) {
    if (rows.isEmpty()) return {heading + plain(tr("Nothing yet."))};
    QStringList blocks;
    for (qsizetype from = 0; from < rows.size(); from += kRowsATable) {
      blocks << (from == 0 ? heading : QString()) + table(heads, rows.mid(from, kRowsATable));
    }
    return blocks;
  }

  static QString endWords(const v1::Practice& practice) {
    if (practice.stop_reason() != v1::STOP_REASON_UNSPECIFIED) return reasonWords(practice.stop_reason());
    switch (practice.end()) {
      case v1::PRACTICE_END_FINISHED:
        return tr("finished");
      case v1::PRACTICE_END_RED_FLAG:
        return tr("stopped for safety");
      case v1::PRACTICE_END_HELD:
        return tr("stopped by the clinic");
      case v1::PRACTICE_END_REFUSED:
        return tr("not that day");
      case v1::PRACTICE_END_INTERRUPTED:
        return tr("cut off");
      default:
        return tr("stopped");
    }
  }

  static QString ratingWords(bool given, std::uint32_t value) {
    return given ? tr("%L1 of %L2").arg(value).arg(10) : QStringLiteral("–");
  }

  QStringList practices() const {
    const std::vector<v1::Practice> practices = m_engine.practices();
    QList<QStringList> rows;
    for (auto practice = practices.rbegin(); practice != practices.rend(); ++practice) {
      const bool told = practice->origin() == v1::ORIGIN_TOLD_LATER;
      for (const v1::EntryDone& entry : practice->entries()) {
        const bool begun = entry.done().repetitions() > 0 || entry.done().active_ms() > 0;
        QString amount = tr("not done");
        if (begun && entry.asked().repetitions() > 0) {
          amount = tr("%L1 of %L2").arg(entry.done().repetitions()).arg(entry.asked().repetitions());
        } else if (begun) {
          amount = minutesWords(minutesOf(entry.done().active_ms()));
        }
        if (entry.skipped() != v1::STOP_REASON_UNSPECIFIED)
          amount += QStringLiteral(" (%1)").arg(reasonWords(entry.skipped()));
        rows << QStringList{dayOf(practice->local_day()),
                            titleOf(entry.exercise_id()),
                            amount,
                            ratingWords(entry.has_pain_after_0_10(), entry.pain_after_0_10()),
                            ratingWords(entry.has_effort_0_10(), entry.effort_0_10()),
                            told ? tr("told later") : tr("timed"),
                            endWords(*practice)};
      }
    }
    return tables(
        head(tr("What you did")),
        {tr("Day"), tr("Exercise"), tr("Done"), tr("Pain"), tr("Effort"), tr("How known"), tr("End")}, rows);
  }

  QStringList messages() const {
    QList<QStringList> rows;
    for (const v1::Message& message : m_engine.messages()) {
      rows << QStringList{momentWords(toTime(message.written_at()), m_zone, m_today),
                          message.sender() == v1::SENDER_PERSON ? tr("You") : own(message.sender_name()),
                          own(message.text())};
    }
    return tables(head(tr("Messages")), {tr("When"), tr("From"), tr("Words")}, rows);
  }

  QStringList wear() const {
    const std::vector<v1::WearBlock> blocks = m_engine.wearBlocks();
    if (blocks.empty()) return {};
    QList<QStringList> rows;
    for (auto block = blocks.rbegin(); block != blocks.rend(); ++block) {
      const absl::Time on = toTime(block->put_on_at());
      const QString off =
          block->has_taken_off_at() ? timeWords(toTime(block->taken_off_at()), m_zone) : QString();
      rows << QStringList{dayOf(block->local_day()), timeWords(on, m_zone), off,
                          block->has_check() ? skinWords(block->check()) : QString(),
                          block->origin() == v1::ORIGIN_TOLD_LATER ? tr("told later") : tr("timed")};
    }
    return tables(head(tr("Wearing time")),
                  {tr("Day"), tr("Put on"), tr("Taken off"), tr("Skin"), tr("How it was written down")},
                  rows);
  }

  QStringList measures() const {
    QList<QStringList> rows;
    const MeasureTable& table = MeasureTable::builtIn();
    for (const v1::Measure& measure : m_engine.measures()) {
      const v1::MeasureKind* const kind = table.find(measure.kind());
      if (kind == nullptr) continue;  // of a newer program; it is in the other file
      rows << QStringList{dayOf(measure.local_day()), text(measureWords(*kind, m_person.language()).name()),
                          measuredWords(*kind, measure.value()), own(measure.note())};
    }
    if (rows.isEmpty()) return {};
    return tables(head(tr("What the clinic measured")),
                  {tr("Day"), tr("Measure"), tr("Value"), tr("From your therapist")}, rows);
  }

  QString holdsPart() const {
    const std::vector<v1::HoldOrder> holds = m_engine.activeHolds();
    if (holds.empty()) return QString();
    QString html = head(tr("On hold now"));
    for (const v1::HoldOrder& hold : holds) {
      html += plain(tr("From %1, %2: %3")
                        .arg(own(hold.signer_name()), momentWords(toTime(hold.issued_at()), m_zone, m_today),
                             own(hold.reason())));
    }
    return html;
  }

  QString restPart() const {
    return head(tr("The rest")) +
           plain(
               tr("Facts about your body and home, each answer before a practice, and every other detail are "
                  "in the other file that Newel can save, for other programs (JSON)."));
  }

  static QString dayOf(const std::string& local_day) {
    const auto day = parseLocalDay(local_day);
    return day.ok() ? dayWords(*day) : text(local_day);
  }

  const HomeParts& m_parts;
  const HomeEngine& m_engine;
  const v1::Person m_person;
  const absl::CivilDay m_today;
  const absl::TimeZone m_zone;
};

}  // namespace

OwnRecordText ownRecord(const HomeParts& parts) {
  if (!parts.engine->state().paired) return {};
  const OwnRecord record(parts);
  return {record.title(), record.foot(), record.blocks()};
}

absl::Status writeOwnRecord(const OwnRecordText& record, const QString& file) {
  if (record.blocks.isEmpty()) return absl::FailedPreconditionError("this phone belongs to nobody yet");
  print::PaperOptions options;
  options.body_pt = kBodyPt;
  options.title = record.title;
  options.foot = record.foot;
  print::Paper paper(options);
  for (const QString& block : record.blocks) paper.add(block);
  return paper.write(file);
}

}  // namespace newel::home
