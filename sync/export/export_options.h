// What a person's export says and leaves out; the same for every format.
#pragma once

#include <cstdint>
#include <string>

namespace newel {

struct ExportOptions {
  // Names of therapists and what people wrote freely (messages, notes, reasons, advice): left out unless
  // asked for, because nobody can promise that no name stands in them.
  bool with_words = false;
  // Calendar: also say which exercises. A calendar is shown to whoever looks at the screen, and says
  // "Practice" alone unless this is asked for.
  bool with_exercises = false;
  // Calendar: of this programme; 0: the latest.
  std::uint32_t programme_number = 0;
  // Calendar: language of its words; empty: the person's. The other formats are for machines, and English.
  std::string language = {};
  // FHIR: also claim profiles of US Core and of the HL7 Physical Activity guide (United States), where they
  // are met; fhir_bundle.h says which.
  bool us_profiles = false;
};

}  // namespace newel
