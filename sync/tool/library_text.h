// One exercise of the catalogue as it is for one person, in one language.
#pragma once

#include <iosfwd>
#include <string>
#include <vector>

#include "core/library/catalogue.h"
#include "core/records/person.pb.h"
#include "core/records/programme.pb.h"
#include "core/records/rule.pb.h"
#include "core/records/timeline.pb.h"
#include "sync/tool/trade_io.h"

namespace newel::tool {

// "2 sets of 8, hold 2 s, 3 s out, 3 s back, rest 60 s"; "2 x 10 min, rest 60 s"; "6 x 8 m, 2 s a step".
std::string doseText(const v1::Dose& dose);

// A card of advice with the usual settings, whole in `language` or in English.
void printCard(const v1::AdviceCard& card, const Catalogue& catalogue, const std::string& language,
               std::ostream& out);
Json jsonOfCard(const v1::AdviceCard& card, const Catalogue& catalogue, const std::string& language);

class ExercisePage {
 public:
  // Every reference must outlive the page.
  ExercisePage(const v1::Exercise& exercise, const v1::Person& person, const Catalogue& catalogue,
               std::string language, const std::vector<v1::Finding>& findings);
  void print(std::ostream& out) const;
  Json json() const;

 private:
  // For this person; in brackets what cannot be said to them.
  std::string said(const std::string& text) const;
  std::string phrase(const std::string& key) const;
  void printFit(std::ostream& out) const;
  void printTimeline(std::ostream& out) const;

  const v1::Exercise& m_exercise;
  const v1::Person& m_person;
  const Catalogue& m_catalogue;
  const std::string m_asked;
  std::string m_language;  // the asked one, or that of m_words where the asked one has none
  const std::vector<v1::Finding>& m_findings;
  const v1::ExerciseWords* m_words;  // may be null
  v1::Entry m_entry;                 // the exercise's defaults for the person
  v1::Timeline m_timeline;
  std::string m_refused;  // why there is no timeline for this person
};

}  // namespace newel::tool
