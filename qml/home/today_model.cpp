#include "qml/home/today_model.h"

#include <algorithm>
#include <chrono>
#include <set>

#include "core/library/wording.h"
#include "core/practice/compile.h"
#include "core/safety/practice_history.h"
#include "core/time/local_day.h"
#include "qml/home/contact_notices.h"
#include "qml/home/facts_for_pages.h"
#include "qml/home/phrasing.h"

namespace newel::home {
namespace {

// As in Notice.qml.
constexpr int kNoticeNew = 1;
constexpr int kNoticeAttention = 2;
constexpr int kNoticeStop = 3;

// How far ahead the next day with something to do is looked for.
constexpr int kLookAheadDays = 14;

bool sameOccasion(const v1::OccasionRef& a, const v1::OccasionRef& b) {
  return a.entry_id() == b.entry_id() && a.local_day() == b.local_day() && a.window() == b.window();
}

}  // namespace

TodayModel::TodayModel(PracticeSession& session, EngineBridge& bridge, SettingsModel& settings,
                       const HomeParts& parts, QObject* parent)
    : QObject(parent), m_session(session), m_settings(settings), m_parts(parts) {
  connect(&bridge, &EngineBridge::news, this, &TodayModel::refresh);
  m_midnight.setSingleShot(true);
  connect(&m_midnight, &QTimer::timeout, this, &TodayModel::refresh);
}

QString TodayModel::day() const { return dayWords(todayOf(m_parts)); }

void TodayModel::refresh() {
  findDue();
  findNotices();
  findUnfinished();
  waitForMidnight();
  emit changed();
}

void TodayModel::waitForMidnight() {
  const absl::Time next = absl::FromCivil(todayOf(m_parts) + 1, zoneOf(m_parts));
  // A second over, so that the day has surely changed.
  m_midnight.start(std::chrono::milliseconds(absl::ToInt64Milliseconds(next - m_parts.clock->wall()) + 1000));
}

QVariantMap TodayModel::rowOf(const v1::Entry& entry, bool done, bool held) const {
  const std::optional<v1::Person> person = m_parts.engine->person();
  const std::string language = languageOf(m_parts);
  QVariantMap row{{"done", done}, {"held", held}, {"title", text(entry.exercise_id())}, {"minutes", 0}};
  if (person.has_value()) {
    const auto timeline = compileTimeline(entry, *person, *m_parts.catalogue, language);
    if (timeline.ok()) {
      row["title"] = text(timeline->title());
      row["minutes"] = minutesOf(timeline->total_ms());
      row["ms"] = static_cast<qlonglong>(timeline->total_ms());
    }
  }
  const QString hands = supportWords(*m_parts.catalogue, entry.support(), language);
  row["words"] = hands.isEmpty() ? doseWords(entry.dose()) : tr("%1, %2").arg(doseWords(entry.dose()), hands);
  return row;
}

void TodayModel::findDue() {
  m_due.clear();
  m_rows.clear();
  m_things.clear();
  m_total_ms = 0;
  m_at = 0;
  m_all_held = false;
  m_stop_words.clear();
  m_nothing_words.clear();
  const std::optional<v1::Programme> programme = m_parts.engine->programme();
  m_has_programme = programme.has_value();
  if (!m_has_programme) return;

  std::set<std::string> held;
  for (const v1::HoldOrder& hold : m_parts.engine->activeHolds()) {
    if (hold.entry_ids().empty()) m_all_held = true;
    held.insert(hold.entry_ids().begin(), hold.entry_ids().end());
  }
  const auto entryOf = [&programme](const std::string& id) -> const v1::Entry* {
    for (const v1::Entry& entry : programme->entries()) {
      if (entry.id() == id) return &entry;
    }
    return nullptr;
  };

  // What is done with the prosthesis on waits as long as the skin keeps it off.
  m_keep_off = prosthesisStaysOff(m_parts);
  const absl::CivilDay today = todayOf(m_parts);
  const std::vector<v1::Practice> practices = practicesThatCount(m_parts);
  const std::vector<v1::OccasionRef> done = doneOccasions(practices);
  const std::string today_words = formatLocalDay(today);
  std::vector<v1::OccasionRef> shown;
  for (const v1::OccasionRef& ref : done) {
    const v1::Entry* const entry = ref.local_day() == today_words ? entryOf(ref.entry_id()) : nullptr;
    const bool again = std::any_of(shown.begin(), shown.end(),
                                   [&ref](const v1::OccasionRef& other) { return sameOccasion(ref, other); });
    if (entry == nullptr || again) continue;
    shown.push_back(ref);
    m_rows << rowOf(*entry, true, false);
    ++m_at;
  }
  for (const Occasion& occasion : dueOn(*programme, today, done)) {
    const v1::Entry* const entry = entryOf(occasion.ref.entry_id());
    if (entry == nullptr || occasion.state == OccasionState::Excused) continue;
    const bool needs_it = m_keep_off && entry->prosthesis() == v1::PROSTHESIS_USE_ON;
    const bool on_hold = m_all_held || needs_it || held.contains(entry->id());
    const QVariantMap row = rowOf(*entry, false, on_hold);
    m_rows << row;
    if (on_hold) continue;
    m_due.push_back(occasion);
    m_things += equipmentWords(*m_parts.catalogue, *entry, languageOf(m_parts));
    m_total_ms += row.value("ms").toLongLong();
  }
  m_things.removeDuplicates();
  // What is on hold has its own notice; saying when it comes again would be a promise.
  const bool nothing_held = !m_all_held && !m_keep_off && held.empty();
  if (m_due.empty() && nothing_held) m_nothing_words = nothingDueWords();
  const std::optional<OpenStop> stop =
      openStop(*m_parts.rules, practices, today, clinicSpokeAt(*m_parts.engine));
  if (stop.has_value()) {
    m_stop_words = stop->until == v1::UNTIL_NEXT_DAY
                       ? tr("No more practice today. Tomorrow you may start again.")
                       : tr("No practice until the clinic has spoken with you. Please call the clinic.");
  }
}

QString TodayModel::nothingDueWords() const {
  const v1::Programme programme = *m_parts.engine->programme();
  const absl::CivilDay today = todayOf(m_parts);
  const absl::StatusOr<absl::CivilDay> first = parseLocalDay(programme.effective_day());
  const absl::StatusOr<absl::CivilDay> last = parseLocalDay(programme.end_day());
  if (last.ok() && today > *last)
    return tr("Your programme ended on %1. Ask the clinic what comes next.").arg(dayWords(*last));
  if (first.ok() && today < *first) return tr("Your programme begins on %1.").arg(dayWords(*first));
  const auto coming = occasionsOf(programme, today + 1, today + kLookAheadDays);
  if (coming.ok()) {
    for (const Occasion& occasion : *coming) {
      const auto day = parseLocalDay(occasion.ref.local_day());
      if (occasion.state == OccasionState::Due && day.ok()) return tr("Next: %1.").arg(dayWords(*day));
    }
  }
  return QString();
}

QString TodayModel::heading() const {
  if (!m_has_programme) return tr("No programme yet");
  if (m_due.empty()) {
    if (m_all_held) return tr("Your practice is on hold");
    if (m_keep_off) return tr("Rest for your skin");
    return m_at > 0 ? tr("All done for today") : tr("Nothing to do today");
  }
  return tr("%1, %2").arg(tr("%Ln to do", nullptr, static_cast<int>(m_due.size())),
                          minutesWords(minutesOf(m_total_ms)));
}

void TodayModel::findNotices() {
  m_notices.clear();
  m_must_read = false;
  for (const v1::HoldOrder& hold : m_parts.engine->activeHolds()) {
    const QString who = text(hold.signer_name());
    m_notices << QVariantMap{
        {"kind", kNoticeStop},
        {"title", hold.entry_ids().empty() ? tr("Stop: %1 put all practice on hold").arg(who)
                                           : tr("Stop: %1 put a part on hold").arg(who)},
        {"words", text(hold.reason())},
        {"id", QString()},
        {"mustRead", false}};
  }
  if (m_keep_off) {
    m_notices << QVariantMap{
        {"kind", kNoticeStop},
        {"title", tr("Leave the prosthesis off")},
        {"words", tr("Your skin needs a rest until the clinic has spoken with you. What you do with the "
                     "prosthesis on waits.")},
        {"id", QString()},
        {"mustRead", false}};
  }
  m_notices += contactNotices(m_parts.engine->state(), zoneOf(m_parts), todayOf(m_parts));
  const std::vector<std::string> urgent = m_parts.engine->unseenUrgentMessageIds();
  for (const v1::Message& message : m_parts.engine->messages()) {
    const bool must_read = std::find(urgent.begin(), urgent.end(), message.id()) != urgent.end();
    const bool unread = message.sender() == v1::SENDER_CLINIC && !m_settings.seenMessage(text(message.id()));
    if (!must_read && !unread) continue;
    m_must_read = m_must_read || must_read;
    m_notices << QVariantMap{{"kind", must_read ? kNoticeAttention : kNoticeNew},
                             {"title", tr("From %1").arg(text(message.sender_name()))},
                             {"words", withMedia(message)},
                             {"id", text(message.id())},
                             {"mustRead", must_read}};
  }
}

// Today has room for words alone; the picture stands where messages are.
QString TodayModel::withMedia(const v1::Message& message) {
  QString words = text(message.text());
  if (message.has_photo())
    return words + QLatin1Char('\n') + tr("A photo comes with it: look under Help, Write to your therapist.");
  if (message.has_clip())
    return words + QLatin1Char('\n') + tr("A clip comes with it: look under Help, Write to your therapist.");
  return words;
}

void TodayModel::shown() {
  for (const v1::HoldOrder& hold : m_parts.engine->activeHolds()) {
    const QString id = text(hold.id());
    if (m_settings.seenMessage(id)) continue;
    if (m_parts.engine->markSeen(v1::RECEIPT_OF_HOLD_ORDER, hold.id(), hold.number()).ok()) {
      m_settings.setSeenMessage(id);
      m_parts.engine->syncSoon();
    }
  }
}

void TodayModel::findUnfinished() {
  m_unfinished_words.clear();
  if (m_session.active()) return;
  const std::optional<UnfinishedPractice> left = m_parts.engine->unfinished();
  if (!left.has_value() || left->lines.empty()) return;
  const v1::Practice& header = left->lines.front().header();
  const std::uint32_t entry = left->lines.back().entry();
  QString title;
  if (static_cast<int>(entry) < header.entries_size()) {
    const std::string& exercise = header.entries(static_cast<int>(entry)).exercise_id();
    const v1::ExerciseWords* const words = wordsOrEnglish(*m_parts.catalogue, exercise, languageOf(m_parts));
    title = words == nullptr ? text(exercise) : text(words->title());
  }
  m_unfinished_words = tr("You stopped in the middle of: %1.").arg(title);
}

bool TodayModel::mayStart() const {
  return !m_due.empty() && !m_must_read && m_stop_words.isEmpty() && !unfinished() &&
         !m_parts.engine->state().revoked;
}

QString TodayModel::whyNot() const {
  if (m_parts.engine->state().revoked) return tr("The clinic ended this phone's access. Call the clinic.");
  if (!m_stop_words.isEmpty()) return m_stop_words;
  if (m_due.empty()) return m_nothing_words;
  if (m_must_read) return tr("Read the message from the clinic first.");
  return QString();
}

QString TodayModel::contact() const {
  return contactWords(m_parts.engine->state(), zoneOf(m_parts), todayOf(m_parts));
}

void TodayModel::start() {
  m_error.clear();
  // The clinic may have spoken a moment ago.
  findDue();
  findNotices();
  if (mayStart()) m_error = errorWords(m_session.begin(m_due));
  emit changed();
}

void TodayModel::markRead(const QString& id) {
  const absl::Status seen = m_parts.engine->markSeen(v1::RECEIPT_OF_MESSAGE, id.toStdString(), 0);
  m_error = errorWords(seen);
  if (seen.ok()) m_settings.setSeenMessage(id);
  m_parts.engine->syncSoon();
  refresh();
}

void TodayModel::goOn() {
  m_error = errorWords(m_session.takeUp());
  refresh();
}

void TodayModel::closeIt() {
  const absl::Status status = m_session.takeUp();
  m_error = errorWords(status);
  if (status.ok()) {
    m_session.apply(
        [](PracticeRun& run, absl::Time wall, absl::Duration now) { return run.close(true, wall, now); });
    m_error = m_session.lastError();
  }
  refresh();
}

}  // namespace newel::home
