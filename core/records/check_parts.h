// Checks of the parts that several records share. For core/records alone; others call check.h.
#pragma once

#include "core/records/exercise.pb.h"
#include "core/records/field_check.h"
#include "core/records/media.pb.h"
#include "core/records/practice.pb.h"
#include "core/records/programme.pb.h"
#include "core/records/source.pb.h"
#include "core/records/wear.pb.h"

namespace newel {

void checkDose(const FieldCheck& check, const v1::Dose& dose);
void checkSources(const FieldCheck& check, const google::protobuf::RepeatedPtrField<v1::Source>& sources);
// One source on a number, in the field "source". A common practice must say that it has no source.
void checkSource(const FieldCheck& check, bool given, const v1::Source& source);
// As checkSources(), and a common practice must say that it has no source.
void checkStatedSources(const FieldCheck& check,
                        const google::protobuf::RepeatedPtrField<v1::Source>& sources);
void checkSchedule(const FieldCheck& check, const v1::Schedule& schedule);
void checkThresholds(const FieldCheck& check, const v1::StopThresholds& thresholds);
void checkProgression(const FieldCheck& check, const v1::ProgressionRule& rule);
// A photo or a clip that an entry names, and what the entries of a programme name together.
void checkPhoto(const FieldCheck& check, const v1::MediaRef& photo);
void checkClip(const FieldCheck& check, const v1::MediaRef& clip);
void checkMediaTogether(const FieldCheck& check, const v1::Programme& programme);
void checkEntry(const FieldCheck& check, const v1::Entry& entry);
void checkAdviceEntry(const FieldCheck& check, const v1::AdviceEntry& entry);
void checkOwnExercise(const FieldCheck& check, const v1::OwnExercise& own);
void checkWearPlan(const FieldCheck& check, const v1::WearPlan& plan);
// Steps, minutes and what redness means: what a template may have of a plan.
void checkWearSteps(const FieldCheck& check, const v1::WearPlan& plan);

}  // namespace newel
