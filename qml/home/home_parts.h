// What the view models are given to work with; made in main, outlives them all.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "core/library/catalogue.h"
#include "core/library/settings.h"
#include "core/records/clip.pb.h"
#include "core/safety/rule_book.h"
#include "core/time/clock.h"
#include "platform/reminders.h"
#include "platform/resident.h"
#include "platform/speech.h"
#include "platform/stay_awake.h"
#include "platform/system_wishes.h"
#include "platform/tones.h"
#include "platform/vibration.h"
#include "sync/home/home_engine.h"

namespace newel::home {

struct HomeParts {
  HomeEngine* engine = nullptr;
  const Clock* clock = nullptr;
  const Catalogue* catalogue = nullptr;  // these three are kept up by CurrentContent
  const RuleBook* rules = nullptr;
  SettingValues settings;  // the clinic's, or the usual ones
  platform::Speech* speech = nullptr;
  platform::Tones* tones = nullptr;
  platform::Vibration* vibration = nullptr;
  platform::StayAwake* stay_awake = nullptr;
  platform::SystemWishes* wishes = nullptr;
  platform::Reminders* reminders = nullptr;
  platform::Resident* resident = nullptr;
  std::vector<std::string> login_command;  // what starts this program for its reminders alone
  std::function<void(bool)> leads;  // whether a practice's beats run or may run: then nothing else may sound
  std::function<v1::Appearance()> appearance;  // how the person wants to be drawn; unset: plainly
  // The language chosen on this phone, empty: none; unset: nothing can be chosen. See languageOf().
  std::function<std::string()> language;
  std::function<std::string()> documents;  // the folder where the person finds what they save
  std::function<std::string()> zone;       // IANA name, where the phone is now; asked anew each time
};

}  // namespace newel::home
