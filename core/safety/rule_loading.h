// Reads rules and ready questions from files and proves them sound before anything may use them. Shared by
// RuleBook::load() and by the build's own generator (embed_rules.cpp).
// Not here: what the rules say about a person (rule_book.h).
#pragma once

#include <absl/status/statusor.h>

#include <string>

#include "core/records/rule.pb.h"

namespace newel {

// In Rule.leave_out_tags beside the tags of exercises: every entry that is done with the prosthesis on.
inline constexpr char kProsthesisOnTag[] = "prosthesis-on";

struct RuleSet {
  v1::RuleFile rules;          // in the order of the files' names, then as written
  v1::QuestionFile questions;  // the same
};

// Every "*.textproto" under `folder`/rules (RuleFile) and `folder`/questions (QuestionFile).
// kInvalidArgument with "<file>:<line>: <reason>" on the first fault: a record that does not pass check(), a
// fact or a word of a fact that does not exist, an id given twice, an answer that no question offers, a
// common practice that does not say that it has no source, English words for the person over reading grade 6.
// kNotFound when a folder is missing or holds no such file.
absl::StatusOr<RuleSet> loadRules(const std::string& folder);

}  // namespace newel
