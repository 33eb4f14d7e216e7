// Reads rules and ready questions from files and proves them sound before anything may use them. Shared by
// RuleBook::load() and by the build's own generator (embed_rules.cpp).
// Not here: what the rules say about a person (rule_book.h).
#pragma once

#include <absl/status/statusor.h>

#include <string>

#include "core/library/catalogue.h"
#include "core/records/rule.pb.h"

namespace newel {

// In Rule.leave_out_tags beside the tags of exercises: every entry that is done with the prosthesis on.
inline constexpr char kProsthesisOnTag[] = "prosthesis-on";

struct RuleSet {
  v1::RuleFile rules;          // in the order of the files' names, then as written; words of every language
  v1::QuestionFile questions;  // the same
};

// Every "*.textproto" under `folder`/rules (RuleFile), `folder`/questions (QuestionFile) and, where there are
// any, `folder`/words/<language> (SafetyWordFile). Tags and settings are those of `catalogue`.
// kInvalidArgument with "<file>:<line>: <reason>" on the first fault: a record that does not pass check(), a
// fact, tag, setting or word of a fact that does not exist, an id given twice, an answer that no question
// offers, a common practice that does not say that it has no source, words for the person that are hard to
// read (plain_words.h), a language that has words for some rules, questions or choices and not for all.
// kNotFound when the first or second folder is missing or holds no such file.
absl::StatusOr<RuleSet> loadRules(const std::string& folder, const Catalogue& catalogue);

}  // namespace newel
