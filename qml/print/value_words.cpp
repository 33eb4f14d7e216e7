// The plain value lists of record_words.h, one word or few for each value.

#include "qml/print/record_words.h"
#include "qml/print/sheet_language.h"

namespace newel::print {
namespace {

QString notGiven() { return sheetWords("RecordWords", "not given"); }

}  // namespace

QString words(v1::Side side) {
  return side == v1::SIDE_LEFT    ? sheetWords("RecordWords", "left")
         : side == v1::SIDE_RIGHT ? sheetWords("RecordWords", "right")
                                  : notGiven();
}

QString words(v1::LimbLossLevel level) {
  switch (level) {
    case v1::LIMB_LOSS_LEVEL_PARTIAL_FOOT:
      return sheetWords("RecordWords", "partial foot");
    case v1::LIMB_LOSS_LEVEL_ANKLE_DISARTICULATION:
      return sheetWords("RecordWords", "ankle disarticulation");
    case v1::LIMB_LOSS_LEVEL_TRANSTIBIAL:
      return sheetWords("RecordWords", "transtibial");
    case v1::LIMB_LOSS_LEVEL_KNEE_DISARTICULATION:
      return sheetWords("RecordWords", "knee disarticulation");
    case v1::LIMB_LOSS_LEVEL_TRANSFEMORAL:
      return sheetWords("RecordWords", "transfemoral");
    case v1::LIMB_LOSS_LEVEL_HIP_DISARTICULATION:
      return sheetWords("RecordWords", "hip disarticulation");
    default:
      return notGiven();
  }
}

QString words(v1::KneeKind knee) {
  switch (knee) {
    case v1::KNEE_KIND_OWN_KNEE:
      return sheetWords("RecordWords", "own knee");
    case v1::KNEE_KIND_LOCKED:
      return sheetWords("RecordWords", "locked");
    case v1::KNEE_KIND_MECHANICAL:
      return sheetWords("RecordWords", "swings freely");
    case v1::KNEE_KIND_YIELDING:
      return sheetWords("RecordWords", "yields under load");
    case v1::KNEE_KIND_NO_PROSTHESIS:
      return sheetWords("RecordWords", "no prosthesis");
    default:
      return notGiven();
  }
}

QString words(v1::FootKind foot) {
  switch (foot) {
    case v1::FOOT_KIND_NO_PROSTHESIS:
      return sheetWords("RecordWords", "no prosthesis");
    case v1::FOOT_KIND_FIXED_ANKLE:
      return sheetWords("RecordWords", "fixed ankle");
    case v1::FOOT_KIND_MOVING_ANKLE:
      return sheetWords("RecordWords", "moving ankle");
    case v1::FOOT_KIND_ENERGY_STORING:
      return sheetWords("RecordWords", "energy storing");
    case v1::FOOT_KIND_NOT_KNOWN:
      return sheetWords("RecordWords", "not known");
    default:
      return notGiven();
  }
}

QString words(v1::MobilityLevel mobility) {
  if (mobility < v1::MOBILITY_LEVEL_K0 || mobility > v1::MOBILITY_LEVEL_K4) return notGiven();
  return QStringLiteral("K%1").arg(static_cast<int>(mobility) - static_cast<int>(v1::MOBILITY_LEVEL_K0));
}

QString words(v1::Condition condition) {
  static constexpr const char* kWords[] = {
      QT_TRANSLATE_NOOP("RecordWords", "not given"),
      QT_TRANSLATE_NOOP("RecordWords", "diabetes"),
      QT_TRANSLATE_NOOP("RecordWords", "takes insulin"),
      QT_TRANSLATE_NOOP("RecordWords", "heart disease"),
      QT_TRANSLATE_NOOP("RecordWords", "breathing problem"),
      QT_TRANSLATE_NOOP("RecordWords", "high blood pressure"),
      QT_TRANSLATE_NOOP("RecordWords", "vascular disease"),
      QT_TRANSLATE_NOOP("RecordWords", "osteoporosis"),
      QT_TRANSLATE_NOOP("RecordWords", "seizures"),
      QT_TRANSLATE_NOOP("RecordWords", "back pain"),
      QT_TRANSLATE_NOOP("RecordWords", "hernia"),
      QT_TRANSLATE_NOOP("RecordWords", "pregnancy"),
      QT_TRANSLATE_NOOP("RecordWords", "recent surgery"),
      QT_TRANSLATE_NOOP("RecordWords", "open wound"),
      QT_TRANSLATE_NOOP("RecordWords", "cannot lie face down"),
      QT_TRANSLATE_NOOP("RecordWords", "shoulder problem"),
      QT_TRANSLATE_NOOP("RecordWords", "neuropathy"),
      QT_TRANSLATE_NOOP("RecordWords", "blood thinners"),
      QT_TRANSLATE_NOOP("RecordWords", "hip flexion contracture"),
      QT_TRANSLATE_NOOP("RecordWords", "knee flexion contracture"),
      QT_TRANSLATE_NOOP("RecordWords", "sound knee pain"),
      QT_TRANSLATE_NOOP("RecordWords", "blood clot in the last four weeks")};
  const auto at = static_cast<std::size_t>(condition);
  return at < std::size(kWords) ? sheetWords("RecordWords", kWords[at]) : notGiven();
}

QString words(v1::WalkingAid aid) {
  switch (aid) {
    case v1::WALKING_AID_NONE:
      return sheetWords("RecordWords", "none");
    case v1::WALKING_AID_ONE_CANE:
      return sheetWords("RecordWords", "one cane");
    case v1::WALKING_AID_TWO_CANES:
      return sheetWords("RecordWords", "two canes");
    case v1::WALKING_AID_CRUTCHES:
      return sheetWords("RecordWords", "crutches");
    case v1::WALKING_AID_WALKER:
      return sheetWords("RecordWords", "walker");
    default:
      return notGiven();
  }
}

QString words(v1::Answer answer) {
  return answer == v1::ANSWER_YES         ? sheetWords("RecordWords", "yes")
         : answer == v1::ANSWER_NO        ? sheetWords("RecordWords", "no")
         : answer == v1::ANSWER_NOT_KNOWN ? sheetWords("RecordWords", "not known")
                                          : notGiven();
}

QString words(v1::Rails rails) {
  switch (rails) {
    case v1::RAILS_NO_STAIRS:
      return sheetWords("RecordWords", "no stairs");
    case v1::RAILS_NONE:
      return sheetWords("RecordWords", "stairs, no rail");
    case v1::RAILS_LEFT_GOING_UP:
      return sheetWords("RecordWords", "rail on the left going up");
    case v1::RAILS_RIGHT_GOING_UP:
      return sheetWords("RecordWords", "rail on the right going up");
    case v1::RAILS_BOTH:
      return sheetWords("RecordWords", "rails on both sides");
    case v1::RAILS_NOT_KNOWN:
      return sheetWords("RecordWords", "not known");
    default:
      return notGiven();
  }
}

QString words(v1::Support support) {
  switch (support) {
    case v1::SUPPORT_TWO_HANDS:
      return sheetWords("RecordWords", "both hands");
    case v1::SUPPORT_ONE_HAND:
      return sheetWords("RecordWords", "one hand");
    case v1::SUPPORT_FINGERTIPS:
      return sheetWords("RecordWords", "fingertips");
    case v1::SUPPORT_NO_HANDS:
      return sheetWords("RecordWords", "no hands");
    case v1::SUPPORT_LYING:
      return sheetWords("RecordWords", "lying");
    case v1::SUPPORT_SEATED:
      return sheetWords("RecordWords", "seated");
    default:
      return notGiven();
  }
}

QString words(v1::ProsthesisUse use) {
  return use == v1::PROSTHESIS_USE_ON    ? sheetWords("RecordWords", "prosthesis on")
         : use == v1::PROSTHESIS_USE_OFF ? sheetWords("RecordWords", "prosthesis off")
                                         : notGiven();
}

QString words(v1::SidePolicy policy) {
  switch (policy) {
    case v1::SIDE_POLICY_WHOLE_BODY:
      return sheetWords("RecordWords", "whole body");
    case v1::SIDE_POLICY_ALTERNATING:
      return sheetWords("RecordWords", "sides in turn");
    case v1::SIDE_POLICY_ONE_THEN_OTHER:
      return sheetWords("RecordWords", "one side, then the other");
    case v1::SIDE_POLICY_PROSTHETIC:
      return sheetWords("RecordWords", "prosthesis side");
    case v1::SIDE_POLICY_SOUND:
      return sheetWords("RecordWords", "sound side");
    case v1::SIDE_POLICY_LEFT:
      return sheetWords("RecordWords", "left side");
    case v1::SIDE_POLICY_RIGHT:
      return sheetWords("RecordWords", "right side");
    default:
      return notGiven();
  }
}

QString words(v1::Weekday day) {
  static constexpr const char* kWords[] = {
      QT_TRANSLATE_NOOP("RecordWords", "not given"), QT_TRANSLATE_NOOP("RecordWords", "Monday"),
      QT_TRANSLATE_NOOP("RecordWords", "Tuesday"),   QT_TRANSLATE_NOOP("RecordWords", "Wednesday"),
      QT_TRANSLATE_NOOP("RecordWords", "Thursday"),  QT_TRANSLATE_NOOP("RecordWords", "Friday"),
      QT_TRANSLATE_NOOP("RecordWords", "Saturday"),  QT_TRANSLATE_NOOP("RecordWords", "Sunday")};
  const auto at = static_cast<std::size_t>(day);
  return at < std::size(kWords) ? sheetWords("RecordWords", kWords[at]) : notGiven();
}

QString shortWords(v1::Weekday day) {
  static constexpr const char* kWords[] = {
      QT_TRANSLATE_NOOP("RecordWords", "not given"), QT_TRANSLATE_NOOP("RecordWords", "Mon"),
      QT_TRANSLATE_NOOP("RecordWords", "Tue"),       QT_TRANSLATE_NOOP("RecordWords", "Wed"),
      QT_TRANSLATE_NOOP("RecordWords", "Thu"),       QT_TRANSLATE_NOOP("RecordWords", "Fri"),
      QT_TRANSLATE_NOOP("RecordWords", "Sat"),       QT_TRANSLATE_NOOP("RecordWords", "Sun")};
  const auto at = static_cast<std::size_t>(day);
  return at < std::size(kWords) ? sheetWords("RecordWords", kWords[at]) : notGiven();
}

QString words(v1::StopReason reason) {
  switch (reason) {
    case v1::STOP_REASON_PAIN:
      return sheetWords("RecordWords", "pain");
    case v1::STOP_REASON_DIZZY:
      return sheetWords("RecordWords", "dizzy");
    case v1::STOP_REASON_UNSTEADY:
      return sheetWords("RecordWords", "unsteady");
    case v1::STOP_REASON_PROSTHESIS:
      return sheetWords("RecordWords", "trouble with the prosthesis");
    case v1::STOP_REASON_TIRED:
      return sheetWords("RecordWords", "tired");
    case v1::STOP_REASON_INTERRUPTED:
      return sheetWords("RecordWords", "interrupted");
    case v1::STOP_REASON_CHEST_PAIN:
      return sheetWords("RecordWords", "chest pain");
    case v1::STOP_REASON_BREATHLESS:
      return sheetWords("RecordWords", "breathless");
    case v1::STOP_REASON_FALL:
      return sheetWords("RecordWords", "a fall");
    case v1::STOP_REASON_SKIN:
      return sheetWords("RecordWords", "skin");
    case v1::STOP_REASON_HOLD_ORDER:
      return sheetWords("RecordWords", "hold order");
    case v1::STOP_REASON_OTHER:
      return sheetWords("RecordWords", "another reason");
    case v1::STOP_REASON_WEAKNESS_OR_SPEECH:
      return sheetWords("RecordWords", "sudden weakness or trouble with speech");
    case v1::STOP_REASON_LIMB_SWELLING:
      return sheetWords("RecordWords", "swelling of a leg");
    case v1::STOP_REASON_NO_TIME:
      return sheetWords("RecordWords", "no time");
    case v1::STOP_REASON_FELT_UNWELL:
      return sheetWords("RecordWords", "felt unwell");
    default:
      return notGiven();
  }
}

QString words(v1::PracticeEnd end) {
  switch (end) {
    case v1::PRACTICE_END_FINISHED:
      return sheetWords("RecordWords", "finished");
    case v1::PRACTICE_END_STOPPED:
      return sheetWords("RecordWords", "stopped by the person");
    case v1::PRACTICE_END_RED_FLAG:
      return sheetWords("RecordWords", "ended by a safety rule");
    case v1::PRACTICE_END_HELD:
      return sheetWords("RecordWords", "ended by a hold order");
    case v1::PRACTICE_END_INTERRUPTED:
      return sheetWords("RecordWords", "interrupted and not taken up again");
    case v1::PRACTICE_END_REFUSED:
      return sheetWords("RecordWords", "not begun: the ready check said not today");
    default:
      return notGiven();
  }
}

QString words(v1::ClockDoubt doubt) {
  switch (doubt) {
    case v1::CLOCK_DOUBT_WALL_MOVED:
      return sheetWords("RecordWords", "the phone's clock was set during it");
    case v1::CLOCK_DOUBT_ZONE_CHANGED:
      return sheetWords("RecordWords", "the time zone changed during it");
    case v1::CLOCK_DOUBT_RESTARTED:
      return sheetWords("RecordWords", "the phone or program restarted during it");
    case v1::CLOCK_DOUBT_BEHIND_HUB:
      return sheetWords("RecordWords", "the phone's date was behind the clinic's");
    default:
      return notGiven();
  }
}

QString words(v1::Effect effect) {
  switch (effect) {
    case v1::EFFECT_BLOCK:
      return sheetWords("RecordWords", "Block");
    case v1::EFFECT_ASK:
      return sheetWords("RecordWords", "Ask");
    case v1::EFFECT_CAUTION:
      return sheetWords("RecordWords", "Caution");
    case v1::EFFECT_NOTE:
      return sheetWords("RecordWords", "Note");
    case v1::EFFECT_RED_FLAG:
      return sheetWords("RecordWords", "Red flag");
    case v1::EFFECT_NOT_TODAY:
      return sheetWords("RecordWords", "Not today");
    case v1::EFFECT_LEAVE_OUT:
      return sheetWords("RecordWords", "Left out");
    case v1::EFFECT_END_ENTRY:
      return sheetWords("RecordWords", "Ended the exercise");
    case v1::EFFECT_TELL:
      return sheetWords("RecordWords", "Told the clinic");
    default:
      return notGiven();
  }
}

QString words(OccasionResult::State state) {
  switch (state) {
    case OccasionResult::State::Done:
      return sheetWords("RecordWords", "done");
    case OccasionResult::State::Part:
      return sheetWords("RecordWords", "part done");
    case OccasionResult::State::NotDone:
      return sheetWords("RecordWords", "not done");
    case OccasionResult::State::Excused:
      return sheetWords("RecordWords", "excused");
    case OccasionResult::State::Coming:
      return sheetWords("RecordWords", "to come");
    case OccasionResult::State::NoData:
      return sheetWords("RecordWords", "no data");
  }
  return notGiven();
}

}  // namespace newel::print
