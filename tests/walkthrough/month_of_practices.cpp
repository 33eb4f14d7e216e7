// Weeks of a person's life on a paired phone, led by the program's own practice session: every beat is played
// and every line goes through the phone's journal, with a clock that runs ahead instead of waiting. Nothing
// is put into the store but by the session. At the end everything is sent to the clinic that the phone is
// paired with, over the network.
//   newel_test_month --data FOLDER --days N
// The last day is yesterday; today is as NEWEL_WALL_OFFSET_S has it. One line a day: "<day> <practices>
// <entries>".
#include <QtCore/QCommandLineParser>
#include <QtCore/QCoreApplication>
#include <iostream>

#include "core/time/local_day.h"
#include "platform/clock.h"
#include "platform/fake/memory_secret_store.h"
#include "platform/fake/recorded_resident.h"
#include "platform/fake/recorded_sound.h"
#include "platform/offset_clock.h"
#include "qml/home/current_content.h"
#include "qml/home/facts_for_pages.h"
#include "qml/home/practice_session.h"
#include "qml/home/store_key.h"
#include "sync/common/real_random.h"
#include "tests/core/practice/steady_person.h"

namespace newel::tests {
namespace {

constexpr absl::Duration kSecond = absl::Seconds(1);
constexpr int kMostSteps = 200000;  // a practice that does not end is a fault, not a reason to wait

// How a day goes. Nothing here is measured on anybody: an ordinary course, so that there is something to see.
struct Day {
  bool practises = true;
  test::Feeling feeling;
  bool breaks_off = false;  // the last exercise of that day, half-way
};

Day dayAt(int index) {
  Day day;
  day.practises = index >= 15 || index % 7 != 5;
  day.feeling.pain_before = index < 9 ? 2 : 1;
  day.feeling.pain_after = index < 9 ? 3 : 1;
  day.feeling.effort = index < 9 ? 5 : index < 18 ? 4 : 2;
  day.breaks_off = index == 11;
  return day;
}

// The next second, or the next change before it: what never leaves two ticks further apart than a running
// program would.
absl::Duration nextStep(const PracticeRun& run, absl::Duration now) {
  const Player* const player = run.player();
  if (player == nullptr) return 3 * kSecond;  // to read and to press
  const absl::Duration left = player->nextDeadline().value_or(now + kSecond) - now;
  return std::clamp(left, absl::Milliseconds(1), kSecond);
}

absl::Status stepOf(PracticeRun& run, const Day& day, absl::Time wall, absl::Duration now) {
  const bool last = run.entryIndex() + 1 == run.entryCount();
  const Player* const player = run.player();
  if (day.breaks_off && last && player != nullptr && player->beat() > 3) return run.stopPressed(wall, now);
  return test::goOn(run, day.feeling, wall, now);
}

absl::Status practise(home::PracticeSession& session, SimulatedClock& clock, const Day& day,
                      const std::vector<Occasion>& due) {
  if (absl::Status begun = session.begin(due); !begun.ok()) return begun;
  for (int step = 0; step < kMostSteps; ++step) {
    const PracticeRun& run = *session.run();
    if (run.step() == RunStep::Closed) {
      session.leave();
      return absl::OkStatus();
    }
    clock.advance(nextStep(run, clock.elapsed()));
    const bool done = session.apply([&day](PracticeRun& each, absl::Time wall, absl::Duration now) {
      return stepOf(each, day, wall, now);
    });
    if (!done) return absl::InternalError(session.lastError().toStdString());
  }
  return absl::DeadlineExceededError("a practice does not end");
}

struct Phone {
  explicit Phone(const std::string& folder, absl::Time begin) : clock(begin) {
    HomeEngine::Options options;
    options.folder = folder;
    options.clock = &clock;
    options.random = &random;
    options.app_version = home::kAppVersion;
    options.device_name = "month";
    secrets.there = false;  // the key lies in a file
    auto opened = home::openWithKey(options, secrets, [] { return true; });
    if (!opened.ok()) {
      status = opened.status();
      return;
    }
    engine = *std::move(opened);
    parts.engine = engine.get();
    parts.clock = &clock;
    parts.speech = &speech;
    parts.tones = &tones;
    parts.vibration = &vibration;
    parts.stay_awake = &awake;
    parts.wishes = &wishes;
    parts.zone = [] { return std::string("Etc/UTC"); };
  }

  SimulatedClock clock;
  RealRandom random;
  platform::MemorySecretStore secrets;
  platform::RecordedSpeech speech;
  platform::RecordedTones tones;
  platform::RecordedVibration vibration;
  platform::RecordedStayAwake awake;
  platform::FixedWishes wishes;
  std::unique_ptr<HomeEngine> engine;
  home::HomeParts parts;
  absl::Status status;
};

absl::Status liveOneDay(Phone& phone, home::PracticeSession& session, int index) {
  const absl::CivilDay today = home::todayOf(phone.parts);
  const auto programme = phone.engine->programme();
  if (!programme.has_value()) return absl::NotFoundError("no programme on this phone");
  const Day day = dayAt(index);
  std::size_t entries = 0;
  if (day.practises) {
    const auto due = dueOn(*programme, today, {});
    entries = due.size();
    if (!due.empty()) {
      if (absl::Status status = practise(session, phone.clock, day, due); !status.ok()) return status;
    }
  }
  std::cout << formatLocalDay(today) << " " << phone.engine->practices().size() << " " << entries
            << std::endl;
  return absl::OkStatus();
}

absl::Status sendAll(HomeEngine& engine) {
  for (int turn = 0; turn < 50; ++turn) {
    if (absl::Status sent = engine.syncOnce(); !sent.ok()) return sent;
    if (engine.state().queued == 0) return absl::OkStatus();
  }
  return absl::DeadlineExceededError("not everything could be sent");
}

absl::Status live(const std::string& folder, int days) {
  const auto system = platform::makeSystemClock();
  const platform::OffsetClock shown(*system, platform::wallOffsetAskedFor());
  const absl::TimeZone utc = absl::UTCTimeZone();
  const absl::CivilDay last = absl::ToCivilDay(shown.wall(), utc);
  constexpr absl::Duration kMorning = absl::Hours(9);
  Phone phone(folder, absl::FromCivil(last - days, utc) + kMorning);
  if (!phone.status.ok()) return phone.status;
  home::CurrentContent content(phone.parts);
  home::PracticeSession session(phone.parts);
  for (int index = 0; index < days; ++index) {
    const absl::Time morning = absl::FromCivil(last - days + index, utc) + kMorning;
    phone.clock.advance(std::max(absl::ZeroDuration(), morning - phone.clock.wall()));
    if (absl::Status lived = liveOneDay(phone, session, index); !lived.ok()) return lived;
  }
  // Not before the clock of everybody else.
  phone.clock.advance(std::max(absl::ZeroDuration(), shown.wall() - phone.clock.wall()));
  return sendAll(*phone.engine);
}

}  // namespace
}  // namespace newel::tests

int main(int argc, char** argv) {
  const QCoreApplication app(argc, argv);
  QCommandLineParser parser;
  const QCommandLineOption data(QStringLiteral("data"), QString(), QStringLiteral("folder"));
  const QCommandLineOption days(QStringLiteral("days"), QString(), QStringLiteral("number"),
                                QStringLiteral("28"));
  parser.addOptions({data, days});
  parser.process(app);
  const absl::Status lived = newel::tests::live(parser.value(data).toStdString(), parser.value(days).toInt());
  if (lived.ok()) return 0;
  std::cerr << "newel_test_month: " << lived << std::endl;
  return 1;
}
