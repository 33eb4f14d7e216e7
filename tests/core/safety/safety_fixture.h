// Invented persons and entries for tests of what is safe, changed by name=word. Aborts a test that names
// something that does not exist.
#pragma once

#include <string>
#include <vector>

#include "core/records/person.pb.h"
#include "core/records/programme.pb.h"
#include "core/records/rule.pb.h"
#include "core/safety/facts.h"

namespace newel::test {

// "tt-k3", "tf-yielding-k3", "tf-mechanical-k2", "tf-locked-k1", "hd-k2", "before-prosthesis", "both-tt-k3".
std::vector<std::string> personNames();
v1::Person personNamed(const std::string& name);
// The catalogue's default entry for `person`, due every Monday, with ids.
v1::Entry entryOf(const std::string& exercise_id, const v1::Person& person);

// `changes`: "name=word other=a,b third=4", or "-" for none.
void change(v1::Person& person, const std::string& changes);
void change(v1::Entry& entry, const std::string& changes);

// "name=a,b other#4" to facts.
RuleFacts factsNamed(const std::string& text);

// Tab-separated rows of a file in tests/data/safety, without comment lines; each with `columns` cells.
std::vector<std::vector<std::string>> rowsOf(const std::string& file, std::size_t columns);
std::vector<std::string> split(const std::string& text, char by);

// "block:rule-id" of each finding, in their order; "-" for none.
std::string namesOf(const std::vector<v1::Finding>& findings);
std::string nameOf(v1::Effect effect, const std::string& rule_id);

}  // namespace newel::test
