#include <algorithm>
#include <cstdint>
#include <set>

#include "core/records/check.h"
#include "core/records/check_parts.h"

namespace newel {
namespace {

void checkSteps(const FieldCheck& check, const google::protobuf::RepeatedPtrField<v1::WearStep>& steps) {
  check.that(!steps.empty(), "steps", "is missing");
  check.that(steps.size() <= 60, "steps", "more than 60");
  for (int i = 0; i < steps.size(); ++i) {
    FieldCheck at = check.at("steps", i);
    at.range("days", steps[i].days(), 1, 30);
    at.text("activity", steps[i].activity(), 0, 300);
    at.that(!steps[i].all_day() || i + 1 == steps.size(), "all_day", "only the last step has no limit");
    if (steps[i].all_day()) continue;
    at.range("blocks", steps[i].blocks(), 1, 6);
    at.range("block_min", steps[i].block_min(), 5, 720);
    at.that(steps[i].blocks() * steps[i].block_min() <= 1440, "block_min",
            "is more than a day with its blocks");
  }
}

bool has(const v1::SkinCheck& check, v1::SkinSign sign) {
  return std::find(check.signs().begin(), check.signs().end(), sign) != check.signs().end();
}

void checkSkin(const FieldCheck& check, const v1::SkinCheck& skin) {
  check.that(!skin.signs().empty(), "signs", "is missing: clear is a sign too");
  std::set<int> signs;
  for (int i = 0; i < skin.signs_size(); ++i) {
    check.that(signs.insert(skin.signs(i)).second, "signs[" + std::to_string(i) + "]", "is given twice");
  }
  check.that(!has(skin, v1::SKIN_SIGN_CLEAR) || skin.signs_size() == 1, "signs", "clear stands alone");
  if (!skin.has_redness()) return;
  check.that(has(skin, v1::SKIN_SIGN_RED), "redness", "was watched and is not among the signs");
  check.range("redness.watched_min", skin.redness().watched_min(), 0, 240);
}

void checkBlock(const FieldCheck& check, const v1::WearBlock& block) {
  check.uuid("id", block.id());
  check.range("revision", block.revision(), 1, 1000000);
  check.uuid("person_id", block.person_id());
  check.day("local_day", block.local_day());
  check.zone("zone", block.zone());
  check.that(block.has_put_on_at(), "put_on_at", "is missing");
  check.enums(block);
  check.text("socks", block.socks(), 0, 40);
  check.text("note", block.note(), 0, 1000);
  if (block.has_taken_off_at()) {
    const std::int64_t worn_s = block.taken_off_at().seconds() - block.put_on_at().seconds();
    check.that(worn_s >= 0, "taken_off_at", "is before put_on_at");
    check.that(worn_s <= std::int64_t{36} * 3600, "taken_off_at", "is more than 36 hours after put_on_at");
  }
  if (!block.has_check()) return;
  check.that(block.has_taken_off_at(), "check", "is made with the prosthesis off");
  checkSkin(check.at("check"), block.check());
}

void checkExample(const FieldCheck& check, const v1::WearExample& example) {
  check.key("id", example.id());
  check.range("revision", example.revision(), 1, 1000000);
  check.that(example.words().contains("en"), "words", "English is missing");
  for (const auto& [language, words] : example.words()) {
    check.language("words[" + language + "]", language);
    FieldCheck at = check.at("words[" + language + "]");
    at.text("name", words.name(), 1, 80);
    at.text("when", words.when(), 1, 400);
  }
  checkSteps(check, example.steps());
  check.range("off_min", example.off_min(), 0, 480);
  check.range("grace_min", example.grace_min(), 0, 30);
  checkStatedSources(check, example.sources());
}

void checkRedness(const FieldCheck& check, const v1::RednessSetting& setting) {
  for (int i = 0; i < setting.published_size(); ++i) {
    FieldCheck at = check.at("published", i);
    at.range("over_min", setting.published(i).over_min(), 0, 240);
    at.that(setting.published(i).over_most_min() == 0 ||
                setting.published(i).over_most_min() > setting.published(i).over_min(),
            "over_most_min", "is not over over_min");
    at.text("action", setting.published(i).action(), 3, 300);
    checkSource(at, setting.published(i).has_source(), setting.published(i).source());
  }
  checkStatedSources(check, setting.sources());
}

}  // namespace

void checkWearSteps(const FieldCheck& check, const v1::WearPlan& plan) {
  checkSteps(check, plan.steps());
  check.that(plan.first_step() < static_cast<std::uint32_t>(std::max(plan.steps_size(), 1)), "first_step",
             "is not one of the steps");
  check.range("off_min", plan.off_min(), 0, 480);
  check.range("grace_min", plan.grace_min(), 0, 30);
  check.range("redness_min", plan.redness_min(), 5, 60);
  check.enums(plan);
}

void checkWearPlan(const FieldCheck& check, const v1::WearPlan& plan) {
  check.uuid("id", plan.id());
  check.range("number", plan.number(), 1, 1000000);
  check.uuid("person_id", plan.person_id());
  check.uuid("clinic_id", plan.clinic_id());
  check.uuid("signer_id", plan.signer_id());
  check.text("signer_name", plan.signer_name(), 1, 200);
  check.that(plan.has_issued_at(), "issued_at", "is missing");
  check.day("effective_day", plan.effective_day());
  check.zone("zone", plan.zone());
  checkWearSteps(check, plan);
  check.text("note", plan.note(), 0, 2000);
}

absl::Status check(const v1::WearPlan& plan) {
  FieldCheck check;
  checkWearPlan(check, plan);
  return check.status();
}

absl::Status check(const v1::WearBlock& block) {
  FieldCheck check;
  checkBlock(check, block);
  return check.status();
}

absl::Status check(const v1::WearLog& log) {
  FieldCheck check;
  for (int i = 0; i < log.blocks_size(); ++i) checkBlock(check.at("blocks", i), log.blocks(i));
  return check.status();
}

absl::Status check(const v1::WearFile& file) {
  FieldCheck check;
  check.that(!file.examples().empty() || file.has_redness(), "examples", "is missing, and so is redness");
  check.enums(file);
  for (int i = 0; i < file.examples_size(); ++i) checkExample(check.at("examples", i), file.examples(i));
  if (file.has_redness()) checkRedness(check.at("redness"), file.redness());
  return check.status();
}

}  // namespace newel
