// The rules, and what they say. Rules are data (core/safety/rules); this only reads them.
// A rule may refuse, stop, lighten or ask; nothing here can add load.
#pragma once

#include <absl/status/statusor.h>

#include <optional>
#include <string>
#include <vector>

#include "core/library/catalogue.h"
#include "core/library/settings.h"
#include "core/records/practice.pb.h"
#include "core/records/programme.pb.h"
#include "core/records/rule.pb.h"
#include "core/safety/facts.h"
#include "core/safety/rule_loading.h"

namespace newel {

// A fact that is missing has no word and no number: HAS and NUMBER are false, and NOT of them is true.
bool holds(const v1::RuleTest& test, const RuleFacts& facts);

// Source: common practice, no source. More questions than this are clicked away unread (hazard H17).
inline constexpr std::size_t kMostQuestions = 5;

// Immutable after load; safe to read from any thread. Rules keep the order of the files' names, then as
// written; within one effect findings come in that order.
class RuleBook {
 public:
  static const RuleBook& builtIn();  // compiled in; the build fails on a bad rule
  // Every "*.textproto" under `folder`/rules, `folder`/questions and `folder`/words/<language>, with the
  // usual settings of `catalogue`. kInvalidArgument with file, line and reason; kNotFound when one of the
  // first two folders is missing or empty.
  static absl::StatusOr<RuleBook> load(const std::string& folder,
                                       const Catalogue& catalogue = Catalogue::builtIn());

  // The same rules with a clinic's settings (core/library/settings.h) in their bounds and words, and with the
  // therapist's words in `therapist_language` where the rules have it.
  RuleBook with(const SettingValues& settings, const std::string& therapist_language = "en") const;

  // Prescribing: what the rules say about one entry for one person, BLOCK first, then ASK, CAUTION, NOTE; an
  // ASK with an override in the entry carries its reason. kNotFound when the exercise is not in `catalogue`.
  // Words for the person are in person.language() or its base language where the rules have it, else English.
  absl::StatusOr<std::vector<v1::Finding>> check(const v1::Entry& entry, const v1::Person& person,
                                                 const Catalogue& catalogue) const;
  // Over a whole programme; `facts` carries programme.* (entries, minutes_per_day ...) and person.*, see
  // core/review.
  std::vector<v1::Finding> checkProgramme(const RuleFacts& facts, const std::string& language = "en") const;

  // At most kMostQuestions, lowest rank first, chosen by person, entries (todayFacts()) and history.
  std::vector<const v1::ReadyQuestion*> readyQuestions(const RuleFacts& facts) const;
  const v1::ReadyQuestion* question(const std::string& id) const;  // nullptr: there is none
  // What the answers so far mean: facts are those given to readyQuestions() and answerFacts(). Highest effect
  // first, and the emergency number before the clinic's. Empty: nothing stands against the practice.
  std::vector<v1::Finding> readyFindings(const RuleFacts& facts, const std::string& language = "en") const;
  // What a stop or rating means; facts: person.*, history.*, and stopFacts() and/or ratingFacts().
  std::vector<v1::Finding> practiceFindings(const RuleFacts& facts, const std::string& language = "en") const;

  const v1::Rule* rule(const std::string& id) const;  // nullptr: there is none
  // What the rule says to the therapist, in the language of with(); empty: there is no such rule.
  std::string therapistWords(const std::string& rule_id) const;
  const std::vector<v1::Rule>& rules() const { return m_rules; }
  const std::vector<v1::ReadyQuestion>& questions() const { return m_questions; }

 private:
  std::vector<v1::Finding> findings(v1::Stage stage, const RuleFacts& facts,
                                    const std::string& language) const;

  static RuleBook made(RuleSet set, const SettingValues& settings, const std::string& therapist_language);

  RuleSet m_written;  // settings still by their names
  std::string m_therapist_language = "en";
  std::vector<v1::Rule> m_rules;
  std::vector<v1::ReadyQuestion> m_questions;
};

// The question's words, and a choice's, in `language`, its base language, or English. A language is whole
// over all rules and questions, so words of two languages never meet on one screen.
const v1::QuestionWords& wordsOf(const v1::ReadyQuestion& question, const std::string& language);
const std::string& wordsOf(const v1::ReadyChoice& choice, const std::string& language);

// True when nothing blocks and every ask has a written reason.
bool maySign(const std::vector<v1::Finding>& findings);

// The one caution a person is shown with an entry: more are read by nobody (hazard H17). nullopt: none.
std::optional<v1::Finding> shownCaution(const std::vector<v1::Finding>& findings);

// True when `finding` (LEAVE_OUT) leaves this entry out of today's practice.
bool leavesOut(const v1::Finding& finding, const v1::Entry& entry, const v1::Exercise& exercise);

// True for RED_FLAG and NOT_TODAY: no beat may follow.
bool endsPractice(const v1::Finding& finding);

}  // namespace newel
