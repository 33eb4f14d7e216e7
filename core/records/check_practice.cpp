#include "core/records/check.h"
#include "core/records/check_parts.h"

namespace newel {
namespace {

// 36 hours: a practice that was left and taken up the next morning is long, not impossible.
constexpr std::int64_t kLongestMs = std::int64_t{36} * 3600 * 1000;

void checkLength(const FieldCheck& check, std::string_view field, std::int64_t ms) {
  check.that(ms >= 0, field, "is negative");
  check.that(ms <= kLongestMs, field, "is longer than 36 hours");
}

void checkCount(const FieldCheck& check, const v1::DoseCount& count) {
  check.range("repetitions", count.repetitions(), 0, 10000);
  checkLength(check, "hold_ms", count.hold_ms());
  checkLength(check, "active_ms", count.active_ms());
}

void checkRatings(const FieldCheck& check, const v1::EntryDone& entry) {
  if (entry.has_pain_before_0_10()) check.range("pain_before_0_10", entry.pain_before_0_10(), 0, 10);
  if (entry.has_pain_after_0_10()) check.range("pain_after_0_10", entry.pain_after_0_10(), 0, 10);
  if (entry.has_effort_0_10()) check.range("effort_0_10", entry.effort_0_10(), 0, 10);
}

void checkEntryDone(const FieldCheck& check, const v1::EntryDone& entry) {
  check.uuid("occasion.entry_id", entry.occasion().entry_id());
  check.day("occasion.local_day", entry.occasion().local_day());
  check.range("occasion.window", entry.occasion().window(), 0, 5);
  check.key("exercise_id", entry.exercise_id());
  check.range("exercise_revision", entry.exercise_revision(), 1, 1000000);
  for (int i = 0; i < entry.sets_size(); ++i) {
    const FieldCheck set = check.at("sets", i);
    set.range("set", entry.sets(i).set(), 1, 60);
    checkCount(set.at("done"), entry.sets(i).done());
  }
  checkCount(check.at("asked"), entry.asked());
  checkCount(check.at("done"), entry.done());
  checkRatings(check, entry);
  checkLength(check, "elapsed_ms", entry.elapsed_ms());
  check.text("skipped_words", entry.skipped_words(), 0, 1000);
}

void checkStarted(const FieldCheck& check, const v1::Practice& practice) {
  check.uuid("id", practice.id());
  check.uuid("person_id", practice.person_id());
  check.range("programme_number", practice.programme_number(), 1, 1000000);
  check.zone("zone", practice.zone());
  check.day("local_day", practice.local_day());
  check.that(practice.has_started_at(), "started_at", "is missing");
  for (int i = 0; i < practice.entries_size(); ++i)
    checkEntryDone(check.at("entries", i), practice.entries(i));
  check.that(practice.entries_size() <= 60, "entries", "more than 60");
  check.text("app_version", practice.app_version(), 1, 60);
}

}  // namespace

absl::Status check(const v1::Practice& practice) {
  FieldCheck check;
  check.enums(practice);
  checkStarted(check, practice);
  check.range("revision", practice.revision(), 1, 1000000);
  check.that(practice.end() != v1::PRACTICE_END_UNSPECIFIED, "end",
             "PRACTICE_END_UNSPECIFIED is not a value");
  check.that(practice.has_ended_at(), "ended_at", "is missing");
  checkLength(check, "elapsed_ms", practice.elapsed_ms());
  for (int i = 0; i < practice.ready_answers_size(); ++i) {
    const FieldCheck answer = check.at("ready_answers", i);
    answer.key("question_id", practice.ready_answers(i).question_id());
    answer.key("answer_id", practice.ready_answers(i).answer_id());
  }
  check.text("note", practice.note(), 0, 4000);
  for (int i = 0; i < practice.red_flag_rule_ids_size(); ++i) {
    check.key("red_flag_rule_ids[" + std::to_string(i) + "]", practice.red_flag_rule_ids(i));
  }
  check.that(practice.end() != v1::PRACTICE_END_RED_FLAG || !practice.red_flag_rule_ids().empty(),
             "red_flag_rule_ids", "is missing: end is RED_FLAG");
  return check.status();
}

absl::Status check(const v1::JournalLine& line) {
  FieldCheck check;
  check.uuid("practice_id", line.practice_id());
  check.range("sequence", line.sequence(), 1, 10000000);
  // The header is a practice that has only begun: its own end and origin are checked where it is closed.
  v1::JournalLine bare = line;
  bare.clear_header();
  check.enums(bare);
  checkLength(check, "elapsed_ms", line.elapsed_ms());
  check.that(line.has_at(), "at", "is missing");
  if (line.kind() == v1::JOURNAL_KIND_PRACTICE_BEGUN) {
    check.that(line.has_header(), "header", "is missing");
    check.that(line.sequence() == 1, "sequence", "a practice begins with line 1");
    checkStarted(check.at("header"), line.header());
  }
  if (line.kind() == v1::JOURNAL_KIND_CLOSED) {
    check.that(line.end() != v1::PRACTICE_END_UNSPECIFIED, "end", "PRACTICE_END_UNSPECIFIED is not a value");
  }
  if (line.has_pain_before_0_10()) check.range("pain_before_0_10", line.pain_before_0_10(), 0, 10);
  if (line.has_pain_after_0_10()) check.range("pain_after_0_10", line.pain_after_0_10(), 0, 10);
  if (line.has_effort_0_10()) check.range("effort_0_10", line.effort_0_10(), 0, 10);
  return check.status();
}

absl::Status check(const v1::Message& message) {
  FieldCheck check;
  check.uuid("id", message.id());
  check.uuid("person_id", message.person_id());
  check.enums(message);
  check.text("sender_name", message.sender_name(), 0, 200);
  check.that(message.has_written_at(), "written_at", "is missing");
  check.text("text", message.text(), 1, 4000);
  if (message.has_photo()) checkPhoto(check.at("photo"), message.photo());
  if (message.has_clip()) checkClip(check.at("clip"), message.clip());
  check.that(message.sender() == v1::SENDER_CLINIC || (!message.has_photo() && !message.has_clip()), "photo",
             "or clip: the clinic alone sends them");
  return check.status();
}

absl::Status check(const v1::Receipt& receipt) {
  FieldCheck check;
  check.uuid("id", receipt.id());
  check.uuid("person_id", receipt.person_id());
  check.enums(receipt);
  check.uuid("ref_id", receipt.ref_id());
  check.that(receipt.has_at(), "at", "is missing");
  return check.status();
}

absl::Status check(const v1::Measure& measure) {
  FieldCheck check;
  check.uuid("id", measure.id());
  check.range("revision", measure.revision(), 1, 1000000);
  check.uuid("person_id", measure.person_id());
  check.enums(measure);
  check.key("kind", measure.kind());
  check.that(measure.value() >= -1000000 && measure.value() <= 1000000, "value", "is out of all bounds");
  check.text("unit", measure.unit(), 1, 40);
  check.that(measure.has_taken_at(), "taken_at", "is missing");
  check.day("local_day", measure.local_day());
  check.text("note", measure.note(), 0, 4000);
  return check.status();
}

absl::Status check(const v1::Remark& remark) {
  FieldCheck check;
  check.uuid("id", remark.id());
  check.range("revision", remark.revision(), 1, 1000000);
  check.uuid("person_id", remark.person_id());
  if (!remark.practice_id().empty()) check.uuid("practice_id", remark.practice_id());
  check.day("local_day", remark.local_day());
  check.text("text", remark.text(), 1, 1000);
  check.that(remark.has_written_at(), "written_at", "is missing");
  check.text("writer_name", remark.writer_name(), 0, 200);
  return check.status();
}

}  // namespace newel
