#include "qml/home/practice_session.h"

#include <algorithm>
#include <tuple>
#include <utility>

#include "core/safety/practice_history.h"
#include "core/time/local_day.h"
#include "qml/home/facts_for_pages.h"
#include "qml/home/phrasing.h"

namespace newel::home {
namespace {

// Repaints, and tells the player that the program is awake: longer silence than kSleptAfter means it slept.
constexpr int kPulseMs = 100;
// The last tone of a practice is heard to its end before the device is given back.
constexpr int kCoolMs = 1500;
// A pause for as long is one that was forgotten: the screen may go off. Ours, no source.
constexpr int kForgottenMs = 5 * 60 * 1000;
// A timer that fires early would find nothing to do and be set again; a millisecond over avoids the round.
constexpr int kTimerSlackMs = 1;
// A cue later than this is not given any more: the phone was busy or asleep.
constexpr absl::Duration kCueTooLate = absl::Milliseconds(700);

CallWords callWordsIn(const Catalogue& catalogue, const std::string& language) {
  CallWords words;
  const auto take = [&](const char* key, std::string& into) {
    const std::string phrase = catalogue.phrase(key, language);
    if (!phrase.empty()) into = phrase;
  };
  take("beat.half-way", words.half_way);
  take("beat.last-one", words.last_one);
  take("beat.next", words.next);
  take("beat.get-ready", words.get_ready);
  take("beat.done", words.done);
  take("beat.stop", words.stop);
  return words;
}

}  // namespace

PracticeSession::PracticeSession(const HomeParts& parts, QObject* parent) : QObject(parent), m_parts(parts) {
  m_wake.setSingleShot(true);
  m_wake.setTimerType(Qt::PreciseTimer);
  connect(&m_wake, &QTimer::timeout, this, &PracticeSession::wake);
  m_pulse.setInterval(kPulseMs);
  connect(&m_pulse, &QTimer::timeout, this, &PracticeSession::pulse);
  m_cool.setSingleShot(true);
  connect(&m_cool, &QTimer::timeout, this, &PracticeSession::giveBackDevices);
}

PracticeSession::~PracticeSession() = default;

RuleFacts PracticeSession::history(absl::CivilDay today) const {
  const HomeEngine& engine = *m_parts.engine;
  return historyFacts(historyOf(*m_parts.rules, practicesThatCount(m_parts), today, clinicSpokeAt(engine)));
}

RunInput PracticeSession::inputFor(const v1::Programme& programme, const v1::Person& person) const {
  RunInput input;
  input.programme = programme;
  input.person = person;
  input.zone = m_parts.zone();
  const absl::CivilDay today = todayOf(m_parts);
  input.local_day = formatLocalDay(today);
  input.language = languageOf(m_parts);
  input.person.set_language(input.language);
  input.app_version = kAppVersion;
  for (const v1::HoldOrder& hold : m_parts.engine->activeHolds()) {
    if (hold.entry_ids().empty()) input.held_all = true;
    for (const std::string& id : hold.entry_ids()) input.held_entry_ids.push_back(id);
  }
  input.history = history(today);
  return input;
}

PracticeRun::Keep PracticeSession::keep() {
  return [this](absl::Span<const v1::JournalLine> lines) { return m_parts.engine->appendJournal(lines); };
}

absl::Status PracticeSession::begin(const std::vector<Occasion>& due) {
  if (m_run != nullptr) return absl::FailedPreconditionError("a practice is under way");
  const std::optional<v1::Programme> programme = m_parts.engine->programme();
  const std::optional<v1::Person> person = m_parts.engine->person();
  if (!programme.has_value() || !person.has_value()) return absl::NotFoundError("no programme on this phone");
  RunInput input = inputFor(*programme, *person);
  input.practice_id = m_parts.engine->newId();
  for (const Occasion& occasion : due) input.occasions.push_back(occasion.ref);
  auto run =
      PracticeRun::begin(input, *m_parts.catalogue, *m_parts.rules, m_parts.clock->wall(), now(), keep());
  if (!run.ok()) return run.status();
  m_input = std::move(input);
  m_run = *std::move(run);
  followPlayer();
  return absl::OkStatus();
}

absl::Status PracticeSession::takeUp() {
  if (m_run != nullptr) return absl::FailedPreconditionError("a practice is under way");
  const std::optional<UnfinishedPractice> unfinished = m_parts.engine->unfinished();
  const std::optional<v1::Person> person = m_parts.engine->person();
  if (!unfinished.has_value() || unfinished->lines.empty() || !person.has_value()) {
    return absl::NotFoundError("no unfinished practice on this phone");
  }
  const v1::Practice& header = unfinished->lines.front().header();
  const std::vector<v1::Programme> programmes = m_parts.engine->programmes();
  // A practice under way keeps the number it began with.
  const auto programme = std::find_if(programmes.begin(), programmes.end(), [&header](const auto& candidate) {
    return candidate.number() == header.programme_number();
  });
  if (programme == programmes.end()) return absl::NotFoundError("the programme of that practice is gone");
  RunInput input = inputFor(*programme, *person);
  input.practice_id = unfinished->practice_id;
  input.zone = header.zone();
  input.local_day = header.local_day();
  for (const v1::EntryDone& entry : header.entries()) input.occasions.push_back(entry.occasion());
  auto run = PracticeRun::takeUp(input, unfinished->lines, *m_parts.catalogue, *m_parts.rules,
                                 m_parts.clock->wall(), now(), keep());
  if (!run.ok()) return run.status();
  m_input = std::move(input);
  m_run = *std::move(run);
  closeIfDone();
  followPlayer();
  return absl::OkStatus();
}

void PracticeSession::leave() {
  m_run.reset();
  m_record.Clear();
  followPlayer();
}

bool PracticeSession::apply(const Step& step) {
  if (m_run == nullptr) return false;
  m_error.clear();
  const absl::Status status = step(*m_run, m_parts.clock->wall(), now());
  if (!status.ok()) tellFailure(status);
  closeIfDone();
  followPlayer();
  return status.ok();
}

void PracticeSession::tellFailure(const absl::Status& status) {
  m_error = errorWords(status);
  emit failed(m_error);
}

void PracticeSession::closeIfDone() {
  if (m_run == nullptr || !m_run->over() || !m_record.id().empty()) return;
  const v1::Practice record = m_run->practice();
  const absl::Status status = m_parts.engine->closePractice(record);
  if (!status.ok()) {
    // The journal still has every line; the next start offers to close it again.
    tellFailure(status);
    return;
  }
  m_record = record;
  m_parts.engine->syncSoon();
}

void PracticeSession::holdCame(const v1::HoldOrder& order) {
  if (m_run == nullptr || m_run->over() || !order.lifts_id().empty()) return;
  const bool led = m_run->player() != nullptr;
  apply([&order](PracticeRun& run, absl::Time wall, absl::Duration now) {
    return run.holdOrder(order, wall, now);
  });
  if (!led || m_run == nullptr || m_run->player() != nullptr) return;
  // Eyes are on the floor, not on the screen.
  sound(platform::Tone::Stopped);
  const CallWords words = callWordsIn(*m_parts.catalogue, m_input.language);
  if (m_voice) m_parts.speech->say(words.stop + " " + order.reason(), m_input.language);
}

void PracticeSession::stopPressed() {
  apply([](PracticeRun& run, absl::Time wall, absl::Duration now) { return run.stopPressed(wall, now); });
  if (m_run != nullptr && m_run->player() == nullptr) sound(platform::Tone::Stopped);
}

void PracticeSession::pauseForSystem() {
  if (m_run == nullptr || m_run->player() == nullptr) return;
  const PlayerState state = m_run->player()->state();
  if (state != PlayerState::Running && state != PlayerState::WaitingTap) return;
  apply([](PracticeRun& run, absl::Time wall, absl::Duration now) { return run.pause(wall, now); });
}

void PracticeSession::soundRouteLost() {
  m_parts.speech->stop();
  if (m_run == nullptr || m_run->player() == nullptr) return;
  const PlayerState state = m_run->player()->state();
  if (state != PlayerState::Running && state != PlayerState::WaitingTap) return;
  m_sound_lost = true;
  pauseForSystem();
}

void PracticeSession::setVoice(bool on) {
  m_voice = on;
  if (!on) m_parts.speech->stop();
}

void PracticeSession::setVibrates(bool on) {
  m_vibrates = on;
  if (!on) m_parts.vibration->stop();
}

void PracticeSession::repeatWords() {
  if (m_run == nullptr || m_run->player() == nullptr) return;
  const Player& player = *m_run->player();
  const v1::Beat& beat = player.timeline().beats(static_cast<int>(player.beat()));
  const std::string& words = beat.spoken().empty() ? beat.screen() : beat.spoken();
  m_parts.speech->say(words, player.timeline().language());
}

std::string PracticeSession::soundProblem() const {
  std::string tones = m_parts.tones->whyNot();
  if (!tones.empty()) return tones;
  if (!m_voice || m_run == nullptr || m_run->entryCount() == 0) return "";
  const std::size_t index = std::min(m_run->entryIndex(), m_run->entryCount() - 1);
  return m_parts.speech->whyNot(m_run->timeline(index).language());
}

void PracticeSession::followPlayer() {
  const Player* const player = m_run != nullptr && !m_run->closed() ? m_run->player() : nullptr;
  const bool runs = player != nullptr && player->state() == PlayerState::Running;
  const bool leads = player != nullptr;
  if (!leads || player->state() != PlayerState::Paused) m_sound_lost = false;
  // Before the first cue is given.
  if (m_parts.leads) m_parts.leads(leads);
  keepAwake(leads, leads && player->state() == PlayerState::Paused);
  if (leads) {
    noteZone();
  } else if (m_led) {
    if (m_run != nullptr && m_run->step() == RunStep::Rating) callDone();
  }
  if (runs) {
    beatBegan();
    if (!m_pulse.isActive()) m_pulse.start();
  } else {
    m_pulse.stop();
    m_cued = m_cued && player != nullptr && player->state() == PlayerState::WaitingTap;
    if (m_led && (player == nullptr ? m_run == nullptr || m_run->step() != RunStep::Rating
                                    : player->state() == PlayerState::Paused)) {
      m_parts.speech->stop();
    }
  }
  m_led = leads;
  fireCues();
  schedule();
  emit changed();
}

void PracticeSession::keepAwake(bool leads, bool paused) {
  if (leads && !paused) {
    m_cool.stop();
    m_parts.tones->warm(true);
    m_parts.stay_awake->keepOn(true);
  } else if (leads && !m_waited) {
    m_cool.start(kForgottenMs);
  } else if (!leads && m_led) {
    m_parts.stay_awake->keepOn(false);
    m_cool.start(kCoolMs);
  }
  m_waited = paused;
}

void PracticeSession::giveBackDevices() {
  m_parts.tones->warm(false);
  m_parts.stay_awake->keepOn(false);
}

void PracticeSession::callDone() {
  const CallWords words = callWordsIn(*m_parts.catalogue, m_input.language);
  sound(platform::Tone::Rest);
  if (m_voice) m_parts.speech->say(words.done, m_input.language);
}

void PracticeSession::noteZone() {
  const absl::Status status = m_run->zoneChanged(m_parts.zone(), m_parts.clock->wall(), now());
  if (!status.ok()) tellFailure(status);
}

PracticeSession::Moment PracticeSession::moment() const {
  const Player& player = *m_run->player();
  const absl::Duration lead_in = player.leadInLeft(now());
  if (lead_in > absl::ZeroDuration()) return {true, m_lead_in - lead_in, lead_in};
  return {false, player.intoBeat(now()), player.leftInBeat(now())};
}

void PracticeSession::beatBegan() {
  const Player& player = *m_run->player();
  const absl::Duration lead_in = player.leadInLeft(now());
  const bool leads_in = lead_in > absl::ZeroDuration();
  const absl::Duration into = player.intoBeat(now());
  const bool same = m_cued && m_cued_entry == m_run->entryIndex() && m_cued_beat == player.beat() &&
                    m_cued_lead_in == leads_in && into >= m_cued_into;
  m_cued_into = into;
  if (same) return;
  m_cued = true;
  m_cued_entry = m_run->entryIndex();
  m_cued_beat = player.beat();
  m_cued_lead_in = leads_in;
  m_lead_in = lead_in;
  const CallWords words = callWordsIn(*m_parts.catalogue, player.timeline().language());
  m_cues = leads_in ? leadInCues(absl::ToInt64Milliseconds(lead_in), words)
                    : cuesOf(player.timeline(), player.beat(), words);
  m_given.assign(m_cues.size(), false);
}

void PracticeSession::fireCues() {
  const Player* const player = m_run != nullptr ? m_run->player() : nullptr;
  if (player == nullptr || player->state() != PlayerState::Running || !m_cued) return;
  const Moment at = moment();
  if (at.lead_in != m_cued_lead_in) return;  // the beat has just begun: its own cues come next
  for (std::size_t i = 0; i < m_cues.size(); ++i) {
    const absl::Duration offset = absl::Milliseconds(m_cues[i].offset_ms);
    const absl::Duration late = m_cues[i].from_end ? offset - at.left : at.into - offset;
    if (m_cues[i].from_end && late < absl::ZeroDuration()) m_given[i] = false;  // the rest was made longer
    if (m_given[i] || late < absl::ZeroDuration()) continue;
    m_given[i] = true;
    if (late < kCueTooLate) fire(m_cues[i]);
  }
}

void PracticeSession::fire(const Cue& cue) {
  if (cue.sounds) sound(cue.tone);
  if (m_voice && !cue.words.empty()) m_parts.speech->say(cue.words, m_run->player()->timeline().language());
}

void PracticeSession::sound(platform::Tone tone) {
  m_parts.tones->play(tone);
  if (vibrates()) m_parts.vibration->play(tone);
}

void PracticeSession::schedule() {
  const Player* const player = m_run != nullptr ? m_run->player() : nullptr;
  if (player == nullptr || player->state() != PlayerState::Running) return m_wake.stop();
  const Moment at = moment();
  absl::Duration next = player->nextDeadline().value_or(now() + at.left) - now();
  for (std::size_t i = 0; i < m_cues.size(); ++i) {
    if (m_given[i]) continue;
    const absl::Duration offset = absl::Milliseconds(m_cues[i].offset_ms);
    next = std::min(next, m_cues[i].from_end ? at.left - offset : offset - at.into);
  }
  const auto ms = absl::ToInt64Milliseconds(absl::Ceil(next, absl::Milliseconds(1)));
  m_wake.start(static_cast<int>(std::max<std::int64_t>(0, ms)) + (ms > 0 ? kTimerSlackMs : 0));
}

void PracticeSession::wake() {
  pulse();
  fireCues();
  schedule();
}

void PracticeSession::pulse() {
  if (m_run == nullptr || m_run->player() == nullptr) return;
  const auto place = [this] {
    const Player* const player = m_run->player();
    return std::make_tuple(m_run->step(), m_run->entryIndex(),
                           player == nullptr ? PlayerState::Ended : player->state(),
                           player == nullptr ? 0U : player->beat());
  };
  const auto before = place();
  const absl::Status status = m_run->tick(m_parts.clock->wall(), now());
  if (!status.ok()) tellFailure(status);
  if (place() == before) return emit ticked();
  closeIfDone();
  followPlayer();
}

}  // namespace newel::home
