#include "qml/home/wear_model.h"

#include <algorithm>
#include <chrono>
#include <utility>

#include "core/time/local_day.h"
#include "qml/home/facts_for_pages.h"
#include "qml/home/phrasing.h"
#include "qml/home/wear_words.h"

namespace newel::home {
namespace {

// A record spans at most 36 hours (check(WearBlock)).
constexpr int kLongestMin = 36 * 60;
constexpr int kPastDays = 14;

int minutesBetween(absl::Time from, absl::Time to) {
  return static_cast<int>(absl::ToInt64Minutes(to - from));
}

}  // namespace

WearModel::WearModel(EngineBridge& bridge, const HomeParts& parts, QObject* parent)
    : QObject(parent), m_parts(parts) {
  connect(&bridge, &EngineBridge::news, this, &WearModel::refresh);
  m_tick.setSingleShot(true);
  connect(&m_tick, &QTimer::timeout, this, &WearModel::refresh);
  refresh();
}

void WearModel::refresh() {
  read();
  findState(now());
  schedule(now());
  emit changed();
}

void WearModel::read() {
  m_plan.reset();
  m_last.reset();
  m_blocks.clear();
  m_block_min = 0;
  m_plan = wearPlanOf(m_parts);
  if (!m_plan.has_value()) return;
  m_blocks = m_parts.engine->wearBlocks();
  if (!m_blocks.empty()) m_last = m_blocks.back();
}

void WearModel::findState(absl::Time now) {
  m_state = State::NoPlan;
  m_day = WearDay();
  if (!m_plan.has_value()) return;
  const auto day = wearDay(*m_plan, m_blocks, todayOf(m_parts));
  if (!day.ok()) {
    // Nothing can be said: then nothing is allowed either.
    m_error = errorWords(day.status());
    m_state = State::StayOff;
    return;
  }
  m_day = *day;
  const bool on = m_last.has_value() && !m_last->has_taken_off_at();
  if (on) {
    // What the plan had for this block when it was put on: today without it.
    std::vector<v1::WearBlock> before(m_blocks.begin(), m_blocks.end() - 1);
    const auto then = parseLocalDay(m_last->local_day());
    const auto begun = then.ok() ? wearDay(*m_plan, before, *then) : day;
    m_block_min = begun.ok() ? begun->block_min : 0;
    m_state = State::On;
    return;
  }
  if (m_last.has_value() && m_day.gate != WearGate::NotBegun) {
    const SkinVerdict verdict = skinVerdict(*m_last, *m_plan);
    if (verdict == SkinVerdict::NotLooked) m_state = State::Look;
    if (verdict == SkinVerdict::Watching) m_state = State::Watch;
    if (m_state != State::NoPlan) return;
  }
  switch (m_day.gate) {
    case WearGate::NotBegun:
      m_state = State::NotBegun;
      return;
    case WearGate::StayOff:
    case WearGate::LookFirst:
      m_state = State::StayOff;
      return;
    case WearGate::Wear:
    case WearGate::NoIncrease:
      break;
  }
  if (m_day.blocks_left == 0) {
    m_state = State::DoneToday;
    return;
  }
  const auto rest = endOfRest();
  m_state = rest.has_value() && *rest > now ? State::Rest : State::Off;
}

// The next instant at which something else is to be said: a minute on the clock while one is counted, the end
// of a rest, the next day.
void WearModel::schedule(absl::Time now) {
  m_tick.stop();
  if (m_state == State::NoPlan) return;
  const absl::Time midnight = absl::FromCivil(todayOf(m_parts) + 1, zoneOf(m_parts));
  absl::Time next = midnight;
  if (m_state == State::Rest) next = std::min(next, *endOfRest());
  if (m_state == State::Watch && !watchOver()) next = std::min(next, *endOfWatch());
  if (timed()) {
    const absl::Duration left = *endOfBlock() - now;
    const absl::Duration part = left % absl::Minutes(1);
    next = std::min(next, now + (part > absl::ZeroDuration() ? part : part + absl::Minutes(1)));
  }
  m_tick.start(std::chrono::milliseconds(absl::ToInt64Milliseconds(next - now) + 20));
}

std::optional<absl::Time> WearModel::endOfBlock() const {
  if (!m_last.has_value() || m_block_min == 0) return std::nullopt;
  return toTime(m_last->put_on_at()) + absl::Minutes(m_block_min);
}

std::optional<absl::Time> WearModel::endOfRest() const {
  if (!m_last.has_value() || !m_last->has_taken_off_at()) return std::nullopt;
  return toTime(m_last->taken_off_at()) + absl::Minutes(m_plan->off_min());
}

std::optional<absl::Time> WearModel::endOfWatch() const {
  if (!m_last.has_value() || !m_last->has_taken_off_at()) return std::nullopt;
  return toTime(m_last->taken_off_at()) + absl::Minutes(m_plan->redness_min());
}

int WearModel::minutesLeft() const {
  const auto end = endOfBlock();
  if (!end.has_value() || *end <= now()) return 0;
  return minutesBetween(now(), *end + absl::Seconds(59));
}

double WearModel::share() const {
  if (!timed()) return 0;
  const double worn = absl::ToDoubleMinutes(now() - toTime(m_last->put_on_at()));
  return std::clamp(worn / m_block_min, 0.0, 1.0);
}

bool WearModel::over() const { return timed() && *endOfBlock() <= now(); }

bool WearModel::watchOver() const {
  const auto end = endOfWatch();
  return m_state == State::Watch && end.has_value() && *end <= now();
}

QString WearModel::headline() const {
  const auto moment = [this](const google::protobuf::Timestamp& at) {
    const absl::TimeZone zone = zoneOf(m_parts);
    const absl::Time time = toTime(at);
    return localDayAt(time, zone) == todayOf(m_parts) ? timeWords(time, zone)
                                                      : momentWords(time, zone, todayOf(m_parts));
  };
  switch (m_state) {
    case State::NoPlan:
      return {};
    case State::NotBegun:
      return tr("Your wear plan begins on %1").arg(dayWords(*parseLocalDay(m_plan->effective_day())));
    case State::Off:
      return tr("The prosthesis is off");
    case State::Rest:
      return tr("Leave it off until %1").arg(timeWords(*endOfRest(), zoneOf(m_parts)));
    case State::On:
      return over() ? tr("Time is up: take it off now") : tr("On since %1").arg(moment(m_last->put_on_at()));
    case State::Look:
      return tr("Look at your skin now");
    case State::Watch:
      return tr("Watch the red skin");
    case State::DoneToday:
      return tr("Enough for today");
    case State::StayOff:
      return tr("Leave the prosthesis off");
  }
  return {};
}

QString WearModel::plan() const {
  if (!m_plan.has_value() || m_state == State::StayOff) return {};
  const v1::WearStep& step = m_plan->steps(
      static_cast<int>(std::min(m_day.step, static_cast<std::size_t>(m_plan->steps_size()) - 1)));
  QString words = tr("Your plan: %1.").arg(wearStepWords(step));
  if (!step.all_day() && step.blocks() > 1 && m_plan->off_min() > 0) {
    words += QStringLiteral(" ") +
             tr("In between at least %1 off.").arg(spanOfTimeWords(static_cast<int>(m_plan->off_min())));
  }
  return words;
}

QString WearModel::worn() const {
  if (!m_plan.has_value() || m_state == State::NotBegun) return {};
  int minutes = static_cast<int>(m_day.worn_min);
  if (m_state == State::On && m_day.wearing) minutes += minutesBetween(toTime(m_last->put_on_at()), now());
  const bool at_all = m_day.blocks_worn > 0 || m_day.wearing || minutes > 0;
  if (!at_all) return tr("Not worn yet today.");
  return minutes == 0 ? tr("Worn today: less than a minute.")
                      : tr("Worn today: %1.").arg(spanOfTimeWords(minutes));
}

QString WearModel::advice() const {
  switch (m_state) {
    case State::Off:
      if (m_day.block_min == 0) return tr("Take it off when it hurts, and look at your skin each time.");
      return tr("This time at most %1.").arg(spanOfTimeWords(static_cast<int>(m_day.block_min)));
    case State::On:
      if (!timed()) return tr("Take it off when it hurts, and look at your skin.");
      return over() ? tr("Then look at your skin.")
                    : tr("Off again at %1.").arg(timeWords(*endOfBlock(), zoneOf(m_parts)));
    case State::Look:
      return tr("All round the residual limb, with a mirror. Choose all that you see or feel.");
    case State::DoneToday:
      return tr("Tomorrow it goes on.");
    default:
      return {};
  }
}

QString WearModel::stop() const {
  if (m_state == State::StayOff)
    return tr(
        "Your skin needs a rest. Leave the prosthesis off until the clinic has spoken with you. Please "
        "call the clinic.");
  if (m_day.gate == WearGate::NoIncrease)
    return tr("Your skin stayed red for too long. Wear no more than now, and call the clinic.");
  return {};
}

QString WearModel::note() const {
  if (!m_plan.has_value()) return {};
  QStringList words;
  if (m_day.step < static_cast<std::size_t>(m_plan->steps_size()))
    words << text(m_plan->steps(static_cast<int>(m_day.step)).activity());
  words << text(m_plan->note());
  words.removeAll(QString());
  return words.join(QStringLiteral("\n"));
}

QVariantList WearModel::signs() const { return skinSignRows(); }

QString WearModel::watchWords() const {
  if (m_state != State::Watch) return {};
  const QString at = timeWords(*endOfWatch(), zoneOf(m_parts));
  return watchOver() ? tr("Was the red gone at %1?").arg(at)
                     : tr("Leave it off and look again at %1. Is the red gone already?").arg(at);
}

QVariantList WearModel::past() const {
  QVariantList rows;
  const absl::CivilDay today = todayOf(m_parts);
  const absl::TimeZone zone = zoneOf(m_parts);
  const bool asks = m_state == State::Look || m_state == State::Watch;
  for (auto block = m_blocks.rbegin(); block != m_blocks.rend(); ++block) {
    const auto day = parseLocalDay(block->local_day());
    if (!day.ok() || *day < today - kPastDays) break;
    // The one that is still asked about stands above.
    if (!block->has_taken_off_at() || (block->id() == m_last->id() && asks)) continue;
    const absl::Time on = toTime(block->put_on_at());
    const absl::Time off = toTime(block->taken_off_at());
    QString words = tr("%1 to %2, %3")
                        .arg(timeWords(on, zone), timeWords(off, zone),
                             spanOfTimeWords(std::max(1, minutesBetween(on, off))));
    if (block->has_check()) words += QStringLiteral("\n") + skinWords(block->check());
    if (block->origin() == v1::ORIGIN_TOLD_LATER)
      words += QStringLiteral("\n") + tr("Told later, not timed.");
    rows << QVariantMap{{"when", dayWords(*day)}, {"words", words}};
  }
  return rows;
}

// What is told may not lie before what was told last.
absl::Time WearModel::earliest() const {
  const absl::Time begun = absl::FromCivil(todayOf(m_parts), zoneOf(m_parts));
  if (!m_last.has_value()) return begun;
  if (m_state == State::On) return toTime(m_last->put_on_at());
  return std::max(begun, toTime(m_last->taken_off_at()));
}

// Finer for what was just now, coarser further back; within the hours that a record may span.
std::vector<int> WearModel::agoMinutes() const {
  std::vector<int> minutes;
  const int most = std::max(0, minutesBetween(earliest(), now()));
  const int least = m_state == State::On ? std::max(0, most - kLongestMin) : 0;
  for (int ago = least; ago <= most; ago += ago - least < 60 ? 5 : ago - least < 240 ? 15 : 60)
    minutes.push_back(ago);
  return minutes;
}

int WearModel::agoSteps() const { return static_cast<int>(agoMinutes().size()); }

QString WearModel::agoWords(int step) const {
  const std::vector<int> minutes = agoMinutes();
  if (step < 0 || step >= static_cast<int>(minutes.size())) return {};
  const int ago = minutes[static_cast<std::size_t>(step)];
  if (ago == 0) return tr("now");
  return momentWords(now() - absl::Minutes(ago), zoneOf(m_parts), todayOf(m_parts));
}

void WearModel::putOn(int ago_step) {
  const std::vector<int> minutes = agoMinutes();
  const std::optional<v1::Person> person = m_parts.engine->person();
  if (!m_plan.has_value() || !person.has_value() || m_state == State::On || ago_step < 0 ||
      ago_step >= static_cast<int>(minutes.size()))
    return;
  const int ago = minutes[static_cast<std::size_t>(ago_step)];
  v1::WearBlock block;
  block.set_id(m_parts.engine->newId());
  block.set_person_id(person->id());
  block.set_zone(m_parts.zone ? m_parts.zone() : person->zone());
  const absl::Time at = now() - absl::Minutes(ago);
  block.set_local_day(formatLocalDay(absl::ToCivilDay(at, zoneOf(m_parts))));
  *block.mutable_put_on_at() = toTimestamp(at);
  block.set_origin(ago == 0 ? v1::ORIGIN_TIMED_HERE : v1::ORIGIN_TOLD_LATER);
  keep(std::move(block));
}

void WearModel::takeOff(int ago_step) {
  const std::vector<int> minutes = agoMinutes();
  if (m_state != State::On || ago_step < 0 || ago_step >= static_cast<int>(minutes.size())) return;
  const int ago = minutes[static_cast<std::size_t>(ago_step)];
  v1::WearBlock block = *m_last;
  *block.mutable_taken_off_at() = toTimestamp(now() - absl::Minutes(ago));
  if (ago > 0) block.set_origin(v1::ORIGIN_TOLD_LATER);
  keep(std::move(block));
}

void WearModel::look(const QVariantList& signs) {
  if (m_state != State::Look && m_state != State::Watch) return;
  v1::WearBlock block = *m_last;
  block.clear_check();
  for (const QVariant& sign : signs)
    block.mutable_check()->add_signs(static_cast<v1::SkinSign>(sign.toInt()));
  keep(std::move(block));
}

void WearModel::redGone(bool gone) {
  if (m_state != State::Watch) return;
  v1::WearBlock block = *m_last;
  const int since = std::max(0, minutesBetween(toTime(block.taken_off_at()), now()));
  const auto limit = static_cast<int>(m_plan->redness_min());
  v1::Redness& redness = *block.mutable_check()->mutable_redness();
  // Asked late, the question was what it was like at the limit.
  redness.set_watched_min(static_cast<std::uint32_t>(std::min(since, limit)));
  redness.set_gone(gone);
  // "Still red" before the limit is no answer yet.
  if (!gone && since < limit) return;
  keep(std::move(block));
}

void WearModel::keep(v1::WearBlock block) {
  block.set_revision(block.revision() + 1);
  const absl::Status kept = m_parts.engine->keepWearBlock(block);
  m_error = kept.ok() ? QString() : errorWords(kept);
  refresh();
  if (kept.ok()) emit told();
}

}  // namespace newel::home
