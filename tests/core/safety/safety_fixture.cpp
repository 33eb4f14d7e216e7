#include "tests/core/safety/safety_fixture.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <fstream>
#include <iostream>
#include <sstream>

#include "core/library/catalogue.h"
#include "core/library/default_entry.h"
#include "core/records/check.h"

namespace newel::test {
namespace {

[[noreturn]] void abortWith(const std::string& reason) {
  std::cerr << "test data: " << reason << "\n";
  std::abort();
}

int valueOf(const google::protobuf::EnumDescriptor& type, const std::string& word) {
  for (int i = 0; i < type.value_count(); ++i) {
    if (wordOf(type, type.value(i)->number()) == word) return type.value(i)->number();
  }
  abortWith("\"" + word + "\" is no " + type.name());
}

template <typename Enum>
Enum as(const std::string& word) {
  return static_cast<Enum>(valueOf(*google::protobuf::GetEnumDescriptor<Enum>(), word));
}

std::uint32_t numberOf(const std::string& text) { return static_cast<std::uint32_t>(std::stoul(text)); }

void addLimb(v1::Person& person, v1::Side side, v1::LimbLossLevel level, v1::KneeKind knee, bool prosthesis) {
  v1::LimbLoss* limb = person.add_limbs();
  limb->set_side(side);
  limb->set_level(level);
  limb->set_knee(knee);
  limb->set_has_prosthesis(prosthesis);
  limb->set_foot(prosthesis ? v1::FOOT_KIND_ENERGY_STORING : v1::FOOT_KIND_NO_PROSTHESIS);
}

// Everything there, nothing wrong: so that each row of a table changes one thing.
v1::Person base(v1::MobilityLevel mobility) {
  v1::Person person;
  person.set_id("01890000-0000-7000-8000-000000000001");
  person.set_revision(1);
  person.set_mobility(mobility);
  person.set_walking_aid(v1::WALKING_AID_NONE);
  person.set_can_get_up_from_floor(v1::ANSWER_YES);
  person.set_language("en");
  person.set_zone("Europe/Berlin");
  person.set_height_cm(172);
  v1::Home* home = person.mutable_home();
  home->set_rails(v1::RAILS_BOTH);
  home->set_sturdy_chairs(4);
  for (auto set : {&v1::Home::set_ramp, &v1::Home::set_rolling_chair, &v1::Home::set_counter,
                   &v1::Home::set_floor_space, &v1::Home::set_someone_near}) {
    (home->*set)(v1::ANSWER_YES);
  }
  person.mutable_senses()->set_low_vision(v1::ANSWER_NO);
  person.mutable_senses()->set_hard_of_hearing(v1::ANSWER_NO);
  return person;
}

void changeHome(v1::Home& home, const std::string& name, const std::string& word) {
  if (name == "rails") return home.set_rails(as<v1::Rails>(word));
  if (name == "chairs") return home.set_sturdy_chairs(numberOf(word));
  if (name == "ramp") return home.set_ramp(as<v1::Answer>(word));
  if (name == "rolling_chair") return home.set_rolling_chair(as<v1::Answer>(word));
  if (name == "counter") return home.set_counter(as<v1::Answer>(word));
  if (name == "floor_space") return home.set_floor_space(as<v1::Answer>(word));
  if (name == "someone_near") return home.set_someone_near(as<v1::Answer>(word));
  abortWith("a person has no \"" + name + "\"");
}

void changeOne(v1::Person& person, const std::string& name, const std::string& word) {
  if (name == "mobility") return person.set_mobility(as<v1::MobilityLevel>(word));
  if (name == "aid") return person.set_walking_aid(as<v1::WalkingAid>(word));
  if (name == "can_get_up") return person.set_can_get_up_from_floor(as<v1::Answer>(word));
  if (name == "low_vision") return person.mutable_senses()->set_low_vision(as<v1::Answer>(word));
  if (name == "strong_side") {
    return person.set_strong_side(word == "none" ? v1::SIDE_UNSPECIFIED : as<v1::Side>(word));
  }
  if (name == "prosthesis_right") {
    for (auto& limb : *person.mutable_limbs()) {
      if (limb.side() != v1::SIDE_RIGHT) continue;
      limb.set_has_prosthesis(word == "yes");
      limb.set_foot(word == "yes" ? v1::FOOT_KIND_ENERGY_STORING : v1::FOOT_KIND_NO_PROSTHESIS);
    }
    return;
  }
  if (name == "condition") {
    for (const auto& one : split(word, ',')) person.add_conditions(as<v1::Condition>(one));
    return;
  }
  changeHome(*person.mutable_home(), name, word);
}

void changeOne(v1::Entry& entry, const std::string& name, const std::string& word) {
  if (name == "support") return entry.set_support(as<v1::Support>(word));
  if (name == "prosthesis") return entry.set_prosthesis(as<v1::ProsthesisUse>(word));
  if (name == "side") return entry.set_side_policy(as<v1::SidePolicy>(word));
  if (name == "sets") return entry.mutable_dose()->mutable_sets()->set_sets(numberOf(word));
  if (name == "repetitions") return entry.mutable_dose()->mutable_sets()->set_repetitions(numberOf(word));
  if (name == "pain_stop") return entry.mutable_thresholds()->set_pain_stop_0_10(numberOf(word));
  if (name == "pain_rise") return entry.mutable_thresholds()->set_pain_rise_0_10(numberOf(word));
  abortWith("an entry has no \"" + name + "\"");
}

template <typename Record>
void changeAll(Record& record, const std::string& changes) {
  if (changes == "-") return;
  for (const auto& one : split(changes, ' ')) {
    const std::size_t equals = one.find('=');
    if (equals == std::string::npos) abortWith("\"" + one + "\" is not name=word");
    changeOne(record, one.substr(0, equals), one.substr(equals + 1));
  }
  const absl::Status status = check(record);
  if (!status.ok()) abortWith(changes + ": " + std::string(status.message()));
}

}  // namespace

std::vector<std::string> personNames() {
  return {"tt-k3", "tf-yielding-k3",    "tf-mechanical-k2", "tf-locked-k1",
          "hd-k2", "before-prosthesis", "both-tt-k3"};
}

v1::Person personNamed(const std::string& name) {
  constexpr auto kTranstibial = v1::LIMB_LOSS_LEVEL_TRANSTIBIAL;
  constexpr auto kTransfemoral = v1::LIMB_LOSS_LEVEL_TRANSFEMORAL;
  v1::Person person = base(v1::MOBILITY_LEVEL_K3);
  if (name == "tt-k3") {
    addLimb(person, v1::SIDE_LEFT, kTranstibial, v1::KNEE_KIND_OWN_KNEE, true);
  } else if (name == "tf-yielding-k3") {
    addLimb(person, v1::SIDE_RIGHT, kTransfemoral, v1::KNEE_KIND_YIELDING, true);
  } else if (name == "tf-mechanical-k2") {
    addLimb(person, v1::SIDE_LEFT, kTransfemoral, v1::KNEE_KIND_MECHANICAL, true);
    person.set_mobility(v1::MOBILITY_LEVEL_K2);
  } else if (name == "tf-locked-k1") {
    addLimb(person, v1::SIDE_LEFT, kTransfemoral, v1::KNEE_KIND_LOCKED, true);
    person.set_mobility(v1::MOBILITY_LEVEL_K1);
    person.set_walking_aid(v1::WALKING_AID_WALKER);
  } else if (name == "hd-k2") {
    addLimb(person, v1::SIDE_LEFT, v1::LIMB_LOSS_LEVEL_HIP_DISARTICULATION, v1::KNEE_KIND_MECHANICAL, true);
    person.set_mobility(v1::MOBILITY_LEVEL_K2);
  } else if (name == "before-prosthesis") {
    addLimb(person, v1::SIDE_LEFT, kTranstibial, v1::KNEE_KIND_OWN_KNEE, false);
    person.set_mobility(v1::MOBILITY_LEVEL_K1);
  } else if (name == "both-tt-k3") {
    addLimb(person, v1::SIDE_LEFT, kTranstibial, v1::KNEE_KIND_OWN_KNEE, true);
    addLimb(person, v1::SIDE_RIGHT, kTranstibial, v1::KNEE_KIND_OWN_KNEE, true);
    person.set_strong_side(v1::SIDE_LEFT);
  } else {
    abortWith("there is no person \"" + name + "\"");
  }
  const absl::Status status = check(person);
  if (!status.ok()) abortWith(name + ": " + std::string(status.message()));
  return person;
}

v1::Entry entryOf(const std::string& exercise_id, const v1::Person& person) {
  const v1::Exercise* exercise = Catalogue::builtIn().find(exercise_id);
  if (exercise == nullptr) abortWith("there is no exercise \"" + exercise_id + "\"");
  v1::Entry entry = defaultEntry(*exercise, person);
  entry.set_id("01890000-0000-7000-8000-0000000000e1");
  entry.mutable_schedule()->mutable_weekdays()->add_days(v1::WEEKDAY_MONDAY);
  v1::Window* window = entry.mutable_schedule()->add_windows();
  window->set_from_min(480);
  window->set_to_min(720);
  return entry;
}

void change(v1::Person& person, const std::string& changes) { changeAll(person, changes); }
void change(v1::Entry& entry, const std::string& changes) { changeAll(entry, changes); }

RuleFacts factsNamed(const std::string& text) {
  RuleFacts facts;
  for (const auto& one : split(text, ' ')) {
    const std::size_t at = one.find_first_of("=#");
    if (at == std::string::npos) abortWith("\"" + one + "\" is not name=word or name#number");
    Fact& fact = facts[one.substr(0, at)];
    if (one[at] == '#') {
      fact.number = std::stod(one.substr(at + 1));
    } else {
      for (const auto& word : split(one.substr(at + 1), ',')) fact.words.insert(word);
    }
  }
  return facts;
}

std::vector<std::vector<std::string>> rowsOf(const std::string& file, std::size_t columns) {
  std::ifstream stream(std::string(NEWEL_SOURCE_DIR) + "/tests/data/safety/" + file);
  std::vector<std::vector<std::string>> rows;
  std::string line;
  while (std::getline(stream, line)) {
    if (line.empty() || line[0] == '#') continue;
    rows.push_back(split(line, '\t'));
    if (rows.back().size() != columns)
      abortWith(file + ": \"" + line + "\" has not " + std::to_string(columns) + " columns");
  }
  return rows;
}

std::vector<std::string> split(const std::string& text, char by) {
  std::vector<std::string> parts;
  std::istringstream stream(text);
  std::string part;
  while (std::getline(stream, part, by)) parts.push_back(part);
  return parts;
}

std::string nameOf(v1::Effect effect, const std::string& rule_id) {
  return wordOf(*v1::Effect_descriptor(), effect) + ":" + rule_id;
}

std::string namesOf(const std::vector<v1::Finding>& findings) {
  std::string names;
  for (const auto& finding : findings) {
    names += (names.empty() ? "" : " ") + nameOf(finding.effect(), finding.rule_id());
  }
  return names.empty() ? "-" : names;
}

}  // namespace newel::test
