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

AppModel::Page pageOf(FirstRunModel::Step step) {
  using Step = FirstRunModel::Step;
  switch (step) {
    case Step::Language:
      return AppModel::Page::Language;
    case Step::TextSize:
      return AppModel::Page::TextSize;
    case Step::SoundCheck:
      return AppModel::Page::SoundCheck;
    case Step::Pair:
      return AppModel::Page::Pair;
    case Step::AskReminders:
      return AppModel::Page::AskReminders;
    case Step::Calls:
      return AppModel::Page::Calls;
    case Step::About:
      return AppModel::Page::About;
    case Step::Done:
      break;
  }
  return AppModel::Page::Today;
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

AppModel::AppModel(PracticeSession& session, TodayModel& today, FirstRunModel& first_run,
                   EngineBridge& bridge, const HomeParts& parts, const QString& banner, QObject* parent)
    : QObject(parent),
      m_session(session),
      m_today(today),
      m_first_run(first_run),
      m_parts(parts),
      m_banner(banner) {
  connect(&bridge, &EngineBridge::holdCame, &session, &PracticeSession::holdCame);
  connect(&bridge, &EngineBridge::news, this, [this] {
    follow();
    emit changed();
  });
  connect(&session, &PracticeSession::changed, this, &AppModel::follow);
  connect(&today, &TodayModel::changed, this, &AppModel::follow);
  connect(&first_run, &FirstRunModel::changed, this, &AppModel::follow);
  follow();
}

AppModel::Page AppModel::page() const { return m_page; }

QString AppModel::pageName() const {
  return QString::fromLatin1(QMetaEnum::fromType<Page>().valueToKey(static_cast<int>(m_page)));
}

// Where the person is when nothing is looked up beside.
AppModel::Page AppModel::onTheWay() const {
  if (m_first_run.running()) return pageOf(m_first_run.step());
  if (!paired()) return Page::Pair;
  if (m_session.active()) return pageOf(m_session.run()->step());
  return m_today.unfinished() ? Page::Unfinished : Page::Today;
}

bool AppModel::mayShow(Page page) const {
  switch (page) {
    case Page::Help:
    case Page::Settings:
    case Page::Drawn:
    case Page::Language:
    case Page::TextSize:
    case Page::SoundCheck:
    case Page::AskReminders:
    case Page::Calls:
    case Page::About:
      return true;
    case Page::Paired:
    case Page::Programme:
    case Page::Advice:
    case Page::HowItGoes:
    case Page::Write:
    case Page::Reminders:
    case Page::TellLater:
    case Page::Wear:
    case Page::TakeAlong:
    case Page::Erase:
      return paired();
    case Page::Scan:
      return onTheWay() == Page::Pair || m_aside.contains(Page::Pair);
    case Page::Pair: {
      const HomeState state = m_parts.engine->state();
      return state.revoked || state.last_problem == "sync.hub-refused";
    }
    case Page::LeaveOut:
      return onTheWay() == Page::Practice || onTheWay() == Page::GetReady;
    default:
      return false;
  }
}

void AppModel::follow() {
  const Page way = onTheWay();
  // Whatever was looked up gives way when a rule or the clinic speaks.
  if (way == Page::Verdict || way == Page::Close) m_aside.clear();
  while (!m_aside.isEmpty() && !mayShow(m_aside.constLast())) m_aside.removeLast();
  const Page page = m_aside.isEmpty() ? way : m_aside.constLast();
  if (page == m_page) return;
  m_page = page;
  emit pageChanged();
}

void AppModel::show(Page page) {
  if (page == Page::Paired || !mayShow(page)) return;
  // A page that is open already is gone back to, so that the way back stays short.
  const auto open = m_aside.indexOf(page);
  if (open >= 0) m_aside.resize(open);
  m_aside << page;
  follow();
}

void AppModel::showForTest(Page page) {
  m_page = page;
  emit pageChanged();
}

void AppModel::back() {
  if (m_aside.isEmpty()) return m_first_run.back();
  m_aside.removeLast();
  follow();
}

void AppModel::pairedNow() {
  m_aside = {Page::Paired};
  m_today.refresh();
  emit changed();
}

int AppModel::delivery() const {
  const std::string& id = m_session.record().id();
  return static_cast<int>(id.empty() ? Delivery::Waiting : m_parts.engine->deliveryOf(id));
}

QString AppModel::deliveryWords() const {
  if (m_session.record().id().empty()) return contact();
  const HomeState state = m_parts.engine->state();
  switch (static_cast<Delivery>(delivery())) {
    case Delivery::Arrived:
      return state.last_contact.has_value()
                 ? tr("Arrived: %1.").arg(momentWords(*state.last_contact, zoneOf(m_parts), todayOf(m_parts)))
                 : tr("Arrived.");
    case Delivery::SetAside:
      return tr("The clinic's computer could not take it. It stays on this phone. Call the clinic.");
    case Delivery::Waiting:
      break;
  }
  const QString problem = problemWords(state.last_problem);
  const QString waiting = tr("On its way. It is kept on this phone until the clinic has it.");
  return problem.isEmpty() ? waiting : waiting + QStringLiteral(" ") + problem;
}

QString AppModel::greetingName() const { return text(m_parts.engine->greetingName()); }

QString AppModel::fingerprint() const { return text(m_parts.engine->hubFingerprint()); }

void AppModel::leavePractice() {
  m_session.leave();
  m_aside.clear();
  m_today.refresh();
  follow();
  emit changed();
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
