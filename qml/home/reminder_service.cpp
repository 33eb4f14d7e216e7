#include "qml/home/reminder_service.h"

#include "core/safety/practice_history.h"
#include "core/schedule/reminder_book.h"
#include "core/time/local_day.h"
#include "qml/home/facts_for_pages.h"

namespace newel::home {
namespace {

// News come in bursts, and the list can wait until the page has been painted.
constexpr int kSoonMs = 300;
// Between two notes that Newel is in front, where nothing waited for an answer.
constexpr absl::Duration kOpenedAgain = absl::Minutes(10);

// "2026-11-30/0540-0720" belongs to that day.
absl::CivilDay dayOf(const std::string& id, absl::CivilDay otherwise) {
  return parseLocalDay(id.substr(0, id.find('/'))).value_or(otherwise);
}

}  // namespace

ReminderService::ReminderService(PracticeSession& session, EngineBridge& bridge, const HomeParts& parts,
                                 QObject* parent)
    : QObject(parent), m_session(session), m_bridge(bridge), m_parts(parts) {
  load();
  if (m_parts.reminders != nullptr) m_parts.reminders->setListener(this);
  m_soon.setSingleShot(true);
  m_soon.setInterval(kSoonMs);
  connect(&m_soon, &QTimer::timeout, this, &ReminderService::rebuild);
  connect(&bridge, &EngineBridge::news, this, [this] { m_soon.start(); });
  connect(&session, &PracticeSession::changed, this, &ReminderService::practiceMoved);
  if (m_book.settings().wanted() == v1::REMINDERS_WANTED_YES && m_parts.reminders != nullptr)
    m_parts.reminders->ask();
}

ReminderService::~ReminderService() {
  if (m_parts.reminders != nullptr) m_parts.reminders->setListener(nullptr);
}

void ReminderService::load() {
  if (!m_unkept) m_book = m_parts.engine->reminderBook();
}

void ReminderService::keep() { m_unkept = !m_parts.engine->keepReminderBook(m_book).ok(); }

absl::Status ReminderService::setSettings(const v1::ReminderSettings& settings) {
  v1::ReminderBook book = m_book;
  *book.mutable_settings() = settings;
  noteOpened(book, m_parts.clock->wall());  // whoever sets this has Newel before them
  absl::Status kept = m_parts.engine->keepReminderBook(book);
  if (!kept.ok()) return kept;
  m_unkept = false;
  m_book = std::move(book);
  if (settings.wanted() == v1::REMINDERS_WANTED_YES && m_parts.reminders != nullptr) m_parts.reminders->ask();
  rebuild();
  return kept;
}

platform::ReminderPermission ReminderService::permission() const {
  return m_parts.reminders == nullptr ? platform::ReminderPermission::None : m_parts.reminders->permission();
}

bool ReminderService::comeWhenClosed() const {
  return m_stays || (m_parts.reminders != nullptr && m_parts.reminders->comeWhenClosed());
}

void ReminderService::setStay(bool stay) {
  if (m_parts.resident == nullptr || m_stay_asked == stay) return;
  m_stay_asked = stay;
  m_stays = m_parts.resident->startAtLogin(stay, m_parts.login_command) && stay;
}

ReminderInput ReminderService::input() const {
  const HomeEngine& engine = *m_parts.engine;
  ReminderInput input;
  input.programme = m_programme.has_value() ? &*m_programme : nullptr;
  input.book = m_book;
  input.zone = zoneOf(m_parts);
  input.now = m_parts.clock->wall();
  for (const v1::HoldOrder& hold : engine.activeHolds()) {
    if (hold.entry_ids().empty()) input.held_all = true;
    for (const std::string& id : hold.entry_ids()) input.held_entry_ids.push_back(id);
  }
  const std::vector<v1::Practice> practices = practicesThatCount(m_parts);
  input.done = doneOccasions(practices);
  const absl::CivilDay today = todayOf(m_parts);
  const auto stop = openStop(*m_parts.rules, practices, today, clinicSpokeAt(engine));
  if (stop.has_value() && stop->until == v1::UNTIL_NEXT_DAY) {
    input.practice_from = today + 1;
  } else {
    input.stopped = stop.has_value();
  }
  return input;
}

void ReminderService::rebuild() {
  // While another thread has the engine nothing may be asked of it.
  if (m_bridge.heldBack()) return m_soon.start();
  m_soon.stop();
  m_armed.clear();
  const HomeState state = m_parts.engine->state();
  if (!state.paired) m_unkept = false;  // another person's, or nobody's
  load();
  if (m_parts.reminders == nullptr) return emit changed();
  const bool may = state.paired && !state.revoked && m_book.settings().wanted() == v1::REMINDERS_WANTED_YES;
  setStay(may);
  if (!may) {
    m_parts.reminders->clearAll();
    return emit changed();
  }
  m_programme = m_parts.engine->programme();
  const ReminderInput from = input();
  for (const std::string& id : remindersToClear(from)) m_parts.reminders->clear(id);
  if (!m_session.active()) m_armed = armedReminders(from);
  std::vector<platform::Reminder> list;
  list.reserve(m_armed.size());
  for (const ArmedReminder& reminder : m_armed) list.push_back({reminder.id, reminder.at});
  // A lock screen is read by anybody: nothing here says what Newel is for.
  m_parts.reminders->arm(list, {tr("Newel").toStdString(), tr("You asked for a reminder now.").toStdString(),
                                tr("Open").toStdString(), tr("Later").toStdString()});
  emit changed();
}

void ReminderService::practiceMoved() {
  if (m_session.active() == m_practising) return;
  m_practising = m_session.active();
  opened();
  rebuild();
}

void ReminderService::opened() {
  if (m_bridge.heldBack() || m_book.settings().wanted() != v1::REMINDERS_WANTED_YES ||
      !m_parts.engine->state().paired)
    return;
  const absl::Time now = m_parts.clock->wall();
  const absl::Time before = m_book.has_opened_at() ? toTime(m_book.opened_at()) : absl::InfinitePast();
  const bool answered_any = noteOpened(m_book, now);
  if (!answered_any && now >= before && now - before < kOpenedAgain) return;
  keep();
  m_soon.start();
}

void ReminderService::reminderShown(const std::string& id, absl::Time at) {
  noteShown(m_book, id, dayOf(id, todayOf(m_parts)), at);
  keep();
  m_soon.start();
}

void ReminderService::answered(const std::string& id, v1::ReminderAnswer answer) {
  if (!noteAnswer(m_book, id, answer, m_parts.clock->wall())) return;
  keep();
  rebuild();
}

void ReminderService::reminderOpened(const std::string& id) {
  answered(id, v1::REMINDER_ANSWER_OPENED);
  emit openAsked();
}

void ReminderService::reminderLater(const std::string& id) { answered(id, v1::REMINDER_ANSWER_LATER); }

void ReminderService::reminderDismissed(const std::string& id) {
  answered(id, v1::REMINDER_ANSWER_DISMISSED);
}

void ReminderService::reminderPermissionChanged() {
  emit changed();
  if (permission() == platform::ReminderPermission::Granted) m_soon.start();
}

void ReminderService::clockOrZoneChanged() {
  rebuild();
  emit clockChanged();
}

}  // namespace newel::home
