#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

#include "core/library/catalogue.h"
#include "core/safety/rule_book.h"
#include "tests/core/safety/safety_fixture.h"

namespace newel {
namespace {

using test::rowsOf;
using test::split;

constexpr std::size_t kColumns = 6;

// Findings as a set: the table says which, other tests say in which order.
std::set<std::string> asSet(const std::string& names) {
  std::set<std::string> set;
  if (names == "-") return set;
  for (const auto& name : split(names, ' ')) set.insert(name);
  return set;
}

std::string joined(const std::set<std::string>& names) {
  std::string text;
  for (const auto& name : names) text += (text.empty() ? "" : " ") + name;
  return text.empty() ? "-" : text;
}

v1::Stage stageNamed(const std::string& word) {
  for (const auto stage :
       {v1::STAGE_PRESCRIBE, v1::STAGE_READY_CHECK, v1::STAGE_PRACTICE, v1::STAGE_PROGRAMME}) {
    if (wordOf(*v1::Stage_descriptor(), stage) == word) return stage;
  }
  ADD_FAILURE() << word << " is no stage";
  return v1::STAGE_UNSPECIFIED;
}

std::set<std::string> saidAbout(v1::Stage stage, const RuleFacts& facts) {
  std::set<std::string> said;
  for (const auto& rule : RuleBook::builtIn().rules()) {
    if (rule.stage() == stage && holds(rule.when(), facts)) {
      said.insert(test::nameOf(rule.effect(), rule.id()));
    }
  }
  return said;
}

class SaidCount {
 public:
  void add(v1::Stage stage, const std::set<std::string>& expected) {
    for (const auto& rule : RuleBook::builtIn().rules()) {
      if (rule.stage() != stage) continue;
      const bool fires = expected.contains(test::nameOf(rule.effect(), rule.id()));
      ++(fires ? m_fires : m_silent)[rule.id()];
    }
  }
  int fires(const std::string& id) { return m_fires[id]; }
  int silent(const std::string& id) { return m_silent[id]; }

 private:
  std::map<std::string, int> m_fires;
  std::map<std::string, int> m_silent;
};

TEST(TruthTable, everyPersonAndEntryGetsExactlyTheFindingsOfTheTable) {
  const auto rows = rowsOf("truth_table.tsv", kColumns);
  ASSERT_GE(rows.size(), 200U);
  for (const auto& row : rows) {
    v1::Person person = test::personNamed(row[0]);
    test::change(person, row[1]);
    v1::Entry entry = test::entryOf(row[2], person);
    test::change(entry, row[3]);
    const auto findings = RuleBook::builtIn().check(entry, person, Catalogue::builtIn());
    ASSERT_TRUE(findings.ok()) << findings.status();
    EXPECT_EQ(joined(asSet(test::namesOf(*findings))), joined(asSet(row[4])))
        << row[0] << " | " << row[1] << " | " << row[2] << " | " << row[3];
    EXPECT_FALSE(row[5].empty());
  }
}

TEST(TruthTable, bareFactsGetExactlyTheFindingsOfTheTable) {
  for (const auto& row : rowsOf("fact_table.tsv", 4)) {
    EXPECT_EQ(joined(saidAbout(stageNamed(row[0]), test::factsNamed(row[1]))), joined(asSet(row[2])))
        << row[0] << " | " << row[1];
    EXPECT_FALSE(row[3].empty());
  }
}

TEST(TruthTable, everyRuleFiresInOneRowAndIsSilentInAnother) {
  SaidCount count;
  for (const auto& row : rowsOf("truth_table.tsv", kColumns)) count.add(v1::STAGE_PRESCRIBE, asSet(row[4]));
  for (const auto& row : rowsOf("fact_table.tsv", 4)) count.add(stageNamed(row[0]), asSet(row[2]));
  for (const auto& rule : RuleBook::builtIn().rules()) {
    EXPECT_GE(count.fires(rule.id()), 1) << rule.id() << " fires in no row";
    EXPECT_GE(count.silent(rule.id()), 1) << rule.id() << " is silent in no row";
  }
}

TEST(TruthTable, everyNamedFindingIsARule) {
  std::set<std::string> known;
  for (const auto& rule : RuleBook::builtIn().rules()) {
    known.insert(test::nameOf(rule.effect(), rule.id()));
  }
  for (const auto& row : rowsOf("truth_table.tsv", kColumns)) {
    for (const auto& name : asSet(row[4])) EXPECT_TRUE(known.contains(name)) << name;
  }
  for (const auto& row : rowsOf("fact_table.tsv", 4)) {
    for (const auto& name : asSet(row[2])) EXPECT_TRUE(known.contains(name)) << name;
  }
}

TEST(TruthTable, allFourEffectsOfPrescribingOccur) {
  std::set<std::string> effects;
  for (const auto& row : rowsOf("truth_table.tsv", kColumns)) {
    for (const auto& name : asSet(row[4])) effects.insert(name.substr(0, name.find(':')));
  }
  EXPECT_EQ(effects, (std::set<std::string>{"block", "ask", "caution", "note"}));
}

}  // namespace
}  // namespace newel
