#include "qml/home/app_model.h"

#include <QtCore/QMetaEnum>
#include <QtGui/QGuiApplication>

#include "core/time/local_day.h"
#include "qml/home/facts_for_pages.h"
#include "qml/home/phrasing.h"

namespace newel::home {
namespace {

AppModel::Page pageOf(RunStep step) {
  switch (step) {
    case RunStep::Question:
      return AppModel::Page::Question;
    case RunStep::PainBefore:
      return AppModel::Page::Pain;
    case RunStep::Support:
    case RunStep::Ready:
      return AppModel::Page::GetReady;
    case RunStep::Playing:
      return AppModel::Page::Practice;
    case RunStep::WhatHappened:
      return AppModel::Page::WhatHappened;
    case RunStep::Rating:
      return AppModel::Page::Rating;
    case RunStep::Verdict:
      return AppModel::Page::Verdict;
    case RunStep::Closed:
      break;
  }
  return AppModel::Page::Close;
}

// Reached from the settings, and back to them.
bool isOfSettings(AppModel::Page page) {
  return page == AppModel::Page::Drawn || page == AppModel::Page::Reminders ||
         page == AppModel::Page::TakeAlong || page == AppModel::Page::Erase;
}

const char* nameOf(PlayerState state) {
  switch (state) {
    case PlayerState::Idle:
      return "idle";
    case PlayerState::Running:
      return "running";
    case PlayerState::WaitingTap:
      return "waiting";
    case PlayerState::Paused:
      return "paused";
    case PlayerState::Ended:
      return "ended";
    case PlayerState::Stopped:
      break;
  }
  return "stopped";
}

}  // namespace

AppModel::AppModel(PracticeSession& session, TodayModel& today, EngineBridge& bridge, const HomeParts& parts,
                   const QString& banner, QObject* parent)
    : QObject(parent), m_session(session), m_today(today), m_parts(parts), m_banner(banner) {
  connect(&bridge, &EngineBridge::holdCame, &session, &PracticeSession::holdCame);
  connect(&bridge, &EngineBridge::news, this, [this] {
    follow();
    emit changed();
  });
  connect(&session, &PracticeSession::changed, this, &AppModel::follow);
  connect(&today, &TodayModel::changed, this, &AppModel::follow);
  follow();
}

AppModel::Page AppModel::page() const { return m_page; }

QString AppModel::pageName() const {
  return QString::fromLatin1(QMetaEnum::fromType<Page>().valueToKey(static_cast<int>(m_page)));
}

void AppModel::follow() {
  Page page = Page::Today;
  if (!paired()) {
    page = Page::Pair;
    if (m_aside != Page::Help && m_aside != Page::Settings && m_aside != Page::Drawn) m_aside = Page::Today;
  } else if (m_session.active()) {
    page = pageOf(m_session.run()->step());
    // Whatever was looked up gives way when a rule or the clinic speaks.
    if (page == Page::Verdict || page == Page::Close) m_aside = Page::Today;
  } else if (m_today.unfinished()) {
    page = Page::Unfinished;
  }
  if (m_aside == Page::LeaveOut && page != Page::Practice && page != Page::GetReady) m_aside = Page::Today;
  if (m_aside != Page::Today) page = m_aside;
  if (page == m_page) return;
  m_page = page;
  emit pageChanged();
}

void AppModel::show(Page page) {
  if (page != Page::Programme && page != Page::Advice && page != Page::Help && page != Page::Settings &&
      page != Page::LeaveOut && page != Page::TellLater && !isOfSettings(page))
    return;
  m_aside = page;
  follow();
}

void AppModel::showForTest(Page page) {
  m_page = page;
  emit pageChanged();
}

void AppModel::back() {
  m_aside = isOfSettings(m_aside) ? Page::Settings : Page::Today;
  follow();
}

void AppModel::pairedNow() {
  m_aside = Page::Paired;
  m_today.refresh();
  emit changed();
}

QString AppModel::greetingName() const { return text(m_parts.engine->greetingName()); }

QString AppModel::fingerprint() const { return text(m_parts.engine->hubFingerprint()); }

void AppModel::leavePractice() {
  m_session.leave();
  m_today.refresh();
  back();
}

bool AppModel::rightToLeft() const { return QGuiApplication::isRightToLeft(); }

bool AppModel::paired() const { return m_parts.engine->state().paired; }

QString AppModel::clinicName() const {
  const auto card = m_parts.engine->clinic();
  return card.has_value() ? text(card->name()) : QString();
}

QString AppModel::clinicPhone() const {
  const auto card = m_parts.engine->clinic();
  return card.has_value() ? text(card->phone()) : QString();
}

QString AppModel::clinicHours() const {
  const auto card = m_parts.engine->clinic();
  return card.has_value() ? text(card->hours()) : QString();
}

QString AppModel::emergencyNumber() const {
  const auto card = m_parts.engine->clinic();
  return card.has_value() ? text(card->emergency_number()) : QString();
}

QString AppModel::contact() const {
  return contactWords(m_parts.engine->state(), zoneOf(m_parts), todayOf(m_parts));
}

QJsonObject AppModel::facts() const {
  const HomeState state = m_parts.engine->state();
  const auto programme = m_parts.engine->programme();
  QJsonObject facts{{"page", pageName()},
                    {"paired", state.paired},
                    {"queued", static_cast<qint64>(state.queued)},
                    {"setAside", static_cast<qint64>(state.set_aside)},
                    {"problem", text(state.last_problem)},
                    {"programme", programme.has_value() ? static_cast<int>(programme->number()) : 0},
                    {"due", m_today.dueCount()},
                    {"mayStart", m_today.mayStart()},
                    {"unfinished", m_today.unfinished()},
                    {"holds", static_cast<int>(m_parts.engine->activeHolds().size())},
                    {"practices", static_cast<int>(m_parts.engine->practices().size())},
                    {"today", text(formatLocalDay(todayOf(m_parts)))}};
  if (!m_session.active()) return facts;
  const PracticeRun& run = *m_session.run();
  facts["entry"] = static_cast<int>(run.entryIndex()) + 1;
  facts["entries"] = static_cast<int>(run.entryCount());
  if (const Player* const player = run.player()) {
    const v1::Beat& beat = player->timeline().beats(static_cast<int>(player->beat()));
    facts["player"] = nameOf(player->state());
    facts["beat"] = static_cast<int>(player->beat());
    facts["beats"] = player->timeline().beats_size();
    facts["exercise"] = text(player->timeline().exercise_id());
    facts["kind"] = text(wordOf(*v1::BeatKind_descriptor(), beat.kind()));
    facts["leftMs"] = static_cast<qint64>(absl::ToInt64Milliseconds(player->leftInBeat(m_session.now())));
  }
  return facts;
}

}  // namespace newel::home
