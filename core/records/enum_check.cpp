#include "core/records/enum_check.h"

#include <google/protobuf/descriptor.h>

#include <map>
#include <memory>
#include <set>
#include <vector>

namespace newel {
namespace {

using google::protobuf::Descriptor;
using google::protobuf::FieldDescriptor;
using google::protobuf::Message;
using google::protobuf::Reflection;

// Enumerations that say something by being absent. Everything else must be set.
const std::set<std::string>& mayBeAbsent() {
  static const std::set<std::string> fields = {
      "newel.v1.Person.strong_side",
      "newel.v1.Beat.side",
      "newel.v1.Beat.role",
      "newel.v1.SetDone.side",
      "newel.v1.EntryDone.skipped",
      "newel.v1.Practice.stop_reason",
      "newel.v1.Practice.end",
      "newel.v1.JournalLine.reason",
      "newel.v1.JournalLine.end",
      "newel.v1.JournalLine.doubt",
      "newel.v1.Measure.side",
      "newel.v1.Rule.until",
      "newel.v1.Finding.until",
      "newel.v1.ReminderSettings.wanted",
      "newel.v1.ReminderShown.answer",
      "newel.v1.TemplateEntry.support",
      "newel.v1.TemplateEntry.side_policy",
      "newel.v1.TemplateEntry.prosthesis",
      "newel.v1.TemplateEntry.pacing",
  };
  return fields;
}

// What there is to look at in one type of record: its enumerations, and the messages with some below. Most
// fields are neither, and a hub looks at hundreds of records a second.
struct Plan {
  // In the order of the .proto, so that the first thing wrong is the same whoever looks.
  struct Item {
    const FieldDescriptor* field = nullptr;
    bool may_be_absent = false;
    const Plan* below = nullptr;  // null: an enumeration
  };
  std::vector<Item> items;
};

bool hasEnumBelow(const Descriptor& type, std::set<const Descriptor*>& seen) {
  if (!seen.insert(&type).second) return false;
  for (int i = 0; i < type.field_count(); ++i) {
    const FieldDescriptor& field = *type.field(i);
    if (field.cpp_type() == FieldDescriptor::CPPTYPE_ENUM) return true;
    if (field.cpp_type() == FieldDescriptor::CPPTYPE_MESSAGE && hasEnumBelow(*field.message_type(), seen)) {
      return true;
    }
  }
  return false;
}

// Made once for each type.
class Plans {
 public:
  const Plan& of(const Descriptor& type) {
    const auto found = m_plans.find(&type);
    return found != m_plans.end() ? *found->second : make(type);
  }

 private:
  // A type may be below itself: its plan stands before it is filled.
  const Plan& make(const Descriptor& type) {
    auto& slot = m_plans[&type];
    if (slot) return *slot;
    slot = std::make_unique<Plan>();
    Plan& plan = *slot;
    for (int i = 0; i < type.field_count(); ++i) {
      const FieldDescriptor* field = type.field(i);
      if (field->cpp_type() == FieldDescriptor::CPPTYPE_ENUM) {
        plan.items.push_back({field, mayBeAbsent().contains(field->full_name()), nullptr});
      } else if (field->cpp_type() == FieldDescriptor::CPPTYPE_MESSAGE) {
        std::set<const Descriptor*> seen;
        if (!hasEnumBelow(*field->message_type(), seen)) continue;
        plan.items.push_back({field, false, &make(*field->message_type())});
      }
    }
    return plan;
  }

  std::map<const Descriptor*, std::unique_ptr<Plan>> m_plans;
};

// Each thread makes its own, in microseconds: nothing is shared, so nothing is locked.
const Plan& planOf(const Descriptor& type) {
  static thread_local Plans plans;
  return plans.of(type);
}

std::string nameOf(const FieldDescriptor& field, int item) {
  return field.name() + (field.is_repeated() ? "[" + std::to_string(item) + "]" : "");
}

std::string problemOf(const Message& message, const Reflection& reflection, const Plan::Item& item,
                      int index) {
  const FieldDescriptor& field = *item.field;
  const int value = field.is_repeated() ? reflection.GetRepeatedEnumValue(message, &field, index)
                                        : reflection.GetEnumValue(message, &field);
  if (value == 0) {
    const bool absent =
        !field.is_repeated() &&
        (item.may_be_absent || (field.has_presence() && !reflection.HasField(message, &field)));
    if (absent) return "";
    return nameOf(field, index) + ": " + field.enum_type()->value(0)->name() + " is not a value";
  }
  if (field.enum_type()->FindValueByNumber(value) != nullptr) return "";
  return nameOf(field, index) + ": unknown value " + std::to_string(value);
}

std::string problemIn(const Message& message, const Plan& plan) {
  const Reflection& reflection = *message.GetReflection();
  for (const Plan::Item& item : plan.items) {
    const FieldDescriptor& field = *item.field;
    const bool one = !field.is_repeated();
    if (one && item.below != nullptr && !reflection.HasField(message, &field)) continue;
    const int count = one ? 1 : reflection.FieldSize(message, &field);
    for (int i = 0; i < count; ++i) {
      std::string problem;
      if (item.below == nullptr) {
        problem = problemOf(message, reflection, item, i);
        if (!problem.empty()) return problem;
        continue;
      }
      problem = problemIn(
          one ? reflection.GetMessage(message, &field) : reflection.GetRepeatedMessage(message, &field, i),
          *item.below);
      if (!problem.empty()) return nameOf(field, i) + "." + problem;
    }
  }
  return "";
}

}  // namespace

std::string enumProblemIn(const Message& message) {
  return problemIn(message, planOf(*message.GetDescriptor()));
}

}  // namespace newel
