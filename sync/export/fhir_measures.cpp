// Outcome measures and wearing time.
#include <absl/strings/str_cat.h>

#include <utility>

#include "core/progress/measure_table.h"
#include "core/schedule/wear_plan.h"
#include "core/time/local_day.h"
#include "sync/export/fhir_codes.h"
#include "sync/export/fhir_parts.h"
#include "sync/export/record_words.h"

namespace newel {
namespace {

Json textComponent(const char* code, const char* words, const std::string& value) {
  return {{"code", codeConcept(codeSystemUrl("event"), code, words)}, {"valueString", fhirText(value)}};
}

bool isOpenSkin(int sign) {
  return sign == v1::SKIN_SIGN_OPEN_SKIN || sign == v1::SKIN_SIGN_BLISTER || sign == v1::SKIN_SIGN_DRAINAGE;
}

Json skinComponents(const v1::WearBlock& block) {
  Json components = Json::array();
  for (const int sign : block.check().signs()) {
    const std::string word = enumWord(v1::SkinSign_descriptor(), sign);
    components.push_back({{"code", codeConcept(codeSystemUrl("event"), "skin", "Skin of the limb")},
                          {"valueCodeableConcept", codeConcept(codeSystemUrl("skin-sign"), word, word)}});
  }
  if (block.check().has_redness()) {
    const v1::Redness& redness = block.check().redness();
    components.push_back(
        {{"code", codeConcept(codeSystemUrl("event"), "redness-watched", "Redness was watched")},
         {"valueQuantity", quantity(redness.watched_min(), "min", "min")}});
    components.push_back(
        {{"code", codeConcept(codeSystemUrl("event"), "redness-gone", "Redness was gone then")},
         {"valueBoolean", redness.gone()}});
  }
  return components;
}

}  // namespace

// The open code where one is known, and ours beside it: never a guessed one.
Json measureConcept(const std::string& id) {
  const v1::MeasureKind* kind = MeasureTable::builtIn().find(id);
  Json code =
      codeConcept(codeSystemUrl("measure"), id, kind != nullptr ? measureWords(*kind, "en").name() : id);
  if (kind == nullptr) return code;
  for (const auto& open : kind->codes())
    code["coding"].push_back({{"system", open.system()}, {"code", open.code()}});
  return code;
}

void addMeasure(FhirWork& work, const v1::Measure& measure) {
  Json json = observation(work, measure.id(), "exam", measureConcept(measure.kind()));
  if (measure.withdrawn()) json["status"] = "entered-in-error";
  json["effectiveDateTime"] = isoInstantIn(toTime(measure.taken_at()), work.history.person.zone());
  if (!measure.taken_by().empty()) json["performer"] = Json::array({practitioner(measure.taken_by(), "")});
  json["valueQuantity"] = quantity(measure.value(), measure.unit(), measure.unit());
  const std::string side = enumWord(v1::Side_descriptor(), measure.side());
  if (!side.empty()) json["bodySite"] = textConcept(side + " leg");
  const std::string note = fhirText(freeWords(work, measure.note()));
  if (!note.empty()) json["note"] = Json::array({annotation(note, toTime(measure.taken_at()))});
  if (!fhirText(measure.walking_aid()).empty())
    json["component"] =
        Json::array({textComponent("walking-aid", "Walking aid used", measure.walking_aid())});
  work.bundle.add(json);
}

void addWearBlock(FhirWork& work, const v1::WearBlock& block) {
  Json json = observation(work, block.id(), "activity",
                          codeConcept(codeSystemUrl("event"), "wear-time", "Prosthesis worn"));
  const bool off = block.has_taken_off_at();
  // Still on: how long it was worn is not known yet.
  if (!off) json["status"] = "preliminary";
  json["effectivePeriod"] = {{"start", isoInstantIn(toTime(block.put_on_at()), block.zone())}};
  if (off) json["effectivePeriod"]["end"] = isoInstantIn(toTime(block.taken_off_at()), block.zone());
  json["performer"] = Json::array({work.patient});
  if (off) json["valueQuantity"] = quantity(wornMinutes(block), "min", "min");
  const std::string note = fhirText(freeWords(work, block.note()));
  if (!note.empty()) json["note"] = Json::array({annotation(note, toTime(block.put_on_at()))});
  Json components = skinComponents(block);
  if (!fhirText(block.socks()).empty())
    components.push_back(textComponent("socks", "Socks worn", block.socks()));
  putList(json, "component", std::move(components));
  work.bundle.add(json);
  for (const int sign : block.check().signs()) {
    if (!isOpenSkin(sign)) continue;
    const std::string word = enumWord(v1::SkinSign_descriptor(), sign);
    addOpenSkin(work, derivedId(block.id(), "skin/" + word), word, toTime(block.taken_off_at()));
  }
}

}  // namespace newel
