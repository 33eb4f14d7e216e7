// What the core has to say for or against something (core/records/evidence.h), in words for the therapist:
// why an entry is ready for its next step or not, and what a report would lack.
#pragma once

#include <QtCore/QString>
#include <string>

#include "core/library/catalogue.h"
#include "core/progress/progression.h"
#include "core/records/evidence.h"

namespace newel::desk {

// What an entry's rule says; with no rule, that nobody asked it.
QString adviceWords(Advice advice);
// Exercises by their titles in `language`, days as people write them. A key that this program does not know
// is shown as it is.
QString evidenceWords(const EvidenceLine& line, const Catalogue& catalogue, const std::string& language);
bool hasEvidenceWords(const std::string& key);
// What a line of the reporting template asks for ("7a"); empty: there is no such line.
QString certLineWords(const std::string& line_id);

}  // namespace newel::desk
