// The plain value lists of record_words.h, one word or few for each value.
#include <QtCore/QCoreApplication>

#include "qml/print/record_words.h"

namespace newel::print {
namespace {

QString say(const char* words) { return QCoreApplication::translate("RecordWords", words); }
QString notGiven() { return say("not given"); }

}  // namespace

QString words(v1::Side side) {
  return side == v1::SIDE_LEFT ? say("left") : side == v1::SIDE_RIGHT ? say("right") : notGiven();
}

QString words(v1::LimbLossLevel level) {
  switch (level) {
    case v1::LIMB_LOSS_LEVEL_PARTIAL_FOOT:
      return say("partial foot");
    case v1::LIMB_LOSS_LEVEL_ANKLE_DISARTICULATION:
      return say("ankle disarticulation");
    case v1::LIMB_LOSS_LEVEL_TRANSTIBIAL:
      return say("transtibial");
    case v1::LIMB_LOSS_LEVEL_KNEE_DISARTICULATION:
      return say("knee disarticulation");
    case v1::LIMB_LOSS_LEVEL_TRANSFEMORAL:
      return say("transfemoral");
    case v1::LIMB_LOSS_LEVEL_HIP_DISARTICULATION:
      return say("hip disarticulation");
    default:
      return notGiven();
  }
}

QString words(v1::KneeKind knee) {
  switch (knee) {
    case v1::KNEE_KIND_OWN_KNEE:
      return say("own knee");
    case v1::KNEE_KIND_LOCKED:
      return say("locked");
    case v1::KNEE_KIND_MECHANICAL:
      return say("swings freely");
    case v1::KNEE_KIND_YIELDING:
      return say("yields under load");
    case v1::KNEE_KIND_NO_PROSTHESIS:
      return say("no prosthesis");
    default:
      return notGiven();
  }
}

QString words(v1::FootKind foot) {
  switch (foot) {
    case v1::FOOT_KIND_NO_PROSTHESIS:
      return say("no prosthesis");
    case v1::FOOT_KIND_FIXED_ANKLE:
      return say("fixed ankle");
    case v1::FOOT_KIND_MOVING_ANKLE:
      return say("moving ankle");
    case v1::FOOT_KIND_ENERGY_STORING:
      return say("energy storing");
    case v1::FOOT_KIND_NOT_KNOWN:
      return say("not known");
    default:
      return notGiven();
  }
}

QString words(v1::MobilityLevel mobility) {
  if (mobility < v1::MOBILITY_LEVEL_K0 || mobility > v1::MOBILITY_LEVEL_K4) return notGiven();
  return QStringLiteral("K%1").arg(static_cast<int>(mobility) - static_cast<int>(v1::MOBILITY_LEVEL_K0));
}

QString words(v1::Condition condition) {
  static constexpr const char* kWords[] = {"not given",
                                           "diabetes",
                                           "takes insulin",
                                           "heart disease",
                                           "breathing problem",
                                           "high blood pressure",
                                           "vascular disease",
                                           "osteoporosis",
                                           "seizures",
                                           "back pain",
                                           "hernia",
                                           "pregnancy",
                                           "recent surgery",
                                           "open wound",
                                           "cannot lie face down",
                                           "shoulder problem",
                                           "neuropathy",
                                           "blood thinners",
                                           "hip flexion contracture",
                                           "knee flexion contracture",
                                           "sound knee pain",
                                           "blood clot in the last four weeks"};
  const auto at = static_cast<std::size_t>(condition);
  return at < std::size(kWords) ? say(kWords[at]) : notGiven();
}

QString words(v1::WalkingAid aid) {
  switch (aid) {
    case v1::WALKING_AID_NONE:
      return say("none");
    case v1::WALKING_AID_ONE_CANE:
      return say("one cane");
    case v1::WALKING_AID_TWO_CANES:
      return say("two canes");
    case v1::WALKING_AID_CRUTCHES:
      return say("crutches");
    case v1::WALKING_AID_WALKER:
      return say("walker");
    default:
      return notGiven();
  }
}

QString words(v1::Answer answer) {
  return answer == v1::ANSWER_YES         ? say("yes")
         : answer == v1::ANSWER_NO        ? say("no")
         : answer == v1::ANSWER_NOT_KNOWN ? say("not known")
                                          : notGiven();
}

QString words(v1::Rails rails) {
  switch (rails) {
    case v1::RAILS_NO_STAIRS:
      return say("no stairs");
    case v1::RAILS_NONE:
      return say("stairs, no rail");
    case v1::RAILS_LEFT_GOING_UP:
      return say("rail on the left going up");
    case v1::RAILS_RIGHT_GOING_UP:
      return say("rail on the right going up");
    case v1::RAILS_BOTH:
      return say("rails on both sides");
    case v1::RAILS_NOT_KNOWN:
      return say("not known");
    default:
      return notGiven();
  }
}

QString words(v1::Support support) {
  switch (support) {
    case v1::SUPPORT_TWO_HANDS:
      return say("both hands");
    case v1::SUPPORT_ONE_HAND:
      return say("one hand");
    case v1::SUPPORT_FINGERTIPS:
      return say("fingertips");
    case v1::SUPPORT_NO_HANDS:
      return say("no hands");
    case v1::SUPPORT_LYING:
      return say("lying");
    case v1::SUPPORT_SEATED:
      return say("seated");
    default:
      return notGiven();
  }
}

QString words(v1::ProsthesisUse use) {
  return use == v1::PROSTHESIS_USE_ON    ? say("prosthesis on")
         : use == v1::PROSTHESIS_USE_OFF ? say("prosthesis off")
                                         : notGiven();
}

QString words(v1::SidePolicy policy) {
  switch (policy) {
    case v1::SIDE_POLICY_WHOLE_BODY:
      return say("whole body");
    case v1::SIDE_POLICY_ALTERNATING:
      return say("sides in turn");
    case v1::SIDE_POLICY_ONE_THEN_OTHER:
      return say("one side, then the other");
    case v1::SIDE_POLICY_PROSTHETIC:
      return say("prosthesis side");
    case v1::SIDE_POLICY_SOUND:
      return say("sound side");
    case v1::SIDE_POLICY_LEFT:
      return say("left side");
    case v1::SIDE_POLICY_RIGHT:
      return say("right side");
    default:
      return notGiven();
  }
}

QString words(v1::Weekday day) {
  static constexpr const char* kWords[] = {"not given", "Monday", "Tuesday",  "Wednesday",
                                           "Thursday",  "Friday", "Saturday", "Sunday"};
  const auto at = static_cast<std::size_t>(day);
  return at < std::size(kWords) ? say(kWords[at]) : notGiven();
}

QString shortWords(v1::Weekday day) {
  static constexpr const char* kWords[] = {"not given", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"};
  const auto at = static_cast<std::size_t>(day);
  return at < std::size(kWords) ? say(kWords[at]) : notGiven();
}

QString words(v1::StopReason reason) {
  switch (reason) {
    case v1::STOP_REASON_PAIN:
      return say("pain");
    case v1::STOP_REASON_DIZZY:
      return say("dizzy");
    case v1::STOP_REASON_UNSTEADY:
      return say("unsteady");
    case v1::STOP_REASON_PROSTHESIS:
      return say("trouble with the prosthesis");
    case v1::STOP_REASON_TIRED:
      return say("tired");
    case v1::STOP_REASON_INTERRUPTED:
      return say("interrupted");
    case v1::STOP_REASON_CHEST_PAIN:
      return say("chest pain");
    case v1::STOP_REASON_BREATHLESS:
      return say("breathless");
    case v1::STOP_REASON_FALL:
      return say("a fall");
    case v1::STOP_REASON_SKIN:
      return say("skin");
    case v1::STOP_REASON_HOLD_ORDER:
      return say("hold order");
    case v1::STOP_REASON_OTHER:
      return say("another reason");
    case v1::STOP_REASON_WEAKNESS_OR_SPEECH:
      return say("sudden weakness or trouble with speech");
    case v1::STOP_REASON_LIMB_SWELLING:
      return say("swelling of a leg");
    case v1::STOP_REASON_NO_TIME:
      return say("no time");
    case v1::STOP_REASON_FELT_UNWELL:
      return say("felt unwell");
    default:
      return notGiven();
  }
}

QString words(v1::PracticeEnd end) {
  switch (end) {
    case v1::PRACTICE_END_FINISHED:
      return say("finished");
    case v1::PRACTICE_END_STOPPED:
      return say("stopped by the person");
    case v1::PRACTICE_END_RED_FLAG:
      return say("ended by a safety rule");
    case v1::PRACTICE_END_HELD:
      return say("ended by a hold order");
    case v1::PRACTICE_END_INTERRUPTED:
      return say("interrupted and not taken up again");
    case v1::PRACTICE_END_REFUSED:
      return say("not begun: the ready check said not today");
    default:
      return notGiven();
  }
}

QString words(v1::ClockDoubt doubt) {
  switch (doubt) {
    case v1::CLOCK_DOUBT_WALL_MOVED:
      return say("the phone's clock was set during it");
    case v1::CLOCK_DOUBT_ZONE_CHANGED:
      return say("the time zone changed during it");
    case v1::CLOCK_DOUBT_RESTARTED:
      return say("the phone or program restarted during it");
    case v1::CLOCK_DOUBT_BEHIND_HUB:
      return say("the phone's date was behind the clinic's");
    default:
      return notGiven();
  }
}

QString words(v1::Effect effect) {
  switch (effect) {
    case v1::EFFECT_BLOCK:
      return say("Block");
    case v1::EFFECT_ASK:
      return say("Ask");
    case v1::EFFECT_CAUTION:
      return say("Caution");
    case v1::EFFECT_NOTE:
      return say("Note");
    case v1::EFFECT_RED_FLAG:
      return say("Red flag");
    case v1::EFFECT_NOT_TODAY:
      return say("Not today");
    case v1::EFFECT_LEAVE_OUT:
      return say("Left out");
    case v1::EFFECT_END_ENTRY:
      return say("Ended the exercise");
    case v1::EFFECT_TELL:
      return say("Told the clinic");
    default:
      return notGiven();
  }
}

QString words(OccasionResult::State state) {
  switch (state) {
    case OccasionResult::State::Done:
      return say("done");
    case OccasionResult::State::Part:
      return say("part done");
    case OccasionResult::State::NotDone:
      return say("not done");
    case OccasionResult::State::Excused:
      return say("excused");
    case OccasionResult::State::Coming:
      return say("to come");
    case OccasionResult::State::NoData:
      return say("no data");
  }
  return notGiven();
}

}  // namespace newel::print
