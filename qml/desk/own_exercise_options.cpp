#include "qml/desk/own_exercise_options.h"

#include <google/protobuf/descriptor.h>

#include <QtCore/QCoreApplication>

#include "core/library/wording.h"
#include "qml/print/record_words.h"

namespace newel::desk {
namespace {

QVariantMap option(const QVariant& value, const QString& text) {
  return {{QStringLiteral("value"), value}, {QStringLiteral("text"), text}};
}

// Every value of an enumeration that the catalogue has a phrase for.
QVariantList phrasesOf(const Catalogue& catalogue, const std::string& group,
                       const google::protobuf::EnumDescriptor* type, const std::string& prefix,
                       const std::string& language) {
  QVariantList list;
  for (int i = 0; i < type->value_count(); ++i) {
    const std::string text = catalogue.phrase(phraseKey(group, type->value(i)->name(), prefix), language);
    if (type->value(i)->number() != 0 && !text.empty())
      list << option(type->value(i)->number(), print::text(text));
  }
  return list;
}

QVariantList keyed(const Catalogue& catalogue, const std::string& prefix, const std::string& language) {
  QVariantList list;
  for (const std::string& key : catalogue.keysOf(prefix, "en"))
    list << option(print::text(key.substr(prefix.size())), print::text(catalogue.phrase(key, language)));
  return list;
}

QVariantList sidesOf(const Catalogue& catalogue, const std::string& movement_id) {
  QVariantList list;
  const v1::Movement* movement = catalogue.movement(movement_id);
  if (movement == nullptr) return list;
  for (const int policy : movement->side_policies())
    list << option(policy, print::words(static_cast<v1::SidePolicy>(policy)));
  return list;
}

struct Question {
  const char* path;  // as the message begins
  const char* label;
};
constexpr Question kQuestions[] = {
    {"words[0].title", QT_TRANSLATE_NOOP("OwnExercise", "Title")},
    {"words[0].purpose", QT_TRANSLATE_NOOP("OwnExercise", "Why")},
    {"words[0].start", QT_TRANSLATE_NOOP("OwnExercise", "How to take up the position")},
    {"words[0].support", QT_TRANSLATE_NOOP("OwnExercise", "What the hands hold")},
    {"words[0].good", QT_TRANSLATE_NOOP("OwnExercise", "Done well")},
    {"words[0].faults", QT_TRANSLATE_NOOP("OwnExercise", "A common fault and its correction")},
    {"words[0].breathing", QT_TRANSLATE_NOOP("OwnExercise", "Breathing")},
    {"words[0].stop_if", QT_TRANSLATE_NOOP("OwnExercise", "Stop if")},
    {"words[0].cautions", QT_TRANSLATE_NOOP("OwnExercise", "Take care")},
    {"words[0].cues", QT_TRANSLATE_NOOP("OwnExercise", "What to do in each part")},
    {"words[0]", QT_TRANSLATE_NOOP("OwnExercise", "What to do in each part")},
    {"exercise.purpose", QT_TRANSLATE_NOOP("OwnExercise", "Group")},
    {"exercise.position", QT_TRANSLATE_NOOP("OwnExercise", "Position")},
    {"exercise.muscles", QT_TRANSLATE_NOOP("OwnExercise", "Muscles")},
    {"exercise.supports", QT_TRANSLATE_NOOP("OwnExercise", "Support")},
    {"exercise.side_policies", QT_TRANSLATE_NOOP("OwnExercise", "Sides")},
    {"exercise.prosthesis", QT_TRANSLATE_NOOP("OwnExercise", "Prosthesis")},
    {"exercise.fit", QT_TRANSLATE_NOOP("OwnExercise", "Least mobility")},
    {"exercise.tags", QT_TRANSLATE_NOOP("OwnExercise", "What the rules look at")},
    {"exercise.default_dose", QT_TRANSLATE_NOOP("OwnExercise", "Dose")},
    {"exercise.both_sides", QT_TRANSLATE_NOOP("OwnExercise", "Both limbs lost")},
    {"picture", QT_TRANSLATE_NOOP("OwnExercise", "Photo")},
};

QString reasonWords(const std::string& reason) {
  const auto has = [&reason](const char* part) { return reason.find(part) != std::string::npos; };
  if (has("no cue") || has("is missing") || has("is not a value"))
    return QCoreApplication::translate("OwnExercise", "is still missing");
  if (has("spoken takes longer"))
    return QCoreApplication::translate("OwnExercise",
                                       "is too long to be said in its time: fewer words, or a longer time");
  if (has("two to four lines")) return QCoreApplication::translate("OwnExercise", "needs two to four lines");
  if (has("when both limbs are lost"))
    return QCoreApplication::translate(
        "OwnExercise", "cannot be said to a person who has lost both; say that it is not for them");
  if (has("belongs to this position"))
    return QCoreApplication::translate("OwnExercise", "lacks something that belongs to this position");
  return print::text(reason);
}

}  // namespace

QVariantMap ownExerciseOptions(const Catalogue& catalogue, const std::string& movement,
                               const std::string& language) {
  QVariantMap options;
  options[QStringLiteral("position")] =
      phrasesOf(catalogue, "position", v1::Position_descriptor(), "POSITION_", language);
  options[QStringLiteral("purpose_group")] =
      phrasesOf(catalogue, "purpose", v1::Purpose_descriptor(), "PURPOSE_", language);
  options[QStringLiteral("supports")] =
      phrasesOf(catalogue, "support", v1::Support_descriptor(), "SUPPORT_", language);
  options[QStringLiteral("equipment")] =
      phrasesOf(catalogue, "equipment", v1::Equipment_descriptor(), "EQUIPMENT_", language);
  options[QStringLiteral("sides")] = sidesOf(catalogue, movement);
  options[QStringLiteral("muscles")] = keyed(catalogue, "muscle.", language);
  options[QStringLiteral("tags")] = keyed(catalogue, "tag.", language);
  options[QStringLiteral("prosthesis")] = QVariantList{
      option(v1::PROSTHESIS_USE_ON, QCoreApplication::translate("OwnExercise", "on")),
      option(v1::PROSTHESIS_USE_OFF, QCoreApplication::translate("OwnExercise", "off")),
      option(v1::PROSTHESIS_USE_EITHER, QCoreApplication::translate("OwnExercise", "on or off"))};
  QVariantList mobility;
  for (int level = v1::MobilityLevel_MIN + 1; level <= v1::MobilityLevel_MAX; ++level)
    mobility << option(level, print::words(static_cast<v1::MobilityLevel>(level)));
  options[QStringLiteral("mobility")] = mobility;
  options[QStringLiteral("both")] = QVariantList{
      option(v1::BOTH_SIDES_REFUSED, QCoreApplication::translate("OwnExercise", "not for them")),
      option(v1::BOTH_SIDES_SAME, QCoreApplication::translate("OwnExercise", "the same words fit"))};
  return options;
}

QString ownExerciseProblem(const std::string& message) {
  const std::size_t colon = message.find(": ");
  const std::string path = message.substr(0, colon);
  const std::string reason = colon == std::string::npos ? message : message.substr(colon + 2);
  for (const Question& question : kQuestions) {
    if (path.rfind(question.path, 0) == 0)
      return QCoreApplication::translate("OwnExercise", "%1: %2.")
          .arg(QCoreApplication::translate("OwnExercise", question.label), reasonWords(reason));
  }
  return print::text(message);
}

}  // namespace newel::desk
